import { mustBePositive } from './range.js'

/**
 * Resistance of the mains winding of a small transformer, from how far its voltage falls under load: half of the fall is lost there.
 *
 *   R = (ε / 2) · V² / S
 *
 * @param voltageV    of the winding [V], more than 0
 * @param ratedVA     S [VA], more than 0
 * @param regulation  ε, fall from no load to full load over the full-load voltage [1], more than 0
 * @returns [Ω]
 * @throws RangeError outside those ranges, NaN included
 * @source equal copper losses on both sides, as small transformers are wound (common practice)
 */
export function primaryOhm(voltageV: number, ratedVA: number, regulation: number): number {
  mustBePositive({ voltageV, ratedVA, regulation })
  return ((regulation / 2) * voltageV ** 2) / ratedVA
}
