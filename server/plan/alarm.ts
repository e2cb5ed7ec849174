import { denials, stopWords } from '../tables/stopWords.js'

/** The same letters whatever their size and accents. */
const plain = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()

const tokensOf = (text: string): string[] => plain(text).match(/[\p{L}\p{N}]+/gu) ?? []

const fits = (token: string | undefined, word: string): boolean =>
  token !== undefined && (word.endsWith('*') ? token.startsWith(word.slice(0, -1)) : token === word)

const unspaced = stopWords.filter(({ language }) => language === 'ja').flatMap(({ words }) => words)
const phrases = stopWords
  .filter(({ language }) => language !== 'ja')
  .flatMap(({ words }) => words.map((word) => plain(word).split(' ')))
const isOneOf = (token: string | undefined, words: readonly string[]): boolean =>
  words.some((word) => fits(token, word))

/** How many tokens at this place are words that are a stop; 0 for none. */
const alarmLength = (tokens: readonly string[], at: number): number =>
  Math.max(
    0,
    ...phrases
      .filter((phrase) => phrase.every((word, next) => fits(tokens[at + next], word)))
      .map(({ length }) => length),
  )

/** Clauses: a denial reaches no further than a stop, a comma or a "but". */
function clausesOf(text: string): string[][] {
  const parts = text.split(/[.,;!?\n()–—/、。，．！？；「」（）]|\s-\s/u).map(tokensOf)
  return parts.flatMap((tokens) => {
    const clauses: string[][] = [[]]
    for (const token of tokens)
      if (isOneOf(token, denials.turns)) clauses.push([])
      else clauses.at(-1)?.push(token)
    return clauses
  })
}

function alarmOf(tokens: readonly string[]): string | null {
  // "raucht nicht": a denial that ends its clause denies all of it
  const deniedAll = tokens.length > 1 && isOneOf(tokens.at(-1), denials.words)
  let denied = false
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]
    const length = alarmLength(tokens, at)
    if (length > 0) {
      if (!denied && !deniedAll) return tokens.slice(at, at + length).join(' ')
      // a denial holds for one thing, and for what is joined to it by "or"
      denied = tokens.slice(at + length).some((next) => isOneOf(next, denials.joiners))
      at += length - 1
    } else if (denied && isOneOf(token, denials.without)) denied = false
    else if (isOneOf(token, denials.words)) denied = true
  }
  return null
}

/** A word within a run of letters that has no spaces, unless what stands behind it denies it. */
const alarmWithin = (token: string): string | null =>
  unspaced.find((word) =>
    token
      .split(plain(word))
      .slice(1)
      .some((rest) => !denials.behind.some((none) => rest.startsWith(plain(none)))),
  ) ?? null

/**
 * The first words in what a person wrote that are a stop: "burnt" of "smells burnt", none of "no smoke".
 * A denial counts for what follows it in its clause, up to the next stop, comma or "but"; in doubt a word counts.
 *
 * @returns the words, in small letters without accents; null where there are none
 */
export function alarmIn(text: string): string | null {
  for (const clause of clausesOf(text)) {
    const found = alarmOf(clause) ?? clause.map(alarmWithin).find((word) => word !== null)
    if (found != null) return found
  }
  return null
}
