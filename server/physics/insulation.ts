import { mustBePositive, mustNotBeNegative } from './range.js'

/**
 * Earth-path limit of a scheme that allows a base value and a step for every further stretch of cord.
 *
 *   limit = min(most, base + step × stretches),  stretches = (L − L_base) / L_step, whole ones
 *
 * @param cordLengthM  [m], 0 or more
 * @param rule         base and most [Ω], step [Ω], lengths [m]; all more than 0
 * @param started      true counts a stretch as soon as it has begun, false only when it is complete
 * @returns [Ω]
 * @throws RangeError on a negative or infinite length
 * @source form of the limit in VDE 0701-0702
 */
export function steppedEarthLimit(
  cordLengthM: number,
  rule: { baseOhm: number; baseLengthM: number; stepOhm: number; stepLengthM: number; mostOhm: number },
  started: boolean,
): number {
  mustNotBeNegative({ cordLengthM })
  const stretches = Math.max(0, cordLengthM - rule.baseLengthM) / rule.stepLengthM
  const counted = started ? Math.ceil(stretches - 1e-9) : Math.floor(stretches + 1e-9)
  return Math.min(rule.mostOhm, rule.baseOhm + rule.stepOhm * counted)
}

/**
 * Earth-path limit of a scheme that allows a fixed value and the resistance of the cord's earth conductor.
 *
 *   limit = base + L r
 *
 * @param cordLengthM  [m], 0 or more
 * @param ohmPerM      resistance of one conductor [Ω/m], more than 0
 * @param baseOhm      [Ω], more than 0
 * @returns [Ω]
 * @throws RangeError outside those ranges
 * @source form of the limit in the UK code of practice for in-service inspection ("0.1 + R")
 */
export function conductorEarthLimit(cordLengthM: number, ohmPerM: number, baseOhm: number): number {
  mustNotBeNegative({ cordLengthM })
  mustBePositive({ ohmPerM, baseOhm })
  return baseOhm + cordLengthM * ohmPerM
}
