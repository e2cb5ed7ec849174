import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

const supply = { name: 'Brick, grey', place: 'shelf 2', supply: { label: 'OUTPUT 12V 3A', inlet: 'C8' } }
const device = { name: 'Tape recorder', device: { label: 'DC 12V 1.5A' } }

let test: TestApp
const call = () => request(test.app)

beforeEach(() => {
  test = testApp()
})

describe.each([
  ['supplies', supply, { ...supply, name: 'Brick, black' }],
  ['devices', device, { ...device, name: 'Terminal' }],
] as const)('/api/shelf/%s', (plural, body, changed) => {
  const all = `/api/shelf/${plural}`
  const made = async () => (await call().post(all).send(body)).body

  it('answers 201 with the record and its address', async () => {
    const answer = await call().post(all).send(body)
    expect(answer.status).toBe(201)
    expect(answer.body).toMatchObject({ ...body, version: 1, createdAt: '2026-01-05T09:00:00.000Z' })
    expect(answer.headers.location).toBe(`${all}/${answer.body.id}`)
    expect((await call().get(`${all}/${answer.body.id}`)).body).toEqual(answer.body)
    expect((await call().get(all)).body).toEqual({ [plural]: [answer.body], total: 1 })
  })

  it('changes a record on its present version and counts that up', async () => {
    const { id, createdAt } = await made()
    test.clock.now += 1000
    const answer = await call()
      .put(`${all}/${id}`)
      .send({ ...changed, version: 1 })
    expect(answer.status).toBe(200)
    expect(answer.body).toMatchObject({ ...changed, id, version: 2, createdAt, updatedAt: '2026-01-05T09:00:01.000Z' })
  })

  it('refuses a change on an older version with 409 and what is kept now', async () => {
    const { id } = await made()
    const now = (
      await call()
        .put(`${all}/${id}`)
        .send({ ...changed, version: 1 })
    ).body
    const answer = await call()
      .put(`${all}/${id}`)
      .send({ ...body, version: 1 })
    expect(answer.status).toBe(409)
    expect(answer.body.error.message).toMatch(/version 2/)
    expect(answer.body.current).toEqual(now)
    expect((await call().get(`${all}/${id}`)).body).toEqual(now)
    expect((await call().delete(`${all}/${id}?version=1`)).status).toBe(409)
  })

  it('deletes with 204 and brings back', async () => {
    const { id } = await made()
    const gone = await call().delete(`${all}/${id}`)
    expect([gone.status, gone.text]).toEqual([204, ''])
    expect((await call().get(`${all}/${id}`)).status).toBe(404)
    expect(
      (
        await call()
          .put(`${all}/${id}`)
          .send({ ...changed, version: 2 })
      ).status,
    ).toBe(404)
    expect((await call().delete(`${all}/${id}`)).status).toBe(404)
    const back = await call().post(`${all}/${id}/restore`)
    expect(back.status).toBe(200)
    expect(back.body).toMatchObject({ id, ...body })
  })

  it('refuses what it does not know, with the path of each fault', async () => {
    const wrong = await call()
      .post(all)
      .send({ ...body, shelf: 3 })
    expect(wrong.status).toBe(422)
    expect(wrong.body.error.message).toMatch(/"shelf"/)
    const nameless = await call()
      .post(all)
      .send({ ...body, name: ' ' })
    expect(nameless.body.error.fields[0].path).toBe('name')
    const { id } = await made()
    expect((await call().put(`${all}/${id}`).send(changed)).body.error.fields[0].path).toBe('version')
    expect((await call().post(all).send('[')).status).toBe(422)
    expect((await call().post(all).type('json').send('[')).status).toBe(400)
    expect((await call().get(`${all}?limit=0`)).status).toBe(422)
    expect(
      (
        await call()
          .post(all)
          .send({ ...body, name: 'a\u0000b' })
      ).status,
    ).toBe(422)
  })

  it('lists what a search finds, a page at a time', async () => {
    for (const name of ['lamp one', 'other', 'LAMP two'])
      await call()
        .post(all)
        .send({ ...body, name })
    const found = await call().get(`${all}?search=Lamp&limit=1&offset=1`)
    expect(found.body.total).toBe(2)
    expect(found.body[plural].map(({ name }: { name: string }) => name)).toEqual(['LAMP two'])
  })
})

describe('a request that another site made a browser send', () => {
  const post = (headers: Record<string, string>) => call().post('/api/shelf/supplies').set(headers).send(supply)

  it.each([
    [{ 'Sec-Fetch-Site': 'cross-site' }],
    [{ 'Sec-Fetch-Site': 'same-site' }],
    [{ Origin: 'https://elsewhere.example' }],
    [{ Origin: 'null' }],
  ])('is refused with 403 and keeps nothing: %o', async (headers) => {
    expect((await post(headers)).status).toBe(403)
    expect((await call().get('/api/shelf/supplies')).body.total).toBe(0)
  })

  it.each([
    [{ 'Sec-Fetch-Site': 'same-origin' }],
    [{ 'Sec-Fetch-Site': 'none' }],
    [{ Host: 'localhost:8080', Origin: 'http://localhost:8080' }],
    [{}],
  ])('is told from one of our own: %o', async (headers) => {
    expect((await post(headers as Record<string, string>)).status).toBe(201)
  })
})
