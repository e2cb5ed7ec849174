import { isDigit, isIdeograph, isLetter } from './characters.js'
import { foldWord } from './fold.js'

/** Folded text in the form in which hazard words are looked for, with the way back. */
export interface HazardText {
  readonly text: string
  /** for each character of `text` the index in the folded text it came from */
  readonly from: readonly number[]
}

/**
 * Words alone, with one space between them: punctuation, hyphens and line ends are spaces, a figure is `#` (as in the table), and scripts that set no
 * spaces have none. A plus, a bracket and a percent sign stay; so does a minus with no letter or figure before it. `0`, as in "class 0", and figures that end a
 * word, as in "S2", stay as they are.
 *
 * @param upper  folded text in capitals
 */
export function hazardText(upper: string): HazardText {
  const text: string[] = []
  const from: number[] = []
  const put = (one: string, at: number): void => {
    text.push(one)
    from.push(at)
  }
  /** A space, unless there is one, or a script without spaces stands before it. */
  const space = (at: number): void => {
    const last = text.at(-1)
    if (last !== undefined && last !== ' ' && !isIdeograph(last)) put(' ', at)
  }
  let at = 0
  while (at < upper.length) {
    const one = upper.charAt(at)
    const before = upper.charAt(at - 1)
    if (isIdeograph(one)) {
      if (text.at(-1) === ' ') {
        text.pop()
        from.pop()
      }
      put(one, at)
      at += 1
    } else if (isLetter(one)) {
      if (text.at(-1) === '#') space(at)
      put(one, at)
      at += 1
    } else if (one === '#') {
      put(one, at)
      at += 1
    } else if (isDigit(one) && isLetter(before)) {
      while (isDigit(upper.charAt(at))) {
        put(upper.charAt(at), at)
        at += 1
      }
    } else if (isDigit(one)) {
      let end = at + 1
      while (isDigit(upper.charAt(end)) || (/[.,/]/.test(upper.charAt(end)) && isDigit(upper.charAt(end + 1)))) end += 1
      const figure = upper.slice(at, end)
      if (/^0\d?$/.test(figure)) for (let next = at; next < end; next += 1) put(upper.charAt(next), next)
      else put('#', at)
      if (figure === '0' && isLetter(upper.charAt(end))) space(at)
      at = end
    } else if (
      one === '+' ||
      one === '%' ||
      (one === '-' && !isLetter(before) && !isDigit(before)) ||
      '()'.includes(one)
    ) {
      space(at)
      put(one, at)
      space(at)
      at += 1
    } else {
      if (one !== "'") space(at)
      at += 1
    }
  }
  if (text.at(-1) === ' ') {
    text.pop()
    from.pop()
  }
  return { text: text.join(''), from }
}

/** Words of a table as a text to be searched is written. */
export const normalWords = (words: string): string => hazardText(foldWord(words)).text
