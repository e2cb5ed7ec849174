import { identityWords } from '../tables/identityWords.js'
import { isIdeograph, isLetter, isPart } from './characters.js'
import { foldWord } from './fold.js'
import { normalWords } from './hazardText.js'
import type { LabelReading } from './labelReading.js'
import { lexicon } from './lexicon.js'
import { hasDutyMark, hasOpenFigure, hasOpenRange, isForOtherVolts } from './openFigures.js'
import { tellingOf } from './tellingPieces.js'
import { WordTree } from './wordTree.js'

/** Words of fewer letters say nothing by themselves. */
const shortestWord = 3
/** Characters of a script without spaces that are a word; more of them are a phrase. */
const longestIdeographicWord = 4
/** Most words of the name of a company. */
const longestName = 6

interface Trees {
  closed: WordTree<true>
  open: WordTree<true>
  companies: ReadonlySet<string>
  labels: ReadonlySet<string>
}

let built: Trees | undefined

function build(): Trees {
  const closed = new WordTree<true>()
  const open = new WordTree<true>()
  for (const word of identityWords.flatMap(({ words }) => words))
    (word.endsWith('*') ? open : closed).add(normalWords(word.replace('*', '')), true)
  const ofKind = (wanted: string): ReadonlySet<string> =>
    new Set(identityWords.flatMap(({ kind, words }) => (kind === wanted ? words.map(normalWords) : [])))
  return { closed, open, companies: ofKind('company'), labels: ofKind('label') }
}

/**
 * Phrases of a plate that were not read, are not identity text, and were not dismissed. As long as there is one, nobody knows whether
 * it takes away what the figures promise.
 *
 * A piece is such a phrase where two words or more stay that no table of identity text has; a single word or a code stands where a
 * name stands, unless it is one that may turn what was read into its opposite, or a figure that what was read does not explain.
 *
 * @param dismissed  pieces that a person said do not matter; case and spaces do not count
 * @param protectionClass  as entered, else as printed
 */
export function openPhrases(
  reading: LabelReading | null,
  dismissed: readonly string[],
  protectionClass: string | null = reading?.protectionClass ?? null,
): string[] {
  if (!reading || reading.unread.length === 0) return []
  const settled = new Set(dismissed.map(normalWords))
  return [...new Set(reading.unread)].filter(
    (piece) =>
      !settled.has(normalWords(piece)) &&
      (!isIdentity(piece) ||
        // a sign of earth on what is said to have no protective earth
        (protectionClass === 'II' && /[⏚⏛]/u.test(piece)) ||
        isKind(piece) ||
        tells(piece, reading) ||
        hasOpenFigure(piece, reading) ||
        hasOpenRange(piece, reading) ||
        isForOtherVolts(piece, reading)),
  )
}

/** What a phrase that was not read may speak of. */
export type SpokenOf = 'isolation' | 'polarity' | 'charging'

/** Whether a phrase that was not read speaks of something, as far as one word in it tells. */
export function speaksOf(piece: string, of: SpokenOf): boolean {
  const { isOfIsolation, isOfPolarity, kinds } = tellingOf(piece, endOfExplained)
  if (of === 'charging') return kinds.has('charging') || kinds.has('chemistry')
  return of === 'polarity' ? isOfPolarity : isOfIsolation
}

/** Whether a phrase that was not read may undo the figures: it has volts that they do not explain, names a kind of current, or tells of damage. */
export const mayUndo = (piece: string, reading: LabelReading): boolean =>
  isKind(piece) ||
  hasOpenFigure(piece, reading, 'V') ||
  hasOpenRange(piece, reading) ||
  isForOtherVolts(piece, reading) ||
  tellingOf(piece, endOfExplained).kinds.has('state')

/** "AC" that stands beside nothing: of which side is not known. */
function isKind(piece: string): boolean {
  const upper = foldWord(piece)
  const word = lexicon().words.longest(upper, 0, () => true)
  const isWhole = word?.end === upper.length && (word.value.meaning === 'ac' || word.value.meaning === 'dc')
  return isWhole || /^[~=]$/.test(upper)
}

/** Whether a piece has a word that matters even alone. */
function tells(piece: string, { input, outputs, takes }: LabelReading): boolean {
  const { kinds, isOfPolarity, isOfIsolation } = tellingOf(piece, endOfExplained)
  const isListed =
    (input?.voltages.length ?? 0) > 1 || outputs.length > 1 || outputs.some(({ voltageMaxV }) => voltageMaxV !== null)
  return (
    isOfPolarity ||
    isOfIsolation ||
    hasDutyMark(piece) ||
    [...kinds].some((kind) => {
      if (kind === 'setting') return !isListed
      // a machine with a battery says which; what a supply charges is read as a hazard, or its maker's word for power
      if (kind === 'charging') return takes.length > 0
      if (kind === 'chemistry') return outputs.length > 0
      return kind !== 'mains'
    })
  )
}

/** Where a phrase of two words or more that only names something ends. */
function endOfExplained(text: string, at: number): number {
  built ??= build()
  const edge = (index: number): boolean => !(isPart(text.charAt(index - 1)) && isPart(text.charAt(index)))
  const known = Math.max(
    built.closed.longest(text, at, edge)?.end ?? 0,
    lexicon().words.longest(text, at, edge)?.end ?? 0,
  )
  return text.slice(at, known).includes(' ') || isIdeograph(text.charAt(at)) ? known : 0
}

/** Whether a piece only names the thing, its maker, its marks or its size. */
export function isIdentity(piece: string): boolean {
  built ??= build()
  const text = normalWords(piece)
  const words = text.split(' ')
  if (words.length <= longestName && words.some((word) => built?.companies.has(word))) return true
  return openWords(built, text) < 2
}

/** How many words of a text no table has. */
function openWords({ closed, open, labels }: Trees, text: string): number {
  const { words } = lexicon()
  let count = 0
  let at = 0
  /** a name may follow a label such as MODEL */
  let named = false
  const edge = (index: number): boolean =>
    !(isPart(text.charAt(index - 1)) && isPart(text.charAt(index))) || isIdeograph(text.charAt(index - 1))
  while (at < text.length) {
    if (text.charAt(at) === ' ') {
      at += 1
      continue
    }
    const known = Math.max(
      closed.longest(text, at, edge)?.end ?? 0,
      words.longest(text, at, edge)?.end ?? 0,
      wordEnd(text, open.longest(text, at, () => true)?.end ?? 0),
    )
    if (known > at) {
      named = labels.has(text.slice(at, known).trim())
      at = known
      continue
    }
    const end = wordEnd(text, at + 1)
    const word = text.slice(at, end)
    if (isIdeograph(word.charAt(0))) count += word.length > longestIdeographicWord ? 2 : 1
    else if (word.length >= shortestWord && [...word].every(isLetter) && !named) count += 1
    named = false
    at = end
  }
  return count
}

/** Where the letters and figures of a word end, or the characters of a script without spaces. */
function wordEnd(text: string, from: number): number {
  if (from === 0) return 0
  let end = from
  const ideographs = isIdeograph(text.charAt(from - 1))
  while (end < text.length && (ideographs ? isIdeograph(text.charAt(end)) : isPart(text.charAt(end)))) {
    if (!ideographs && !isPart(text.charAt(end - 1))) break
    end += 1
  }
  return end
}
