import { lookAlikes } from '../tables/lookAlikes.js'

const joined: Readonly<Record<string, string>> = {
  ß: 'ss',
  ø: 'o',
  ł: 'l',
  ı: 'i',
  æ: 'ae',
  œ: 'oe',
  đ: 'd',
  ς: 'σ',
}

const latin = new Map(
  lookAlikes.capitals.flatMap(([others, one]) => [...others].map((other) => [other, one.toLowerCase()] as const)),
)

/** Letters set apart one by one: "s m o k e", "s.m.o.k.e". */
const setApart = /(?<![\p{L}\p{N}])\p{L}(?:[\s.*_·-]+\p{L}(?![\p{L}\p{N}])){2,}/gu

const isMixed = (word: string): boolean =>
  /\p{Script=Latin}/u.test(word) && /[\p{Script=Cyrillic}\p{Script=Greek}]/u.test(word)

/** A word with letters of two alphabets is read as the Latin one that it looks like. */
const asItLooks = (word: string): string =>
  isMixed(word) ? [...word].map((letter) => latin.get(letter.toUpperCase()) ?? letter).join('') : word

/** The same letters whatever their size, accents, marks that nobody sees, spaces between them and alphabet they are borrowed from. */
export const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/[\p{M}\p{Cf}]/gu, '')
    .toLowerCase()
    .replace(/[ßøłıæœđς]/g, (letter) => joined[letter] ?? letter)
    .replace(setApart, (letters) => letters.replace(/\P{L}/gu, ''))
    .replace(/\p{L}+/gu, asItLooks)

/** The words and figures of a text, one by one. */
export const tokensOf = (text: string): string[] => plain(text).match(/[\p{L}\p{N}]+/gu) ?? []

/** Whether a word is one of a table, where `*` stands for any ending. */
export const fits = (token: string | undefined, word: string): boolean =>
  token !== undefined && (word.endsWith('*') ? token.startsWith(word.slice(0, -1)) : token === word)

const unspacedLanguages: readonly string[] = ['ja', 'zh', 'th']

/** Words of a table in the form in which they are looked for. */
export interface Wordings {
  /** of languages with spaces: word by word */
  phrases: readonly (readonly string[])[]
  /** of languages without, as in the table: anywhere in a run of letters */
  unspaced: readonly string[]
}

export const wordingsOf = (rows: readonly { language: string; words: readonly string[] }[]): Wordings => {
  const isUnspaced = ({ language }: { language: string }): boolean => unspacedLanguages.includes(language)
  return {
    phrases: rows
      .filter((row) => !isUnspaced(row))
      .flatMap(({ words }) => words.map((word) => plain(word).split(/[\s/]+/))),
    unspaced: rows.filter(isUnspaced).flatMap(({ words }) => words),
  }
}

/** How many words at this place are a wording; 0 for none. */
export const lengthAt = ({ phrases }: Wordings, tokens: readonly string[], at: number): number =>
  Math.max(
    0,
    ...phrases
      .filter((phrase) => phrase.every((word, next) => fits(tokens[at + next], word)))
      .map(({ length }) => length),
  )

/** The words of a text without those that are wordings. */
export const without = (wordings: Wordings, text: string): string[] => {
  const tokens = tokensOf(text)
  const left: string[] = []
  for (let at = 0; at < tokens.length; at++) {
    const length = lengthAt(wordings, tokens, at)
    if (length > 0) at += length - 1
    else left.push(wordings.unspaced.reduce((rest, word) => rest.replaceAll(plain(word), ''), tokens[at] ?? ''))
  }
  return left.filter((one) => one !== '')
}
