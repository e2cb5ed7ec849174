import express from 'express'
import fc from 'fast-check'
import { pino } from 'pino'
import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { routesOf } from '../../server/web/calls/call.js'
import { firstPowerCalls } from '../../server/web/calls/firstPower.js'
import type { Context } from '../../server/web/context.js'
import { handleErrors } from '../../server/web/errorPages.js'

// the calls alone: neither store nor clock is touched by them
const context = { logger: pino({ level: 'silent' }) } as Context
const app = express().use(express.json()).use(routesOf(firstPowerCalls, context)).use(handleErrors(context))

const post = (path: string, body: object) => request(app).post(path).send(body)

const good: Record<string, object> = {
  '/api/bench-supply': { rails: [{ kind: 'dc', voltageV: 5, currentA: 2 }] },
  '/api/dummy-load': { voltageV: 5, currentA: 2 },
  '/api/discharge': { capacitanceF: 220e-6, voltageV: 325.3, resistanceOhm: 47_000 },
  '/api/reform': { capacitanceF: 47e-6, ratedV: 450, yearsUnused: 30 },
  '/api/off-load': { acV: 12, ratedVA: 10, regulationPercent: 15, rectifier: 'bridge' },
  '/api/leakage': { capacitanceF: 2.2e-9, voltageV: 230, frequencyHz: 50 },
  '/api/insulation': { scheme: 'VDE 0701-0702:2008', protectionClass: 'I', earthOhm: 0.2, insulationMOhm: 20 },
}

describe('the calls of the bench', () => {
  it.each(Object.entries(good))('%s answers with working, cautions and sources', async (path, body) => {
    const { status, body: answer } = await post(path, body)
    expect(status).toBe(200)
    expect(answer.working.length).toBeGreaterThan(0)
    expect(answer.cautions.length).toBeGreaterThan(0)
    expect(answer.sources.length).toBeGreaterThan(0)
    for (const source of answer.sources)
      expect(source).toMatchObject({ title: expect.any(String), detail: expect.any(String), kind: expect.any(String) })
    expect(JSON.stringify(answer)).not.toMatch(/\bsafe\b|NaN|Infinity|undefined/i)
  })

  it.each(Object.entries(good))('%s refuses a field that is not known, naming it', async (path, body) => {
    const { status, body: answer } = await post(path, { ...body, voltagV: 1 })
    expect(status).toBe(422)
    expect(answer.error.message).toContain('voltagV')
  })

  it.each([
    ['/api/dummy-load', { voltageV: 5, currentA: 0 }, 'currentA'],
    ['/api/dummy-load', { voltageV: 0, currentA: 1 }, 'voltageV'],
    ['/api/discharge', { capacitanceF: 1e9, voltageV: 300 }, 'capacitanceF'],
    ['/api/discharge', { capacitanceF: 1e-6, voltageV: -300 }, 'voltageV'],
    ['/api/reform', { capacitanceF: 47e-6, ratedV: 350, workingV: 400, yearsUnused: 3 }, 'workingV'],
    ['/api/reform', { capacitanceF: 47e-6, ratedV: 350, yearsUnused: -3 }, 'yearsUnused'],
    ['/api/off-load', { acV: 12, ratedVA: 5000, rectifier: 'bridge' }, 'regulationPercent'],
    ['/api/off-load', { acV: 12, ratedVA: 10, rectifier: 'bridge', mainsV: 230 }, 'ratedMainsV'],
    ['/api/leakage', { capacitanceF: 1e-9, voltageV: 230, frequencyHz: 0 }, 'frequencyHz'],
    ['/api/insulation', { scheme: 'no such thing', protectionClass: 'I' }, 'scheme'],
    ['/api/bench-supply', { rails: [] }, 'rails'],
    ['/api/bench-supply', { rails: [{ kind: 'ac', voltageV: 9, currentA: 1 }] }, 'rails.0.kind'],
    ['/api/bench-supply', { rails: [{ voltageV: 9, currentA: 1 }], lead: { lengthM: 1 } }, 'lead.areaMm2'],
  ])('%s %j is refused at %s', async (path, body, field) => {
    const { status, body: answer } = await post(path, body)
    expect(status).toBe(422)
    expect(answer.error.fields.map((fault: { path: string }) => fault.path)).toContain(field)
  })

  it('gives the worked example of the 5 V 2 A dummy load', async () => {
    const { body } = await post('/api/dummy-load', { voltageV: 5, currentA: 2 })
    expect(body.points.map((point: { fraction: number }) => point.fraction)).toEqual([0.1, 0.5, 1])
    expect(body.points[2]).toMatchObject({ resistanceOhm: 2.5, standardOhm: 2.7, ratedW: 20 })
    expect(body.points[2].powerW).toBeCloseTo(9.259, 3)
  })

  it('gives the worked example of the bleeder, with two 24 kΩ in series', async () => {
    const { body } = await post('/api/discharge', {
      capacitanceF: 220e-6,
      voltageV: 230 * Math.SQRT2,
      resistanceOhm: 47e3,
    })
    expect(body.timeS).toBeCloseTo(17.48, 2)
    expect(body.timeConstantS).toBeCloseTo(10.34, 2)
    expect(body.energyJ).toBeCloseTo(11.64, 2)
    expect(body.peakW).toBeCloseTo(2.251, 3)
    expect(body).toMatchObject({ standardOhm: 47e3, ratedW: 5, inSeries: { count: 2, eachOhm: 24e3 } })
    expect(body.times.map((row: { timeS: number }) => Number(row.timeS.toFixed(2)))).toEqual([17.48, 21.07, 23.35])
  })

  it('gives the worked example of the X-capacitor bleeder', async () => {
    const { body } = await post('/api/discharge', {
      capacitanceF: 0.57e-6,
      voltageV: 264 * Math.SQRT2,
      resistanceOhm: 1e6,
      mainsV: 230,
    })
    expect(body.timeConstantS).toBeCloseTo(0.57, 10)
    expect(body.lossW * 1e3).toBeCloseTo(52.9, 2)
    expect(body.left[0].voltageV).toBeCloseTo(64.59, 2)
    expect(body.left[1].voltageV).toBeCloseTo(11.18, 2)
    expect(body.plugRules.map((rule: { met: boolean }) => rule.met)).toEqual([true, false, true, true])
    expect(body.plugRules[1].largestOhm / 1e3).toBeCloseTo(732.2, 1)
  })

  it('chooses a discharge resistor that is in time', async () => {
    const { body } = await post('/api/discharge', { capacitanceF: 220e-6, voltageV: 325.3, withinS: 3 })
    // by head: 3 / (220e-6 × ln(325.3 / 60)) = 8067 Ω, next E12 value down 6.8 kΩ
    expect(body.resistanceOhm).toBeCloseTo(8067, 0)
    expect(body.standardOhm).toBe(6800)
    expect(body.timeS).toBeLessThan(3)
  })

  it('has nothing to discharge below the limit', async () => {
    const { status, body } = await post('/api/discharge', { capacitanceF: 220e-6, voltageV: 25 })
    expect(status).toBe(200)
    expect(body).toMatchObject({ timeS: 0, resistanceOhm: null, standardOhm: null })
  })

  it('gives the worked example of reforming 47 µF 450 V', async () => {
    const { body } = await post('/api/reform', { capacitanceF: 47e-6, ratedV: 450, yearsUnused: 4 })
    expect(body.need).toBe('reform')
    expect(body.stages[0].seriesOhm).toBe(100e3)
    expect(body.resistorW).toBeCloseTo(2.025, 10)
    expect(body.timeConstantS).toBeCloseTo(4.7, 10)
    expect(body.firstCurrentA).toBeCloseTo(4.5e-3, 10)
    expect(body.acceptLeakageA).toBeCloseTo(634.5e-6, 10)
    const limit = (name: RegExp) => body.limits.find((row: { name: string }) => name.test(row.name)).leakageA
    const micro = (name: RegExp) => limit(name) * 1e6
    // the data sheet gives 0.01 CV for 6.3 V to 100 V, 0.06 CV + 10 µA for 160 V to 450 V
    expect(limit(/^0.01/)).toBeNull()
    expect(Math.round(micro(/^0.06/))).toBe(1279)
    expect(micro(/^3/)).toBeCloseTo(436.3, 1)
    expect(micro(/^K/)).toBeCloseTo(2180, 6)
  })

  it.each([
    [450, 2, 'check-leakage'],
    [450, 3, 'reform'],
    [25, 5, 'check-leakage'],
    [25, 6, 'reform'],
    [25, 10, 'reform'],
    [25, 10.1, 'plan-to-replace'],
  ])('a %d V part unused for %d years: %s', async (ratedV, yearsUnused, need) => {
    const { body } = await post('/api/reform', { capacitanceF: 1e-4, ratedV, yearsUnused })
    expect(body.need).toBe(need)
  })

  it('gives the worked examples of off-load volts and ripple', async () => {
    const base = { acV: 12, ratedVA: 10, regulationPercent: 15, rectifier: 'bridge' }
    const rated = (await post('/api/off-load', base)).body
    const high = (await post('/api/off-load', { ...base, mainsV: 253, ratedMainsV: 230 })).body
    expect(rated.dcOffLoadV).toBeCloseTo(18.12, 2)
    expect(high.dcOffLoadV).toBeCloseTo(20.07, 2)
    for (const [frequencyHz, ripple, valley] of [
      [50, 2.128, 13.04],
      [60, 1.773, 13.4],
    ] as const) {
      const { body } = await post('/api/off-load', { ...base, capacitanceF: 4700e-6, currentA: 1, frequencyHz })
      expect(body.rippleV).toBeCloseTo(ripple, 3)
      expect(body.valleyV).toBeCloseTo(valley, 2)
      expect(body.dcLoadedV).toBeLessThan(body.dcOffLoadV)
      expect(body.expectedRippleV).toBeLessThan(ripple)
    }
  })

  it('an a.c. adaptor of 9 V 6 VA reads within the range its size gives; 11.36 V was measured at 240 V on one', async () => {
    const { body } = await post('/api/off-load', { acV: 9.09, ratedVA: 6, rectifier: 'none' })
    expect(body.dcOffLoadV).toBeNull()
    expect(body.offLoadRangeV.low).toBeLessThan(11.36)
    expect(body.offLoadRangeV.high).toBeGreaterThan(11.36)
  })

  it('gives the worked example of the tingle', async () => {
    const { body } = await post('/api/leakage', good['/api/leakage'] as object)
    expect(body.currentA * 1e6).toBeCloseTo(159, 0)
    expect(body.openV).toBe(115)
    expect(body.within).toBe(true)
    expect(body.largestF * 1e9).toBeCloseTo(3.46, 2)
  })

  it('loses the worked example’s volts in 1.5 m of AWG 22', async () => {
    const { body } = await post('/api/bench-supply', {
      rails: [{ voltageV: 5, currentA: 2.5 }],
      lead: { lengthM: 1.5, awg: 22 },
    })
    expect(body.rails[0].lead.dropV).toBeCloseTo(0.3972, 4)
    expect(body.rails[0].lead.leftV).toBeCloseTo(4.603, 3)
    const thicker = await post('/api/bench-supply', {
      rails: [{ voltageV: 5, currentA: 2.5 }],
      lead: { lengthM: 1.5, awg: 18 },
    })
    expect(thicker.body.rails[0].lead.dropV).toBeCloseTo(0.1571, 4)
  })

  it('gives no stage to a machine whose input reads as a short', async () => {
    const { body } = await post('/api/bench-supply', { rails: [{ voltageV: 5, currentA: 2 }], measuredOhm: 0.4 })
    expect(body.stages).toEqual([])
    expect(body.reading.kind).toBe('short')
    expect(body.cautions[0]).toMatch(/do not apply power/)
  })

  it.each([0, 5e-324, 1e-9])('reads %d Ω as a short without dividing by it', async (measuredOhm) => {
    const { status, body } = await post('/api/bench-supply', { rails: [{ voltageV: 5, currentA: 2 }], measuredOhm })
    expect(status).toBe(200)
    expect(body.reading).toMatchObject({ kind: 'short', expectedA: null })
  })

  it.each([
    [0.2, 'clear'],
    [0.35, 'unknown'],
    [1.2, 'stop'],
  ])('an earth path of %f Ω with a cord of unknown length: %s', async (earthOhm, outcome) => {
    const { body } = await post('/api/insulation', { scheme: 'VDE 0701-0702', protectionClass: 'I', earthOhm })
    const finding = body.findings.find((row: { title: string }) => row.title.startsWith('Earth path'))
    expect(finding).toMatchObject({ topic: 'earthing', outcome })
  })

  // limits as printed in the scheme’s table
  it.each([
    ['EN 50678:2020', 'II', { insulationMOhm: 1.9 }, 'stop'],
    ['EN 50699', 'II', { insulationMOhm: 2 }, 'clear'],
    ['AS/NZS 3760', 'II', { touchmA: 1.01 }, 'stop'],
    ['IET Code of Practice, 4th edition', 'II', { touchmA: 0.25 }, 'clear'],
    ['iet-4', 'II', { touchmA: 0.26 }, 'stop'],
    ['IET Code of Practice, 5th edition, Nov 2020 (UK)', 'II', { touchmA: 4.9 }, 'clear'],
  ])('%s class %s %j: %s', async (scheme, protectionClass, readings, outcome) => {
    const { body } = await post('/api/insulation', { scheme, protectionClass, ...readings })
    const [key] = Object.keys(readings)
    const judged = body.findings.find((row: { title: string }) =>
      row.title.startsWith(key === 'touchmA' ? 'Touch current' : 'Insulation'),
    )
    expect(judged.outcome).toBe(outcome)
  })

  it('takes an earth read on class II, which has none, for a class or a reading that is wrong', async () => {
    const asked = { scheme: 'EN 50678:2020', protectionClass: 'II' }
    const earthOf = async (readings: object) =>
      (await post('/api/insulation', { ...asked, ...readings })).body.findings.filter((row: { title: string }) =>
        row.title.startsWith('An earth path'),
      )
    expect(await earthOf({ earthOhm: 0.1 })).toMatchObject([{ outcome: 'caution' }])
    expect(await earthOf({ insulationMOhm: 2 })).toEqual([])
  })

  it('says that these tests are for competent persons and that 500 V can destroy electronics', async () => {
    const { body } = await post('/api/insulation', { scheme: 'iet-5', protectionClass: 'I' })
    expect(body.findings.every((row: { outcome: string }) => row.outcome === 'unknown')).toBe(true)
    expect(body.cautions.join(' ')).toMatch(/competent person/)
    expect(body.cautions.join(' ')).toMatch(/500 V .* destroy/)
  })

  it('never answers with a fault of its own or a number that is none, whatever numbers are sent', async () => {
    const number = fc.oneof(
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.constantFrom(0, -1, 1e-15, 1e9, 1e308),
      fc.double({ min: 1e-9, max: 1000, noNaN: true }),
    )
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...Object.keys(good)),
        fc.array(number, { minLength: 8, maxLength: 8 }),
        async (path, numbers) => {
          let at = 0
          const fuzz = (value: unknown): unknown =>
            typeof value === 'number'
              ? numbers[at++ % numbers.length]
              : Array.isArray(value)
                ? value.map(fuzz)
                : value !== null && typeof value === 'object'
                  ? Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, fuzz(inner)]))
                  : value
          const { status, text } = await post(path, fuzz(good[path]) as object)
          expect([200, 422]).toContain(status)
          expect(text).not.toMatch(/NaN|Infinity/)
        },
      ),
      { numRuns: 150 },
    )
  })
})
