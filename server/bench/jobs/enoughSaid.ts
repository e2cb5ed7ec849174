/** Letters that a cause in one word takes at least: less says nothing. */
export const fewestLetters = 8

const lettersOf = (word: string): number => (word.match(/\p{L}/gu) ?? []).length

const isRepeated = (word: string): boolean => /^(.{1,2})\1+$/u.test(word)

/** Signs that say a word each two of them do. */
const dense = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]{2}/u

/** Whether there are two words, of as many letters as given or more, or one of eight letters. */
export function enoughSaid(given: readonly string[], least = 2): boolean {
  const words = given.filter((word) => lettersOf(word) >= least && !isRepeated(word))
  return (
    new Set(words).size >= 2 || words.some((word) => lettersOf(word) >= fewestLetters) || dense.test(given.join(''))
  )
}

/** What a phone can tell of a cause without the tables: whether it is long enough. */
export const isLongEnough = (text: string): boolean => enoughSaid(text.match(/[\p{L}\p{N}]+/gu) ?? [])
