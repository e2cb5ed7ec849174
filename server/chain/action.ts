import { joined, type Phrase, type Words } from '../words/phrase.js'
import { isSame, unique } from '../words/unique.js'
import { qualifiedHands } from './words.js'

/** Who does it. */
export type Hands = 'you' | 'qualified'

/** What stands under power while it is done. */
export type Power = 'none' | 'low-voltage' | 'mains'

/** One thing to do about a finding. */
export interface Action {
  readonly do: Words
  readonly who: Hands
  readonly power: Power
  /** it comes near mains wiring: whose work that is stands with it */
  readonly wiring?: true
  /** a part it asks to buy, which another finding may make pointless */
  readonly buys?: 'cord set'
}

/** A bare phrase is done by the reader, with nothing under power. */
export type Doing = Action | Words

const isAction = (doing: Doing): doing is Action => typeof doing === 'object' && 'do' in doing

const asAction = (doing: Doing): Action => (isAction(doing) ? doing : { do: doing, who: 'you', power: 'none' })

/** The reader's own, where mains wiring is near. */
export const nearWiring = (what: Doing): Action => ({ ...asAction(what), wiring: true })

/** The same, as a cord set to buy. */
export const buying = (what: Doing): Action => ({ ...asAction(what), buys: 'cord set' })

/** For a licensed electrician or another qualified person, on the mains side. */
export const byQualified = (what: Doing, power: Power = 'none'): Action => ({
  ...asAction(what),
  who: 'qualified',
  power,
})

/** The reader's own, with something under power. */
export const underPower = (what: Doing, power: Power): Action => ({ ...asAction(what), power })

/** What is to be done, as a list; what is said twice stands once. */
export function actionsOf(doing: Doing | readonly Doing[] | null): Action[] {
  const all = (doing === null ? [] : isList(doing) ? doing : [doing]).map(asAction)
  const kept = unique(all.map((action) => action.do))
  return kept.map((what) => ({
    ...all.find((action) => isSame(action.do, what))!,
    ...(all.some((action) => action.wiring && isSame(action.do, what)) && { wiring: true as const }),
  }))
}

const isList = (doing: Doing | readonly Doing[]): doing is readonly Doing[] => Array.isArray(doing)

/** The actions as one text; whose work mains wiring is stands once, at the end. */
export function actionText(actions: readonly Action[]): Phrase | null {
  if (actions.length === 0) return null
  const hands = actions.some(({ wiring }) => wiring) ? [qualifiedHands] : []
  return joined([...actions.map((action) => action.do), ...hands])
}
