import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { benchStages, minimumResistance, overVoltage, readResistance } from '../../server/physics/benchSupply.js'
import { usbMatch } from '../../server/physics/usbPowerDelivery.js'
import { benchRules } from '../../server/tables/benchSupply.js'
import { usbCable, usbFixedVoltages } from '../../server/tables/usbPower.js'

describe('bench supply', () => {
  it('never limits above the plate current nor sets above the rail, and never steps down', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 100, noNaN: true }),
        fc.double({ min: 0.001, max: 50, noNaN: true }),
        fc.boolean(),
        (v, a, constantPower) => {
          const stages = benchStages({ voltageV: -v, currentA: a }, constantPower, benchRules)
          let before = { voltageV: 0, limitA: 0 }
          for (const stage of stages) {
            expect(stage.limitA).toBeLessThanOrEqual(a)
            expect(stage.voltageV).toBeLessThanOrEqual(v)
            expect(stage.voltageV).toBeGreaterThanOrEqual(before.voltageV)
            expect(stage.limitA).toBeGreaterThanOrEqual(before.limitA)
            before = stage
          }
          expect(before.voltageV).toBe(v)
        },
      ),
    )
  })
  it('starts at 100 mA and doubles where nobody knows the current', () => {
    const limits = benchStages({ voltageV: 5, currentA: null }, false, benchRules).map(({ limitA }) => limitA)
    expect(limits).toEqual([0.1, 0.2, 0.4, 0.8, 1.6])
  })
  it('gives a converter its full voltage from the start', () => {
    for (const { voltageV } of benchStages({ voltageV: 12, currentA: 1 }, true, benchRules)) expect(voltageV).toBe(12)
  })
  // common practice: 5.5 V for 5 V logic
  it('sets over-voltage of 5 V logic at 5.5 V', () => {
    expect(overVoltage(5, benchRules.overVoltage)).toBeCloseTo(5.5, 10)
    expect(overVoltage(-12, benchRules.overVoltage)).toBeCloseTo(13.2, 10)
  })
  it('reads resistance by Ohm’s law', () => {
    expect(minimumResistance(5, 2)).toBe(2.5)
    expect(readResistance(0.4, 2.5, 1, 1e6)).toBe('short')
    expect(readResistance(2, 2.5, 1, 1e6)).toBe('low')
    expect(readResistance(2.5, 2.5, 1, 1e6)).toBe('plausible')
    expect(readResistance(1e6, 2.5, 1, 1e6)).toBe('open')
    expect(readResistance(30, null, 1, 1e6)).toBe('plausible')
    // 12 V at 20 A: 0.6 Ω is what the plate says, not a short
    expect(readResistance(0.8, 0.6, 1, 1e6)).toBe('plausible')
  })
  it.each([0, Number.NaN])('refuses %d V', (bad) => {
    expect(() => benchStages({ voltageV: bad, currentA: 1 }, false, benchRules)).toThrow(RangeError)
    expect(() => overVoltage(bad, 1.1)).toThrow(RangeError)
    expect(() => minimumResistance(bad, 1)).toThrow(RangeError)
    expect(() => readResistance(Number.NaN, 1, 1, 1e6)).toThrow(RangeError)
  })
})

describe('negotiated USB source', () => {
  const match = (v: number, a: number, tolerance = 0.05) => usbMatch(v, a, tolerance, usbFixedVoltages, usbCable)
  it('has 5, 9, 15 and 20 V, and 12 V only perhaps', () => {
    for (const v of [5, 9, 15, 20]) expect(match(v, 1)?.voltage).toMatchObject({ voltageV: v, always: true })
    expect(match(12, 1)?.voltage.always).toBe(false)
  })
  it('has nothing for 7.5 V, nor for 4 A at 5 V', () => {
    expect(match(7.5, 1)).toBeUndefined()
    expect(match(5, 4)).toBeUndefined()
  })
  it('wants a marked cable above 3 A and for the extended range', () => {
    expect(match(20, 3)?.markedCable).toBe(false)
    expect(match(20, 3.25)?.markedCable).toBe(true)
    expect(match(28, 1)?.markedCable).toBe(true)
  })
  it('loses at most 0.5 V and 0.25 V in a 3 A cable at 3 A, a third of it at 1 A', () => {
    expect(match(9, 3)?.cableDropV).toBeCloseTo(0.75, 10)
    expect(match(9, 1)?.cableDropV).toBeCloseTo(0.25, 10)
    expect(match(9, 1)?.lowestV).toBeCloseTo(8.3, 10)
  })
})
