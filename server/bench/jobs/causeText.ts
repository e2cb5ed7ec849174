import { tokensOf, without, wordingsOf } from '../../plan/wordSearch.js'
import { emptyWords } from '../../tables/emptyWords.js'
import { enoughSaid } from './enoughSaid.js'

const notKnown = wordingsOf(emptyWords.filter(({ about }) => about === 'not known'))

/** Whether words can be the cause of a stop: two words, or eight letters, that do not say that it is not known. */
export function saysCause(text: string): boolean {
  const left = without(notKnown, text)
  // beside words for not knowing, only words of some length tell something
  return enoughSaid(left, left.join('') === tokensOf(text).join('') ? 2 : 4)
}
