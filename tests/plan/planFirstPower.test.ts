import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import type { ToldCheck, ToldFinding } from '../../server/chain/finding.js'
import type { LampOnHand } from '../../server/plan/firstPower/lampChoice.js'
import type { StageName, ToldPlan } from '../../server/plan/firstPowerPlan.js'
import type { FirstPowerOptions } from '../../server/plan/planFirstPower.js'
import { planFirstPower } from '../support/told.js'

const found = (...findings: ToldFinding[]): ToldCheck => ({
  verdict: findings.length > 0 ? 'do-not-connect' : 'no-conflict-found',
  findings,
  readings: { supply: null, device: null },
})

/** With plain spaces, as the tests are typed. */
const flat = (text: string | null | undefined): string => (text ?? '').replaceAll('\u00a0', ' ')

const rest = { why: '', working: [], actions: [], sources: [] }
const notKnown = (topic: ToldFinding['topic'], action: string | null): ToldFinding => ({
  topic,
  outcome: 'unknown',
  title: 'not known',
  action,
  ...rest,
})

const check: CheckRequest = {
  site: { country: 'DE' },
  supply: {
    input: { voltages: [{ min: 100, max: 240 }], frequenciesHz: [50, 60], currentA: 0.8 },
    technology: 'switch-mode',
    protectionClass: 'II',
    outputs: [{ kind: 'dc', voltageV: 12, currentA: 3 }],
    lead: { lengthM: 1.5, awg: 18 },
  },
  device: { inputs: [{ kind: 'dc', voltageV: 12, currentA: 2 }], jack: { polarity: 'centre-positive' } },
}

const lamps: FirstPowerOptions = { lampsOnHand: [{ ratedV: 230, ratedW: 60, count: 2 }] }

const stage = (plan: ToldPlan, name: StageName): ToldPlan['stages'][number] =>
  plan.stages.find((entry) => entry.name === name) as ToldPlan['stages'][number]
const stepOf = (plan: ToldPlan, key: string) =>
  plan.stages.flatMap(({ steps }) => steps).find((step) => step.key === key)
const without = (change: (copy: CheckRequest) => void): CheckRequest => {
  const copy = structuredClone(check)
  change(copy)
  return copy
}

describe('the first power-up plan', () => {
  const plan = planFirstPower(prepareCase(check), found(), lamps)

  it('has the four stages in order, all of them for a complete matching case', () => {
    expect(plan.stages.map(({ name }) => name)).toEqual(['supply-alone', 'dummy-load', 'bench-supply', 'together'])
    for (const entry of plan.stages) expect(entry.leftOut).toBeNull()
    expect(plan.mains).toEqual({ voltageV: 230, frequencyHz: 50 })
  })

  it('keys every step once, under the name of its stage', () => {
    const keys = plan.stages.flatMap(({ name, steps }) => steps.map(({ key }) => ({ name, key })))
    expect(new Set(keys.map(({ key }) => key)).size).toBe(keys.length)
    for (const { name, key } of keys) expect(key).toMatch(new RegExp(`^${name}\\.`))
  })

  it('warns with DANGER at each switching on behind the lamp, and before the lamp circuit is used', () => {
    for (const key of ['supply-alone.lamp-circuit', 'supply-alone.switch-on', 'dummy-load.on-10', 'together.switch-on'])
      expect(stepOf(plan, key)?.caution).toMatchObject({ signal: 'DANGER', electric: true })
  })

  it('leaves the wiring of the lamp to a qualified person and keeps earth out of it', () => {
    const wiring = stepOf(plan, 'supply-alone.lamp-circuit')
    expect(wiring?.who).toBe('qualified')
    expect(wiring?.caution?.avoid).toMatch(/earth straight through/)
  })

  it('takes the batteries out before anything else is done to the machine', () => {
    for (const name of ['bench-supply', 'together'] as const)
      expect(stage(plan, name).steps[0]?.text).toMatch(/batter/i)
  })

  it('has capacitors measured before a reach inside, at the end of every stage', () => {
    for (const entry of plan.stages.filter(({ name }) => name !== 'dummy-load'))
      expect(entry.steps.at(-1)?.caution?.hazard).toMatch(/Capacitors keep their charge/)
  })

  // by head: 12 V / 0.3 A = 40 Ω, next E12 value 47 Ω; 8 Ω → 8.2 Ω; 4 Ω → 4.7 Ω; 30.64 W twice is 61.3 W → 100 W
  it('loads a 12 V 3 A output with 47, 8.2 and 4.7 Ω and accepts 11.4 V to 12.6 V', () => {
    expect(flat(stepOf(plan, 'dummy-load.fit-10')?.text)).toContain('47 Ω, 10 W')
    expect(flat(stepOf(plan, 'dummy-load.fit-50')?.text)).toContain('8.2 Ω, 50 W')
    expect(flat(stepOf(plan, 'dummy-load.fit-100')?.text)).toContain('4.7 Ω, 100 W')
    expect(stepOf(plan, 'dummy-load.rail-1-at-50')).toMatchObject({ unit: 'V', low: 11.4, high: 12.6 })
  })

  it('takes the lamp out, with its own warning, only where it would starve the supply', () => {
    // 48 W from the mains is more than two 60 W lamps pass: 0.37 × 120 W = 44 W
    expect(stepOf(plan, 'dummy-load.on-100')?.text).toMatch(/lamp out of the circuit/)
    expect(stepOf(plan, 'dummy-load.on-100')?.caution?.hazard).toMatch(/starve/)
    expect(stepOf(plan, 'dummy-load.on-50')?.text).toMatch(/behind two lamps/)
  })

  it('never limits the bench supply above the machine’s plate and sets over-voltage a tenth above', () => {
    const limits = stage(plan, 'bench-supply')
      .steps.filter(({ unit }) => unit === 'A')
      .map(({ high }) => high)
    expect(limits).toEqual([0.2, 0.5, 1, 2, 2])
    expect(stepOf(plan, 'bench-supply.set-1')?.high).toBeCloseTo(13.2, 10)
    expect(stepOf(plan, 'bench-supply.resistance-1')?.low).toBe(6)
  })

  it('gives without lamps no limit but half of the mains, asks for them, and names one to look for', () => {
    const bare = planFirstPower(prepareCase(check), found(), {})
    expect(bare.lamps).toEqual([])
    expect(bare.missing.join(' ')).toMatch(/lamps at hand/)
    expect(stepOf(bare, 'supply-alone.lamp-volts')).toMatchObject({ low: 0, high: 115 })
    expect(stage(bare, 'supply-alone').figures.some(({ label }) => label === 'Lamp to look for')).toBe(true)
  })

  it('asks for lamps that fit where those entered are for another mains', () => {
    const wrong = planFirstPower(prepareCase(check), found(), { lampsOnHand: [{ ratedV: 120, ratedW: 60, count: 1 }] })
    expect(wrong.lamps).toEqual([])
    expect(wrong.missing.join(' ')).toMatch(/none of those entered serves/)
  })

  it('uses a pair of 120 V lamps in series on 230 V', () => {
    const pair = planFirstPower(prepareCase(check), found(), { lampsOnHand: [{ ratedV: 120, ratedW: 100, count: 2 }] })
    expect(pair.lamps[0]).toEqual({ ratedV: 120, ratedW: 100, count: 2, arrangement: 'series' })
  })

  it('keeps a supply for another voltage off the mains, with what must change, and still plans the machine alone', () => {
    const wrong: ToldFinding = {
      topic: 'mains-voltage',
      outcome: 'stop',
      title: '120 V plate on 230 V: 1.92 times over',
      ...rest,
      action: 'Use a step-down transformer.',
    }
    const kept = planFirstPower(prepareCase(check), found(wrong), lamps)
    for (const name of ['supply-alone', 'dummy-load', 'together'] as const) {
      expect(stage(kept, name).leftOut).toMatch(/1\.92 times over/)
      expect(stage(kept, name).steps).toEqual([])
    }
    expect(stage(kept, 'supply-alone').leftOut).toMatch(/Use a step-down transformer/)
    expect(stage(kept, 'bench-supply').leftOut).toBeNull()
  })

  it.each(['mains-voltage', 'earthing'] as const)('waits where %s is unknown', (topic) => {
    const open = planFirstPower(prepareCase(check), found(notKnown(topic, 'Look at the plate.')), lamps)
    expect(stage(open, 'supply-alone').leftOut).toMatch(/Find out first: not known/)
  })

  it.each(['polarity', 'output-kind', 'output-voltage'] as const)(
    'does not join supply and machine while %s is unknown',
    (topic) => {
      const open = planFirstPower(prepareCase(check), found(notKnown(topic, null)), lamps)
      expect(stage(open, 'together').leftOut).toMatch(/Find out first/)
      expect(stage(open, 'supply-alone').leftOut).toBeNull()
    },
  )

  it('leaves the bench supply out for a machine that takes a.c., or whose kind is not known', () => {
    const ac = without(({ device }) => {
      device.inputs = [{ kind: 'ac', voltageV: 9, currentA: 1 }]
    })
    expect(stage(planFirstPower(prepareCase(ac), found(), lamps), 'bench-supply').leftOut).toMatch(/takes AC/)
    const open = without(({ device }) => {
      device.inputs = [{ kind: null, voltageV: 9, currentA: 1 }]
    })
    expect(stage(planFirstPower(prepareCase(open), found(), lamps), 'bench-supply').leftOut).toMatch(/not known/)
  })

  it('gives a machine no power whose input reads as a short', () => {
    const short = planFirstPower(prepareCase(check), found(), { ...lamps, measuredOhm: 0.3 })
    expect(stage(short, 'bench-supply').leftOut).toMatch(/short until explained/)
  })

  it('has earth proved by a qualified person for class I and where the class is not known, not for class II', () => {
    const classI = planFirstPower(
      prepareCase(without(({ supply }) => Object.assign(supply, { protectionClass: 'I' }))),
      found(),
      lamps,
    )
    expect(stepOf(classI, 'supply-alone.earth')?.who).toBe('qualified')
    const open = planFirstPower(
      prepareCase(without(({ supply }) => Object.assign(supply, { protectionClass: null }))),
      found(),
      lamps,
    )
    expect(stepOf(open, 'supply-alone.earth')).toBeDefined()
    expect(stepOf(plan, 'supply-alone.earth')).toBeUndefined()
  })

  it('expects an unregulated output to read high with nothing connected and condemns nothing by it', () => {
    const plain = without(({ supply }) => {
      supply.technology = 'transformer'
      supply.input = { voltages: [{ min: 230, max: 230 }], frequenciesHz: [50] }
      supply.outputs = [{ kind: 'ac', voltageV: 9.09, currentA: 0.66 }]
    })
    const off = stepOf(planFirstPower(prepareCase(plain), found(), lamps), 'supply-alone.off-load-1')
    // measured on a 9 V 6 VA adaptor at 240 V: 11.36 V
    expect(off?.low).toBeLessThan(11.36)
    expect(off?.high).toBeGreaterThan(11.36)
    expect(off?.stopIf).toMatch(/condemns nothing/)
  })

  it('lets an unregulated d.c. output stand near its off-load volts at a tenth of its load', () => {
    const small = without(({ supply }) => {
      supply.technology = 'transformer'
      supply.input = { voltages: [{ min: 230, max: 230 }], frequenciesHz: [50] }
      supply.outputs = [{ kind: 'dc', voltageV: 12, currentA: 0.5 }]
    })
    const planned = planFirstPower(prepareCase(small), found(), lamps)
    // worked example of a 12 V type: 18.12 V off load, which a tenth of the load hardly pulls down
    expect(stepOf(planned, 'dummy-load.rail-1-at-10')?.high).toBeGreaterThan(18.12)
    expect(stepOf(planned, 'dummy-load.rail-1-at-100')).toMatchObject({ low: 10.8, high: 13.2 })
  })

  it('keeps the sign of a negative rail', () => {
    const three = without(({ supply, device }) => {
      supply.outputs = [
        { kind: 'dc', voltageV: 5, currentA: 4 },
        { kind: 'dc', voltageV: -12, currentA: 0.5 },
      ]
      device.inputs = [
        { kind: 'dc', voltageV: 5, currentA: 3 },
        { kind: 'dc', voltageV: -12, currentA: 0.3 },
      ]
    })
    const several = planFirstPower(prepareCase(three), found(), lamps)
    // printed table of acceptance: −12 V within 10 %
    expect(stepOf(several, 'supply-alone.off-load-2')).toMatchObject({ low: -13.2, high: -10.8 })
    // the sign of each is a reading of its own: above 0 V, below 0 V
    expect(stepOf(several, 'supply-alone.polarity-1')).toMatchObject({ unit: 'V', low: 0, high: null, strict: true })
    expect(stepOf(several, 'supply-alone.polarity-2')).toMatchObject({ unit: 'V', low: null, high: 0, strict: true })
    expect(stepOf(several, 'supply-alone.polarity')).toBeUndefined()
    expect(stepOf(several, 'bench-supply.order')).toBeDefined()
    expect(stepOf(several, 'bench-supply.set-2')?.text).toMatch(/plus to the common/)
  })

  it('says reforming steps only from a capacitor and its years, else asks for them', () => {
    const old = planFirstPower(prepareCase(check), found(), {
      ...lamps,
      yearsUnused: 20,
      bulkF: 47e-6,
      bulkRatedV: 450,
    })
    const steps = old.gates.filter(({ key }) => /^gate\.reform-\d/.test(key))
    // five equal steps: the last one is the rated voltage
    expect(steps).toHaveLength(5)
    expect(flat(steps.at(-1)?.text)).toContain('450 V')
    expect(JSON.stringify(old.stages)).not.toMatch(/reform/i)
    expect(plan.missing.join(' ')).toMatch(/Years without power/)
  })

  it('is honest about nothing entered: no stage with steps, everything asked for', () => {
    const nothing = planFirstPower(prepareCase({ site: {}, supply: {}, device: {} }), found(), {})
    expect(nothing.mains).toBeNull()
    expect(nothing.missing.length).toBeGreaterThanOrEqual(5)
    for (const entry of nothing.stages) {
      expect(entry.leftOut).not.toBeNull()
      expect(entry.steps).toEqual([])
    }
  })

  it('never says safe, never shows NaN, and always ends, whatever is known or left out', () => {
    const maybe = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: null })
    const kind = fc.constantFrom('dc' as const, 'ac' as const, null)
    const rails = fc.array(
      fc.record({
        kind,
        voltageV: fc.oneof(fc.double({ min: -60, max: 60, noNaN: true }), fc.constantFrom(0, 5, -12)),
        currentA: maybe(fc.double({ min: 1e-3, max: 50, noNaN: true })),
      }),
      { maxLength: 3 },
    )
    const request = fc.record({
      site: fc.record({
        voltageV: maybe(fc.double({ min: 90, max: 260, noNaN: true })),
        frequencyHz: maybe(fc.constantFrom(50, 60)),
      }),
      supply: fc.record({
        input: maybe(
          fc.record({
            voltages: maybe(fc.constantFrom([{ min: 100, max: 240 }], [{ min: 230, max: 230 }], [])),
            powerW: maybe(fc.double({ min: 0.5, max: 400, noNaN: true })),
          }),
        ),
        technology: fc.constantFrom('switch-mode' as const, 'transformer' as const, 'unknown' as const, null),
        regulated: fc.constantFrom(true, false, null),
        outputs: maybe(rails),
      }),
      device: fc.record({ inputs: maybe(rails) }),
    })
    const options = fc.record({
      lampsOnHand: maybe(
        fc.constantFrom<LampOnHand[]>(
          [{ ratedV: 230, ratedW: 60, count: 1 }],
          [{ ratedV: 120, ratedW: 100, count: 2 }],
        ),
      ),
      idleW: maybe(fc.double({ min: 0.1, max: 50, noNaN: true })),
      bulkF: maybe(fc.double({ min: 1e-6, max: 1e-3, noNaN: true })),
      bulkRatedV: maybe(fc.constantFrom(25, 200, 400)),
      yearsUnused: maybe(fc.integer({ min: 0, max: 60 })),
      measuredOhm: maybe(fc.double({ min: 0, max: 1e7, noNaN: true })),
    })
    fc.assert(
      fc.property(request, options, (asked, known) => {
        const text = JSON.stringify(planFirstPower(prepareCase(asked as CheckRequest), found(), known))
        expect(text).not.toMatch(/\bsafe\b|NaN|Infinity|undefined|\[object/i)
      }),
      { numRuns: 120 },
    )
  }, 60_000)
})
