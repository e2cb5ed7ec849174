import { mustBePositive } from './range.js'

/**
 * Voltage on the two reservoir capacitors of a switch-mode supply whose selector stands on the low mains range.
 *
 *   V = 2 · √2 · V_mains
 *
 * @param mainsV  mains voltage [V], more than 0
 * @returns voltage across both capacitors together [V]; on 230 V, 651 V where 325 V is meant
 * @throws RangeError outside that range, NaN included
 * @source crest of a sine, taken twice by the voltage doubler of the low range
 */
export function doublerVoltageV(mainsV: number): number {
  mustBePositive({ mainsV })
  return 2 * Math.SQRT2 * mainsV
}
