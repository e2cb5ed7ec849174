import type { Express } from 'express'
import request from 'supertest'
import { describe, expect, it, vi } from 'vitest'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import { createLogger } from '../../server/log.js'
import type { Store } from '../../server/store/store.js'
import { testApp } from './testApp.js'

vi.setConfig({ testTimeout: 60_000 })

interface Layer {
  route?: { path: string; methods: Record<string, boolean> }
  handle: { stack?: Layer[] }
}

const routes = (stack: Layer[]): { method: string; path: string }[] =>
  stack.flatMap(({ route, handle }) =>
    route ? Object.keys(route.methods).map((method) => ({ method, path: route.path })) : routes(handle.stack ?? []),
  )
const routesOf = (app: Express) => routes((app as unknown as { router: { stack: Layer[] } }).router.stack)

const id = 'Bq3xW_0mZ-8rT1uY5vKc2A'
const address = (path: string): string => path.replace(/:\w+/g, id)

/** The real app; every call of its store that changes something is written down instead of made. */
function watched(): { app: Express; changes: string[] } {
  const { store } = testApp()
  const changes: string[] = []
  const changing = ['add', 'change', 'apply', 'remove', 'restore', 'addPhoto', 'removePhoto', 'restorePhoto', 'purge']
  const watching = Object.fromEntries(
    changing.map((name) => [
      name,
      async () => {
        changes.push(name)
        throw new Error('this would have changed something')
      },
    ]),
  )
  const config = readConfig({ LOG_LEVEL: 'silent' })
  const app = createApp({
    config,
    logger: createLogger(config),
    store: { ...store, ...watching } as Store,
    now: Date.now,
    lan: () => null,
  })
  return { app, changes }
}

type Method = 'get' | 'post' | 'put' | 'patch' | 'delete'

const foreign: Record<string, string>[] = [
  { 'Sec-Fetch-Site': 'cross-site', Origin: 'http://elsewhere.example' },
  { 'Sec-Fetch-Site': 'same-site', Origin: 'http://127.0.0.1:9999' },
  { Origin: 'http://elsewhere.example' },
  { Origin: 'null' },
  { Referer: 'http://elsewhere.example/page' },
]

describe('a change that a page of another site makes a browser send', () => {
  const { app, changes } = watched()
  const writes = routesOf(app).filter(({ method }) => method !== 'get')

  it('is known for every call and form there is', () => {
    expect(writes.length).toBeGreaterThan(60)
    expect(writes).toContainEqual({ method: 'post', path: '/enter' })
    expect(writes).toContainEqual({ method: 'post', path: '/api/import' })
  })

  it.each(writes)('is refused: $method $path', async ({ method, path }) => {
    for (const headers of foreign) {
      const answer = await request(app)[method as Method](address(path)).set(headers)
      expect([headers, answer.status]).toEqual([headers, 403])
    }
    expect(changes).toEqual([])
  })

  it.each([
    '/api/import',
    '/api/shelf.csv?apply=1',
    '/records',
    `/jobs/${id}/photos`,
    `/api/jobs/${id}/photos`,
    '/enter',
  ])('is refused as a form with a file, as plain text and as a form: %s', async (path) => {
    const headers = { Origin: 'http://elsewhere.example' }
    const file = await request(app).post(path).set(headers).attach('photo', Buffer.from('x'), 'x.jpg')
    const text = await request(app).post(path).set(headers).type('text/plain').send('{"format":"x"}')
    const form = await request(app).post(path).set(headers).type('form').send({ a: '1' })
    expect([file.status, text.status, form.status]).toEqual([403, 403, 403])
  })

  it('is told in words, on a page and in JSON', async () => {
    const page = await request(app).post('/jobs').set({ Origin: 'null', Accept: 'text/html' })
    expect(page.text).toContain('so nothing was changed')
    expect((await request(app).post('/api/jobs').set({ Origin: 'null' })).body.error.message).toContain('another site')
  })

  it('is let through from a page of this server and from a program', async () => {
    for (const headers of [
      {},
      { 'Sec-Fetch-Site': 'same-origin' },
      { Host: 'localhost:1', Origin: 'http://localhost:1' },
      { Host: 'localhost:1', Referer: 'http://localhost:1/jobs' },
    ])
      expect((await request(app).post('/api/check').set(headers).send({})).status).not.toBe(403)
  })
})

describe('a link, also one on another site', () => {
  const { app, changes } = watched()
  const reads = routesOf(app).filter(({ method }) => method === 'get')

  it.each(reads)('changes nothing: $path', async ({ path }) => {
    const headers = { 'Sec-Fetch-Site': 'cross-site', Origin: 'http://elsewhere.example' }
    const answer = await request(app)
      .get(`${address(path)}?apply=1`)
      .set(headers)
    expect([200, 303, 404, 422]).toContain(answer.status)
    expect(changes).toEqual([])
  })
})

it('no other site may read an answer or show it within a page of its own', async () => {
  const { app } = testApp()
  for (const path of ['/', '/api/export', '/static/lampline.css']) {
    const { headers } = await request(app).get(path).set('Origin', 'http://elsewhere.example')
    expect(Object.keys(headers).filter((name) => name.startsWith('access-control'))).toEqual([])
    expect(headers).toMatchObject({
      'cross-origin-resource-policy': 'same-origin',
      'cross-origin-opener-policy': 'same-origin',
      'x-frame-options': 'DENY',
    })
  }
  expect(
    (await request(app).options('/api/jobs').set('Origin', 'http://elsewhere.example')).headers,
  ).not.toHaveProperty('access-control-allow-origin')
})
