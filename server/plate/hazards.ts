import { type HazardWords, hazardMeanings, hazardWords } from '../tables/hazardWords.js'
import { isDigit, isIdeograph, isLetter, isPart } from './characters.js'
import { type Folded, foldWord } from './fold.js'
import { barrier, type HazardShape, hazardShape } from './hazardShape.js'
import { type HazardText, hazardText, normalWords } from './hazardText.js'
import type { Hazard } from './labelReading.js'
import { WordTree } from './wordTree.js'

/** A hazard with its place in the folded text. */
export interface FoundHazard extends Omit<Hazard, 'words'> {
  start: number
  end: number
  /** "not a charger": the place includes the denial */
  denied: boolean
}

type Row = Pick<HazardWords, 'meaning' | 'language'>

/** Phrases by their first part; `tail` is what has to follow within a short distance, empty where nothing has to. */
interface Phrases {
  /** whether they may begin, and end, within a word */
  inside: boolean
  open: boolean
  tree: WordTree<Row>
}

interface Split {
  tail: string
  row: Row
}

interface Searched {
  phrases: readonly Phrases[]
  /** the same phrases by their shape, those with figures or signs left out */
  shapes: readonly Phrases[]
  /** "NUR MIT … VERWENDEN" */
  split: WordTree<Split[]>
}

/** A current, as it stands in a phrase. */
const figure = /^# M?A(?: |$)/

/** How far the second part of a phrase may stand from the first [characters]. */
const longestGap = 40

const everyKind = (): Phrases[] =>
  [false, true].flatMap((inside) => [false, true].map((open): Phrases => ({ inside, open, tree: new WordTree<Row>() })))

function build(): Searched {
  const phrases = everyKind()
  const shapes = everyKind()
  const splits = new Map<string, Split[]>()
  for (const { meaning, language, words } of hazardWords) {
    const row = { meaning, language }
    for (const phrase of words) {
      const [head = '', tail] = phrase.split('…')
      const key = normalWords(head.replaceAll('*', ''))
      if (tail !== undefined) {
        splits.set(key, [...(splits.get(key) ?? []), { tail: normalWords(tail), row }])
        continue
      }
      const isKind = ({ inside, open }: Phrases): boolean =>
        inside === phrase.startsWith('*') && open === phrase.endsWith('*')
      phrases.find(isKind)?.tree.add(key, row)
      const shape = hazardShape(foldWord(phrase.replaceAll('*', ''))).text
      if (shape.length >= shortestShape && !/[-+#%()]/.test(key)) shapes.find(isKind)?.tree.add(shape, row)
    }
  }
  const split = new WordTree<Split[]>()
  for (const [key, list] of splits) split.add(key, list)
  return { phrases, shapes, split }
}

let built: Searched | undefined

/** Whether a word may begin, or end, between two characters. */
const isEdge = (before: string, after: string): boolean => !(isPart(before) && isPart(after))

/**
 * Words of hazard in a text, by the longest wording that fits at each place; then those whose shape alone is there, of damaged print or
 * of parts that others write as one word.
 *
 * The time is proportional to the length of the text.
 */
export function findHazards(folded: Folded): FoundHazard[] {
  built ??= build()
  const searched = hazardText(folded.upper)
  const found = spelled(built, searched, folded.upper)
  return [...found, ...shaped(built, searched, folded.upper, found)].toSorted((one, other) => one.start - other.start)
}

/** Words of hazard as the table spells them. */
function spelled(built: Searched, searched: HazardText, upper: string): FoundHazard[] {
  const { text, from } = searched
  const found: FoundHazard[] = []
  let at = 0
  while (at < text.length) {
    const best = longestAt(built, text, at)
    if (!best) {
      at += 1
      continue
    }
    if (best.row.meaning === 'peak current' && figure.test(text.slice(at)) && figure.test(text.slice(best.end + 1))) {
      // "2A PEAK 4.5A": the peak is the second
      at += 1
      continue
    }
    const { start, end, denied } = denialOf(searched, upper, at, best.end)
    // "DO NOT USE AS CHARGER" forbids no more than that
    if (denied) while ((found.at(-1)?.end ?? 0) > from[start]!) found.pop()
    found.push({ ...foundBy(best.row), start: from[start]!, end: endOf(searched, upper, end), denied })
    at = end
  }
  return found
}

const foundBy = ({ meaning, language }: Row): Omit<Hazard, 'words'> => ({
  meaning,
  language,
  decides: hazardMeanings[meaning].decides,
})

/** Words of hazard by their shape, where none was found that overlaps them. */
function shaped(
  { shapes }: Searched,
  searched: HazardText,
  upper: string,
  known: readonly FoundHazard[],
): FoundHazard[] {
  const shape = hazardShape(upper)
  const found: FoundHazard[] = []
  let at = 0
  while (at < shape.text.length) {
    const best = longestShape(shapes, shape, at)
    if (!best) {
      at += 1
      continue
    }
    const start = shape.from[at]!
    const end = shape.from[best.end - 1]! + 1
    at = best.end
    if (known.some((other) => other.start < end && other.end > start)) continue
    const said = denialOf(searched, upper, placeOf(searched, start), placeOf(searched, end))
    found.push({ ...foundBy(best.row), start: searched.from[said.start]!, end, denied: said.denied })
  }
  return found
}

/** Where the first character from an index of the folded text on stands in the searched one. */
function placeOf({ from }: HazardText, index: number): number {
  let low = 0
  let high = from.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (from[middle]! < index) low = middle + 1
    else high = middle
  }
  return low
}

/** Shapes of fewer letters are those of too many words. */
const shortestShape = 6
/** From this length a shape may stand within others: words that were run together. */
const shortestInside = 9
/** Fewer letters of one more word than a shape ends with belong to another. */
const shortestPart = 3

function longestShape(shapes: readonly Phrases[], shape: HazardShape, at: number): { row: Row; end: number } | null {
  const { text, edges } = shape
  if (text.charAt(at) === barrier) return null
  let best: { row: Row; end: number } | null = null
  for (const { inside, open, tree } of shapes) {
    const hit = tree.longest(text, at, (index) => {
      const crossed = edges.lastIndexOf(true, index - 1)
      const isAcross = crossed > at
      const begins = edges[at]! || (inside && !isAcross)
      const ends = edges[index]! || (open && !(isAcross && index - crossed < shortestPart))
      return (begins && ends) || (index - at >= shortestInside && !isAcross)
    })
    if (hit && hit.end > (best?.end ?? 0)) best = { row: hit.value, end: hit.end }
  }
  if (!best) return null
  let end = best.end
  while (end < text.length && !edges[end] && text.charAt(end) !== barrier) end += 1
  return { row: best.row, end }
}

function longestAt({ phrases, split }: Searched, text: string, at: number): { row: Row; end: number } | null {
  const one = text.charAt(at)
  if (one === ' ') return null
  const begins = isEdge(text.charAt(at - 1), one)
  let best: { row: Row; end: number } | null = null
  for (const { inside, open, tree } of phrases) {
    if (!inside && !begins) continue
    const hit = tree.longest(text, at, (index) => open || isEdge(text.charAt(index - 1), text.charAt(index)))
    if (hit && hit.end > (best?.end ?? 0)) best = { row: hit.value, end: open ? wordEnd(text, hit.end) : hit.end }
  }
  if (!begins) return best
  const head = split.longest(text, at, (index) => isEdge(text.charAt(index - 1), text.charAt(index)))
  for (const { tail, row } of head?.value ?? []) {
    const place = text.slice(head!.end, head!.end + longestGap + tail.length).indexOf(tail)
    const end = place < 0 ? 0 : head!.end + place + tail.length
    if (end > (best?.end ?? 0)) best = { row, end }
  }
  return best
}

/** Where the letters of a word that goes on end. */
function wordEnd(text: string, from: number): number {
  let end = from
  while (end < text.length && isLetter(text.charAt(end - 1)) && isLetter(text.charAt(end))) end += 1
  return end
}

/** The end in the folded text: behind the whole of a figure. */
function endOf({ from }: HazardText, upper: string, end: number): number {
  let last = from[end - 1]! + 1
  while (isDigit(upper.charAt(last - 1)) && /[\d.,/]/.test(upper.charAt(last)) && isDigit(upper.charAt(last + 1)))
    last += 1
  if (isDigit(upper.charAt(last - 1))) while (isDigit(upper.charAt(last))) last += 1
  return last
}

/** "NOT A", "DO NOT USE AS", "KEIN", "NICHT ALS", "PAS UN"; with nothing but such small words up to the hazard. */
const denial =
  /(?:^| )(?:(?:DO|MUST|IS|DARF|IST) )?(?:NOT|NO|NEVER|WITHOUT|KEIN|KEINE|KEINEN|NICHT|OHNE|PAS|SANS|NON|SIN|NAO|SEM|SENZA|GEEN|NIET|ZONDER|EJ|INTE|ICKE|UTAN|IKKE|UDEN|UTEN|EI|NIE|BEZ|NENI|NEM|НЕ|НЕТ|БЕЗ)(?: (?:A|AN|THE|ANY|AS|FOR|USE|USED|BE|TO|IN|WITH|FUR|ALS|ZUM|ZUR|MIT|UN|UNE|DE|POUR|COMO|COME|PARA|PER|UNA|UM|UMA|EEN|VOOR|SOM|EN|ET|JAKO|DO|AZ|EGY|КАК|ДЛЯ))* $/
const deniedBefore = /(?:非|不是|并非|沒有|没有|无|無)$/
// folded: without the marks of voiced syllables
const deniedAfter = /^(?:てはありません|てはない|てない|が아닙니다|가아닙니다|이아닙니다|아님|아닙니다|없음)/
/** How far a denial is looked for [characters]. */
const longestDenial = 40

/** Where a hazard that is denied begins and ends with its denial. */
function denialOf(
  { text, from }: HazardText,
  upper: string,
  start: number,
  end: number,
): { start: number; end: number; denied: boolean } {
  const after = deniedAfter.exec(text.slice(end, end + longestDenial))
  if (after) return { start, end: end + after[0].length, denied: true }
  const before = text.slice(Math.max(0, start - longestDenial), start)
  const denied = isIdeograph(text.charAt(start)) ? deniedBefore.exec(before) : denial.exec(before)
  if (!denied) return { start, end, denied: false }
  const first = start - before.length + denied.index + (denied[0].startsWith(' ') ? 1 : 0)
  // "MODEL NO. CHARGER 2": a stop, a colon or a new line ends what is denied
  if (/[.:;!?\n]/.test(upper.slice(from[first]!, from[start]!))) return { start, end, denied: false }
  return { start: first, end, denied: true }
}
