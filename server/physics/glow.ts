import { mustNotBeNegative } from './range.js'

/** Glow from a filament temperature upwards. */
export interface GlowStep<Word extends string> {
  readonly glow: Word
  readonly fromK: number
}

/**
 * What the eye makes of a filament, in words.
 *
 * @param filamentK  filament temperature [K], 0 or more
 * @param steps      rising temperatures, the first from 0 K
 * @throws RangeError for a negative temperature, NaN included
 * @source the steps' own
 */
export function glow<Word extends string>(filamentK: number, steps: readonly GlowStep<Word>[]): Word {
  mustNotBeNegative({ filamentK })
  const step = steps.findLast(({ fromK }) => filamentK >= fromK)
  if (!step) throw new RangeError('the first glow step must be from 0 K')
  return step.glow
}
