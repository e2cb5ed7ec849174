import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rectifiedCrest, regulation, rippleBound, windingVoltage } from '../../server/physics/offLoad.js'
import { reservoirSupply } from '../../server/physics/reservoirSupply.js'

describe('transformer off load', () => {
  // worked example: 12 V 10 VA, 15 %, bridge, 0.7 V a diode
  it.each([
    [1, 18.12],
    [253 / 230, 20.07],
  ])('at %f of its mains reads the printed volts', (ratio, dc) => {
    expect(rectifiedCrest(windingVoltage(12, 0.15, 0, ratio), 2, 0.7)).toBeCloseTo(dc, 2)
  })

  // PTC7 data sheet: 7 VA, rated and open-circuit volts of each type; 28 to 31 % by this definition
  it.each([
    [7, 9],
    [9, 11.5],
    [12, 15.6],
    [15, 19.2],
    [18, 23.6],
    [22, 28.3],
  ])('%d V type of 7 VA reading %f V off load has 27.5 % to 31.5 % regulation', (full, open) => {
    const share = regulation(open, full)
    expect(share).toBeGreaterThan(0.275)
    expect(share).toBeLessThan(0.315)
  })

  // measurement report on two a.c. adaptors, 2013: 9.09 V and 11.36 V; 9.37 V and 11.20 V
  it('reads 25 % and 19.5 % from two measured adaptors', () => {
    expect(regulation(11.36, 9.09)).toBeCloseTo(0.25, 2)
    expect(regulation(11.2, 9.37)).toBeCloseTo(0.195, 3)
  })

  // worked example: 1 A, 4700 µF
  it.each([
    [50, 2.128, 13.04],
    [60, 1.773, 13.4],
  ])('at %d Hz the ripple is at most the printed one', (hz, ripple, valley) => {
    const bound = rippleBound(1, 4700e-6, hz, 2)
    expect(bound).toBeCloseTo(ripple, 3)
    expect(rectifiedCrest(windingVoltage(12, 0.15, 1, 1), 2, 0.9) - bound).toBeCloseTo(valley, 2)
  })

  it('gives nothing where the crest does not reach the diodes', () => {
    expect(rectifiedCrest(0.5, 2, 0.7)).toBe(0)
  })

  it.each([Number.NaN, 0, -1])('refuses %d V', (bad) => {
    expect(() => windingVoltage(bad, 0.1, 0, 1)).toThrow(RangeError)
    expect(() => rectifiedCrest(bad, 2, 0.7)).toThrow(RangeError)
    expect(() => regulation(bad, 1)).toThrow(RangeError)
    expect(() => rippleBound(1, bad, 50, 2)).toThrow(RangeError)
  })
})

describe('reservoir supply', () => {
  const supply = {
    crestV: 12 * 1.15 * Math.SQRT2,
    sourceOhm: 1,
    dropV: 1.8,
    capacitanceF: 4700e-6,
    currentA: 0.5,
    frequencyHz: 50,
    fullWave: true,
  }
  it('stays at the crest less the diodes with no load', () => {
    const state = reservoirSupply({ ...supply, currentA: 0 })
    expect(state?.meanV).toBeCloseTo(supply.crestV - 1.8, 9)
    expect(state?.rippleV).toBeCloseTo(0, 9)
  })
  it('says when the load cannot be held', () => {
    expect(reservoirSupply({ ...supply, currentA: 50 })).toBeNull()
  })
  it('never shows more ripple than the bound, never more volts than the crest, and more load never more volts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        fc.double({ min: 0.05, max: 0.6, noNaN: true }),
        fc.constantFrom(50, 60),
        fc.boolean(),
        (sourceOhm, currentA, frequencyHz, fullWave) => {
          const at = (a: number) => reservoirSupply({ ...supply, sourceOhm, currentA: a, frequencyHz, fullWave })
          const state = at(currentA)
          const more = at(currentA * 1.2)
          if (!state || !more) return
          expect(state.rippleV).toBeLessThanOrEqual(rippleBound(currentA, 4700e-6, frequencyHz, fullWave ? 2 : 1))
          expect(state.highV).toBeLessThan(supply.crestV - 1.8)
          expect(more.meanV).toBeLessThan(state.meanV)
        },
      ),
      { numRuns: 15 },
    )
  })
  it.each([Number.NaN, 0])('refuses a source of %d Ω', (sourceOhm) => {
    expect(() => reservoirSupply({ ...supply, sourceOhm })).toThrow(RangeError)
  })
})
