import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import type { FirstPowerOptions } from '../../server/plan/planFirstPower.js'
import { changed, matching, outcomesOn } from '../chain/cases.js'
import { assess, composeChecklist, planFirstPower } from '../support/told.js'

const planOf = (check: CheckRequest, options: FirstPowerOptions) =>
  planFirstPower(prepareCase(check), assess(check), options)

const listOf = (check: CheckRequest, options: FirstPowerOptions) =>
  composeChecklist({
    assessment: assess(check),
    plan: planOf(check, options),
    ...prepareCase(check),
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
    expect(measured?.who).toBe('qualified')
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
  it.each([61, 250, -150])('is put on no bench supply by the reader: %d V', (voltageV) => {
    expect(of(voltageV)).toEqual([])
  })
  it('is the only one that is', () => {
    expect(of(60).some(({ caution }) => caution?.signal === 'DANGER')).toBe(false)
  })
})

describe('what is still to be found out', () => {
  const openCurrent = changed({ device: { inputs: [{ kind: 'dc', voltageV: 12 }] } })
  it('keeps the list behind the lamp, which says what it waits for', () => {
    const titles = (check: CheckRequest) => listOf(check, lamps(230)).stages.map(({ title }) => title)
    expect(titles(matching)).toContain('Full mains, without the lamp')
    expect(titles(openCurrent)).toContain('Supply and machine together, behind the lamp')
    expect(titles(openCurrent)).not.toContain('Full mains, without the lamp')
    const last = listOf(openCurrent, lamps(230)).stages.at(-1)?.lines ?? []
    expect(last.find(({ key }) => key === 'done.waits')?.text).toMatch(/waits until this is found out.*output current/)
    expect(
      listOf(matching, lamps(230))
        .stages.at(-1)
        ?.lines.some(({ key }) => key === 'done.waits'),
    ).toBe(false)
  })
  it('between wall and supply keeps everything off the mains, lamp or not', () => {
    const openLink = changed({ supply: { fuse: '1A 250V', label: 'FUSE T1AL250V' } })
    expect(outcomesOn('fuse', openLink)).toEqual(['unknown'])
    const out = leftOut(openLink, lamps(230))
    for (const stage of ['supply-alone', 'dummy-load', 'together']) expect(out[stage]).not.toBeNull()
    expect(out['supply-alone']).toMatch(/Find out first/)
    const lines = listOf(openLink, lamps(230)).stages.flatMap((stage) => stage.lines)
    expect(lines.filter(({ power }) => power === 'mains')).toEqual([])
  })
  it('about the frequency keeps a supply that may hold a transformer off the mains, lamp or not', () => {
    const american = changed({ supply: { technology: null, input: { frequenciesHz: [60] } } })
    expect(outcomesOn('mains-frequency', american)).toEqual(['unknown'])
    expect(leftOut(american, lamps(230))['supply-alone']).toMatch(/Find out first: .*flux/)
  })
})

describe('an unregulated supply on another mains than its plate’s', () => {
  it('is expected to give what that mains leaves: 12 V of 120 V on a converter of 100 V', () => {
    const check = changed({
      supply: {
        technology: 'transformer',
        regulated: null,
        input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60] },
        outputs: [{ kind: 'dc', voltageV: 12, currentA: 1 }],
      },
      converter: { kind: 'isolating', outputV: 100, ratedVA: 100 },
    })
    const steps = planOf(check, lamps(100)).stages.find(({ name }) => name === 'dummy-load')?.steps ?? []
    const full = steps.find(({ key }) => key === 'dummy-load.rail-1-at-100')
    // 12 V × 100 / 120 = 10 V at full load, the mains band of ±10 % about it
    expect(full?.low).toBeLessThan(10)
    expect(full?.high).toBeGreaterThan(10)
    expect(full?.high).toBeLessThan(12)
  })
})

describe('what is read at the machine', () => {
  const iron = { technology: 'transformer' as const, regulated: null }
  const stepAt = (check: CheckRequest) =>
    planOf(check, lamps(230))
      .stages.find(({ name }) => name === 'together')
      ?.steps.find(({ key }) => key === 'together.rail-1')
  it('of an unregulated supply may be as high as with nothing connected, for a machine that bears it', () => {
    // 9 V 300 mA stands at about 13 V to 17 V off load, and at two thirds of its current within what such a machine bears
    const check = changed({
      supply: { ...iron, outputs: [{ kind: 'dc', voltageV: 9, currentA: 0.3 }] },
      device: { regulatedNeeded: false, inputs: [{ kind: 'dc', voltageV: 9, currentA: 0.2 }] },
    })
    expect(stepAt(check)).toMatchObject({
      low: null,
      expect: expect.stringMatching(/no more than with nothing connected/),
    })
    expect(stepAt(check)?.high).toBeGreaterThan(14)
  })
  it('is held to what the machine states, where it states a tolerance', () => {
    const check = changed({
      supply: iron,
      device: { regulatedNeeded: false, inputs: [{ kind: 'dc', voltageV: 12, currentA: 1, tolerancePercent: 10 }] },
    })
    expect(stepAt(check)?.high).toBeCloseTo(13.2, 9)
  })
  it('of a negative rail is bounded in size, not in sign', () => {
    const check = changed({
      supply: { ...iron, outputs: [{ kind: 'dc', voltageV: -12, currentA: 2 }] },
      device: { regulatedNeeded: false, inputs: [{ kind: 'dc', voltageV: -12, currentA: 1 }] },
    })
    expect(stepAt(check)?.high).toBeNull()
    expect(stepAt(check)?.low).toBeLessThan(-13)
  })
  it('of a regulated negative rail lies between two negative bounds, the larger size first', () => {
    const check = changed({
      supply: { outputs: [{ kind: 'dc', voltageV: -12, currentA: 2 }] },
      device: { inputs: [{ kind: 'dc', voltageV: -12, currentA: 1 }] },
    })
    // printed table of acceptance: −12 V within 10 %
    expect(stepAt(check)).toMatchObject({ unit: 'V', low: expect.closeTo(-13.2, 9), high: expect.closeTo(-10.8, 9) })
  })
})
