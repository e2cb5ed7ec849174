import { type RatingTest, ratingTestFor, widerTestV } from '../../tables/ratingTests.js'
import type { Source } from '../../tables/source.js'
import type { VoltageWindow } from '../case/request.js'

/**
 * The highest voltage a plate's type test went to [V], with the rated voltage [V] and the fraction [1] it comes from: of its own test, or
 * of that of a plate of 230 V where its window takes in that voltage and its own test was lower.
 *
 *   V_tested = V_rated (1 + above)
 *
 * @source the rows of ratingTests.ts
 */
export function testedTop(window: VoltageWindow): {
  testedV: number
  ratedV: number
  above: number
  sources: readonly Source[]
} {
  const top = (ratedV: number, { above, sources }: RatingTest) => ({
    testedV: ratedV * (1 + above),
    ratedV,
    above,
    sources,
  })
  const own = top(window.max, ratingTestFor(window))
  if (!(window.min <= widerTestV.value && widerTestV.value <= window.max)) return own
  const wider = top(widerTestV.value, ratingTestFor({ min: widerTestV.value, max: widerTestV.value }))
  return wider.testedV > own.testedV ? wider : own
}
