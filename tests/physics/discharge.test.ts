import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dischargeResistance, dischargeTime, storedEnergy, voltageAfter } from '../../server/physics/discharge.js'

const crest230 = 230 * Math.SQRT2

describe('discharge of a capacitor', () => {
  // worked example: 220 µF from 325.3 V through 47 kΩ, also run in a circuit simulator
  it.each([
    [60, 17.48],
    [42.4, 21.07],
    [34, 23.35],
  ])('falls to %f V in the printed time', (limitV, timeS) => {
    expect(dischargeTime(47e3, 220e-6, crest230, limitV)).toBeCloseTo(timeS, 2)
  })

  it('stores 11.64 J in 220 µF at 325.3 V', () => {
    expect(storedEnergy(220e-6, crest230)).toBeCloseTo(11.64, 2)
  })

  // printed table of ln(V0/limit) and energy of 100 µF
  it.each([
    [162.6, 0.3038, 0.9969, 1.344, 1.565, 1.322],
    [169.7, 0.3465, 1.04, 1.387, 1.608, 1.44],
    [325.3, 0.9973, 1.69, 2.038, 2.258, 5.291],
    [339.4, 1.04, 1.733, 2.08, 2.301, 5.76],
    [373.4, 1.135, 1.828, 2.176, 2.396, 6.971],
    [400, 1.204, 1.897, 2.244, 2.465, 8],
  ])('from %f V: table of logarithms and of energy', (v, to120, to60, to42, to34, energy) => {
    // the table was made from the crest of the nominal mains, printed to four digits
    expect(Math.abs(dischargeTime(1, 1, v, 120) - to120)).toBeLessThan(6e-4)
    expect(Math.abs(dischargeTime(1, 1, v, 60) - to60)).toBeLessThan(6e-4)
    expect(Math.abs(dischargeTime(1, 1, v, 42.4) - to42)).toBeLessThan(6e-4)
    expect(Math.abs(dischargeTime(1, 1, v, 34) - to34)).toBeLessThan(6e-4)
    expect(Math.abs(storedEnergy(100e-6, v) - energy)).toBeLessThan(2e-3)
  })

  // worked example: 0.57 µF on 264 V, 1 MΩ
  it('leaves 64.59 V after 1 s and 11.18 V after 2 s on the plug pins of 0.57 µF behind 1 MΩ', () => {
    expect(voltageAfter(1e6, 0.57e-6, 264 * Math.SQRT2, 1)).toBeCloseTo(64.59, 2)
    expect(voltageAfter(1e6, 0.57e-6, 264 * Math.SQRT2, 2)).toBeCloseTo(11.18, 2)
  })
  it('needs at most 732.2 kΩ for 34 V in 1 s there', () => {
    expect(dischargeResistance(1, 0.57e-6, 264 * Math.SQRT2, 34) / 1e3).toBeCloseTo(732.2, 1)
  })

  // printed table of largest bleeders from 264 V crest [MΩ]
  it.each([
    [0.1e-6, 4.173, 10.94, 27.35],
    [0.22e-6, 1.897, 4.973, 12.43],
    [0.47e-6, 0.8879, 2.328, 5.819],
    [1e-6, 0.4173, 1.094, 2.735],
  ])('%f F: largest bleeder for each plug rule', (c, a, b, d) => {
    const v = 264 * Math.SQRT2
    expect(Number((dischargeResistance(1, c, v, 34) / 1e6).toPrecision(4))).toBe(a)
    expect(Number((dischargeResistance(2, c, v, 60) / 1e6).toPrecision(4))).toBe(b)
    expect(Number((dischargeResistance(5, c, v, 60) / 1e6).toPrecision(4))).toBe(d)
  })

  it('has nothing to do where the start is at or below the limit', () => {
    expect(dischargeTime(1e3, 1e-6, 60, 60)).toBe(0)
    expect(() => dischargeResistance(1, 1e-6, 60, 60)).toThrow(RangeError)
  })

  it('comes back: the largest resistor for a time takes exactly that time', () => {
    const positive = (max: number) => fc.double({ min: 1e-6, max, noNaN: true })
    fc.assert(
      fc.property(positive(1e4), positive(1), fc.double({ min: 61, max: 5000, noNaN: true }), (t, c, v) => {
        const r = dischargeResistance(t, c, v, 60)
        expect(dischargeTime(r, c, v, 60) / t).toBeCloseTo(1, 9)
        expect(voltageAfter(r, c, v, t)).toBeCloseTo(60, 6)
      }),
    )
  })

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d', (bad) => {
    expect(() => storedEnergy(bad, 1)).toThrow(RangeError)
    expect(() => dischargeTime(bad, 1, 2, 1)).toThrow(RangeError)
    expect(() => voltageAfter(1, bad, 1, 1)).toThrow(RangeError)
  })
})
