import { mustBePositive } from './range.js'

/**
 * Peak flux in a transformer core compared with the flux it was built for.
 *
 *   r = (V / f) / (V_rated / f_rated)
 *
 * @param voltageV     voltage on the primary [V], more than 0
 * @param frequencyHz  its frequency [Hz], more than 0
 * @param ratedV       voltage on the plate [V], more than 0
 * @param ratedHz      lowest frequency on the plate [Hz], more than 0
 * @returns ratio [1]; 1 at the rated flux, 1.2 for a 60 Hz type on 50 Hz at the same voltage
 * @throws RangeError outside those ranges, NaN included
 * @source induction law: for one core and winding the peak flux is proportional to V/f
 */
export function fluxRatio(voltageV: number, frequencyHz: number, ratedV: number, ratedHz: number): number {
  mustBePositive({ voltageV, frequencyHz, ratedV, ratedHz })
  return voltageV / frequencyHz / (ratedV / ratedHz)
}

/**
 * The primary voltage at which the core carries the flux it was built for.
 *
 *   V = V_rated · f / f_rated
 *
 * @param frequencyHz  frequency of the mains [Hz], more than 0
 * @param ratedV       voltage on the plate [V], more than 0
 * @param ratedHz      lowest frequency on the plate [Hz], more than 0
 * @returns voltage [V]
 * @throws RangeError outside those ranges, NaN included
 * @source induction law, as {@link fluxRatio}
 */
export function voltageAtRatedFlux(frequencyHz: number, ratedV: number, ratedHz: number): number {
  mustBePositive({ frequencyHz, ratedV, ratedHz })
  return (ratedV * frequencyHz) / ratedHz
}
