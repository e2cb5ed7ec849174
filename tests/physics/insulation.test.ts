import { describe, expect, it } from 'vitest'
import { conductorEarthLimit, steppedEarthLimit } from '../../server/physics/insulation.js'

const rule = { baseOhm: 0.3, baseLengthM: 5, stepOhm: 0.1, stepLengthM: 7.5, mostOhm: 1 }

describe('earth-path limits', () => {
  // VDE 0701-0702 as printed in an appliance tester's manual: 0.3 Ω to 5 m, 0.1 Ω for each further 7.5 m, at most 1 Ω
  it.each([
    [0, 0.3, 0.3],
    [5, 0.3, 0.3],
    [5.1, 0.3, 0.4],
    [12.5, 0.4, 0.4],
    [20, 0.5, 0.5],
    [57.5, 1, 1],
    [200, 1, 1],
  ])('a cord of %f m: complete and started stretches', (length, complete, started) => {
    expect(steppedEarthLimit(length, rule, false)).toBeCloseTo(complete, 10)
    expect(steppedEarthLimit(length, rule, true)).toBeCloseTo(started, 10)
  })
  it('adds the conductor: 2 m of 0.75 mm² at 26 mΩ/m make 0.152 Ω', () => {
    expect(conductorEarthLimit(2, 0.026, 0.1)).toBeCloseTo(0.152, 10)
  })
  it.each([Number.NaN, -1, Number.POSITIVE_INFINITY])('refuses %d m', (bad) => {
    expect(() => steppedEarthLimit(bad, rule, true)).toThrow(RangeError)
    expect(() => conductorEarthLimit(bad, 0.026, 0.1)).toThrow(RangeError)
  })
})
