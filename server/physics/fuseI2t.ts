import { mustBePositive, mustBeShare } from './range.js'

/** Shape of a current pulse as fuse makers name it. */
export type PulseShape = 'rectangle' | 'half-sine' | 'triangle' | 'exponential'

/** Divisor of peak² · time by shape. */
const divisors: Readonly<Record<PulseShape, number>> = { rectangle: 1, 'half-sine': 2, triangle: 3, exponential: 2 }

/**
 * Heating energy of one current pulse per ohm.
 *
 *   rectangle    I²t = ip² · t
 *   half-sine    I²t = ip² · t / 2
 *   triangle     I²t = ip² · t / 3
 *   exponential  I²t = ip² · τ / 2, i = ip · e^(−t/τ) to its end
 *
 * @param shape  of the pulse
 * @param peakA  highest current ip [A], more than 0
 * @param timeS  length t of the pulse, of an exponential its time constant τ [s], more than 0
 * @returns [A²s]
 * @throws RangeError outside those ranges, NaN included
 * @source Littelfuse Fuse Products catalogue rev. 03/03/17, p. 12, chart 2
 */
export function pulseI2t(shape: PulseShape, peakA: number, timeS: number): number {
  mustBePositive({ peakA, timeS })
  return (peakA ** 2 * timeS) / divisors[shape]
}

/** The formula of {@link pulseI2t} [A²s], for the working. @source as there */
export const pulseFormula: Readonly<Record<PulseShape, string>> = {
  rectangle: 'ip² · t',
  'half-sine': 'ip² · t / 2',
  triangle: 'ip² · t / 3',
  exponential: 'ip² · τ / 2',
}

/**
 * Melting I²t a link must have to survive a pulse a number of times.
 *
 *   needed = pulse I²t / share
 *
 * @param i2t    of one pulse [A²s], more than 0
 * @param share  part of the melting I²t a pulse may reach [1], more than 0, at most 1
 * @returns [A²s]
 * @throws RangeError outside those ranges, NaN included
 * @source Littelfuse Fuse Products catalogue rev. 03/03/17, p. 12, chart 1
 */
export function neededMeltingI2t(i2t: number, share: number): number {
  mustBePositive({ i2t })
  mustBeShare({ share })
  return i2t / share
}

/** A published share for pulses up to a count. */
export interface PulseSharePoint {
  readonly uptoPulses: number
  readonly share: number
}

/**
 * Share of the melting I²t that one of `pulses` pulses may reach: that of the next higher count printed.
 *
 * @param pulses  1 or more
 * @param points  rising counts
 * @returns [1]; undefined above the last count printed
 * @throws RangeError below 1, NaN included
 * @source table value
 */
export function pulseShare<Point extends PulseSharePoint>(pulses: number, points: readonly Point[]): Point | undefined {
  if (!(pulses >= 1)) throw new RangeError(`pulses must be 1 or more, got ${pulses}`)
  return points.find((point) => pulses <= point.uptoPulses)
}
