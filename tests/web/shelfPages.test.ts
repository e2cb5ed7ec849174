import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import request from 'supertest'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { matching } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
let dataDir: string

const get = (path: string) => request(test.app).get(path)
const post = (path: string, fields: Record<string, string> = {}) =>
  request(test.app).post(path).type('form').send(fields)
const read = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/&quot;/g, '"')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;/g, '&')
    .replace(/\u00a0/g, ' ')
    .replace(/\s+/g, ' ')
const words = async (path: string): Promise<string> => read((await get(path)).text)
const added = async (plural: 'supplies' | 'devices', fields: Record<string, string>): Promise<string> => {
  const answer = await post(`/shelf/${plural}`, fields)
  expect(answer.status).toBe(303)
  return answer.headers.location ?? ''
}

const brick = {
  name: 'Brick',
  place: 'box 3',
  supply: matching.supply.label ?? '',
  inlet: 'C8',
  type: 'switch-mode',
  regulated: 'yes',
  plugouter: '5,5',
  pluginner: '2.1',
  plugpol: 'centre-positive',
}
const recorder = {
  name: 'Recorder',
  need1: '12',
  need1kind: 'dc',
  need1a: '1.2',
  needreg: 'yes',
  jackouter: '5.5',
  jackinner: '2.1',
  jackpol: 'centre-positive',
}

beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'lampline-shelf-'))
  test = testApp(dataDir)
})

afterEach(async () => {
  await test.store.close()
  rmSync(dataDir, { recursive: true })
})

describe('the shelf as pages', () => {
  it('keeps a supply from a form and shows it in the list and on its page', async () => {
    const address = await added('supplies', brick)
    expect(await words('/shelf')).toContain('Brick box 3 SWITCHING POWER SUPPLY')
    expect(await words(address)).toContain('Plug, outer diameter 5.5 mm')
    expect((await get(`/api${address}`)).body.supply).toMatchObject({
      plug: { outerMm: 5.5, innerMm: 2.1 },
      inlet: 'C8',
    })
  })

  it('keeps what was typed when an entry cannot be used, and says what is wrong', async () => {
    const answer = await post('/shelf/supplies', { ...brick, name: '', in: 'plenty' })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('<title>Error: ')
    const page = read(answer.text)
    expect(page).toContain('Enter the name.')
    expect(page).toContain('Input voltage must be')
    expect(answer.text).toContain('value="plenty"')
    expect(answer.text).toContain('value="5,5"')
    expect((await get('/api/shelf/supplies')).body.total).toBe(0)
  })

  it('changes a row, with every box filled in as it is kept', async () => {
    const address = await added('devices', { ...recorder, rownote: 'from the attic' })
    const form = (await get(`${address}/edit`)).text
    for (const value of ['Recorder', '12', '1.2', '5.5']) expect(form).toContain(`value="${value}"`)
    expect(form).toContain('from the attic')
    await post(address, { ...recorder, name: 'Reel recorder', version: '1' })
    expect((await get(`/api${address}`)).body).toMatchObject({ name: 'Reel recorder', version: 2, note: null })
  })

  it('tells the second of two tabs what changed and keeps what it typed', async () => {
    const address = await added('supplies', brick)
    await post(address, { ...brick, place: 'box 4', version: '1' })
    const second = await post(address, { ...brick, place: 'box 5', version: '1' })
    expect(second.status).toBe(409)
    expect(read(second.text)).toContain('Place box 4 box 5')
    expect(second.text).toContain('name="version" value="2"')
    expect(second.text).toContain('value="box 5"')
    expect((await get(`/api${address}`)).body.place).toBe('box 4')
  })

  it('deletes with a way back', async () => {
    const address = await added('supplies', brick)
    const gone = await post(`${address}/delete`)
    expect((await get(address)).status).toBe(404)
    expect((await get(gone.headers.location ?? '')).text).toContain(`action="${address}/restore"`)
    await post(`${address}/restore`)
    expect((await get(address)).status).toBe(200)
  })

  it('lists for a machine its supplies best first, each with the reason against it and a link to the whole check', async () => {
    const machine = await added('devices', recorder)
    await added('supplies', { ...brick, name: 'Wrong way round', plugpol: 'centre-negative' })
    await added('supplies', brick)
    const page = await words(`${machine}?country=DE`)
    expect(page.indexOf('Brick No conflict found')).toBeGreaterThan(-1)
    expect(page.indexOf('Brick No conflict found')).toBeLessThan(page.indexOf('Wrong way round Do not connect'))
    expect(page).toContain('What to look for')
    expect(page).toContain('Current: 1.2 A or more')
    expect((await get(`${machine}?country=DE`)).text).toContain('href="/?country=DE&amp;supply=')
  })

  it('shows the matrix with shape and word in each cell', async () => {
    await added('devices', recorder)
    await added('supplies', brick)
    await added('supplies', { ...brick, name: 'Backwards', plugpol: 'centre-negative' })
    const answer = await get('/shelf/matrix?country=DE')
    expect(read(answer.text)).toMatch(/Backwards Stop polarity Brick No conflict/)
    expect(answer.text).toContain('<svg class="symbol stop"')
  })

  it('finds rows by their words and shows long lists in pages', async () => {
    await test.store.apply(
      Array.from({ length: 120 }, (_, index) => ({
        do: 'add' as const,
        kind: 'supply' as const,
        draft: {
          name: `Row ${index}`,
          search: `row ${index}`,
          state: null,
          summary: { place: null, note: null, label: null },
          body: { name: `Row ${index}`, place: null, note: null, supply: {} },
        },
      })),
    )
    expect(await words('/shelf')).toContain('1 to 50 of 120')
    await added('devices', recorder)
    expect(await words('/shelf/matrix?row=3')).toContain('Supplies 81 to 120 of 120, machines 1 to 1 of 1')
    const sizes = await Promise.all(
      [1, 2, 3].map(async (row) => (await get(`/api/shelf/matrix?row=${row}`)).body.cells.length),
    )
    expect(sizes).toEqual([60, 60, 0])
    expect(await words('/shelf?supplies=3')).toContain('101 to 120 of 120')
    expect((await get('/shelf?search=row+77')).text.match(/href="\/shelf\/supplies\/[\w-]{22}/g)).toHaveLength(1)
  })

  it('keeps a photo of a plate beside its typed words', async () => {
    const address = await added('supplies', brick)
    const bytes = await sharp({ create: { width: 30, height: 20, channels: 3, background: '#777' } })
      .png()
      .toBuffer()
    const kept = await request(test.app)
      .post(`${address}/photos`)
      .field('caption', 'supply plate')
      .attach('photo', bytes, 'a.png')
    expect(kept.status).toBe(303)
    expect(await words(address)).toContain('Typed from this plate: SWITCHING POWER SUPPLY')
    expect((await request(test.app).post(`${address}/photos`).attach('photo', Buffer.from('no'), 'a.png')).status).toBe(
      422,
    )
  })
})

describe('what is deleted', () => {
  it('a photo: the page it was on offers it back, and brings it back', async () => {
    const address = await added('supplies', brick)
    const bytes = await sharp({ create: { width: 30, height: 20, channels: 3, background: '#777' } })
      .png()
      .toBuffer()
    await request(test.app).post(`${address}/photos`).field('caption', 'plug').attach('photo', bytes, 'a.png')
    const action = (html: string, what: string) => new RegExp(`action="([^"]+/photos/[^"]+/${what})"`).exec(html)?.[1]
    const gone = await post(action((await get(address)).text, 'delete') ?? '')
    const after = (await get((gone.headers.location ?? '').split('#')[0] ?? '')).text
    expect(after).not.toContain('<img')
    expect(after).toContain('The photo was deleted.')
    expect((await post(action(after, 'restore') ?? '')).status).toBe(303)
    expect((await get(address)).text).toContain('<img')
  })
})

describe('an empty shelf', () => {
  it('offers a made-up row of each kind', async () => {
    for (const kind of ['supplies', 'devices']) {
      const form = new RegExp(`<form method="post" action="/shelf/${kind}">([\\s\\S]*?)</form>`).exec(
        (await get('/shelf')).text,
      )
      const fields = [...(form?.[1] ?? '').matchAll(/name="(\w+)" value="([^"]*)"/g)]
      const answer = await post(
        `/shelf/${kind}`,
        Object.fromEntries(fields.map(([, name = '', value = '']) => [name, value])),
      )
      expect(answer.status).toBe(303)
    }
    const page = await words('/shelf')
    expect(page).toContain('Supplies (1)')
    expect(page).toContain('Machines (1)')
  })
})

describe('bringing in on a page', () => {
  const look = (text: string) => request(test.app).post('/records').attach('file', Buffer.from(text), 'file')

  it('shows first what would change, and does it when agreed to', async () => {
    const answer = await look('kind,name,place\nsupply,Brick,box 1\ndevice,Recorder,\n')
    expect(answer.status).toBe(200)
    expect(read(answer.text)).toContain('2 added. Nothing was changed yet.')
    expect((await get('/api/shelf/supplies')).body.total).toBe(0)
    const token = /name="token" value="([\w-]+)"/.exec(answer.text)?.[1] ?? ''
    expect(read((await post('/records/apply', { token })).text)).toContain('Brought in: 2 added')
    expect((await get('/api/shelf/supplies')).body.supplies[0]).toMatchObject({ name: 'Brick', place: 'box 1' })
    expect((await post('/records/apply', { token: 'x'.repeat(22) })).status).toBe(422)
  })

  it('is done once however often the form that agrees is sent, and each is answered with what it came to', async () => {
    const answer = await look('kind,name,place\nsupply,Brick,box 1\n')
    const token = /name="token" value="([\w-]+)"/.exec(answer.text)?.[1] ?? ''
    const sent = await Promise.all(Array.from({ length: 4 }, () => post('/records/apply', { token })))
    sent.push(await post('/records/apply', { token }))
    for (const { status, text } of sent)
      expect([status, read(text).includes('Brought in: 1 added')]).toEqual([200, true])
    expect((await get('/api/shelf/supplies')).body.total).toBe(1)
  })

  it('takes JSON of everything as well', async () => {
    await added('supplies', brick)
    const file = (await get('/api/export')).text
    expect(read((await look(file)).text)).toContain('1 as they are')
  })

  it('tells every line that cannot be used and changes nothing', async () => {
    const answer = await look('kind,name\nsupply,Good\nlamp,Bad\nsupply,\n')
    expect(answer.status).toBe(422)
    const page = read(answer.text)
    expect(page).toContain('Line 3: kind must be supply or device')
    expect(page).toContain('Line 4: name')
    expect((await request(test.app).post('/records')).status).toBe(422)
    expect((await look('{"format":')).status).toBe(422)
  })
})
