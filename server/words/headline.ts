import { Phrase, type Words } from './phrase.js'
import type { Reader } from './reader.js'

const wordsIn = (text: string): number => text.split(/\s+/).filter(Boolean).length

/** Ends of clauses, the plain ones first: a stop, a colon, a semicolon or a bracket; else a comma. */
const ends = [/[.:;](?=\s)|\s(?=\()/g, /,(?=\s)/g]

/**
 * Where a text is cut so that its beginning has no more than so many words: behind the last end of a sentence or clause that fits,
 * else behind the last comma.
 *
 * @returns its length where it fits as it is, and where no clause does
 */
export function cutAt(text: string, mostWords: number): number {
  if (wordsIn(text) <= mostWords) return text.length
  for (const end of ends) {
    const places = [...text.matchAll(end)].map(({ index, 0: sign }) => index + sign.trimEnd().length)
    const last = places.findLast((place) => wordsIn(text.slice(0, place)) <= mostWords)
    if (last !== undefined) return last
  }
  return text.length
}

const told = (words: Words, reader: Reader): string => (typeof words === 'string' ? words : Phrase.text(words, reader))

/** The beginning that is read at a glance, of at most so many words where its clauses allow it; “…” where more is to come. */
export const headline = (words: Words, mostWords: number): Phrase =>
  new Phrase((reader) => {
    const text = told(words, reader)
    const at = cutAt(text, mostWords)
    return at === text.length ? text : text.slice(0, at).replace(/[,:;]?$/, '…')
  })

/** What is left of it behind its {@link headline}; '' where nothing is. */
export const behindHeadline = (words: Words, mostWords: number): Phrase =>
  new Phrase((reader) => {
    const text = told(words, reader)
    return text.slice(cutAt(text, mostWords)).trim()
  })
