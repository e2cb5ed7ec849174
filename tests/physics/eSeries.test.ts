import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { nearest, nextDown, nextUp, standardRating } from '../../server/physics/eSeries.js'
import { e12, e24, resistorRatings } from '../../server/tables/preferredValues.js'

describe('preferred values', () => {
  // IEC 60063: the whole decade from the printed list, nothing computed
  it('lists the twelve and the twenty-four values of IEC 60063', () => {
    expect(e12.values).toEqual([1, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2])
    expect(e24.values).toEqual([
      1, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2, 2.2, 2.4, 2.7, 3, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1,
    ])
  })

  // bench table of load resistors: exact, nearest E24, next up E24, nearest E12, next up E12
  it.each([
    [5, 5.1, 5.1, 4.7, 5.6],
    [2.5, 2.4, 2.7, 2.7, 2.7],
    [5 / 3, 1.6, 1.8, 1.8, 1.8],
    [18, 18, 18, 18, 18],
    [9, 9.1, 9.1, 8.2, 10],
    [24, 24, 24, 22, 27],
    [12, 12, 12, 12, 12],
    [8, 8.2, 8.2, 8.2, 8.2],
  ])('%f Ω: nearest and next up agree with the printed table', (exact, near24, up24, near12, up12) => {
    expect(nextUp(exact, e24.values)).toBe(up24)
    expect(nextUp(exact, e12.values)).toBe(up12)
    expect(nearest(exact, e24.values)).toBe(near24)
    expect(nearest(exact, e12.values)).toBe(near12)
  })

  it('never goes below when looking up, never above when looking down, and at most one step away', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e8, noNaN: true }), (value) => {
        const up = nextUp(value, e12.values)
        const down = nextDown(value, e12.values)
        expect(up).toBeGreaterThanOrEqual(value * (1 - 1e-8))
        expect(down).toBeLessThanOrEqual(value * (1 + 1e-8))
        expect(up / down).toBeLessThan(1.26)
      }),
    )
  })

  it('keeps a preferred value as it is, in every decade', () => {
    for (let power = -3; power <= 7; power++)
      for (const step of e24.values) {
        const value = Number(`${step}e${power}`)
        expect(nextUp(value, e24.values)).toBe(value)
        expect(nextDown(value, e24.values)).toBe(value)
      }
  })

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d', (value) => {
    expect(() => nextUp(value, e12.values)).toThrow(RangeError)
    expect(() => nextDown(value, e12.values)).toThrow(RangeError)
    expect(() => nearest(value, e12.values)).toThrow(RangeError)
  })

  it('takes the next rating on sale and knows none above the largest', () => {
    expect(standardRating(9.1, resistorRatings.valuesW)).toBe(10)
    expect(standardRating(10, resistorRatings.valuesW)).toBe(10)
    expect(standardRating(1000.1, resistorRatings.valuesW)).toBeUndefined()
    expect(() => standardRating(Number.NaN, resistorRatings.valuesW)).toThrow(RangeError)
  })
})
