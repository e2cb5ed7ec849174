import { describe, expect, it } from 'vitest'
import { neededMeltingI2t, pulseI2t } from '../../server/physics/fuseI2t.js'
import { minimumRating, nextRating } from '../../server/physics/fuseRating.js'
import { iecPreferred, northAmerican } from '../../server/tables/fuseRatings.js'
import { pulseShares } from '../../server/tables/fuseSelection.js'
import { reviewFuse } from '../support/told.js'

const share = (pulses: number): number => pulseShares.find((row) => row.uptoPulses === pulses)?.share ?? Number.NaN

describe('published worked examples of fuse selection', () => {
  it('half-sine of 4.8 A for 7.7 µs: 8.9e-5 A²s, 1.8e-4 needed, 0.5 A chosen (AVX Accu-Guard data sheet, p. 10, example 1)', () => {
    const i2t = pulseI2t('half-sine', 4.8, 7.7e-6)
    expect(i2t).toBeCloseTo(8.9e-5, 6)
    const needed = neededMeltingI2t(i2t, 0.5)
    expect(needed).toBeCloseTo(1.8e-4, 5)
    // read there from the curve of the maker: 0.375 A 6e-5, 0.5 A 2.3e-4
    const curve: Record<number, number> = { 0.375: 6e-5, 0.5: 2.3e-4 }
    expect(nextRating(0, [0.375, 0.5], (ratedA) => (curve[ratedA] ?? 0) >= needed)).toBe(0.5)
  })

  it('triangle of 1.5 A for 3 ms: 2.25e-3 A²s, 0.75 A chosen (AVX Accu-Guard data sheet, p. 10, example 2)', () => {
    const i2t = pulseI2t('triangle', 1.5, 3e-3)
    expect(i2t).toBeCloseTo(2.25e-3, 5)
    const needed = neededMeltingI2t(i2t, 0.5)
    const curve: Record<number, number> = { 0.5: 4e-3, 0.75: 2e-2 }
    expect(nextRating(0, [0.5, 0.75], (ratedA) => (curve[ratedA] ?? 0) >= needed)).toBe(0.75)
  })

  it('two triangles, 2.14e-3 and 2.55e-3, make 4.7e-3: 0.75 A fails on the total, 1 A is chosen (AVX Accu-Guard data sheet, example 5)', () => {
    const second = pulseI2t('triangle', 5.33, 269e-6)
    expect(second).toBeCloseTo(2.55e-3, 5)
    const total = 2.14e-3 + second
    expect(total).toBeCloseTo(4.7e-3, 4)
    // 0.75 A at 563 µs: 8.6e-3
    expect(8.6e-3).toBeLessThan(neededMeltingI2t(total, 0.5))
  })

  it('1.5 A with 0.70 and 0.95: more than 2.255 A (TA-I data sheet TCP-XXOS006H, p. 10)', () => {
    const needed = minimumRating(1.5, 0.7, 0.95)
    // printed cut off at 2.255
    expect(Math.floor(needed * 1000) / 1000).toBe(2.255)
    expect(nextRating(needed, iecPreferred.ratedA)).toBe(2.5)
    expect(nextRating(needed, northAmerican.ratedA)).toBe(2.5)
  })

  it('60 A²s at a load ratio of 35 %: 171.4 A²s (Matsuo JHC data sheet, p. 7)', () => {
    expect(neededMeltingI2t(60, 0.35)).toBeCloseTo(171.4, 1)
  })

  it('1 A at 60 °C with 17 % less: 1.205 A, next 1.25 A (Five criteria for fuse selection, 2021)', () => {
    const needed = minimumRating(1, 1, 0.83)
    expect(needed).toBeCloseTo(1.205, 3)
    expect(nextRating(needed, iecPreferred.ratedA)).toBe(1.25)
  })

  it('1.5 × 2.74 A = 4.11 A (Product Safety Newsletter, May/June 1990, Selecting a Fuse Value: rule of thumb)', () => {
    expect(minimumRating(2.74, 1 / 1.5)).toBeCloseTo(4.11, 2)
  })

  it('parabola of 8 A for 4 ms, 0.0512 A²s, 100 000 times: 0.2327 A²s (from memory: Littelfuse selection guide; factor and formula from the 2017 catalogue)', () => {
    // ip² t / 5
    const i2t = 0.0512
    expect(neededMeltingI2t(i2t, share(100_000))).toBeCloseTo(0.2327, 4)
    expect(0.256).toBeGreaterThanOrEqual(neededMeltingI2t(i2t, share(100_000)))
  })

  it.each([
    [1, 2, 2],
    [0.8, 2.5, 2.5],
    [0.95, 2.105, 2.25],
  ])(
    '1.5 A on a UL link with an ambient factor of %s: %s A, next %s A (from memory: Littelfuse guides)',
    (ambient, neededA, ratedA) => {
      const needed = minimumRating(1.5, 0.75, ambient)
      expect(needed).toBeCloseTo(neededA, 3)
      expect(nextRating(needed, northAmerican.ratedA)).toBe(ratedA)
    },
  )

  it('0.4 A²s at 120 V, 1.5 A, 10 000 starts: 1.379 A²s and 1.667 A, so 2 A rules (constructed from manual 1606-RM121A-EN-P, p. 8, and data sheets)', () => {
    const review = reviewFuse({
      position: 'mains',
      fuse: { scheme: 'IEC', characteristic: 'T', breaking: 'H', ratedV: 250 },
      // a rectangle of 20 A for 1 ms holds 0.4 A²s
      circuit: {
        voltageV: 120,
        currentA: 1.5,
        inrushPeakA: 20,
        inrushTimeS: 0.001,
        inrushShape: 'rectangle',
        pulses: 10_000,
        ambientC: 25,
      },
    })
    expect(review.required.inrushI2t).toBeCloseTo(0.4, 6)
    expect(review.required.minimumMeltingI2t).toBeCloseTo(1.379, 3)
    expect(review.required.minimumRatedA).toBeCloseTo(1.667, 3)
    expect(review.required.recommendedRatedA).toBe(2)
  })

  it('rules by inrush where the steady current asks for less: 1 A fails 1.379 A²s, 1.25 A passes (S505 data sheet: 1.28 and 2.22; least of four sheets 1.1 and 1.86)', () => {
    const review = reviewFuse({
      position: 'mains',
      fuse: { scheme: 'IEC', characteristic: 'T', breaking: 'H', ratedV: 250 },
      circuit: {
        voltageV: 120,
        currentA: 0.8,
        inrushPeakA: 20,
        inrushTimeS: 0.001,
        inrushShape: 'rectangle',
        pulses: 10_000,
      },
    })
    expect(review.required.minimumRatedA).toBeCloseTo(0.889, 3)
    expect(review.required.recommendedRatedA).toBe(1.25)
  })
})

describe('pulse-count shares (Littelfuse Fuse Products catalogue rev. 03/03/17, p. 12)', () => {
  it.each([
    [100, 0.48],
    [1000, 0.38],
    [10_000, 0.29],
    [100_000, 0.22],
  ])('%s pulses may reach %s of the melting I²t', (pulses, value) => {
    expect(share(pulses)).toBe(value)
  })
})
