import { emptyWords } from '../tables/emptyWords.js'
import { tokensOf, without, wordingsOf } from './wordSearch.js'

const nobody = wordingsOf(emptyWords.filter(({ about }) => about === 'nobody'))

/** Letters that a name has at least. */
const fewestLetters = 2

const lettersOf = (word: string): number => (word.match(/\p{L}/gu) ?? []).length

/** Whether words name who tested: a name of two letters, or of one sign that is a name, and no word for nobody. */
export function namesTester(words: string | null | undefined): words is string {
  if (words == null) return false
  const left = without(nobody, words)
  return (
    left.join(' ') === tokensOf(words).join(' ') &&
    left.some((word) => /\p{Script=Han}/u.test(word) || (lettersOf(word) >= fewestLetters && !/^(.)\1*$/u.test(word)))
  )
}
