import { tokensOf, without, wordingsOf } from '../../plan/wordSearch.js'
import { emptyWords } from '../../tables/emptyWords.js'

/** Letters that a cause in one word takes at least: less says nothing. */
export const fewestLetters = 8

const notKnown = wordingsOf(emptyWords.filter(({ about }) => about === 'not known'))

const lettersOf = (word: string): number => (word.match(/\p{L}/gu) ?? []).length

/** Letters of one sign each, as ideographs are: two of them say what a word says. */
const isDense = (words: readonly string[]): boolean =>
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]{2}/u.test(words.join(''))

const isRepeated = (word: string): boolean => /^(.{1,2})\1+$/u.test(word)

/** Whether words can be the cause of a stop: two words, or eight letters, that do not say that it is not known. */
export function saysCause(text: string): boolean {
  const left = without(notKnown, text)
  // beside words for not knowing, only words of some length tell something
  const least = left.join('') === tokensOf(text).join('') ? 2 : 4
  const words = left.filter((word) => lettersOf(word) >= least && !isRepeated(word))
  return new Set(words).size >= 2 || words.some((word) => lettersOf(word) >= fewestLetters) || isDense(left)
}
