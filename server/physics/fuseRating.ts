import { mustBePositive, mustBeShare, mustNotBeNegative } from './range.js'

/**
 * Current a load draws.
 *
 *   I = P / (V · λ)
 *
 * @param powerW       [W], more than 0
 * @param voltageV     [V], more than 0
 * @param powerFactor  λ [1], more than 0, at most 1
 * @returns [A]
 * @throws RangeError outside those ranges, NaN included
 * @source arithmetic
 */
export function loadCurrent(powerW: number, voltageV: number, powerFactor: number): number {
  mustBePositive({ powerW, voltageV })
  mustBeShare({ powerFactor })
  return powerW / (voltageV * powerFactor)
}

/**
 * Least rated current of a link that carries a load for good.
 *
 *   rated ≥ operating / (continuous share · ambient share)
 *
 * @param operatingA       [A], more than 0
 * @param continuousShare  part of the rating usable for good at the reference ambient [1], more than 0, at most 1
 * @param ambientShare     part of the rating left at the ambient [1], more than 0, at most 1
 * @returns [A]
 * @throws RangeError outside those ranges, NaN included
 * @source EDN, 26 Sep 1996, The fuse-selection checklist; TA-I data sheet TCP-XXOS006H, p. 10 (same form)
 */
export function minimumRating(operatingA: number, continuousShare: number, ambientShare = 1): number {
  mustBePositive({ operatingA })
  mustBeShare({ continuousShare, ambientShare })
  return operatingA / (continuousShare * ambientShare)
}

/**
 * Smallest rating of a series that is at least what is needed.
 *
 * @param neededA  [A], 0 or more
 * @param seriesA  ratings, rising [A]
 * @param suits    further condition on a rating
 * @returns [A]; undefined above the series
 * @throws RangeError below 0, NaN included
 * @source table value
 */
export function nextRating(
  neededA: number,
  seriesA: readonly number[],
  suits: (ratedA: number) => boolean = () => true,
): number | undefined {
  mustNotBeNegative({ neededA })
  // 1e-9 relative: 0.9 / 0.9 must not ask for more than 1 A
  return seriesA.find((ratedA) => ratedA >= neededA * (1 - 1e-9) && suits(ratedA))
}

/**
 * Rating that leaves a load of the same watts the same protection at another mains voltage.
 *
 *   scaled = rated · V_former / V_now
 *
 * @param ratedA   rating at the former voltage [A], more than 0
 * @param formerV  [V], more than 0
 * @param nowV     [V], more than 0
 * @returns [A]
 * @throws RangeError outside those ranges, NaN included
 * @source arithmetic: current in inverse ratio to voltage at the same power
 */
export function scaledRating(ratedA: number, formerV: number, nowV: number): number {
  mustBePositive({ ratedA, formerV, nowV })
  return (ratedA * formerV) / nowV
}
