import { type NoLink, noLinkWords } from '../tables/fuseMarks.js'
import { cutOffFromC } from '../tables/fuseRatings.js'
import { fold, phrasePattern } from './fuseMarkingScan.js'

const things: readonly NoLink[] = ['resettable protector', 'thermal cut-off', 'fusible resistor']

const wordsOf = things.map((thing) => {
  const phrases = noLinkWords.filter((word) => word.thing === thing).map(({ phrase }) => phrase)
  // a word of letters ends where its letters end; signs of Japanese and Chinese run on
  return {
    thing,
    pattern: new RegExp(`(?<!\\p{L})(?:${phrasePattern(phrases)})(?![a-z\\u0400-\\u04ff])|(?:${runOn(phrases)})`, 'u'),
  }
})

function runOn(phrases: readonly string[]): string {
  const signs = phrases.filter((phrase) => /[\u3040-\u9fff]/.test(phrase))
  return signs.length > 0 ? phrasePattern(signs) : '(?!)'
}

const temperature = /(?<![\d.,])(\d{2,3})\s?°\s?([cf])?/g
const functioning = /(?<!\p{L})t[fhm]\s?[:=]?\s?\d{2,3}(?!\d|\s?m?a)|(?<!\p{L})ry\s?-?\d{2,3}(?!\d)/u

/**
 * What a text names that is no fuse-link: a thermal cut-off, a resettable protector, a fusible resistor. Null where it names none.
 *
 * @param printed  as made uniform by `tidy`
 */
export function noLinkOf(printed: string): NoLink | null {
  const text = fold(printed)
  const named = wordsOf.find(({ pattern }) => pattern.test(text))
  if (named) return named.thing
  const hot = [...text.matchAll(temperature)].some(
    ([, value, unit]) => (unit === 'f' ? ((Number(value) - 32) * 5) / 9 : Number(value)) >= cutOffFromC.value,
  )
  return hot || functioning.test(text) ? 'thermal cut-off' : null
}
