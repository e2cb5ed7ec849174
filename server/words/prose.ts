import { Phrase } from './phrase.js'

/** A decimal number: not part of a longer chain as 8.1.4 and 60320.1:2004 are, and not glued to letters as in T1.6A. */
const decimalNumber = /(?<![\p{L}\d.])(\d+)\.(\d+)(?![\p{L}\d]|[.:]\d)/gu

/** What stands in “ ” was printed or typed so, and stays. */
const quotation = /(“[^“”]*”)/

/**
 * Words that stand as data in a table, with their figures among them: told with the reader's decimal sign. What the program puts
 * together itself is a phrase of words and quantities instead; what was typed or printed is told as it stands.
 */
export const prose = (text: string): Phrase =>
  new Phrase(({ decimal, catalogue }) =>
    (catalogue?.[text] ?? text)
      .split(quotation)
      .map((piece, at) => (at % 2 === 0 ? piece.replace(decimalNumber, `$1${decimal}$2`) : piece))
      .join(''),
  )
