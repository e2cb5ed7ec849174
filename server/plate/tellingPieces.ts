import { type PolarityPart, polarityTerms } from '../tables/polarityTerms.js'
import { type TellingKind, tellingWords } from '../tables/tellingWords.js'
import { isIdeograph, isLetter } from './characters.js'
import { foldWord } from './fold.js'
import { normalWords } from './hazardText.js'
import { WordTree } from './wordTree.js'

interface Trees {
  closed: WordTree<TellingKind>
  open: WordTree<TellingKind>
  polarity: WordTree<{ part: PolarityPart; everyday: boolean }>
}

let built: Trees | undefined

function build(): Trees {
  const closed = new WordTree<TellingKind>()
  const open = new WordTree<TellingKind>()
  const polarity: Trees['polarity'] = new WordTree()
  for (const { kind, words } of tellingWords)
    for (const word of words) (word.endsWith('*') ? open : closed).add(normalWords(word.replace('*', '')), kind)
  for (const { part, everyday, words } of polarityTerms)
    for (const word of words)
      if (part !== 'denial' || word.length >= shortestDenial || isIdeograph(word))
        polarity.add(normalWords(word), { part, everyday })
  return { closed, open, polarity }
}

/** Shorter ones of the table of polarity words are other words elsewhere, "NI-CD". */
const shortestDenial = 3

/** What stands in a piece of a plate that was not read. */
export interface Telling {
  kinds: ReadonlySet<TellingKind>
  /** a word or a sign of a pole, an everyday word for one beside a place of the plug, or beside earth or case */
  isOfPolarity: boolean
  /** a word of it, something live, a conductor of the mains and what may be joined to it, a pole joined to earth or case */
  isOfIsolation: boolean
}

/** The words of a number, "NO. 12", "SERIAL NO", are no denial. */
const ofNumber =
  /\bN[O0]\s?[.:#°](?=\s*[^\s])|\b(?:MODEL|TYPE|SERIAL|SER|PART|CAT|REF|ART|ITEM|LOT|BATCH|FILE|PAT|REG|ORDER|STOCK|JOB|CODE|CERT\p{L}*|LICEN\p{L}*|APPROVAL|DESIGN)S?[\s.]*N[O0]\b|\bNO\s+\d/gu
const ringed = /[⊕⊖]/u
const bothSigns = /\+\s?[/|]\s?-|-\s?[/|]\s?\+|±(?!\s?\d)/u
/** A sign in brackets, or with the ending of its word: "(+)", "-VE". */
const poleSign = /[(][+-][)]|[+-]\s?VE\b|\b(?:POS|NEG)\b/u
/** Letters set apart, as damaged or pasted print has them. */
const apart = /(?:^|[\s])(?:\p{L}\s){4,}/u

/**
 * Words in an unread piece that may turn what was read into its opposite.
 *
 * @param explained  where a phrase that is known to change nothing ends, if one begins at a place of the text in the form of `hazardText`
 */
export function tellingOf(piece: string, explained: (text: string, at: number) => number): Telling {
  built ??= build()
  const upper = foldWord(piece)
  const text = normalWords(upper.replace(ofNumber, ' '))
  const kinds = new Set<TellingKind>()
  const parts = new Set<PolarityPart>()
  let isPole = poleSign.test(upper)
  if (apart.test(upper)) kinds.add('state')
  let at = 0
  while (at < text.length) {
    const isEdge = (index: number): boolean =>
      !(isLetter(text.charAt(index - 1)) && isLetter(text.charAt(index))) || isIdeograph(text.charAt(index))
    if (text.charAt(at) === ' ' || !isEdge(at)) {
      at += 1
      continue
    }
    const closed = built.closed.longest(text, at, isEdge)
    const open = built.open.longest(text, at, () => true)
    const end = Math.max(closed?.end ?? 0, open?.end ?? 0)
    const part = built.polarity.longest(text, at, isEdge)
    const known = explained(text, at)
    if (known > Math.max(end, part?.end ?? 0)) {
      at = known
      continue
    }
    if (closed) kinds.add(closed.value)
    if (open) kinds.add(open.value)
    if (part) {
      parts.add(part.value.part)
      isPole ||= !part.value.everyday && (part.value.part === 'plus' || part.value.part === 'minus')
    }
    at = Math.max(end, part?.end ?? 0, at + 1)
  }
  if (parts.has('denial')) kinds.add('denial')
  const hasPlace = parts.has('centre') || parts.has('outer') || parts.has('pin')
  const hasPole = parts.has('plus') || parts.has('minus') || parts.has('earth')
  const isJoinedPole =
    (isPole || parts.has('plus') || parts.has('minus')) && (kinds.has('joined') || parts.has('earth'))
  // one word alone promises or warns of nothing that could be told
  const isPhrase = text.includes(' ')
  return {
    kinds,
    isOfIsolation:
      isJoinedPole ||
      (isPhrase && (kinds.has('isolation') || kinds.has('live'))) ||
      (kinds.has('mains') && kinds.has('joined')),
    isOfPolarity:
      kinds.has('polarity') ||
      isJoinedPole ||
      isPole ||
      (hasPlace && (hasPole || kinds.has('denial'))) ||
      ringed.test(upper) ||
      bothSigns.test(upper),
  }
}
