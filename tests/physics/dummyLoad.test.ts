import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type DummyLoadRules, dummyLoad } from '../../server/physics/dummyLoad.js'
import { timeToRise } from '../../server/physics/resistorHeat.js'
import { loadPoints, powerMargin, resistorWarming } from '../../server/tables/dummyLoad.js'
import { e12, resistorRatings } from '../../server/tables/preferredValues.js'

const rules: DummyLoadRules = {
  fractions: loadPoints.fractions,
  decade: e12.values,
  ratingsW: resistorRatings.valuesW,
  powerMargin: powerMargin.factor,
  ...resistorWarming,
}
const regulated = { tolerance: 0.05, regulation: 0 }

describe('dummy load', () => {
  // printed bench table: next-up E12, current, watts, fitted watts; the last 12 V 0.5 A row prints 10 W, less than twice its 5.333 W
  it.each([
    [5, 1, 5.6, 0.8929, 4.464, 10],
    [5, 2, 2.7, 1.852, 9.259, 20],
    [5, 3, 1.8, 2.778, 13.89, 30],
    [9, 0.5, 18, 0.5, 4.5, 10],
    [9, 1, 10, 0.9, 8.1, 20],
    [12, 0.5, 27, 0.4444, 5.333, 20],
    [12, 1, 12, 1, 12, 25],
    [12, 1.5, 8.2, 1.463, 17.56, 50],
  ])('%d V %d A at full load: %d Ω', (voltageV, currentA, ohm, ampere, watt, fit) => {
    const full = dummyLoad({ voltageV, currentA, ...regulated }, rules)[2]
    expect(full?.standardOhm).toBe(ohm)
    expect(Number(full?.currentA.toPrecision(4))).toBe(ampere)
    expect(Number(full?.powerW.toPrecision(4))).toBe(watt)
    expect(full?.ratedW).toBe(fit)
  })

  it('gives 5 V logic the band of 4.75 V to 5.25 V', () => {
    const [point] = dummyLoad({ voltageV: 5, currentA: 1, ...regulated }, rules)
    expect(point?.lowV).toBeCloseTo(4.75, 10)
    expect(point?.highV).toBeCloseTo(5.25, 10)
  })

  it('keeps the sign of a negative rail and its band in numerical order', () => {
    const [point] = dummyLoad({ voltageV: -12, currentA: 1, tolerance: 0.1, regulation: 0 }, rules)
    expect(point?.lowV).toBeCloseTo(-13.2, 10)
    expect(point?.highV).toBeCloseTo(-10.8, 10)
  })

  it('expects an unregulated output to sit higher at light load', () => {
    const points = dummyLoad({ voltageV: 12, currentA: 1, tolerance: 0.1, regulation: 0.2 }, rules)
    // by head: 12 (1 + 0.2 × 0.9) = 14.16, times 1.1
    expect(points[0]?.expectedV).toBeCloseTo(14.16, 10)
    expect(points[0]?.highV).toBeCloseTo(15.576, 10)
    expect(points[2]?.expectedV).toBeCloseTo(12, 10)
  })

  it('never asks for more than the point’s share of the rated current, and fits at least twice the watts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 400, noNaN: true }),
        fc.double({ min: 0.001, max: 60, noNaN: true }),
        (v, a) => {
          for (const point of dummyLoad({ voltageV: v, currentA: a, ...regulated }, rules)) {
            expect(point.currentA).toBeLessThanOrEqual(point.fraction * a * (1 + 1e-8))
            if (point.ratedW !== null) expect(point.ratedW).toBeGreaterThanOrEqual(2 * point.powerW * (1 - 1e-8))
            else expect(point.powerW).toBeGreaterThan(500)
          }
        },
      ),
    )
  })

  it.each([
    [0, 1],
    [Number.NaN, 1],
    [5, 0],
    [5, -1],
    [5, Number.NaN],
  ])('refuses %d V %d A', (voltageV, currentA) => {
    expect(() => dummyLoad({ voltageV, currentA, ...regulated }, rules)).toThrow(RangeError)
  })
})

describe('warming of a resistor', () => {
  it('takes one time constant for 63.2 % of the end rise', () => {
    expect(timeToRise(100 * (1 - Math.exp(-1)), 100, 180)).toBeCloseTo(180, 6)
  })
  it('never reaches what it does not settle above', () => {
    expect(timeToRise(30, 30, 180)).toBeNull()
    expect(timeToRise(30, 29, 180)).toBeNull()
  })
  it('refuses zero and NaN', () => {
    expect(() => timeToRise(0, 30, 180)).toThrow(RangeError)
    expect(() => timeToRise(30, Number.NaN, 180)).toThrow(RangeError)
  })
})
