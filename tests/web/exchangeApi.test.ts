import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
const call = () => request(test.app)

const addShelf = async (): Promise<void> => {
  for (const name of ['Brick, grey', '=cmd', 'Übertrager "B"'])
    await call()
      .post('/api/shelf/supplies')
      .send({ name, supply: { outputs: [{ voltageV: 12, kind: 'dc', currentA: 3 }], label: 'OUTPUT 12V 3A' } })
  await call()
    .post('/api/shelf/devices')
    .send({ name: 'Terminal', note: 'a\nb', device: { regulatedNeeded: true } })
}

const exported = async () => (await call().get('/api/export')).text
const csv = async () => (await call().get('/api/shelf.csv')).text
const bringIn = (text: string, apply = true) =>
  call()
    .post(`/api/import${apply ? '?apply=1' : ''}`)
    .type('json')
    .send(text)
const bringCsv = (text: string | Buffer, apply = true) =>
  call()
    .post(`/api/shelf.csv${apply ? '?apply=1' : ''}`)
    .type('text/csv')
    .send(text)

beforeEach(() => {
  test = testApp()
})

describe('everything as JSON', () => {
  it('comes back byte for byte after a way through an empty store', async () => {
    await addShelf()
    const file = await exported()
    test = testApp()
    const answer = await bringIn(file)
    expect(answer.body).toMatchObject({ applied: true, adds: 4, replaces: 0, same: 0 })
    expect(await exported()).toBe(file)
    expect((await bringIn(file)).body).toMatchObject({ adds: 0, replaces: 0, same: 4, changes: [] })
    expect(await exported()).toBe(file)
  })

  it('says what would change and changes nothing unless told to', async () => {
    await addShelf()
    const file = await exported()
    const { id } = JSON.parse(file).supplies[0]
    await call().put(`/api/shelf/supplies/${id}`).send({ name: 'renamed', supply: {}, version: 1 })
    const gone = JSON.parse(file).devices[0].id
    await call().delete(`/api/shelf/devices/${gone}`)
    const before = await exported()
    const answer = await bringIn(file, false)
    expect(answer.body).toMatchObject({ applied: false, adds: 0, replaces: 1, bringsBack: 1, same: 2 })
    expect(answer.body.changes).toContainEqual({ change: 'replace', kind: 'supply', id, name: '=cmd', older: true })
    expect(await exported()).toBe(before)
  })

  it('gives a record that is older than the one kept the next version, so that an open page is told', async () => {
    await addShelf()
    const file = await exported()
    const { id, name } = JSON.parse(file).supplies[0]
    await call().put(`/api/shelf/supplies/${id}`).send({ name: 'renamed', supply: {}, version: 1 })
    await bringIn(file)
    expect((await call().get(`/api/shelf/supplies/${id}`)).body).toMatchObject({ name, version: 3 })
    expect((await call().put(`/api/shelf/supplies/${id}`).send({ name: 'x', supply: {}, version: 2 })).status).toBe(409)
  })

  it('takes nothing from a file with one wrong entry, and names it', async () => {
    await addShelf()
    const file = JSON.parse(await exported())
    file.supplies[1].supply.inlet = 5
    test = testApp()
    const answer = await bringIn(JSON.stringify(file))
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields[0].path).toBe('supplies.1.supply.inlet')
    expect((await call().get('/api/shelf/supplies')).body.total).toBe(0)
  })

  it.each([
    ['no records file', '{}', 422],
    ['another format', '{"format":"other","formatVersion":1,"supplies":[],"devices":[],"jobs":[]}', 422],
    ['no JSON', 'name,place', 400],
    ['a prototype key', '{"__proto__":{"a":1}}', 422],
    ['apply=yes', '{}', 422],
  ])('refuses %s with words', async (what, text, status) => {
    const answer = what === 'apply=yes' ? await call().post('/api/import?apply=yes').send({}) : await bringIn(text)
    expect(answer.status).toBe(status)
    expect(answer.body.error.message.length).toBeGreaterThan(20)
  })

  it('refuses a file in which an id stands twice', async () => {
    await addShelf()
    const file = JSON.parse(await exported())
    file.supplies.push(file.supplies[0])
    expect((await bringIn(JSON.stringify(file))).body.error.message).toMatch(/twice/)
  })
})

describe('the shelf as CSV', () => {
  it('comes back with nothing changed', async () => {
    await addShelf()
    const file = await csv()
    expect(file.charCodeAt(0)).toBe(0xfeff)
    expect(file).toContain(`"'=cmd"`)
    expect((await bringCsv(file)).body).toMatchObject({ rows: 4, same: 4, adds: 0, replaces: 0, errors: [] })
    test = testApp()
    expect((await bringCsv(file)).body).toMatchObject({ adds: 4 })
    expect(await csv()).toBe(file)
    expect((await call().get('/api/shelf/supplies?search=cmd')).body.supplies[0].name).toBe('=cmd')
  })

  it('adds rows without an id and leaves alone what the file has no column for', async () => {
    await addShelf()
    const [{ id }] = (await call().get('/api/shelf/devices')).body.devices
    const file = `kind,id,name\ndevice,${id},Terminal 2\nsupply,,Brick 9\n`
    expect((await bringCsv(file, false)).body).toMatchObject({ applied: false, adds: 1, replaces: 1 })
    expect((await call().get('/api/shelf/supplies')).body.total).toBe(3)
    await bringCsv(file)
    expect((await call().get(`/api/shelf/devices/${id}`)).body).toMatchObject({
      name: 'Terminal 2',
      version: 2,
      note: 'a\nb',
      device: { regulatedNeeded: true },
    })
    expect((await call().get('/api/shelf/supplies?search=Brick+9')).body.total).toBe(1)
  })

  it('tells what is wrong line by line, and then takes nothing', async () => {
    const file = 'kind,name,inlet,input A,technology\nsupply,Good,C8,1,\nsupply,,C8,x,\nlamp,L,,,\nsupply,T,,,magic\n'
    const preview = await bringCsv(file, false)
    expect(preview.status).toBe(200)
    expect(preview.body.errors.map(({ line, column }: { line: number; column: string }) => [line, column])).toEqual([
      [3, 'input A'],
      [3, 'name'],
      [4, 'kind'],
      [5, 'technology'],
    ])
    const answer = await bringCsv(file)
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields[0].path).toBe('line 3, input A')
    expect((await call().get('/api/shelf/supplies')).body.total).toBe(0)
  })

  it('keeps new rows once under one Idempotency-Key, and leaves what happened to them since', async () => {
    const file = 'kind,name\nsupply,Brick\nsupply,Brick\nmachine,Terminal\n'
    const send = (text: string, key: string) => bringCsv(text).set('Idempotency-Key', key)
    expect((await send(file, 'first-key-0123456789')).body).toMatchObject({ adds: 3, same: 0 })
    const [{ id }] = (await call().get('/api/shelf/devices')).body.devices
    await call().put(`/api/shelf/devices/${id}`).send({ name: 'renamed', device: {}, version: 1 })
    expect((await send(file, 'first-key-0123456789')).body).toMatchObject({ adds: 0, replaces: 0, same: 3 })
    expect((await call().get(`/api/shelf/devices/${id}`)).body).toMatchObject({ name: 'renamed', version: 2 })
    expect((await call().get('/api/shelf/supplies')).body.total).toBe(2)
    // another file, and another key, are another sending
    expect((await send(`${file}supply,Block\n`, 'first-key-0123456789')).body).toMatchObject({ adds: 1, same: 3 })
    expect((await send(file, 'other-key-0123456789')).body).toMatchObject({ adds: 3 })
    expect((await send(file, 'short')).status).toBe(422)
  })

  it('refuses a row that was changed here since the file was written', async () => {
    await addShelf()
    const file = await csv()
    const [{ id }] = (await call().get('/api/shelf/devices')).body.devices
    await call().put(`/api/shelf/devices/${id}`).send({ name: 'changed', device: {}, version: 1 })
    const answer = await bringCsv(file)
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields).toHaveLength(1)
    expect(answer.body.error.fields[0].message).toMatch(/version 2 here and at 1 in the file/)
  })

  it.each([
    ['Latin-1', Buffer.from([0x6b, 0xe4, 0x2c]), 422],
    ['nothing', '', 422],
    ['a line of 50 MB', Buffer.concat([Buffer.from('kind,name\nsupply,'), Buffer.alloc(50 * 1024 * 1024, 'a')]), 422],
    ['more than is read', Buffer.alloc(65 * 1024 * 1024, 'a'), 413],
  ])('refuses %s with words', async (_what, file, status) => {
    const answer = await bringCsv(file)
    expect(answer.status).toBe(status)
    expect(answer.body.error.message.length).toBeGreaterThan(20)
  })
})
