const letter = /^\p{L}$/u
const ideograph = /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\u30FC]$/u

export const isDigit = (one: string): boolean => one >= '0' && one <= '9' && one.length === 1

/** A character of a script that sets no spaces between words. */
export const isIdeograph = (one: string): boolean => one > '\u1100' && ideograph.test(one)

/** A letter of an alphabet, in which a word ends where its letters end. */
export function isLetter(one: string): boolean {
  if (one < '\u0080') return (one >= 'a' && one <= 'z') || (one >= 'A' && one <= 'Z')
  return letter.test(one) && !isIdeograph(one)
}

export const isSpace = (one: string): boolean => one === ' ' || one === '\t'

/** A letter or a digit: part of a word. */
export const isPart = (one: string): boolean => isLetter(one) || isDigit(one)
