import { describe, expect, it } from 'vitest'
import { assess } from '../../server/chain/assess.js'
import { prepareDevice } from '../../server/chain/prepareDevice.js'
import { prepareSite } from '../../server/chain/prepareSite.js'
import { prepareSupply } from '../../server/chain/prepareSupply.js'
import type { CheckRequest } from '../../server/chain/request.js'
import { composeChecklist } from '../../server/plan/checklist.js'
import { type FirstPowerOptions, planFirstPower } from '../../server/plan/planFirstPower.js'
import { readPlate } from '../../server/plate/readPlate.js'
import { changed, matching } from '../chain/cases.js'

const planOf = (check: CheckRequest, options: FirstPowerOptions) => planFirstPower(check, assess(check), options)

const listOf = (check: CheckRequest, options: FirstPowerOptions) =>
  composeChecklist({
    assessment: assess(check),
    plan: planOf(check, options),
    site: prepareSite(check.site),
    supply: prepareSupply(check.supply, readPlate),
    device: prepareDevice(check.device, readPlate),
  })

const leftOut = (check: CheckRequest, options: FirstPowerOptions) =>
  Object.fromEntries(planOf(check, options).stages.map((stage) => [stage.name, stage.leftOut]))

const lamps = (ratedV: number, count = 1): FirstPowerOptions => ({ lampsOnHand: [{ ratedV, ratedW: 60, count }] })

describe('a supply for 120 V behind a converter on 230 V', () => {
  const check = changed({
    supply: { input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60], currentA: 0.4 } },
    converter: { kind: 'isolating', outputV: 120, ratedVA: 100 },
  })
  const list = listOf(check, lamps(120, 2))
  const lines = list.stages.flatMap((stage) => stage.lines)

  it('is never told into the wall socket, with the lamp or without', () => {
    expect(list.stages.map(({ title }) => title)).toContain('Full mains, without the lamp')
    for (const { text } of lines) expect(text).not.toMatch(/into the socket itself/)
    const out = lines.filter(({ text }) => /lamp out of the circuit/.test(text))
    expect(out.length).toBeGreaterThan(0)
    for (const { text } of out) expect(text).toMatch(/converter’s outlet, never into the wall/)
  })
  it('has the converter’s output measured by a qualified person before anything is plugged in', () => {
    const keys = lines.map(({ key }) => key)
    const measured = lines.find(({ key }) => key === 'supply-alone.converter')
    expect(measured?.who).toMatch(/qualified person/)
    // the band of the mains, ±10 %, at the output
    expect([measured?.lowV, measured?.highV]).toEqual([expect.closeTo(108, 9), expect.closeTo(132, 9)])
    expect(keys.indexOf('supply-alone.converter')).toBeLessThan(keys.indexOf('supply-alone.switch-on'))
  })
  it('is asked again whether the converter is in between before each stage on mains', () => {
    for (const stage of list.stages.filter(({ title }) => /dummy load|together|Full mains/i.test(title)))
      expect(stage.lines.some(({ text }) => /Converter: still in between/.test(text))).toBe(true)
  })
  it('speaks of no converter where there is none', () => {
    const direct = listOf(matching, lamps(230))
    expect(
      direct.stages
        .flatMap((stage) => stage.lines)
        .map(({ text }) => text)
        .join('\n'),
    ).not.toMatch(/onverter/)
  })
})

describe('lamps for another mains', () => {
  it.each([
    { name: 'one 120 V lamp', options: lamps(120) },
    { name: 'thirty 12 V lamps', options: lamps(12, 30) },
  ])('keep every stage behind the lamp back on 230 V: $name', ({ options }) => {
    const out = leftOut(matching, options)
    for (const stage of ['supply-alone', 'dummy-load', 'together'])
      expect(out[stage]).toMatch(/None of the lamps entered/)
    expect(out['bench-supply']).toBeNull()
  })
})

describe('a machine whose input reads as a short', () => {
  it.each([0.2, 5])('is not joined to its supply either: %d Ω where 12 Ω is the least', (measuredOhm) => {
    const out = leftOut(matching, { ...lamps(230), measuredOhm })
    expect(out['bench-supply']).not.toBeNull()
    expect(out.together).toBe(out['bench-supply'])
    const titles = listOf(matching, { ...lamps(230), measuredOhm }).stages.map(({ title }) => title)
    expect(titles).not.toContain('Full mains, without the lamp')
  })
})

describe('a machine that wants more than 60 V d.c.', () => {
  const of = (voltageV: number) =>
    planOf(
      changed({
        supply: { outputs: [{ kind: 'dc', voltageV, currentA: 0.2 }] },
        device: { inputs: [{ kind: 'dc', voltageV, currentA: 0.1 }] },
      }),
      lamps(230),
    ).stages.find(({ name }) => name === 'bench-supply')?.steps ?? []
  it.each([61, 250, -150])('is warned of before the bench supply is switched on: %d V', (voltageV) => {
    const steps = of(voltageV)
    const on = steps.findIndex(({ text }) => /Output on/.test(text))
    expect(on).toBeGreaterThan(0)
    expect(steps[on]?.caution).toMatchObject({ signal: 'DANGER', electric: true })
  })
  it('is the only one that is', () => {
    expect(of(60).some(({ caution }) => caution?.signal === 'DANGER')).toBe(false)
  })
})
