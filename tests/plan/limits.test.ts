import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { heldAgainst, type Limits } from '../../server/plan/limits.js'
import type { FirstPowerOptions } from '../../server/plan/planFirstPower.js'
import { changed, matching } from '../chain/cases.js'
import { assess, composeChecklist, planFirstPower } from '../support/told.js'

const limits = (low: number | null, high: number | null, rest: Partial<Limits> = {}): Limits => ({ low, high, ...rest })
const strict = { strict: true } as const

describe('a reading held against its limits', () => {
  it.each([
    ['at the least', 11.4, limits(11.4, 12.6), null, 'within'],
    ['at the most', 12.6, limits(11.4, 12.6), null, 'within'],
    ['below the least', 11.39, limits(11.4, 12.6), null, 'too low'],
    ['above the most', 12.61, limits(11.4, 12.6), null, 'too high'],
    ['a source at its limit is limiting: 120 mA of 120 mA', 0.12, limits(-0.12, 0.12, strict), null, 'too high'],
    ['just under that limit', 0.119, limits(-0.12, 0.12, strict), null, 'within'],
    ['leads the wrong way round hide nothing', -5, limits(-0.12, 0.12, strict), null, 'too low'],
    ['capacitors still charged: 325 V where 34 V may be left', 325, limits(-34, 34, strict), null, 'too high'],
    ['the same read the other way round', -325, limits(-34, 34, strict), null, 'too low'],
    ['no more than before: 1.9 V after 0.3 V', 1.9, limits(0, 2.1, { notAbove: 'a' }), 0.3, 'risen'],
    ['no more than before: the same again', 0.3, limits(0, 2.1, { notAbove: 'a' }), 0.3, 'within'],
    ['no more than before, with nothing before', 0.3, limits(0, 2.1, { notAbove: 'a' }), null, 'nothing before'],
    ['above the most comes before that', 48, limits(0, 1.93, { notAbove: 'a' }), null, 'too high'],
    ['over the range of the meter is more than any resistance asked for', Infinity, limits(2e6, null), null, 'within'],
    ['and more than a winding may have', Infinity, limits(29.4, 212), null, 'too high'],
    ['without a limit nothing is judged', 5, limits(null, null), null, 'no limit'],
  ])('%s: %d', (_name, value, against, before, as) => {
    expect(heldAgainst(value, against, before).as).toBe(as)
  })

  it('takes what is no number as outside every bound', () => {
    expect(heldAgainst(Number.NaN, limits(0, null), null).as).toBe('too low')
    expect(heldAgainst(Number.NaN, limits(null, 1), null).as).toBe('too high')
    expect(heldAgainst(Number.NaN, limits(null, null, { notAbove: 'a' }), 1).as).toBe('risen')
  })
})

const lamps: FirstPowerOptions = { lampsOnHand: [{ ratedV: 230, ratedW: 60, count: 1 }] }
const old: FirstPowerOptions = { ...lamps, yearsUnused: 30, bulkF: 220e-6, bulkRatedV: 400 }
const rails = (...voltages: number[]) => ({
  supply: { label: null, outputs: voltages.map((voltageV) => ({ kind: 'dc' as const, voltageV, currentA: 2 })) },
  device: { label: null, inputs: voltages.map((voltageV) => ({ kind: 'dc' as const, voltageV, currentA: 1 })) },
})

/** Cases that differ in what a limit is worked out from. */
const cases: Record<string, CheckRequest> = {
  matching,
  'kind of supply not known': changed({ supply: { technology: null, regulated: null } }),
  transformer: changed({
    supply: {
      label: 'INPUT 230V~ 50Hz 45VA OUTPUT 12V DC 2A CLASS II',
      technology: 'transformer',
      regulated: null,
      input: { voltages: [{ min: 230, max: 230 }], frequenciesHz: [50], powerVA: 45 },
    },
    device: { regulatedNeeded: false },
  }),
  'class I': changed({
    supply: { protectionClass: 'I', inlet: 'C14', label: 'INPUT 100-240V~ 50/60Hz 0.8A OUTPUT 12V DC 2A' },
  }),
  'several rails': changed(rails(5, 12, -12)),
  'one negative rail': changed(rails(-12)),
  'current of the machine not known': changed({ device: { label: null, inputs: [{ kind: 'dc', voltageV: 12 }] } }),
  'current of supply and machine not known': changed({
    supply: { label: null, outputs: [{ kind: 'dc', voltageV: 12 }] },
    device: { label: null, inputs: [{ kind: 'dc', voltageV: 12 }] },
  }),
  'neither its current nor how it is built known': changed({
    supply: { label: null, technology: null, regulated: null, outputs: [{ kind: 'dc', voltageV: 12 }] },
  }),
  'AC to AC': changed({
    supply: { label: 'INPUT 230V~ 50Hz OUTPUT 9V~ 1A', technology: 'transformer', regulated: null },
    device: { label: 'POWER IN 9V~ 0.8A', inputs: undefined },
  }),
  'selector of several settings': changed({
    supply: { label: 'INPUT 110/120/220/240V~ 50/60Hz 1A/0.5A OUTPUT 12V DC 2A', input: { voltages: undefined } },
  }),
  'behind a converter': changed({
    supply: { input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60], currentA: 0.4 } },
    converter: { kind: 'isolating', outputV: 120, ratedVA: 100 },
  }),
  'output joined to the mains': changed({
    supply: { label: `${matching.supply.label ?? ''} NOT ISOLATED FROM MAINS` },
  }),
  'plug measured': changed({ supply: { plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative' } } }),
  'mains not known': changed({ site: { country: undefined, socket: undefined } }),
  'nothing entered': { site: {}, supply: {}, device: {} },
}

const walked = Object.entries(cases).flatMap(([name, check]) =>
  [{}, lamps, old].map((options, at) => {
    const assessment = assess(check)
    const plan = planFirstPower(prepareCase(check), assessment, options)
    const list = composeChecklist({ assessment, plan, ...prepareCase(check) })
    const steps = [...plan.gates, ...plan.stages.flatMap((stage) => stage.steps)]
    return { name: `${name}, ${['nothing at hand', 'a lamp', 'a lamp and an old capacitor'][at]}`, plan, list, steps }
  }),
)

describe.each(walked)('the steps of $name', ({ list, steps }) => {
  const lines = list.stages.flatMap((stage) => stage.lines)

  it('have limits and a rule to stop by wherever a number is read', () => {
    const open = [...steps, ...lines].filter(
      ({ unit, low, high, notAbove, stopIf }) =>
        unit !== null && ((low === null && high === null && notAbove == null) || stopIf === null),
    )
    expect(open.map(({ key }) => key)).toEqual([])
  })

  it('leave no more than 34 V, of either sign, on what a hand reaches into', () => {
    const reaches = [...steps, ...lines].filter(({ text }) => /reach inside/.test(text))
    expect(reaches.length).toBeGreaterThan(0)
    for (const step of reaches) expect(step).toMatchObject({ unit: 'V', low: -34, high: 34, strict: true })
  })

  it('name an earlier line where a reading may not exceed it', () => {
    for (const [at, { key, notAbove }] of lines.entries())
      if (notAbove != null)
        expect(
          lines.slice(0, at).map((line) => line.key),
          key,
        ).toContain(notAbove)
  })

  it('hold each current of a limited source under its limit, the limit itself outside', () => {
    for (const step of steps.filter(({ key }) => /^bench-supply\.step-/.test(key)))
      if (step.unit !== null) expect(step).toMatchObject({ unit: 'A', strict: true })
  })

  it('read differently, each from the others of its stage', () => {
    for (const stage of list.stages) {
      const texts = stage.lines.map(({ text }) => text)
      expect(texts.filter((text, at) => texts.indexOf(text) !== at)).toEqual([])
    }
  })

  it('stand on paper all of them', () => {
    const keys = lines.map(({ key }) => key)
    expect(steps.map(({ key }) => key).filter((key) => !keys.includes(key))).toEqual([])
  })
})

describe('the leads of the meter', () => {
  it.each(['supply-alone', 'together'])('are on the lamp before it has power, and leave it without: %s', (stage) => {
    const [first] = walked.filter(({ name }) => name === 'matching, a lamp')
    const keys = (first?.steps ?? []).filter(({ key }) => key.startsWith(stage)).map(({ key }) => key.split('.')[1])
    const order = [
      'meter-lamp',
      'switch-on',
      'lamp-volts',
      'hold',
      stage === 'together' ? 'meter-machine' : 'meter-output',
      'on-again',
    ]
    const places = order.map((key) => keys.indexOf(key))
    expect(places.every((place) => place >= 0)).toBe(true)
    expect(places).toEqual(places.toSorted((one, other) => one - other))
    const moved = first?.steps.find(({ key }) => /meter-(output|machine)$/.test(key) && key.startsWith(stage))
    expect(moved).toMatchObject({ power: 'none' })
    expect(moved?.text).toMatch(/^Switch off, unplug/)
  })
})
