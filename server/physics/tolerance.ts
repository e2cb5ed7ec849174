/**
 * How far a voltage lies from the one wanted, as a share of the one wanted.
 *
 *   δ = (V − V_wanted) / |V_wanted|
 *
 * @param voltageV  voltage found [V], signed
 * @param wantedV   voltage wanted [V], signed, not 0
 * @returns deviation [1]; 0.05 is 5 % high, −0.05 is 5 % low (towards the negative side for negative rails too)
 * @throws RangeError when wantedV is 0 or either is NaN
 * @source arithmetic
 */
export function deviation(voltageV: number, wantedV: number): number {
  if (!(Math.abs(wantedV) > 0)) throw new RangeError(`wantedV must not be 0 V, got ${wantedV}`)
  if (Number.isNaN(voltageV)) throw new RangeError('voltageV must be a number, got NaN')
  return (voltageV - wantedV) / Math.abs(wantedV)
}

/**
 * Whether a value is at most a limit, with a billionth of slack so that 12.6 against 12 · 1.05 counts as at the limit.
 *
 * @param value  any number [same unit as limit]
 * @param limit  any number
 * @returns true at or under the limit; false for NaN
 * @source arithmetic of binary fractions: 12 · 1.05 is 12.600000000000001
 */
export const atMost = (value: number, limit: number): boolean => value <= limit + 1e-9 * Math.abs(limit) + 1e-12
