import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { leakageLimit, reformingResistor, reformingStages, squareRootLeakage } from '../../server/physics/reforming.js'
import { reformingRules } from '../../server/tables/capacitors.js'
import { e12 } from '../../server/tables/preferredValues.js'

const rules = { ...reformingRules, decade: e12.values }

describe('leakage that is accepted', () => {
  // printed examples [µA]: 0.01 CV, 0.03 CV, 3 √(CV)
  it.each([
    [47e-6, 450, 211.5, 634.5, 436.3],
    [1000e-6, 25, 250, 750, 474.3],
  ])('%f F %d V', (c, v, one, three, root) => {
    expect(leakageLimit(0.01, c, v) * 1e6).toBeCloseTo(one, 1)
    expect(leakageLimit(0.03, c, v) * 1e6).toBeCloseTo(three, 1)
    expect(squareRootLeakage(c, v) * 1e6).toBeCloseTo(root, 1)
  })
  it('gives 1279 µA by 0.06 CV + 10 µA for 47 µF 450 V', () => {
    expect(Math.round(leakageLimit(0.06, 47e-6, 450, 1e-5) * 1e6)).toBe(1279)
  })
  // capacitor maker's answers on leakage: 2200 µF 35 V, 0.01 CV
  it('gives the 770 µA the maker states for 2200 µF 35 V', () => {
    expect(leakageLimit(0.01, 2200e-6, 35) * 1e6).toBeCloseTo(770, 6)
  })
  // amateur-radio list quoting the older standard: K C + 0.3 mA
  it.each([
    [47e-6, 40, 2.18],
    [1000e-6, 10, 10.3],
    [20e-6, 40, 1.1],
  ])('%f F by the older rule with %d A/F', (c, k, mA) => {
    // the older rule has no voltage in it: 1 V leaves it out
    expect(leakageLimit(k, c, 1, 3e-4) * 1e3).toBeCloseTo(mA, 10)
  })
  it('never asks to read below the floor', () => {
    expect(leakageLimit(0.01, 1e-6, 10, 0, 3e-6)).toBe(3e-6)
  })
  it.each([0, -1, Number.NaN])('refuses %d', (bad) => {
    expect(() => leakageLimit(0.01, bad, 10)).toThrow(RangeError)
    expect(() => squareRootLeakage(1e-6, bad)).toThrow(RangeError)
  })
})

describe('reforming stages', () => {
  // worked example: 47 µF 450 V behind 100 kΩ
  it('takes 100 kΩ for 47 µF 450 V, and the shorted part then costs 2.025 W', () => {
    const ohm = reformingResistor(450, 634.5e-6, rules)
    expect(ohm).toBe(100e3)
    expect(450 ** 2 / ohm).toBeCloseTo(2.025, 10)
  })
  it('takes 10 kΩ up to 75 V and 100 kΩ above for small capacitors', () => {
    expect(reformingResistor(75, 1e-5, rules)).toBe(10e3)
    expect(reformingResistor(75.1, 1e-5, rules)).toBe(100e3)
  })
  it('holds the charging current of every step to 1 mA, or to the leakage that is accepted anyway', () => {
    const stages = reformingStages(47e-6, 450, 100e3, 634.5e-6, rules)
    // by head: 450 V / (100 kΩ × 1 mA) = 4.5, so five steps of 90 V
    expect(stages.map(({ voltageV }) => Math.round(voltageV))).toEqual([90, 180, 270, 360, 450])
    expect(stages[4]?.holdS).toBe(14_400)
    expect(stages[0]?.holdS).toBe(600)
    expect(stages[4]?.maxLeakageA).toBeCloseTo(634.5e-6, 12)
  })
  it('waits five time constants where that is longer', () => {
    const [first] = reformingStages(0.01, 400, 100e3, 0.12, rules)
    expect(first?.holdS).toBe(5000)
  })
  it('rises to the working voltage, never beyond, and never asks less of a higher step', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-8, max: 0.1, noNaN: true }),
        fc.double({ min: 1, max: 1000, noNaN: true }),
        (c, v) => {
          const accept = leakageLimit(0.03, c, v, 0, 4e-6)
          const ohm = reformingResistor(v, accept, rules)
          const stages = reformingStages(c, v, ohm, accept, rules)
          expect(stages.at(-1)?.voltageV).toBeCloseTo(v, 9)
          expect(stages.length).toBeGreaterThanOrEqual(4)
          expect(stages.length).toBeLessThanOrEqual(13)
          for (const [index, stage] of stages.entries()) {
            const before = stages[index - 1]
            if (before) expect(stage.voltageV).toBeGreaterThan(before.voltageV)
            // the resistor takes at most a quarter of the voltage at the leakage accepted
            expect(stage.maxLeakageA * ohm).toBeLessThanOrEqual(0.2500001 * stage.voltageV)
          }
        },
      ),
    )
  })
})
