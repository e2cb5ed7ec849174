import { say, type Words } from '../../words/phrase.js'
import { isSame } from '../../words/unique.js'
import { actionsOf, actionText } from '../action.js'
import { byWorst } from '../finding.js'
import { type Judgement, type Text, unknown, worstFirst } from '../judgement.js'

/** The same situation with every doubtful figure taken as it was read, and the sentences that name those figures. */
export interface Proposed<Situation> {
  situation: Situation
  doubts: readonly Words[]
}

/**
 * Judges by what is known. Where that is too little and the doubtful figures of a plate would say more, what to do next begins with them;
 * where what is taken in their place comes to better than they would, it is not known.
 *
 * @param proposed  null where no figure is in doubt
 */
export function tellingProposed<Situation>(
  judge: (situation: Situation) => readonly Judgement[],
  known: Situation,
  proposed: Proposed<Situation> | null,
): readonly Judgement[] {
  const judged = judge(known)
  if (!proposed) return judged
  const others = judge(proposed.situation)
  const worst = worstFirst(others)[0]
  return judged.map((own, index) => {
    const other = others.length === judged.length ? others[index] : worst
    if (!other) return own
    if (own.outcome === 'unknown') return { ...own, say: (): Text => telling(own.say(), other.say(), proposed.doubts) }
    return byWorst(other, own) < 0 && own.outcome !== 'stop' ? inDoubt(own, other, proposed.doubts) : own
  })
}

/** What would be worse by the figure in doubt is not known until someone looked at it. */
const inDoubt = (own: Judgement, other: Judgement, doubts: readonly Words[]): Judgement =>
  unknown(() => {
    const [kept, read] = [own.say(), other.say()]
    return {
      ...read,
      title: say`${kept.title}; but a figure of the plate that is in doubt says otherwise`,
      working: [...kept.working, say`with that figure as it was read: ${read.title}`],
      action: [...doubts],
    }
  })

const telling = (own: Text, other: Text, doubts: readonly Words[]): Text =>
  isSame(own.title, other.title) && isSame(actionWords(own), actionWords(other))
    ? own
    : { ...own, action: [...doubts, ...actionsOf(own.action)] }

const actionWords = ({ action }: Text): Words => actionText(actionsOf(action)) ?? say``
