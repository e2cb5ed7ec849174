import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gateTimes, mergeGates, widestBand } from '../../server/physics/fuseCurve.js'
import { neededMeltingI2t, type PulseShape, pulseI2t, pulseShare } from '../../server/physics/fuseI2t.js'
import { loadCurrent, minimumRating, nextRating, scaledRating } from '../../server/physics/fuseRating.js'

const samples = 20_001

/** I²t of samples of i(t) from 0 to `untilS`, by the trapezium rule: Σ (i₁² + i₂²) / 2 × Δt. */
const sampled = (untilS: number, current: (t: number) => number) => {
  const stepS = untilS / (samples - 1)
  const squares = Array.from({ length: samples }, (_, at) => current(stepS * at) ** 2)
  return stepS * squares.reduce((sum, square, at) => sum + (at === 0 || at === samples - 1 ? square / 2 : square), 0)
}

/** Each shape as a waveform, written down from its name and not from the formula under test. */
const waveforms: Record<PulseShape, (peakA: number, timeS: number) => number> = {
  rectangle: (peakA, timeS) => sampled(timeS, () => peakA),
  'half-sine': (peakA, timeS) => sampled(timeS, (t) => peakA * Math.sin((Math.PI * t) / timeS)),
  triangle: (peakA, timeS) => sampled(timeS, (t) => peakA * (1 - Math.abs((2 * t) / timeS - 1))),
  // 20 time constants: what is left holds e^-40 of the energy
  exponential: (peakA, timeS) => sampled(20 * timeS, (t) => peakA * Math.exp(-t / timeS)),
}

const peaks = fc.double({ min: 0.01, max: 1000, noNaN: true })
const times = fc.double({ min: 1e-6, max: 1, noNaN: true })

describe('I²t of a pulse', { timeout: 60_000 }, () => {
  it.each(Object.keys(waveforms) as PulseShape[])(
    'equals the numerical integral of a sampled %s to 0.1 %%',
    (shape) => {
      fc.assert(
        fc.property(peaks, times, (peakA, timeS) => {
          const ratio = pulseI2t(shape, peakA, timeS) / waveforms[shape](peakA, timeS)
          expect(Math.abs(ratio - 1)).toBeLessThan(0.001)
        }),
        { numRuns: 25 },
      )
    },
  )

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a peak or a time of %s', (value) => {
    expect(() => pulseI2t('triangle', value, 1)).toThrow(RangeError)
    expect(() => pulseI2t('triangle', 1, value)).toThrow(RangeError)
    expect(() => neededMeltingI2t(value, 0.5)).toThrow(RangeError)
  })

  it('refuses a share of nothing or of more than all', () => {
    expect(() => neededMeltingI2t(1, 0)).toThrow(RangeError)
    expect(() => neededMeltingI2t(1, 1.1)).toThrow(RangeError)
  })

  it('takes the share of the next higher count of pulses, and none above the last', () => {
    const points = [
      { uptoPulses: 100, share: 0.48 },
      { uptoPulses: 1000, share: 0.38 },
    ]
    expect(pulseShare(1, points)?.share).toBe(0.48)
    expect(pulseShare(100, points)?.share).toBe(0.48)
    expect(pulseShare(101, points)?.share).toBe(0.38)
    expect(pulseShare(1001, points)).toBeUndefined()
    expect(() => pulseShare(0, points)).toThrow(RangeError)
  })
})

describe('the rating a load needs', () => {
  it('is watts over volts and power factor', () => {
    // 60 W at 230 V and 0.6: 60 / 138
    expect(loadCurrent(60, 230, 0.6)).toBeCloseTo(0.43478, 5)
    expect(() => loadCurrent(0, 230, 1)).toThrow(RangeError)
    expect(() => loadCurrent(60, 230, 1.01)).toThrow(RangeError)
    expect(() => loadCurrent(60, Number.NaN, 1)).toThrow(RangeError)
  })

  it('never falls when the current rises', () => {
    fc.assert(
      fc.property(peaks, peaks, (one, other) => {
        const [less, more] = one < other ? [one, other] : [other, one]
        expect(minimumRating(less, 0.9)).toBeLessThanOrEqual(minimumRating(more, 0.9))
      }),
    )
  })

  it('is taken from the series, itself included, and not beyond it', () => {
    expect(nextRating(1, [0.8, 1, 1.25])).toBe(1)
    expect(nextRating(0.9 / 0.9, [0.8, 1, 1.25])).toBe(1)
    expect(nextRating(1.0001, [0.8, 1, 1.25])).toBe(1.25)
    expect(nextRating(1.3, [0.8, 1, 1.25])).toBeUndefined()
    expect(nextRating(0.9, [0.8, 1, 1.25], (ratedA) => ratedA > 1)).toBe(1.25)
    expect(() => nextRating(Number.NaN, [1])).toThrow(RangeError)
    expect(() => minimumRating(1, 0)).toThrow(RangeError)
  })

  it('goes with the inverse ratio of the voltages', () => {
    // 230 / 120 = 1.92
    expect(scaledRating(2, 120, 230)).toBeCloseTo(2 / 1.9167, 3)
    expect(scaledRating(1, 230, 120)).toBeCloseTo(1.92, 2)
    expect(() => scaledRating(1, 0, 120)).toThrow(RangeError)
  })
})

describe('gates', () => {
  it('are merged to the wider limits where rows differ, and that is said', () => {
    expect(
      mergeGates([
        { multiple: 4, minS: 0.02, maxS: 1 },
        { multiple: 4, minS: 0.01, maxS: 0.9 },
        { multiple: 2, minS: null, maxS: 10 },
      ]),
    ).toEqual([
      { multiple: 2, minS: null, maxS: 10, disagree: false },
      { multiple: 4, minS: 0.01, maxS: 1, disagree: true },
    ])
  })

  it('hold for every candidate when the link is not known: no limit where one has none', () => {
    const one = mergeGates([{ multiple: 2, minS: 1, maxS: 10 }])
    const other = mergeGates([{ multiple: 2, minS: null, maxS: 20 }])
    expect(widestBand([one, other])).toEqual([{ multiple: 2, minS: null, maxS: 20, disagree: true }])
    expect(widestBand([])).toEqual([])
  })

  it('are straight lines between two points on logarithmic axes, and nothing outside', () => {
    const band = [
      { multiple: 1, minS: null, maxS: 100 },
      { multiple: 100, minS: 0.5, maxS: 1 },
    ]
    // half way in the logarithm: 10 times, 10 s
    expect(gateTimes(band, 10).maxS).toBeCloseTo(10, 9)
    expect(gateTimes(band, 10).minS).toBeNull()
    expect(gateTimes(band, 100)).toEqual({ minS: 0.5, maxS: 1 })
    expect(gateTimes(band, 0.5)).toEqual({ minS: null, maxS: null })
    expect(gateTimes(band, 101)).toEqual({ minS: null, maxS: null })
    expect(() => gateTimes(band, 0)).toThrow(RangeError)
  })
})
