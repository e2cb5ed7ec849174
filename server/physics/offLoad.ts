import { mustBePositive, mustNotBeNegative } from './range.js'

/**
 * Rise of a transformer's output from full load to no load, from the two voltages.
 *
 *   regulation = (V_off − V_full) / V_full
 *
 * @param offLoadV   [V], more than 0
 * @param loadedV    at rated current [V], more than 0
 * @returns regulation [1]; some makers divide by the off-load voltage and so quote less
 * @throws RangeError outside those ranges
 * @source transformer makers' definition
 */
export function regulation(offLoadV: number, loadedV: number): number {
  mustBePositive({ offLoadV, loadedV })
  return (offLoadV - loadedV) / loadedV
}

/**
 * A.C. output of a transformer at part load.
 *
 *   V = V_s (1 + reg (1 − load)) (V_m / V_mn)
 *
 * @param ratedV      rated secondary [V rms], at rated load, more than 0
 * @param regulation  rise from full load to none [1], 0 or more
 * @param load        share of the rated VA in use [1], 0 or more; above 1 it sags below the rated voltage
 * @param mainsRatio  mains now over mains it is rated for [1], more than 0
 * @returns [V rms]
 * @throws RangeError outside those ranges
 * @source transformer makers: at part load the rise scales with the share of VA used
 */
export function windingVoltage(ratedV: number, regulation: number, load: number, mainsRatio: number): number {
  mustBePositive({ ratedV, mainsRatio })
  mustNotBeNegative({ regulation, load })
  return ratedV * (1 + regulation * (1 - load)) * mainsRatio
}

/**
 * D.C. off load: the reservoir capacitor charges to the crest less the diodes.
 *
 *   V = V_ac √2 − n V_f
 *
 * @param acV      winding off load [V rms], more than 0
 * @param diodes   diodes in the path at one time: 2 in a bridge, else 1
 * @param diodeV   forward voltage of one [V], 0 or more
 * @returns [V]; 0 where the crest does not reach the diodes' drop
 * @throws RangeError outside those ranges
 * @source textbook
 */
export function rectifiedCrest(acV: number, diodes: number, diodeV: number): number {
  mustBePositive({ acV })
  mustNotBeNegative({ diodes, diodeV })
  return Math.max(acV * Math.SQRT2 - diodes * diodeV, 0)
}

/**
 * Ripple across a reservoir capacitor, as an upper bound: it takes the recharging to need no time.
 *
 *   ΔV = I / (n f C), n = 2 full wave, 1 half wave
 *
 * @param currentA        load [A], 0 or more
 * @param capacitanceF    [F], more than 0
 * @param frequencyHz     mains [Hz], more than 0
 * @param pulsesPerCycle  2 full wave, 1 half wave
 * @returns peak to peak [V]
 * @throws RangeError outside those ranges
 * @source textbook
 */
export function rippleBound(
  currentA: number,
  capacitanceF: number,
  frequencyHz: number,
  pulsesPerCycle: 1 | 2,
): number {
  mustNotBeNegative({ currentA })
  mustBePositive({ capacitanceF, frequencyHz })
  return currentA / (pulsesPerCycle * frequencyHz * capacitanceF)
}
