import express, { type Express } from 'express'
import { pino } from 'pino'
import request from 'supertest'
import { describe, expect, it, vi } from 'vitest'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import type { Context } from '../../server/web/context.js'
import { handleErrors } from '../../server/web/errorPages.js'
import { isHeavy, mostInAMinute, rateLimits } from '../../server/web/guards/rateLimits.js'
import { clientKey, WindowCount } from '../../server/web/guards/windowCount.js'
import { setUpViews } from '../../server/web/views.js'

vi.setConfig({ testTimeout: 60_000 })

const network = { HOST: '0.0.0.0', PASSPHRASE: 'three dry lamps' }
const logger = pino({ level: 'silent' })

/** The limits alone, small ones, before an answer to everything. */
function limited(environment: Record<string, string>): { app: Express; time: { elapsed: number } } {
  const time = { elapsed: 0 }
  const config = readConfig(environment)
  const app = express()
  setUpViews(app, () => time.elapsed)
  app.set('trust proxy', config.trustedProxies)
  app.use(rateLimits(config, () => time.elapsed, { requests: 20, heavy: 5 }))
  app.use((_request, response) => {
    response.send('answered')
  })
  app.use(handleErrors({ logger } as Context))
  return { app, time }
}

const statuses = async (count: number, ask: (index: number) => request.Test): Promise<number[]> => {
  const all: number[] = []
  for (let index = 0; index < count; index += 1) all.push((await ask(index)).status)
  return all
}
const answered = (count: number): number[] => Array(count).fill(200)

describe('a server on a network', () => {
  it('refuses one client with 429, words and Retry-After once it asks too much, and goes on a minute later', async () => {
    const { app, time } = limited(network)
    expect(await statuses(22, () => request(app).get('/'))).toEqual([...answered(20), 429, 429])
    const refused = await request(app).get('/api/mains')
    expect(refused.headers['retry-after']).toBe('60')
    expect(refused.body.error.message).toBe(
      'Too many requests came from this address. Wait 60 seconds, then send it again.',
    )
    expect((await request(app).get('/').set('Accept', 'text/html')).text).toContain('Too much at once')
    time.elapsed += 59_000
    expect((await request(app).get('/')).headers['retry-after']).toBe('1')
    time.elapsed += 1000
    expect((await request(app).get('/')).status).toBe(200)
  })

  it('refuses long calculations sooner, and leaves the others to that client', async () => {
    const { app } = limited(network)
    expect(await statuses(6, () => request(app).post('/api/first-power'))).toEqual([...answered(5), 429])
    const refused = await request(app).post('/api/import')
    expect(refused.body.error.message).toMatch(/^Too many long calculations or files/)
    expect((await request(app).get('/api/mains')).status).toBe(200)
  })

  it('counts each client for itself, told apart by a proxy only where it is trusted', async () => {
    const flood = (app: Express) =>
      statuses(22, (index) =>
        request(app)
          .get('/')
          .set('X-Forwarded-For', `10.0.0.${index % 2}`),
      )
    expect(await flood(limited({ ...network, TRUST_PROXY: '1' }).app)).toEqual(answered(22))
    expect(await flood(limited(network).app)).toEqual([...answered(20), 429, 429])
  })

  it('has these limits in front of everything but its files', async () => {
    const config = readConfig(network)
    const app = createApp({ config, logger, now: () => 0, elapsed: () => 0 } as unknown as Context)
    const most = mostInAMinute.requests
    expect((await statuses(most, () => request(app).get('/healthz'))).every((status) => status === 200)).toBe(true)
    for (const path of ['/', '/enter', '/healthz', '/api/mains'])
      expect((await request(app).get(path)).status).toBe(429)
    expect((await request(app).get('/static/lampline.css')).status).toBe(200)
  })
})

it('a server on loopback refuses nobody for asking much', async () => {
  const { app } = limited({})
  expect(await statuses(60, () => request(app).post('/api/first-power'))).toEqual(answered(60))
})

describe('what takes long', () => {
  it.each([
    ['GET', '/first-power'],
    ['GET', '/first-power/'],
    ['HEAD', '/First-Power'],
    ['POST', '/API/Import/'],
    ['POST', '/api/first-power'],
    ['POST', '/api/series-lamp/transient'],
    ['GET', '/shelf/matrix'],
    ['GET', '/api/shelf/matrix'],
    ['GET', '/api/shelf/devices/x/matches'],
    ['POST', '/jobs/x/photos'],
    ['POST', '/api/shelf/supplies/x/photos'],
    ['POST', '/api/import'],
    ['POST', '/api/shelf.csv'],
    ['POST', '/records'],
    ['POST', '/records/apply'],
    ['GET', '/api/export'],
  ])('is %s %s', (method, path) => {
    expect(isHeavy({ method, path })).toBe(true)
  })

  it.each([
    ['GET', '/'],
    ['POST', '/api/check'],
    ['GET', '/jobs/x'],
    ['POST', '/jobs/x/readings'],
    ['GET', '/photos/x/small'],
    ['GET', '/records'],
    ['GET', '/api/shelf/supplies/x/photos'],
  ])('is not %s %s', (method, path) => {
    expect(isHeavy({ method, path })).toBe(false)
  })
})

describe('a count within a window', () => {
  it('begins with the first of its key, ends after its length, and begins anew', () => {
    let now = 0
    const counts = new WindowCount(1000, () => now)
    expect([counts.add('a'), counts.add('a'), counts.count('a'), counts.count('b')]).toEqual([1, 2, 2, 0])
    now = 400
    expect([counts.add('b'), counts.leftMs('a'), counts.leftMs('b'), counts.leftMs('c')]).toEqual([1, 600, 1000, 0])
    now = 1000
    expect([counts.count('a'), counts.count('b'), counts.add('a')]).toEqual([0, 1, 1])
  })

  it('holds no more keys than it may, however many come', () => {
    const counts = new WindowCount(1000, () => 0, 3)
    for (const key of ['a', 'b', 'c', 'd']) counts.add(key)
    expect(['a', 'b', 'c', 'd'].map((key) => counts.count(key))).toEqual([0, 1, 1, 1])
  })
})

it.each([
  ['192.168.1.20', '192.168.1.20'],
  ['::ffff:192.168.1.20', '192.168.1.20'],
  ['2001:db8:1:2:aaaa:bbbb:cccc:dddd', '2001:db8:1:2'],
  ['2001:db8:1:2::7', '2001:db8:1:2'],
  ['fe80::1%eth0', 'fe80:0:0:0'],
  ['::1', '0:0:0:0'],
  ['', ''],
  [undefined, ''],
])('the address %j counts as %j', (address, key) => {
  expect(clientKey(address)).toBe(key)
})
