import { commonPractice } from '../../tables/source.js'
import { type Phrase, say } from '../../words/phrase.js'
import { actionsOf, type Doing } from '../action.js'
import { byWorst, type Outcome } from '../finding.js'
import { type Judgement, type Text, uniqueSources, worstFirst } from '../judgement.js'

/**
 * A fact that was entered against what the words of the plate, or the tables, say. The topics are judged by the entry; where the other
 * would have come to worse, the finding says so, and is no better than the contradiction weighs.
 */
export interface Contradiction<Side> {
  /** both, as the last words of a sentence: "the plate’s text says class I, class II was entered" */
  says: Phrase
  /**
   * Amperes and watts are told only, as a wrong one overloads and no more; so is a socket, which is seen. Anything else can destroy
   * at once, and what it decides is not known until one of the two is put right; what the site's own lists say wants care.
   */
  weighs: 'unknown' | 'caution' | 'remark'
  /** where to look again, as a sentence */
  lookAgain: Doing
  /** the same side as it would be without the entry */
  otherwise: Side
}

const entryDecides = commonPractice(
  'An entry against the plate’s text or the tables',
  'one of the two is wrong, and nobody knows which until the plate was looked at again: where the plate would be worse, the entry alone clears nothing',
)

/**
 * Judges as entered, and tells what is overruled by it: a judgement that would be worse otherwise says so, and one that only
 * the entry makes better comes to what the contradiction weighs, though never to worse than it would be without the entry.
 *
 * @param judge       one topic, or any other judgement that gives its answers in a fixed order
 * @param overruled   the situations that were overruled
 */
export function tellingOverruled<Situation>(
  judge: (situation: Situation) => readonly Judgement[],
  entered: Situation,
  overruled: readonly Contradiction<Situation>[],
): readonly Judgement[] {
  const judged = judge(entered)
  if (overruled.length === 0) return judged
  return overruled.reduce<readonly Judgement[]>((told, contradiction) => {
    const others = judge(contradiction.otherwise)
    const worst = worstFirst(others)[0]
    return told.map((own, index) => {
      const other = others.length === told.length ? others[index] : worst
      return other && byWorst(other, own) < 0 ? telling(own, other, contradiction) : own
    })
  }, judged)
}

const worseOf = (one: Outcome, other: Outcome): Outcome =>
  byWorst({ outcome: one }, { outcome: other }) <= 0 ? one : other
const betterOf = (one: Outcome, other: Outcome): Outcome => (worseOf(one, other) === one ? other : one)

const telling = (own: Judgement, other: Judgement, { says, weighs, lookAgain }: Contradiction<unknown>): Judgement => ({
  ...own,
  outcome: weighs === 'remark' ? own.outcome : worseOf(own.outcome, betterOf(weighs, other.outcome)),
  say: (): Text => {
    const text = own.say()
    return {
      ...text,
      title: say`${text.title}; but ${says}`,
      ...(text.lead && { lead: say`${text.lead}; but ${says}` }),
      why: say`${text.why} This goes by what was entered; if it is the entry that is wrong, this is too.`,
      working: [...text.working, say`without the entry: ${other.say().title}`],
      action: [...actionsOf(text.action), ...actionsOf(lookAgain)],
      sources: uniqueSources([...text.sources, entryDecides]),
    }
  },
})
