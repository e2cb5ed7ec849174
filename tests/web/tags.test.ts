import jsQR from 'jsqr'
import sharp from 'sharp'
import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { onSheets, sheets } from '../../server/web/pages/tags/sheets.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
const get = (path: string) => request(test.app).get(path).set('Host', 'localhost:8090')
const words = (html: string) =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/\u00a0/g, ' ')
    .replace(/\s+/g, ' ')

const american = {
  name: 'Black brick',
  supply: {
    label: 'INPUT 120V 60Hz 12W\nOUTPUT DC 9V 500mA',
    plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative' },
  },
}

beforeEach(async () => {
  test = testApp()
  await request(test.app).put('/api/at-hand').send({ country: 'DE' })
})

describe('tags on sheets', () => {
  const [a4, letter] = sheets as [(typeof sheets)[number], (typeof sheets)[number]]

  // 2 × 7 and 2 × 5 labels, counted by hand
  it.each([
    ['one', a4, 1, 1, [1], 0],
    ['a whole sheet', a4, 14, 1, [14], 0],
    ['one more than a sheet', a4, 15, 1, [14, 1], 0],
    ['a sheet that was begun', letter, 3, 9, [10, 1], 8],
  ])('are laid out in reading order: %s', (_what, sheet, count, first, each, taken) => {
    const laid = onSheets(
      Array.from({ length: count }, (_, index) => index),
      sheet,
      first,
    )
    expect(laid.map((places) => places.length)).toEqual(each)
    expect(laid.flat().filter((place) => place === null)).toHaveLength(taken)
    expect(laid.flat().filter((place) => place !== null)).toEqual(Array.from({ length: count }, (_, index) => index))
  })

  it.each([0, 15, Number.NaN])('begin on no label that a sheet has not: %d', (first) => {
    expect(() => onSheets(['x'], a4, first)).toThrow(RangeError)
  })
})

describe('a tag', () => {
  it('says what a supply gives, its plug, its polarity, what the check says here and today, and what it may only go through', async () => {
    await request(test.app).post('/api/shelf/supplies').send(american)
    const { text } = await get('/tags')
    const page = words(text)
    expect(page).toContain('Black brick Supply: 9 V DC 500 mA Only through a transformer to 120 V')
    expect(page).toMatch(/Only through a transformer to 120 V, \d+ VA or more/)
    expect(page).toContain('Do not connect, Germany, 2026-01-05 5.5 × 2.1 mm centre negative')
    expect(text).toContain('src="/drawings/centre-negative.svg" alt="centre negative"')
  })

  it('bears a code that leads to its page', async () => {
    const { id } = (await request(test.app).post('/api/shelf/supplies').send(american)).body
    const svg = /<svg class="tag-code".*?<\/svg>/s.exec((await get(`/tags?id=${id}`)).text)?.[0] ?? ''
    const drawn = svg.replace('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400" ')
    const { data, info } = await sharp(Buffer.from(drawn)).ensureAlpha().raw().toBuffer({ resolveWithObject: true })
    const code = jsQR.default(new Uint8ClampedArray(data), info.width, info.height)
    expect(code?.data).toBe(`http://localhost:8090/shelf/supplies/${id}`)
  })

  it('of a machine says what it takes; no verdict where nothing is judged', async () => {
    await request(test.app)
      .post('/api/shelf/devices')
      .send({ name: 'Recorder', device: { inputs: [{ kind: 'dc', voltageV: 9, currentA: 0.3 }] } })
    const page = words((await get('/tags')).text)
    expect(page).toContain('Recorder Machine: 9 V DC 300 mA')
    expect(page).not.toContain('Germany')
  })

  it('is printed of what is asked for, and of nothing that was deleted', async () => {
    const { id } = (await request(test.app).post('/api/shelf/supplies').send(american)).body
    await request(test.app).post('/api/shelf/supplies').send({ name: 'Other', supply: {} })
    expect(words((await get(`/tags?id=${id}`)).text)).toContain('1 tag, on plain')
    await request(test.app).delete(`/api/shelf/supplies/${id}`)
    expect(words((await get(`/tags?id=${id}`)).text)).toContain('0 tags, on plain')
    expect((await get('/tags?first=15')).status).toBe(422)
  })
})
