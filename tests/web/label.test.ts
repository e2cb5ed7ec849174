import { pino } from 'pino'
import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import type { Context } from '../../server/web/context.js'

const app = createApp({ config: readConfig({}), logger: pino({ level: 'silent' }), now: Date.now } as Context)
const post = (body: unknown) =>
  request(app)
    .post('/api/label')
    .send(body as object)

const nothing = {
  input: null,
  outputs: [],
  outputsTotalW: null,
  takes: [],
  polarity: null,
  protectionClass: null,
  fuse: null,
  plug: null,
  hazards: [],
  unread: [],
  from: [],
  unsure: [],
  proposals: [],
}

describe('POST /api/label', () => {
  it("reads a supply's plate", async () => {
    const answer = await post({ text: 'INPUT: 115/230V~ 50/60Hz 25VA\nOUTPUT: 9V⎓ 1A ⊖-(•-⊕ ⧈ T160mA' })
    expect(answer.status).toBe(200)
    expect(answer.body).toEqual({
      input: {
        kind: 'ac',
        voltages: [
          { min: 115, max: 115 },
          { min: 230, max: 230 },
        ],
        frequenciesHz: [50, 60],
        currentA: null,
        powerVA: 25,
        powerW: null,
      },
      outputs: [{ kind: 'dc', voltageV: 9, voltageMaxV: null, currentA: 1, powerVA: null, powerW: null }],
      outputsTotalW: null,
      takes: [],
      polarity: 'centre-positive',
      protectionClass: 'II',
      fuse: 'T160mA',
      plug: null,
      hazards: [],
      unread: [],
      from: [
        { field: 'input.voltages', words: '115/230V~' },
        { field: 'outputs.0.voltageV', words: '9V⎓' },
        { field: 'input.frequenciesHz', words: '50/60Hz' },
        { field: 'input.powerVA', words: '25VA' },
        { field: 'outputs.0.currentA', words: '1A' },
        { field: 'input.kind', words: '115/230V~' },
        { field: 'outputs.0.kind', words: '9V⎓' },
        { field: 'polarity', words: '⊖-(•-⊕' },
        { field: 'protectionClass', words: '⧈' },
        { field: 'fuse', words: 'T160mA' },
      ],
      unsure: [],
      proposals: [],
    })
  })

  it("reads a low voltage on a machine's plate as what it takes", async () => {
    const answer = await post({ text: 'POWER IN 9V~ 1A', of: 'device' })
    expect(answer.status).toBe(200)
    expect(answer.body.takes).toEqual([
      { kind: 'ac', voltageV: 9, voltageMaxV: null, currentA: 1, powerVA: null, powerW: null },
    ])
    expect(answer.body.input).toBeNull()
    expect(answer.body.outputs).toEqual([])
  })

  it('takes a null for what is not said', async () => {
    expect((await post({ text: '9V', of: null })).status).toBe(200)
  })

  it('reads nothing on an empty plate', async () => {
    const answer = await post({ text: '' })
    expect(answer.status).toBe(200)
    expect(answer.body).toEqual(nothing)
  })

  it.each([
    ['control characters', '\u0000\u0001\u001B[2J\u007F'],
    ['text from right to left', '\u202Eספק כוח\u202C مزود'],
    ['halves of surrogate pairs', '\uD83D\uDC00\uD800'],
  ])('answers %s without reading a figure in it', async (_, text) => {
    const answer = await post({ text })
    expect(answer.status).toBe(200)
    expect({ ...answer.body, unread: [] }).toEqual(nothing)
  })

  it('reads what stands beside control characters', async () => {
    const answer = await post({ text: 'OUTPUT\u0007 12V\u0000 1A' })
    expect(answer.body.outputs).toHaveLength(1)
    expect(answer.body.outputs[0]).toMatchObject({ voltageV: 12, currentA: 1 })
  })

  it.each([
    ['no text', {}, 'text', /text must be a string; received nothing/],
    ['a text that is a number', { text: 12 }, 'text', /text must be a string; received 12/],
    ['a text that is a list', { text: ['9V'] }, 'text', /text must be a string/],
    ['a text that is null', { text: null }, 'text', /text must be a string; received null/],
    ['an unknown kind of plate', { text: '9V', of: 'converter' }, 'of', /"supply", "device"/],
    ['a mistyped field', { text: '9V', off: 'device' }, '', /not known here: "off"/],
    ['a list for a body', [], '', /must be an object/],
  ])('refuses %s and says what would be accepted', async (_, body, path, message) => {
    const answer = await post(body)
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields[0].path).toBe(path)
    expect(answer.body.error.message).toMatch(message)
  })

  it('takes 200 000 characters and refuses one more', async () => {
    expect((await post({ text: ' '.repeat(200_000) })).status).toBe(200)
    const answer = await post({ text: ' '.repeat(200_001) })
    expect(answer.status).toBe(422)
    expect(answer.body.error.message).toMatch(/text must have at most 200000 characters/)
  })

  it('refuses a body of 10 MB', async () => {
    const answer = await post({ text: 'V'.repeat(10_000_000) })
    expect(answer.status).toBe(413)
    expect(answer.body.error.message).toMatch(/larger than the \d+ kB accepted/)
  })

  it('refuses what is not JSON', async () => {
    const answer = await request(app).post('/api/label').type('json').send('{"text": ')
    expect(answer.status).toBe(400)
    expect(answer.body.error.message).toMatch(/not JSON/)
  })

  it.each(['__proto__', 'constructor', 'prototype'])('refuses a field named %s', async (key) => {
    const answer = await request(app).post('/api/label').type('json').send(`{"text": "9V", "${key}": {"of": "device"}}`)
    expect(answer.status).toBe(422)
    expect(answer.body.error.message).toContain(key)
  })
})
