import { describe, expect, it } from 'vitest'
import { awgAreaMm2, awgDiameterMm, loopResistanceOhm } from '../../server/physics/conductor.js'
import { copperResistivity } from '../../server/tables/thresholds.js'
import { leadLoss } from '../support/told.js'

describe('wire by gauge, against printed tables', () => {
  // Cirris wire resistance table (converted from mils and Ω per 100 ft); 10 and 11 from NBS Handbook 100, from memory
  it.each([
    { awg: 10, diameterMm: 2.588, ohmPerKm: 3.277 },
    { awg: 12, diameterMm: 2.053, ohmPerKm: 5.21 },
    { awg: 14, diameterMm: 1.628, ohmPerKm: 8.284 },
    { awg: 16, diameterMm: 1.291, ohmPerKm: 13.18 },
    { awg: 18, diameterMm: 1.024, ohmPerKm: 20.95 },
    { awg: 20, diameterMm: 0.8118, ohmPerKm: 33.3 },
    { awg: 22, diameterMm: 0.6438, ohmPerKm: 52.95 },
    { awg: 24, diameterMm: 0.5105, ohmPerKm: 84.22 },
    { awg: 26, diameterMm: 0.4049, ohmPerKm: 133.9 },
    { awg: 28, diameterMm: 0.3211, ohmPerKm: 212.9 },
    { awg: 30, diameterMm: 0.2546, ohmPerKm: 338.6 },
  ])('AWG $awg: $diameterMm mm, $ohmPerKm Ω/km, within 0.1 %', ({ awg, diameterMm, ohmPerKm }) => {
    expect(Math.abs(awgDiameterMm(awg) / diameterMm - 1)).toBeLessThan(0.001)
    const onePerKm = loopResistanceOhm(500, awgAreaMm2(awg), copperResistivity.value)
    expect(Math.abs(onePerKm / ohmPerKm - 1)).toBeLessThan(0.001)
  })
})

describe('voltage lost in a lead, against a worked example', () => {
  // worked example: 5 V 2.5 A over 1.5 m of AWG 22 pair, r = 52.96 mΩ/m
  it('AWG 22: 0.3972 V, 7.944 %', () => {
    const loss = leadLoss({ lengthM: 1.5, awg: 22, currentA: 2.5, voltageV: 5 })
    expect(loss?.dropV).toBeCloseTo(0.3972, 4)
    expect(loss?.dropPercent).toBeCloseTo(7.944, 2)
    // 2 × 1.5 m × 52.96 mΩ/m
    expect(loss?.resistanceOhm).toBeCloseTo(0.15888, 4)
    // 2.5 A × 0.3972 V
    expect(loss?.lostW).toBeCloseTo(0.993, 3)
  })
  it('AWG 18: 0.1571 V', () => {
    expect(leadLoss({ lengthM: 1.5, awg: 18, currentA: 2.5, voltageV: 5 })?.dropV).toBeCloseTo(0.1571, 4)
  })
})
