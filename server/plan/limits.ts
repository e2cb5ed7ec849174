/** What a reading is held against, as data; bounds are in the unit of the step, null where there is none. */
export interface Limits {
  low: number | null
  high: number | null
  /** the bounds themselves lie outside: a source that stands at its limit is limiting */
  strict?: true | null
  /** key of an earlier step: no more than what was read there last */
  notAbove?: string | null
}

/** How a reading stands to its limits; of what is broken, the bound that is. */
export type Held =
  | { as: 'within' }
  | { as: 'no limit' }
  | { as: 'nothing before' }
  | { as: 'too low' | 'too high' | 'risen'; bound: number }

/**
 * Holds a reading against its limits.
 *
 *   within: low ≤ x ≤ high, without the bounds where strict; |x| ≤ |x before| where it may not rise
 *
 * @param value   in the unit of the limits; Infinity for a meter that shows "over its range"
 * @param limits  of the step
 * @param before  what was read last at the step it may not exceed; null where nothing was
 * @returns what no number is lies outside every bound
 * @source arithmetic
 */
export function heldAgainst(value: number, { low, high, strict, notAbove }: Limits, before: number | null): Held {
  if (low !== null && (strict ? !(value > low) : !(value >= low))) return { as: 'too low', bound: low }
  if (high !== null && (strict ? !(value < high) : !(value <= high))) return { as: 'too high', bound: high }
  if (notAbove != null) {
    if (before === null) return { as: 'nothing before' }
    if (!(Math.abs(value) <= Math.abs(before))) return { as: 'risen', bound: before }
    return { as: 'within' }
  }
  return low === null && high === null ? { as: 'no limit' } : { as: 'within' }
}
