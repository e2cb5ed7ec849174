import { mustBePositive, mustNotBeNegative } from './range.js'

/**
 * Diameter of a solid round wire by its American gauge number.
 *
 *   d = 0.127 mm · 92^((36 − n) / 39)
 *
 * @param awg  gauge number [1], −3 (0000) to 40
 * @returns diameter [mm]
 * @throws RangeError outside that range, NaN included
 * @source ASTM B258, definition of the gauge (from memory): 0000 is 0.46 in, 36 is 0.005 in, 39 equal steps between
 */
export function awgDiameterMm(awg: number): number {
  if (!(awg >= -3 && awg <= 40)) throw new RangeError(`awg must be −3 to 40, got ${awg}`)
  return 0.127 * 92 ** ((36 - awg) / 39)
}

/**
 * Cross-section of a wire by its American gauge number.
 *
 *   A = π d² / 4
 *
 * @param awg  gauge number [1], −3 (0000) to 40
 * @returns area [mm²]
 * @throws RangeError outside that range, NaN included
 * @source geometry, on {@link awgDiameterMm}
 */
export function awgAreaMm2(awg: number): number {
  return (Math.PI * awgDiameterMm(awg) ** 2) / 4
}

/**
 * Resistance of a two-wire lead, there and back.
 *
 *   R = ρ · 2 L / A
 *
 * @param lengthM            length of the lead [m], 0 or more
 * @param areaMm2            cross-section of one conductor [mm²], more than 0
 * @param resistivityOhmMm2PerM  of the metal [Ω·mm²/m], more than 0
 * @returns resistance [Ω]
 * @throws RangeError outside those ranges, NaN included
 * @source Ohm's law for a uniform conductor
 */
export function loopResistanceOhm(lengthM: number, areaMm2: number, resistivityOhmMm2PerM: number): number {
  mustNotBeNegative({ lengthM })
  mustBePositive({ areaMm2, resistivityOhmMm2PerM })
  return (resistivityOhmMm2PerM * 2 * lengthM) / areaMm2
}

/**
 * Voltage lost in a lead.
 *
 *   ΔV = I · R
 *
 * @param currentA       current [A], 0 or more
 * @param resistanceOhm  resistance there and back [Ω], 0 or more
 * @returns voltage [V]
 * @throws RangeError outside those ranges, NaN included
 * @source Ohm's law
 */
export function dropV(currentA: number, resistanceOhm: number): number {
  mustNotBeNegative({ currentA, resistanceOhm })
  return currentA * resistanceOhm
}
