import fc from 'fast-check'
import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { testApp } from './testApp.js'

const { app } = testApp()

const mains = { voltageV: 230, frequencyHz: 50 }
const lamps = [{ ratedV: 230, ratedW: 60 }]
const post = (path: string, body: unknown) =>
  request(app)
    .post(path)
    .send(body as object)

describe('POST /api/series-lamp', () => {
  it('answers the contract’s fields with working, cautions and sources', async () => {
    const { status, body } = await post('/api/series-lamp', {
      mains,
      lamps,
      load: { kind: 'constant-power', powerW: 15, minimumV: 100 },
    })
    expect(status).toBe(200)
    for (const name of [
      'currentA',
      'lampV',
      'loadV',
      'lampW',
      'loadW',
      'lampResistanceOhm',
      'filamentK',
      'largestConstantPowerW',
    ])
      expect(body[name], name).toEqual(expect.any(Number))
    expect(body.starts).toBe(true)
    expect(body.glow).toBe('none')
    expect(body.others).toEqual([
      { currentA: expect.any(Number), lampV: expect.any(Number), loadV: expect.any(Number), stable: false },
    ])
    for (const name of ['working', 'cautions', 'sources']) expect(body[name].length, name).toBeGreaterThan(2)
  })

  it('carries the standing cautions', async () => {
    const { body } = await post('/api/series-lamp', { mains, lamps, load: { kind: 'short' } })
    const text = body.cautions.join(' ')
    for (const words of [
      /does not isolate/,
      /does not protect a person/,
      /residual-current device/,
      /line conductor/,
      /earth passes straight through/,
      /licensed electrician or other qualified person/,
      /no converter/,
      /glass is hot/,
      /LED/,
    ])
      expect(text).toMatch(words)
    expect(text).not.toMatch(/\bsafe\b/i)
  })

  it.each([
    {
      name: 'a lamp that melts',
      change: { lamps: [{ ratedV: 24, ratedW: 60 }] },
      path: 'lamps',
      words: /melting point of tungsten/,
    },
    { name: 'no lamps', change: { lamps: [] }, path: 'lamps', words: /at least 1 entries/ },
    {
      name: 'an unknown load',
      change: { load: { kind: 'motor' } },
      path: 'load.kind',
      words: /"resistance", "constant-power"/,
    },
    { name: 'no load', change: { load: undefined }, path: 'load', words: /load/ },
    { name: 'a mistyped field', change: { lamp: [] }, path: '', words: /not known here: "lamp"/ },
    {
      name: 'a wattage outside the table',
      change: { lamps: [{ ratedV: 230, ratedW: 5 }] },
      path: 'lamps.0.ratedW',
      words: /must be 10 or more; received 5/,
    },
    {
      name: 'text for a number',
      change: { mains: { voltageV: '230' } },
      path: 'mains.voltageV',
      words: /must be a number; received "230"/,
    },
  ])('refuses $name with 422 and says what would be accepted', async ({ change, path, words }) => {
    const { status, body } = await post('/api/series-lamp', { mains, lamps, load: { kind: 'short' }, ...change })
    expect(status).toBe(422)
    const field = body.error.fields.find((entry: { path: string }) => entry.path === path)
    expect(field?.message).toMatch(words)
  })

  it('takes null where a field may be left out', async () => {
    const { status } = await post('/api/series-lamp', {
      mains: { voltageV: 230, frequencyHz: null },
      lamps,
      arrangement: null,
      load: { kind: 'constant-power', powerW: 5, minimumV: null },
    })
    expect(status).toBe(200)
  })
})

describe('POST /api/series-lamp/reading', () => {
  it('turns the volts across the lamp into amperes and volt-amperes', async () => {
    // above 40 % of its voltage the handbook law holds: 0.2609 A × (115 / 230)^0.541 = 0.1793 A, within 1 %
    const { status, body } = await post('/api/series-lamp/reading', { mains, lamps, lampV: 115 })
    expect(status).toBe(200)
    expect(Math.abs(body.currentA / 0.1793 - 1)).toBeLessThan(0.01)
    expect(body.loadV).toBe(115)
    expect(body.loadVA).toBeCloseTo(115 * body.currentA, 9)
    expect(body.glow).toBe('part')
  })

  it('refuses more volts than the mains has', async () => {
    const { status, body } = await post('/api/series-lamp/reading', { mains, lamps, lampV: 231 })
    expect(status).toBe(422)
    expect(body.error.fields[0]).toEqual({
      path: 'lampV',
      message: 'lampV must be no more than the mains voltage of 230 V; received 231.',
    })
  })
})

describe('POST /api/series-lamp/choose', () => {
  it('answers options and an order', async () => {
    const { status, body } = await post('/api/series-lamp/choose', {
      mains,
      load: { idleW: 3, ratedW: 30, minimumV: 90 },
    })
    expect(status).toBe(200)
    expect(body.options).toHaveLength(8)
    expect(body.options[0]).toMatchObject({
      ratedV: 230,
      ratedW: 15,
      arrangement: 'series',
      suits: true,
      reason: expect.any(String),
    })
    expect(body.order[0]).toMatchObject({ use: 'first', ratedW: 15 })
  })

  it('refuses an idle power above the rated one', async () => {
    const { status, body } = await post('/api/series-lamp/choose', { mains, load: { idleW: 31, ratedW: 30 } })
    expect(status).toBe(422)
    expect(body.error.fields[0].path).toBe('load.idleW')
  })
})

describe('POST /api/series-lamp/transient', () => {
  it('answers samples of equal length and where it ends', async () => {
    const { status, body } = await post('/api/series-lamp/transient', {
      mains,
      lamps,
      load: { bulkF: 1e-4, loadW: 10 },
      durationS: 2,
    })
    expect(status).toBe(200)
    expect(body.timeS.length).toBeGreaterThan(100)
    for (const name of ['filamentK', 'glow', 'bulkV', 'currentA']) expect(body[name]).toHaveLength(body.timeS.length)
    expect(body.timeS[0]).toBe(0)
    expect(body.timeS.at(-1)).toBeCloseTo(2, 9)
    expect(body.seen).toMatch(/^a flash .* dark|dull.*capacitors charging$/)
    for (const name of ['peakA', 'i2t', 'endFilamentK', 'endBulkV']) expect(body[name]).toEqual(expect.any(Number))
  })

  it('tells a short that appears later from capacitors that charge', async () => {
    const { body } = await post('/api/series-lamp/transient', {
      mains,
      lamps,
      load: { bulkF: 1e-4, loadOhm: 10000, shortAfterS: 1 },
      durationS: 2,
    })
    expect(body.endGlow).toBe('full')
    expect(body.endBulkV).toBe(0)
    expect(body.seen).toMatch(/shorted.*Switch off/)
  })

  it.each([
    { name: 'a run of more than 20 s', change: { durationS: 21 }, path: 'durationS', words: /20 or less; received 21/ },
    {
      name: 'too many cycles',
      change: { mains: { voltageV: 230, frequencyHz: 400 }, durationS: 4 },
      path: 'durationS',
      words: /no more than 1200 mains cycles, 3 s at 400 Hz; received 4/,
    },
    {
      name: 'both kinds of load',
      change: { load: { bulkF: 1e-4, loadOhm: 100, loadW: 5 } },
      path: 'load.loadW',
      words: /must not both be given/,
    },
    {
      name: 'no frequency',
      change: { mains: { voltageV: 230 } },
      path: 'mains.frequencyHz',
      words: /must be a number; received nothing/,
    },
  ])('refuses $name with 422', async ({ change, path, words }) => {
    const { status, body } = await post('/api/series-lamp/transient', {
      mains,
      lamps,
      load: { bulkF: 1e-4 },
      durationS: 1,
      ...change,
    })
    expect(status).toBe(422)
    expect(body.error.fields[0]).toMatchObject({ path, message: expect.stringMatching(words) })
  })
})

describe('POST /api/inrush', () => {
  it('answers the worked example S17 with its working', async () => {
    const { status, body } = await post('/api/inrush', { mains, seriesOhm: 5.5, bulkF: 220e-6, loadOhm: 1000 })
    expect(status).toBe(200)
    // S17: 58.43 A, 1.927 A²s, 2.057 A²s, 309.2 V, 11.48 V, 0.7806 A
    expect(body.peakA).toBeCloseTo(58.43, 1)
    expect(body.firstHalfCycleI2t).toBeCloseTo(1.927, 2)
    expect(body.totalI2t).toBeCloseTo(2.057, 2)
    expect(body.rippleV).toBeCloseTo(11.48, 1)
    expect(body.working.join(' ')).toMatch(/59\.14\sA/)
  })
})

describe('no body whatever', () => {
  it('gets a 500 or a number that is not one', async () => {
    const anything = fc.oneof(
      fc.jsonValue(),
      fc.record(
        {
          mains: fc.oneof(fc.constant(mains), fc.jsonValue()),
          lamps: fc.oneof(
            fc.constant(lamps),
            fc.array(fc.record({ ratedV: fc.double(), ratedW: fc.double() })),
            fc.jsonValue(),
          ),
          load: fc.oneof(
            fc.record(
              {
                kind: fc.constantFrom('resistance', 'constant-power', 'short', 'open'),
                resistanceOhm: fc.double(),
                powerW: fc.double(),
              },
              { requiredKeys: ['kind'] },
            ),
            fc.record({ bulkF: fc.double({ min: 0, max: 1 }), loadW: fc.double() }, { requiredKeys: ['bulkF'] }),
            fc.jsonValue(),
          ),
          durationS: fc.oneof(fc.constant(0.1), fc.jsonValue()),
          lampV: fc.double(),
        },
        { requiredKeys: [] },
      ),
    )
    await fc.assert(
      fc.asyncProperty(anything, fc.constantFrom('', '/reading', '/choose', '/transient'), async (body, path) => {
        const answer = await request(app)
          .post(`/api/series-lamp${path}`)
          .set('Content-Type', 'application/json')
          .send(JSON.stringify(body))
        expect([200, 400, 422]).toContain(answer.status)
        // JSON has no NaN: one would arrive as null
        if (answer.status === 200)
          expect(answer.text).not.toMatch(/"(currentA|lampV|loadV|filamentK|peakA|loadVA)":null/)
      }),
      { numRuns: 150 },
    )
  }, 60_000)
})
