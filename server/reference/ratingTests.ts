import type { Sourced } from './sourced.js'

/** How far from its rated voltage a plate of one kind was run in its type test. */
export interface RatingTest extends Sourced {
  readonly standard: string
  readonly applies: 'any plate' | 'plate of 230 V' | 'wide window'
  /** fraction below the lowest rated voltage */
  readonly below: number
  /** fraction above the highest rated voltage */
  readonly above: number
}

export const ratingTests: readonly RatingTest[] = []

/**
 * The test that applies to a plate's window [V]: ±10 % for a plate of 230 V and for a wide window, else +6/−10 %.
 * A window is wide when its top is at least 1.5 times its bottom (100–240 V is; 220–240 V is not).
 *
 * @source the rows above
 */
export function ratingTestFor(window: { min: number; max: number }): RatingTest {
  const applies: RatingTest['applies'] =
    window.max >= 1.5 * window.min
      ? 'wide window'
      : window.min === 230 && window.max === 230
        ? 'plate of 230 V'
        : 'any plate'
  const row = ratingTests.find((test) => test.applies === applies)
  if (!row) throw new RangeError(`no rating test for ${applies}`)
  return row
}
