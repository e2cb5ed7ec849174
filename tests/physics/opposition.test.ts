import { describe, expect, it } from 'vitest'
import { oppositionVA } from '../../server/physics/opposition.js'

describe('a small transformer in opposition', () => {
  // from the head: 240 V − 220 V = 20 V, at 0.9 A 18 VA; a receiver on 122 V that wants 117 V, 2 A: 10 VA
  it.each([
    [240, 220, 0.9, 18],
    [122, 117, 2, 10],
    [220.001, 220, 1, 0.001],
  ])('%d V to %d V, %d A: %d VA', (mainsV, wantedV, currentA, voltAmperes) => {
    expect(oppositionVA(mainsV, wantedV, currentA)).toBeCloseTo(voltAmperes, 9)
  })

  it.each([
    [220, 220, 1],
    [219, 220, 1],
    [0, 220, 1],
    [240, 0, 1],
    [240, 220, 0],
    [240, 220, Number.NaN],
    [Number.NaN, 220, 1],
  ])('is worked out for less than the mains alone, and numbers: %d, %d, %d', (mainsV, wantedV, currentA) => {
    expect(() => oppositionVA(mainsV, wantedV, currentA)).toThrow(RangeError)
  })
})
