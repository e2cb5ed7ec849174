import { say, type Words } from '../../words/phrase.js'
import { isSame } from '../../words/unique.js'
import { actionsOf, actionText } from '../action.js'
import { type Judgement, type Text, worstFirst } from '../judgement.js'

/** The same situation with every doubtful figure taken as it was read, and the sentences that name those figures. */
export interface Proposed<Situation> {
  situation: Situation
  doubts: readonly Words[]
}

/**
 * Judges by what is known. Where that is too little and the doubtful figures of a plate would say more, what to do next begins with them.
 *
 * @param proposed  null where no figure is in doubt
 */
export function tellingProposed<Situation>(
  judge: (situation: Situation) => readonly Judgement[],
  known: Situation,
  proposed: Proposed<Situation> | null,
): readonly Judgement[] {
  const judged = judge(known)
  if (!proposed || !judged.some(({ outcome }) => outcome === 'unknown')) return judged
  const others = judge(proposed.situation)
  const worst = worstFirst(others)[0]
  return judged.map((own, index) => {
    const other = others.length === judged.length ? others[index] : worst
    if (own.outcome !== 'unknown' || !other) return own
    return { ...own, say: (): Text => telling(own.say(), other.say(), proposed.doubts) }
  })
}

const telling = (own: Text, other: Text, doubts: readonly Words[]): Text =>
  isSame(own.title, other.title) && isSame(actionWords(own), actionWords(other))
    ? own
    : { ...own, action: [...doubts, ...actionsOf(own.action)] }

const actionWords = ({ action }: Text): Words => actionText(actionsOf(action)) ?? say``
