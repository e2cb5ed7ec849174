import { mustBePositive, mustNotBeNegative } from './range.js'

/** Relative slack: a value that differs from a preferred one only by binary rounding counts as that value. */
const slack = 1e-9

function check(value: number, decade: readonly number[]): void {
  mustBePositive({ value })
  if (decade.length === 0) throw new RangeError('decade must hold at least one value')
}

/** The preferred values from one decade below `value` to one above, rising; powers of ten kept free of binary dust. */
function around(value: number, decade: readonly number[]): number[] {
  const exponent = Math.floor(Math.log10(value))
  return [exponent - 1, exponent, exponent + 1].flatMap((power) =>
    decade.map((step) => Number((step * 10 ** power).toPrecision(6))),
  )
}

/**
 * The smallest preferred value not below `value`: for a load resistor, never more current than was asked for.
 *
 * @param value   any quantity [its own unit], more than 0
 * @param decade  one decade of preferred numbers [1], from 1 up to below 10, rising
 * @throws RangeError when value is not a finite number above 0, or the decade is empty
 * @source IEC 60063 (the numbers); choice of side: arithmetic
 */
export function nextUp(value: number, decade: readonly number[]): number {
  check(value, decade)
  return around(value, decade).find((step) => step >= value * (1 - slack)) as number
}

/**
 * The largest preferred value not above `value`: for a bleeder, never slower than was asked for.
 *
 * @param value   any quantity [its own unit], more than 0
 * @param decade  one decade of preferred numbers [1], from 1 up to below 10, rising
 * @throws RangeError when value is not a finite number above 0, or the decade is empty
 * @source IEC 60063 (the numbers); choice of side: arithmetic
 */
export function nextDown(value: number, decade: readonly number[]): number {
  check(value, decade)
  return around(value, decade).findLast((step) => step <= value * (1 + slack)) as number
}

/**
 * The preferred value nearest to `value` by difference; of two equally near, the larger.
 *
 * @param value   any quantity [its own unit], more than 0
 * @param decade  one decade of preferred numbers [1], from 1 up to below 10, rising
 * @throws RangeError when value is not a finite number above 0, or the decade is empty
 * @source IEC 60063 (the numbers)
 */
export function nearest(value: number, decade: readonly number[]): number {
  const down = nextDown(value, decade)
  const up = nextUp(value, decade)
  return value - down < up - value ? down : up
}

/**
 * The smallest rating that is at least `needed`.
 *
 * @param needed   quantity that must be covered [its own unit], 0 or more
 * @param ratings  ratings on sale [same unit], rising
 * @returns undefined where none is large enough
 * @throws RangeError when needed is negative or not finite
 * @source arithmetic
 */
export function standardRating(needed: number, ratings: readonly number[]): number | undefined {
  mustNotBeNegative({ needed })
  return ratings.find((rating) => rating >= needed * (1 - slack))
}
