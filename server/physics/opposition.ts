import { mustBePositive } from './range.js'

/**
 * What a small transformer in opposition carries: its secondary stands in series against the mains, takes off the difference, and carries
 * the whole current of the load.
 *
 *   S = (V_mains − V_wanted) · I
 *
 * @param mainsV    mains [V rms], more than `wantedV`
 * @param wantedV   what the load should get [V rms], more than 0
 * @param currentA  what the load takes [A rms], more than 0
 * @returns apparent power [VA]
 * @throws RangeError outside those ranges
 * @source arithmetic
 */
export function oppositionVA(mainsV: number, wantedV: number, currentA: number): number {
  mustBePositive({ mainsV, wantedV, currentA })
  if (!(mainsV > wantedV)) throw new RangeError(`mainsV must be more than wantedV ${wantedV} V, got ${mainsV}`)
  return (mainsV - wantedV) * currentA
}
