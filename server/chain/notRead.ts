import type { LabelReading } from '../plate/labelReading.js'
import { mayUndo, type SpokenOf, speaksOf } from '../plate/openPhrases.js'
import { commonPractice } from '../tables/source.js'
import { listed, type Phrase, say } from '../words/phrase.js'
import type { PairSituation } from './case/situation.js'
import { caution, type Judgement, type Text, unknown } from './judgement.js'
import { ratingPlate } from './words.js'

const unreadCounts = commonPractice(
  'Words that were not read',
  'nobody knows whether they take away what the figures promise until someone has read them',
)

const quoted = (phrases: readonly string[]) => listed(phrases.map((phrase) => `“${phrase}”`))

/**
 * As long as a phrase was not read, nothing better than care is said; where it has volts, a kind of current or damage in it, what the
 * figures promise is not known.
 */
export function notRead(
  on: 'supply' | 'machine',
  { openPhrases, reading }: { openPhrases: readonly string[]; reading: LabelReading | null },
): Judgement[] {
  if (openPhrases.length === 0 || !reading) return []
  const undoing = openPhrases.filter((phrase) => mayUndo(phrase, reading))
  const others = openPhrases.filter((phrase) => !undoing.includes(phrase))
  return [
    ...(undoing.length === 0
      ? []
      : [
          unknown(() =>
            words(
              on,
              undoing,
              say`It may undo what the figures promise: another voltage, another kind of current, damage.`,
            ),
          ),
        ]),
    ...(others.length === 0
      ? []
      : [
          caution(() =>
            words(
              on,
              others,
              say`It may take away what the figures promise: only for one thing, only for a short time, not isolated.`,
            ),
          ),
        ]),
  ]
}

const words = (on: 'supply' | 'machine', phrases: readonly string[], why: Phrase): Text => ({
  title: say`Not read on the ${on}’s plate: ${quoted(phrases)}`,
  why,
  working: [],
  action: say`Read it, or have it translated; enter what it says where there is a field for it, and dismiss it if it does not matter.`,
  sources: [ratingPlate, unreadCounts],
})

/** A phrase that was not read and speaks of what a topic decides leaves that topic unknown, whatever was entered. */
export function notReadOn(
  { supply, device }: PairSituation,
  of: SpokenOf,
  sides: readonly ('supply' | 'machine')[] = ['supply', 'machine'],
): Judgement[] {
  if (supply.openPhrases.length + device.openPhrases.length === 0) return []
  return sides.flatMap((on) => {
    const phrases = (on === 'supply' ? supply : device).openPhrases.filter((phrase) => speaksOf(phrase, of))
    if (phrases.length === 0) return []
    return [
      unknown(() => ({
        title: say`The ${on}’s plate speaks of the ${of} in words that were not read: ${quoted(phrases)}`,
        why: say`They may say the opposite of what was read or entered.`,
        working: [],
        action: say`Read them on the plate, or have them translated; dismiss them only if they change nothing.`,
        sources: [ratingPlate, unreadCounts],
      })),
    ]
  })
}
