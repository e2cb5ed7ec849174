import type { Folded } from './fold.js'
import type { Polarity } from './labelReading.js'
import { type Clause, clausesOf, type Piece } from './polarityClauses.js'
import type { Token } from './token.js'

/** What a clause says of the polarity, and where it stands in the folded text. */
export interface PolarityClause {
  polarity: Polarity
  start: number
  end: number
}

interface Pair {
  centre: boolean
  pole: 'plus' | 'minus' | 'earth'
  doubtful: boolean
}

/** `broken`: a place without a pole, a pole without a place, or a word that is not known. */
type Said = { clause: Clause; pairs: Pair[] } | 'broken' | 'nothing'

/** Most dashes of a clause; each may be a minus sign or none. */
const mostDashes = 4

/**
 * Polarity in words or signs beside words: "centre negative", "TIP + SLEEVE -", "innen ist Plus, außen ist Minus".
 *
 * Each clause pairs its places with its poles, whatever known filler stands between. A clause that leaves one over makes its line
 * say nothing, and the line that goes on from it; so does an unknown word beside a place, and a sentence that denies.
 * Earth is the minus of one place only where the other is called plus.
 *
 * @param tokens  the whole text, cut
 * @returns the clauses that decide; they may contradict each other
 */
export function polarityWords(folded: Folded, tokens: readonly Token[]): PolarityClause[] {
  const lines = linesOf(tokens).map((line) => clausesOf(folded, line).map((clause) => ({ clause, said: said(clause) })))
  return lines.flatMap((line, index) => {
    if (line.some((one) => one.said === 'broken')) return []
    // half a statement at the end of one line may be the other half of what stands in the next
    const [first, last] = [line[0], line.at(-1)]
    const torn =
      (first !== undefined && first.said !== 'nothing' && lines[index - 1]?.at(-1)?.said === 'broken') ||
      (last !== undefined && last.said !== 'nothing' && lines[index + 1]?.[0]?.said === 'broken')
    return torn ? [] : statements(line.flatMap((one) => (typeof one.said === 'string' ? [] : [one.said])))
  })
}

function linesOf(tokens: readonly Token[]): Token[][] {
  const lines: Token[][] = [[]]
  for (const token of tokens) {
    if (token.type === 'line') lines.push([])
    else lines.at(-1)!.push(token)
  }
  return lines
}

const isPlace = ({ is }: Piece): boolean => is === 'centre' || is === 'outer' || is === 'pin'
const isPole = ({ is }: Piece): boolean => is === 'plus' || is === 'minus' || is === 'earth'

function said(clause: Clause): Said {
  const { pieces } = clause
  if (clause.deniesNext) return 'broken'
  const places = pieces.filter(isPlace)
  const poles = pieces.filter(isPole)
  // signs without a place are those of rails and lists
  if (places.length === 0 && poles.every(({ sign }) => sign)) return 'nothing'
  if (clause.denied) return 'nothing'
  const known = pieces.every(({ is }) => is !== 'unknown')
  const pairs = known ? readings(pieces) : null
  if (pairs) return { clause, pairs }
  return [...places, ...poles].every(({ everyday, sign }) => everyday || sign) ? 'nothing' : 'broken'
}

/**
 * The pairs of a clause, each dash taken as a minus sign or left out; null where no reading comes out, or several that differ.
 * Of readings that agree the one that leans least on doubtful dashes.
 */
function readings(pieces: readonly Piece[]): Pair[] | null {
  const dashes = pieces.filter(({ is }) => is === 'dash')
  if (dashes.length > mostDashes || isFlanked(pieces)) return null
  const found: Pair[][] = []
  for (let choice = 0; choice < 2 ** dashes.length; choice += 1) {
    const pairs = pairsOf(
      pieces.flatMap((piece): Piece[] => {
        if (piece.is !== 'dash') return [piece]
        return choice & (2 ** dashes.indexOf(piece)) ? [{ ...piece, is: 'minus' }] : []
      }),
    )
    if (pairs) found.push(pairs)
  }
  if (found.length === 0 || new Set(found.flat().flatMap(tells)).size > 1) return null
  const doubts = (pairs: Pair[]): number => pairs.filter(({ doubtful }) => doubtful).length
  return found.reduce((best, one) => (doubts(one) < doubts(best) ? one : best))
}

/** "+ CENTER -": of one place with a sign on either side it is not told which is its own. */
function isFlanked(pieces: readonly Piece[]): boolean {
  const at = pieces.findIndex(isPlace)
  if (at < 0 || pieces.filter(isPlace).length > 1) return false
  const signs = (part: readonly Piece[]): boolean =>
    part.some((piece) => piece.is === 'dash' || (isPole(piece) && piece.sign))
  return (
    signs(pieces.slice(0, at)) && signs(pieces.slice(at + 1)) && pieces.every((piece) => !isPole(piece) || piece.sign)
  )
}

/** Places and poles two by two, in whichever order; null where one is left over. */
function pairsOf(pieces: readonly Piece[]): Pair[] | null {
  const parts: Piece[] = []
  pieces.forEach((piece, index) => {
    const last = parts.at(-1)
    const [before, next] = [pieces[index - 1], pieces[index + 1]]
    // "outer pin": the pin is no further place
    if (piece.is === 'pin' && ((before && isPlace(before)) || (next && isPlace(next)))) return
    const is = piece.is === 'pin' ? 'centre' : piece.is
    if (last && (last.is === is || (last.is === 'minus' && is === 'earth'))) return
    if (last?.is === 'earth' && is === 'minus') parts[parts.length - 1] = piece
    else parts.push({ ...piece, is })
  })
  if (parts.length === 0 || parts.length % 2 === 1) return null
  const pairs: Pair[] = []
  for (let index = 0; index < parts.length; index += 2) {
    const two = [parts[index]!, parts[index + 1]!]
    const [place, pole] = [two.find(isPlace), two.find(isPole)]
    if (!place || !pole) return null
    pairs.push({ centre: place.is === 'centre', pole: pole.is as Pair['pole'], doubtful: pole.doubtful })
  }
  return pairs
}

const tells = ({ centre, pole }: Pair): Polarity[] =>
  pole === 'earth' ? [] : [centre === (pole === 'plus') ? 'centre-positive' : 'centre-negative']

/** What the clauses of one line state, earth and doubtful dashes only beside a clause that bears them out. */
function statements(line: readonly { clause: Clause; pairs: Pair[] }[]): PolarityClause[] {
  const pairs = line.flatMap((one) => one.pairs)
  const sure = pairs.filter(({ pole, doubtful }) => pole !== 'earth' && !doubtful)
  const borneOut = pairs.every(
    ({ centre, pole, doubtful }) =>
      (pole !== 'earth' || sure.some((other) => other.centre !== centre && other.pole === 'plus')) &&
      (!doubtful || sure.length > 0),
  )
  if (!borneOut) return []
  const said = new Set(pairs.flatMap(tells))
  return line.flatMap(({ clause: { start, end } }) => [...said].map((polarity) => ({ polarity, start, end })))
}
