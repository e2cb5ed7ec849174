import { plateLimits } from '../tables/plateLimits.js'
import { claimsOf } from './claims.js'
import { type Folded, fold } from './fold.js'
import type { LabelReading, PlateOf, ProtectionClass } from './labelReading.js'
import { lex } from './lexer.js'
import { plateHazards } from './plateHazards.js'
import { printedPlug } from './plugSize.js'
import { type PolarityClause, polarityWords } from './polarityWords.js'
import { readRatings } from './ratings.js'
import { readSides } from './sides.js'
import { readStatements } from './statements.js'
import type { Token } from './token.js'

/** A stretch of the text and what it was read as. */
export interface ReadSpan {
  start: number
  end: number
  as: string
}

/**
 * Reads the words and figures printed on a rating plate.
 *
 * Whatever can be read two ways is not read: its field stays null and the piece stands in `unread`. The time is at most
 * proportional to the length of the text; what goes beyond several pages is not read and stands in `unread`, too.
 *
 * @param text  as printed or recognised, any language and length
 * @param of    whose plate: on a machine's a low voltage is what it takes, not what it gives
 */
export function readPlate(text: string, of: PlateOf = 'supply'): LabelReading {
  return explainPlate(text, of).reading
}

/** The reading together with the stretches of the text it was taken from, in order. */
export function explainPlate(text: string, of: PlateOf = 'supply'): { reading: LabelReading; spans: ReadSpan[] } {
  const head = text.slice(0, plateLimits.mostCharacters.value)
  const folded = fold(head)
  const { polarity, tokens } = readPolarity(folded, lex(folded))
  const statements = readStatements(tokens, of)
  const { fuses } = statements
  const ratings = readRatings(readSides(statements, tokens), of)
  for (const { quantity, as } of ratings.used) mark(tokens, quantity.first, quantity.last, as)
  const printed = printedPlug(folded.upper)
  for (const [first, last] of fuses) mark(tokens, first, last, 'fuse')
  const protectionClass = readClass(tokens, folded.upper)
  const sized = printed?.stretches.map(({ start, end }) => markStretch(tokens, start, end)) ?? []
  const hazards = plateHazards(folded, text, tokens, ratings)
  const original = (first: Token, last: Token): string =>
    text.slice(folded.origin[first.start], folded.origin[last.end]).replace(/\s+/g, ' ').trim()
  const plug = printed && { ...printed.plug, polarity }
  const fuse =
    fuses.length > 0 ? [...new Set(fuses.map(([a, b]) => original(tokens[a]!, tokens[b - 1]!)))].join(' / ') : null
  const claims = claimsOf({ ratings, tokens, folded, original, polarity, protectionClass, fuses, sized, plug })
  return {
    reading: {
      input: ratings.input,
      outputs: ratings.outputs,
      outputsTotalW: ratings.outputsTotalW,
      takes: ratings.takes,
      polarity,
      protectionClass,
      fuse,
      plug,
      hazards,
      unread: [...unread(tokens, original), ...tail(text.slice(head.length))],
      ...claims,
    },
    spans: tokens.flatMap(({ start, end, role }) =>
      role === undefined ? [] : [{ start: folded.origin[start]!, end: folded.origin[end]!, as: role }],
    ),
  }
}

/** Marks the tokens of a stretch of the folded text as the plug's; the range of them [first, last). */
function markStretch(tokens: Token[], start: number, end: number): [number, number] {
  const first = tokens.findIndex((token) => token.end > start)
  let last = first
  while (last < tokens.length && tokens[last]!.start < end) last += 1
  for (let at = first; at < last; at += 1) tokens[at]!.role ??= 'plug'
  return [first, last]
}

function mark(tokens: Token[], first: number, last: number, as: string): void {
  for (let at = first; at < last; at += 1) tokens[at]!.role = as
}

/** Drawings and clauses that agree, each clause then one word; what contradicts itself says nothing and stays unread. */
function readPolarity(folded: Folded, tokens: Token[]): { polarity: LabelReading['polarity']; tokens: Token[] } {
  const clauses = polarityWords(folded, tokens)
  const drawings = tokens.filter((token) => token.type === 'drawing' && token.polarity !== null)
  const said = new Set([
    ...clauses.map(({ polarity }) => polarity),
    ...drawings.flatMap((token) => (token.type === 'drawing' && token.polarity ? [token.polarity] : [])),
  ])
  const [polarity] = said
  if (polarity === undefined || said.size > 1) return { polarity: null, tokens }
  for (const token of drawings) token.role = 'polarity'
  for (const token of tokens) if (token.type === 'word' && token.meaning === 'polarity') token.role = 'polarity'
  return { polarity, tokens: joined(tokens, clauses) }
}

/** The tokens with those of each clause on the polarity as one. */
function joined(tokens: readonly Token[], clauses: readonly PolarityClause[]): Token[] {
  let next = 0
  return tokens.flatMap((token): Token[] => {
    while (next < clauses.length && clauses[next]!.end <= token.start) next += 1
    const clause = clauses[next]
    if (!clause || token.end <= clause.start) return [token]
    if (token.start > clause.start) return []
    const { polarity, start, end } = clause
    const meaning = polarity === 'centre-positive' ? 'centre positive' : 'centre negative'
    const span = { start, end, spaceBefore: true, spaceAfter: true, role: 'polarity' }
    return [{ type: 'word', meaning, weak: false, reads: null, ...span }]
  })
}

/** Only as printed; two classes on one plate say nothing. */
function readClass(tokens: Token[], upper: string): ProtectionClass | null {
  const found: { said: ProtectionClass; token: Token }[] = []
  for (const token of tokens) {
    if (token.type === 'symbol' && token.meaning === 'class II') found.push({ said: 'II', token })
    if (token.type !== 'word') continue
    if (token.meaning === 'class I') found.push({ said: 'I', token })
    if (token.meaning === 'class II') found.push({ said: 'II', token })
    if (token.meaning === 'class III') found.push({ said: 'III', token })
  }
  if (new Set(found.map(({ said }) => said)).size !== 1) return null
  if (found.some(({ token: { start } }) => denied.test(upper.slice(Math.max(0, start - 12), start)))) return null
  for (const { token } of found) token.role = 'protection class'
  return found[0]!.said
}

/** "NOT DOUBLE INSULATED": a word that denies stands right before. */
const denied = /(?:^|[^\p{L}])(?:NOT|NO|NON|NICHT|KEINE?|PAS|NIET|IKKE|INTE|EI|NIE|NE|НЕ)[\s-]*$|[非不无無]$/u

/** What stands beyond the longest text that is read. */
const tail = (rest: string): string[] => (rest.trim() === '' ? [] : [rest.trim()])

/** Signs that mean something by themselves; other punctuation is no loss. */
const telling = '±⊕⊖~='

function unread(tokens: readonly Token[], original: (first: Token, last: Token) => string): string[] {
  const pieces: string[] = []
  let run: Token[] = []
  const close = (): void => {
    while (run.length > 0 && isPunctuation(run[run.length - 1]!)) run.pop()
    const [first] = run
    if (first) pieces.push(original(first, run[run.length - 1]!))
    run = []
  }
  for (const token of tokens) {
    if (token.role !== undefined || token.type === 'line') close()
    else if (run.length > 0 || !isPunctuation(token)) run.push(token)
  }
  close()
  return pieces
}

const isPunctuation = (token: Token): boolean => token.type === 'sign' && !telling.includes(token.sign)
