import { denials, stopWords } from '../tables/stopWords.js'
import { fits, lengthAt, plain, tokensOf, wordingsOf } from './wordSearch.js'

const alarms = wordingsOf(stopWords)
const denying = denials.words.map(plain)

const isOneOf = (token: string | undefined, words: readonly string[]): boolean =>
  words.some((word) => fits(token, word))

/** Clauses: a denial reaches no further than a stop, a comma or a "but". */
function clausesOf(text: string): string[][] {
  const parts = plain(text)
    .split(/[.,;!?\n()–—/、。，．！？；「」（）]|\s-\s/u)
    .map(tokensOf)
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
  const deniedAll = tokens.length > 1 && isOneOf(tokens.at(-1), denying)
  let denied = false
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]
    const length = lengthAt(alarms, tokens, at)
    if (length > 0) {
      if (!denied && !deniedAll) return tokens.slice(at, at + length).join(' ')
      // a denial holds for one thing, and for what is joined to it by "or"
      denied = tokens.slice(at + length).some((next) => isOneOf(next, denials.joiners))
      at += length - 1
    } else if (denied && isOneOf(token, denials.without)) denied = false
    else if (isOneOf(token, denying)) denied = true
  }
  return null
}

/** A word within a run of letters that has no spaces, unless what stands before or behind it denies it. */
const alarmWithin = (token: string): string | null =>
  alarms.unspaced.find((word) => {
    const parts = token.split(plain(word))
    return parts
      .slice(1)
      .some(
        (rest, at) =>
          !denials.behind.some((none) => rest.startsWith(plain(none))) &&
          !denials.before.some((none) => parts[at]?.endsWith(plain(none))),
      )
  }) ?? null

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
