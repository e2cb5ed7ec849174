import { describe, expect, it } from 'vitest'
import { primaryOhm } from '../../server/physics/primaryResistance.js'

describe('the mains winding of a small transformer', () => {
  // by head: 0.08 × 52 900 / 30 = 141.07 Ω; 0.065 × 14 400 / 60 = 15.6 Ω; 0.025 × 10 000 / 500 = 0.5 Ω
  it.each([
    { voltageV: 230, ratedVA: 30, regulation: 0.16, ohm: 141.07 },
    { voltageV: 120, ratedVA: 60, regulation: 0.13, ohm: 15.6 },
    { voltageV: 100, ratedVA: 500, regulation: 0.05, ohm: 0.5 },
  ])('takes half of the fall: $voltageV V $ratedVA VA', ({ voltageV, ratedVA, regulation, ohm }) => {
    expect(primaryOhm(voltageV, ratedVA, regulation)).toBeCloseTo(ohm, 2)
  })
  it.each([0, -1, Number.NaN])('takes no %d for anything', (bad) => {
    expect(() => primaryOhm(bad, 30, 0.16)).toThrow(RangeError)
    expect(() => primaryOhm(230, bad, 0.16)).toThrow(RangeError)
    expect(() => primaryOhm(230, 30, bad)).toThrow(RangeError)
  })
})
