import { isIdeograph, isLetter } from './characters.js'
import { latinShape } from './lexicon.js'

/** Letters run together, with the places where a word was printed to begin. */
export interface HazardShape {
  readonly text: string
  /** for each character of `text` the index in the folded text it came from */
  readonly from: readonly number[]
  /** whether something that is no letter was printed before each character of `text`, and before its end */
  readonly edges: readonly boolean[]
}

/** Stands for what no word goes over: a figure, a colon, a bracket. */
export const barrier = '\u0001'

/** Print between the letters of one word that its parts, its line end or the copying put there. */
const joint = /[\s\-._'·•*~\u00AD]/u
/** Characters that are taken for a letter inside a word. */
const alike = new Map([
  ['0', 'O'],
  ['1', 'I'],
  ['|', 'I'],
  ['L', 'I'],
  ['5', 'S'],
  ['8', 'B'],
])
/** Vowels before the E, or the second A, of an umlaut that is written out: the accent itself was dropped. */
const umlaut = new Set(['AE', 'OE', 'UE', 'AA'])

/**
 * A text as its letters alone: no spaces, hyphens, dots and line ends, one shape for look-alike characters, an umlaut written out as
 * its plain letter. "SPAR-TRAFO", "N O T  I S O L A T E D", "IS0LATED" and "LADEGERAET" have the shapes of the words in the table.
 *
 * @param upper  folded text in capitals
 */
export function hazardShape(upper: string): HazardShape {
  const latin = latinShape(upper)
  const text: string[] = []
  const from: number[] = []
  const edges: boolean[] = []
  let isEdge = true
  const isOfWord = (at: number): boolean => isLetter(latin.charAt(at)) || alike.has(latin.charAt(at))
  for (let at = 0; at < latin.length; at += 1) {
    const one = latin.charAt(at)
    const shape = letterAt(latin, at, isOfWord)
    if (shape === null) {
      if (!joint.test(one) && text.at(-1) !== barrier) {
        text.push(barrier)
        from.push(at)
        edges.push(true)
      }
      isEdge = true
    } else if (isEdge || !umlaut.has(`${text.at(-1)}${shape}`)) {
      text.push(shape)
      from.push(at)
      edges.push(isEdge)
      isEdge = false
    }
  }
  edges.push(true)
  return { text: text.join(''), from, edges }
}

/** The letter a character is, or stands for beside letters; null where it is none. */
function letterAt(latin: string, at: number, isOfWord: (at: number) => boolean): string | null {
  const one = latin.charAt(at)
  if (isIdeograph(one)) return one
  if (isLetter(one)) return alike.get(one) ?? one
  const shape = alike.get(one)
  if (shape === undefined || !(isOfWord(at - 1) || isOfWord(at + 1))) return null
  // "12V": a figure stands before its unit
  let first = at
  let last = at
  while (first > 0 && at - first < reach && isOfWord(first - 1)) first -= 1
  while (last - at < reach && isOfWord(last + 1)) last += 1
  const letters = latin.slice(first, last + 1).replace(/\P{L}/gu, '').length
  return letters >= fewestLetters && letters > last + 1 - first - letters ? shape : null
}

/** A run with fewer letters is a figure with its unit, or a code. */
const fewestLetters = 2
/** How far the letters beside a figure are looked at [characters]. */
const reach = 12
