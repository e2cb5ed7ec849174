import type { Polarity } from './labelReading.js'
import type { Token } from './token.js'

type Part = { what: 'place'; centre: boolean; at: number } | { what: 'pole'; plus: boolean; at: number; sign: boolean }

/** Whether a sign may stand between a place and its pole: "TIP: +", "centre-positive". */
const glue = ':=.(),/'
/** Farthest apart the parts of one statement stand, in tokens. */
const reach = 3

/**
 * Polarity in words or signs beside words: "centre negative", "TIP + SLEEVE -", "innen plus".
 * Places and poles are read in pairs as they come; pairs that contradict each other, or a pole too many, give nothing.
 *
 * @returns each statement with the tokens it was read from
 */
export function polarityWords(tokens: readonly Token[]): { polarity: Polarity; tokens: number[] }[] {
  const found: { polarity: Polarity; tokens: number[] }[] = []
  let run: Part[] = []
  const close = (): void => {
    found.push(...pairs(run))
    run = []
  }
  tokens.forEach((token, at) => {
    if (token.type === 'word' && (token.meaning === 'centre positive' || token.meaning === 'centre negative')) {
      close()
      found.push({
        polarity: token.meaning === 'centre positive' ? 'centre-positive' : 'centre-negative',
        tokens: [at],
      })
      return
    }
    const part = partAt(tokens, at)
    if (part) {
      if (run.length > 0 && at - run[run.length - 1]!.at > reach) close()
      run.push(part)
      return
    }
    const isGlue = token.type === 'sign' && (glue.includes(token.sign) || token.sign === '-')
    if (!isGlue && run.length > 0) close()
  })
  close()
  return found
}

function partAt(tokens: readonly Token[], at: number): Part | null {
  const token = tokens[at]!
  if (token.type === 'word') {
    if (token.meaning === 'centre' || token.meaning === 'outer')
      return { what: 'place', centre: token.meaning === 'centre', at }
    if (token.meaning === 'plus' || token.meaning === 'minus')
      return { what: 'pole', plus: token.meaning === 'plus', at, sign: false }
    return null
  }
  if (token.type !== 'sign') return null
  if (token.sign === '⊕' || token.sign === '⊖') return { what: 'pole', plus: token.sign === '⊕', at, sign: true }
  if (token.sign !== '+' && token.sign !== '-') return null
  const next = tokens[at + 1]
  // a sign of a voltage, a bullet, or the hyphen in "centre-positive"
  if (next?.type === 'number' && !token.spaceAfter) return null
  if (token.sign === '-') {
    const before = tokens[at - 1]
    const afterPlace = before?.type === 'word' && (before.meaning === 'centre' || before.meaning === 'outer')
    const nextPole = next?.type === 'word' && (next.meaning === 'plus' || next.meaning === 'minus')
    const nextSign = next?.type === 'sign' && '⊕⊖+'.includes(next.sign)
    const beforeEqual = before?.type === 'sign' && (before.sign === ':' || before.sign === '=')
    const ends =
      !next ||
      next.type === 'line' ||
      next.type === 'number' ||
      (next.type === 'sign' && ',;)/'.includes(next.sign)) ||
      (next.type === 'word' && (next.meaning === 'outer' || next.meaning === 'centre'))
    if (nextPole || nextSign || !ends || !(afterPlace || beforeEqual)) return null
  }
  return { what: 'pole', plus: token.sign === '+', at, sign: true }
}

function pairs(run: readonly Part[]): { polarity: Polarity; tokens: number[] }[] {
  if (run.length === 0 || run.length % 2 === 1) return []
  const out: { polarity: Polarity; tokens: number[] }[] = []
  for (let index = 0; index < run.length; index += 2) {
    const [one, other] = [run[index]!, run[index + 1]!]
    const place = one.what === 'place' ? one : other
    const pole = one.what === 'pole' ? one : other
    if (place.what !== 'place' || pole.what !== 'pole') return []
    out.push({
      polarity: place.centre === pole.plus ? 'centre-positive' : 'centre-negative',
      tokens: [place.at, pole.at],
    })
  }
  return out
}
