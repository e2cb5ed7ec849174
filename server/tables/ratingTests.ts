import { frozen } from './frozen.js'
import { fromMemory, published } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'
import { wideWindowRatio } from './thresholds.js'

/** How far from its rated voltage a plate of one kind was run in its type test. */
export interface RatingTest extends Sourced {
  readonly standard: string
  readonly applies: 'any plate' | 'plate of 230 V' | 'wide window'
  /** fraction below the lowest rated voltage */
  readonly below: number
  /** fraction above the highest rated voltage */
  readonly above: number
}

const iec60950 = published(
  'IEC 950 / IEC 60950, clauses 1.4.4, 1.4.5 and 1.6.5',
  'as quoted in the emc-pstc list archive, messages 12450 and 12477',
)
const iec60950FromMemory = fromMemory('IEC 60950-1, clause 1.4.5', 'supply tolerance +6/−10 %, but ±10 % for 230 V')

// biome-ignore format: a row a line
export const ratingTests = rows<RatingTest>()(['standard', 'applies', 'below', 'above', 'sources'], [
  ['IEC 60950-1', 'any plate', 0.1, 0.06, [iec60950, iec60950FromMemory]],
  ['IEC 60950-1', 'plate of 230 V', 0.1, 0.1, [iec60950, iec60950FromMemory]],
  ['IEC 62368-1', 'wide window', 0.1, 0.1, [published('Test report CQASZ20210400194S', 'a plate of 100–240 V run at 90, 100, 240 and 264 V, 50 and 60 Hz'), fromMemory('IEC 62368-1, clause B.2.3', 'supply tolerance ±10 %')], { doubt: 'Seen in one test report; the clause is from memory.' }],
])

/** The one rated voltage that IEC 60950-1 singles out for ±10 % [V]. */
export const widerTestV = frozen({ value: 230, unit: 'V', source: iec60950 } as const)

/**
 * The test that applies to a plate's window [V]: ±10 % for a plate of 230 V and for a wide window, else +6/−10 %.
 *
 * @source the rows above
 */
export function ratingTestFor(window: { min: number; max: number }): RatingTest {
  const applies: RatingTest['applies'] =
    window.max >= wideWindowRatio.value * window.min
      ? 'wide window'
      : window.min === widerTestV.value && window.max === widerTestV.value
        ? 'plate of 230 V'
        : 'any plate'
  const row = ratingTests.find((test) => test.applies === applies)
  if (!row) throw new RangeError(`no rating test for ${applies}`)
  return row
}

export const ratingTestsTable = table<RatingTest>({
  name: 'rating-tests',
  title: 'How far a rating plate was tested',
  intro: 'How far below and above its printed voltage a unit was run in its type test, by the kind of plate.',
  rows: ratingTests,
  id: ({ standard, applies }) => [standard, applies],
  columns: [
    { key: 'standard', title: 'Standard' },
    { key: 'applies', title: 'Plate', unique: true },
    { key: 'below', title: 'Below the plate', each: '%', from: 0, to: 0.2 },
    { key: 'above', title: 'Above the plate', each: '%', from: 0, to: 0.2 },
  ],
})
