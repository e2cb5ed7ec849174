import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import request from 'supertest'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { exampleRows, examples } from '../../server/web/parts/examples.js'
import { matching } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
let dataDir: string
let id: string

beforeEach(async () => {
  dataDir = mkdtempSync(join(tmpdir(), 'lampline-once-'))
  test = testApp(dataDir)
  id = (await request(test.app).post('/api/jobs').send({ name: 'Tape recorder', check: matching })).body.id
})

afterEach(async () => {
  await test.store.close()
  rmSync(dataDir, { recursive: true })
})

const job = async () => (await request(test.app).get(`/api/jobs/${id}`)).body
const once = async (): Promise<string> =>
  /name="once" value="([\w-]+)"/.exec((await request(test.app).get(`/jobs/${id}`)).text)?.[1] ?? ''
const photo = (background: string) =>
  sharp({ create: { width: 30, height: 20, channels: 3, background } })
    .jpeg()
    .toBuffer()

const forms: { of: string; path: string; typed: Record<string, string>; other: Record<string, string> }[] = [
  {
    of: 'readings',
    path: 'readings',
    typed: { what: 'noise', value: '2', unit: 'mV' },
    other: { what: 'noise', value: '3', unit: 'mV' },
  },
  { of: 'parts', path: 'parts', typed: { part: 'Belt', state: 'wanted' }, other: { part: 'Fuse', state: 'wanted' } },
  { of: 'log', path: 'log', typed: { text: 'Opened.' }, other: { text: 'Opened. Dusty.' } },
]

describe.each(forms)('the form of $of', ({ of, path, typed, other }) => {
  const post = (fields: Record<string, string>) =>
    request(test.app).post(`/jobs/${id}/${path}`).type('form').send(fields)

  it('carries a key that cannot be guessed, another on each page', async () => {
    const keys = [await once(), await once()]
    expect(keys[0]).toMatch(randomUuid)
    expect(keys[1]).not.toBe(keys[0])
  })

  it('sent eight times at once adds one entry, and each is answered with the same success', async () => {
    const key = await once()
    const answers = await Promise.all(Array.from({ length: 8 }, () => post({ ...typed, once: key })))
    for (const answer of answers) expect([answer.status, answer.headers.location]).toEqual([303, `/jobs/${id}#${path}`])
    expect((await job())[of]).toHaveLength(1)
  })

  it('sent again much later adds nothing and changes nothing', async () => {
    const key = await once()
    await post({ ...typed, once: key })
    await post({ ...other, once: await once() })
    const before = await job()
    test.clock.now += 3_600_000
    expect((await post({ ...typed, once: key })).status).toBe(303)
    expect(await job()).toEqual(before)
  })

  it('sent again with something else in it, as after going back, adds that too', async () => {
    const key = await once()
    await post({ ...typed, once: key })
    await post({ ...other, once: key })
    expect((await job())[of]).toHaveLength(2)
  })

  it('adds an entry each time without a key, or with one that is none', async () => {
    for (const fields of [typed, typed, { ...typed, once: 'x' }, { ...typed, once: 'x' }]) await post(fields)
    expect((await job())[of]).toHaveLength(4)
  })

  it('keeps its key where an entry cannot be used, so that the corrected form is still that form', async () => {
    const key = await once()
    const answer = await post({ once: key })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain(`name="once" value="${key}"`)
  })
})

/** RFC 9562, 5.4: version 4, of 122 random bits. */
const randomUuid = /^[\da-f]{8}-[\da-f]{4}-4[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/

describe('the form of a photo', () => {
  const post = (key: string, bytes: Buffer) =>
    request(test.app)
      .post(`/jobs/${id}/photos`)
      .field('once', key)
      .field('caption', 'inside')
      .attach('photo', bytes, 'a.jpg')

  it('sent four times at once, and once more after, keeps one photo that can be seen', async () => {
    const [key, bytes] = [await once(), await photo('#777')]
    const answers = await Promise.all(Array.from({ length: 4 }, () => post(key, bytes)))
    expect(answers.map(({ status }) => status)).toEqual([303, 303, 303, 303])
    expect((await post(key, bytes)).status).toBe(303)
    const { photos } = await job()
    expect(photos).toHaveLength(1)
    expect((await request(test.app).get(photos[0].large)).status).toBe(200)
    expect((await request(test.app).get(photos[0].small)).status).toBe(200)
  })

  it('with another photo under the same key keeps both', async () => {
    const key = await once()
    await post(key, await photo('#777'))
    await post(key, await photo('#070'))
    expect((await job()).photos).toHaveLength(2)
  })

  it('does not bring back a photo that was deleted meanwhile', async () => {
    const [key, bytes] = [await once(), await photo('#777')]
    await post(key, bytes)
    await request(test.app).delete(`/api/photos/${(await job()).photos[0].id}`)
    expect((await post(key, bytes)).status).toBe(303)
    expect((await job()).photos).toHaveLength(0)
  })
})

const query = (examples[0]?.address ?? '').slice(2)

const kept: {
  of: string
  page: string
  path: string
  typed: Record<string, string>
  other: Record<string, string>
  list: string
}[] = [
  {
    of: 'a job from a check',
    page: `/?${query}`,
    path: '/jobs',
    typed: { check: query },
    other: { check: `${query}&hz=50` },
    list: '/api/jobs',
  },
  {
    of: 'a job from a first power-up',
    page: `/first-power?${query}`,
    path: '/jobs',
    typed: { plan: query },
    other: { plan: `${query}&years=20` },
    list: '/api/jobs',
  },
  {
    of: 'a supply of the shelf',
    page: '/shelf/supplies/new',
    path: '/shelf/supplies',
    typed: exampleRows.supply,
    other: { ...exampleRows.supply, name: 'Other' },
    list: '/api/shelf/supplies',
  },
  {
    of: 'a made-up machine',
    page: '/shelf',
    path: '/shelf/devices',
    typed: exampleRows.device,
    other: { ...exampleRows.device, name: 'Other' },
    list: '/api/shelf/devices',
  },
]

describe.each(kept)('the form that keeps $of', ({ page, path, typed, other, list }) => {
  const key = async (): Promise<string> =>
    /name="once" value="([\w-]+)"/.exec((await request(test.app).get(page)).text)?.[1] ?? ''
  const post = (fields: Record<string, string>) => request(test.app).post(path).type('form').send(fields)
  const total = async (): Promise<number> => (await request(test.app).get(list)).body.total

  it('keeps one however often it is sent, answers each time with it, and another for another content or key', async () => {
    const before = await total()
    const once = await key()
    expect(once).toMatch(randomUuid)
    const answers = await Promise.all(Array.from({ length: 5 }, () => post({ ...typed, once })))
    for (const answer of answers)
      expect([answer.status, answer.headers.location]).toEqual([303, answers[0]?.headers.location])
    expect(await total()).toBe(before + 1)
    await post({ ...other, once })
    expect(await total()).toBe(before + 2)
    await post({ ...typed, once: await key() })
    expect(await total()).toBe(before + 3)
    await post(typed)
    expect(await total()).toBe(before + 4)
  })
})

describe('a form of the shelf', () => {
  it('keeps its key where an entry cannot be used', async () => {
    const once = 'k'.repeat(22)
    const answer = await request(test.app).post('/shelf/supplies').type('form').send({ plugouter: '1,500', once })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain(`name="once" value="${once}"`)
  })

  it('keeps one photo', async () => {
    const row = (await request(test.app).post('/shelf/supplies').type('form').send(exampleRows.supply)).headers.location
    const [, once = ''] = /name="once" value="([\w-]+)"/.exec((await request(test.app).get(row ?? '')).text) ?? []
    const bytes = await photo('#777')
    const send = () =>
      request(test.app)
        .post(`${row}/photos`)
        .field('once', once)
        .field('caption', 'plug')
        .attach('photo', bytes, 'a.jpg')
    for (const answer of await Promise.all([send(), send(), send()])) expect(answer.status).toBe(303)
    expect((await send()).status).toBe(303)
    expect((await request(test.app).get(`/api${row}/photos`)).body.photos).toHaveLength(1)
  })
})

describe('a call that keeps a record, with an Idempotency-Key', () => {
  it.each([
    { of: 'job', path: '/api/jobs', body: { name: 'Once', check: matching } },
    { of: 'supply', path: '/api/shelf/supplies', body: { name: 'Once', supply: matching.supply } },
    { of: 'machine', path: '/api/shelf/devices', body: { name: 'Once', device: matching.device } },
  ])('keeps one $of however often it is sent, with the same answer', async ({ path, body }) => {
    const before = (await request(test.app).get(path)).body.total
    const send = () => request(test.app).post(path).set('Idempotency-Key', 'a-key-made-for-this-call').send(body)
    const answers = await Promise.all(Array.from({ length: 4 }, send))
    test.clock.now += 1000
    answers.push(await send())
    for (const answer of answers)
      expect([answer.status, answer.headers.location, answer.body]).toEqual([
        201,
        `${path}/${answers[0]?.body.id}`,
        answers[0]?.body,
      ])
    expect((await request(test.app).get(path)).body.total).toBe(before + 1)
    await request(test.app).post(path).send(body)
    expect((await request(test.app).get(path)).body.total).toBe(before + 2)
  })
})

describe('a call with an Idempotency-Key', () => {
  const calls = [
    { of: 'readings', path: 'readings', body: { key: 'noise', value: 2, unit: 'mV' } },
    { of: 'parts', path: 'parts', body: { name: 'Belt', state: 'wanted' } },
    { of: 'log', path: 'log', body: { text: 'Opened.' } },
  ]
  const call = (path: string, body: object, key: string) =>
    request(test.app).post(`/api/jobs/${id}/${path}`).set('Idempotency-Key', key).send(body)

  it.each(calls)('adds one of the $of however often it is sent, with the same answer', async ({ of, path, body }) => {
    const key = '6fa459ea-ee8a-4ca4-894e-db77e160355e'
    const answers = await Promise.all(Array.from({ length: 5 }, () => call(path, body, key)))
    answers.push(await call(path, body, `"${key}"`))
    for (const answer of answers) expect([answer.status, answer.body]).toEqual([201, answers[0]?.body])
    expect((await job())[of]).toEqual([answers[0]?.body])
  })

  it('keeps one photo', async () => {
    const bytes = await photo('#777')
    const send = () =>
      request(test.app)
        .post(`/api/jobs/${id}/photos`)
        .set('Idempotency-Key', '6fa459ea-ee8a-4ca4-894e-db77e160355e')
        .attach('photo', bytes, 'a.jpg')
    const [first, second] = await Promise.all([send(), send()])
    expect([first?.status, second?.status]).toEqual([201, 201])
    test.clock.now += 1000
    expect((await send()).body).toEqual(first?.body)
    expect((await job()).photos).toHaveLength(1)
  })

  it.each(['short', 'has a blank in it, and a comma', 'x'.repeat(65)])('refuses the key “%s”', async (key) => {
    const answer = await call('log', { text: 'Opened.' }, key)
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields[0].path).toBe('Idempotency-Key')
    expect((await job()).log).toHaveLength(0)
  })
})
