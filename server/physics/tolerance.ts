/**
 * Whether a value is at most a limit, with a billionth of slack so that 12.6 against 12 · 1.05 counts as at the limit.
 *
 * @param value  any number [same unit as limit]
 * @param limit  any number
 * @returns true at or under the limit; false for NaN
 * @source arithmetic of binary fractions: 12 · 1.05 is 12.600000000000001
 */
export const atMost = (value: number, limit: number): boolean => value <= limit + 1e-9 * Math.abs(limit) + 1e-12
