import { mustBePositive } from './range.js'

/**
 * Time until a body that warms towards an end temperature has risen by a given amount.
 *
 *   t = −τ ln(1 − rise / end)
 *
 * @param riseK     rise over the room that is asked about [K], more than 0
 * @param endRiseK  rise it would settle at [K], more than 0
 * @param timeS     thermal time constant τ [s], more than 0
 * @returns time [s]; null where the end temperature stays below the rise asked about
 * @throws RangeError outside those ranges
 * @source one-body heat balance (textbook)
 */
export function timeToRise(riseK: number, endRiseK: number, timeS: number): number | null {
  mustBePositive({ riseK, endRiseK, timeS })
  return riseK < endRiseK ? -timeS * Math.log1p(-riseK / endRiseK) : null
}
