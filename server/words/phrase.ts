import { decimalText } from './number.js'
import type { Reader } from './reader.js'

/** What a phrase is put together from. A bare string is a name or print that stays as it is in every language; a bare number is a count. */
export type Part = Phrase | string | number

/** A phrase, or print that stays as it is in every language. */
export type Words = Phrase | string

/**
 * Something to be said, its words and its quantities still apart. It is opaque: only `tell.ts` makes text of it, for one reader,
 * at the edge. So no code can read a sentence of ours to learn a fact.
 */
export class Phrase {
  readonly #toText: (reader: Reader) => string

  constructor(toText: (reader: Reader) => string) {
    this.#toText = toText
  }

  /** The text for a reader; for `words/` alone. */
  static text(phrase: Phrase, reader: Reader): string {
    return phrase.#toText(reader)
  }

  toString(): never {
    throw new TypeError('a phrase becomes text only where it is told: put it into say`…`, or tell it')
  }

  toJSON(): never {
    return this.toString()
  }
}

function textOf(part: Part, reader: Reader): string {
  if (typeof part === 'string') return part
  return typeof part === 'number' ? decimalText(part, reader.decimal) : Phrase.text(part, reader)
}

/**
 * A phrase from words and its parts: say`The plug is ${polarity}; the jack wants ${wanted}`. Its key in a catalogue is its
 * template with {} for each part.
 */
export function say(words: TemplateStringsArray, ...parts: Part[]): Phrase {
  const key = words.join('{}')
  return new Phrase((reader) => {
    const other = reader.catalogue?.[key]
    const texts = parts.map((part) => textOf(part, reader))
    if (other === undefined) return words.map((piece, at) => piece + (texts[at] ?? '')).join('')
    let next = 0
    return other.replace(/\{(\d*)\}/g, (_all, at: string) => texts[at === '' ? next++ : Number(at)] ?? '')
  })
}

/** The parts one after the other. */
export const joined = (parts: readonly Part[], between: Part = ' '): Phrase =>
  new Phrase((reader) => parts.map((part) => textOf(part, reader)).join(textOf(between, reader)))

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly Part[], last: Phrase = and): Phrase {
  if (items.length < 2) return joined(items)
  return joined([joined(items.slice(0, -1), ', '), last, items[items.length - 1]!])
}

const and = say`and`
/** For the last two of a list of which one serves. */
export const or = say`or`

/** The same fit to stand in SVG, as content or in an attribute in double quotes. */
export const escaped = (part: Part): Phrase =>
  new Phrase((reader) => textOf(part, reader).replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`))

/** The same at the beginning of a sentence. */
export const capital = (part: Part): Phrase =>
  new Phrase((reader) => {
    const text = textOf(part, reader)
    return text.charAt(0).toUpperCase() + text.slice(1)
  })

/** The same within a sentence: its first letter small, unless it begins an abbreviation. */
export const within = (part: Part): Phrase =>
  new Phrase((reader) => {
    const text = textOf(part, reader)
    return /^\p{Lu}(?:\p{Ll}|\s)/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text
  })
