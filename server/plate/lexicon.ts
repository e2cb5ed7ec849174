import { lookAlikes } from '../tables/lookAlikes.js'
import { plateSymbols, type SymbolMeaning } from '../tables/plateSymbols.js'
import { type PlateMeaning, type PlateUnit, plateUnits, plateWords } from '../tables/plateWords.js'
import { isIdeograph } from './characters.js'
import { foldWord } from './fold.js'
import { WordTree } from './wordTree.js'

export interface LexiconWord {
  meaning: PlateMeaning
  weak: boolean
  /** names a side: input, output and their like */
  section: boolean
  /** as it stands in the table */
  word: string
}

/** The tables in the form the lexer searches. */
export interface Lexicon {
  words: WordTree<LexiconWord>
  units: WordTree<PlateUnit>
  symbols: ReadonlyMap<string, SymbolMeaning>
  /** input and output words by their shape, in which look-alike characters are not told apart */
  lookAlikes: ReadonlyMap<string, LexiconWord>
  /** the same for words of ideographs, which no space ends */
  lookAlikeIdeographs: WordTree<LexiconWord>
}

const latin = new Map(lookAlikes.capitals.flatMap(([others, one]) => [...others].map((other) => [other, one] as const)))
const shapes = new Map<string, string>([
  ...latin,
  ...lookAlikes.ideographs,
  ['1', 'I'],
  ['L', 'I'],
  ['|', 'I'],
  ['0', 'O'],
])

const mapped = (upper: string, pairs: ReadonlyMap<string, string>): string => {
  let out = ''
  for (const one of upper.split('')) out += pairs.get(one) ?? one
  return out
}

/** Capital letters of other alphabets as the Latin ones that look the same; of the same length. */
export const latinShape = (upper: string): string => mapped(upper, latin)

/** Capital letters with the characters that a scan or an old print confuses made the same; of the same length. */
export const lookAlikeShape = (upper: string): string => mapped(upper, shapes)

/** Up to this length a section word is as likely an everyday word ("IN", "UT", "NET"). */
const longestEverydayWord = 3
/** From this length a section word is told even with look-alike letters in it. */
const shortestLookAlike = 3

const isKind = (meaning: PlateMeaning): boolean => meaning === 'ac' || meaning === 'dc'

const sections: readonly PlateMeaning[] = ['input', 'output', 'primary', 'secondary', 'mains']

function build(): Lexicon {
  const words = new WordTree<LexiconWord>()
  const units = new WordTree<PlateUnit>()
  const alike = new Map<string, LexiconWord>()
  const alikeIdeographs = new WordTree<LexiconWord>()
  for (const row of plateWords) {
    for (const word of row.words) {
      const key = foldWord(word).replace(/\.$/, '')
      const weak = row.meaning === 'mains' || (sections.includes(row.meaning) && key.length <= longestEverydayWord)
      const entry = { meaning: row.meaning, weak, section: sections.includes(row.meaning), word: key }
      words.add(word, entry)
      if (sections.includes(row.meaning) && row.meaning !== 'mains' && key.length >= shortestLookAlike) {
        if (/^\p{Lu}+$/u.test(key)) alike.set(lookAlikeShape(key), entry)
      }
      const isIdeographic = isIdeograph(key.charAt(0)) && key.length > 1
      if (entry.section && isIdeographic) alikeIdeographs.add(lookAlikeShape(key), entry)
      if (isKind(row.meaning) && /^[A-Z]{2}$/.test(key)) alike.set(key, entry)
    }
  }
  for (const row of plateUnits) for (const form of row.forms) units.add(form, row)
  const symbols = new Map<string, SymbolMeaning>()
  for (const row of plateSymbols) {
    for (const characters of row.characters) {
      // runs of plain dashes and equals signs depend on where they stand; the grammar judges them
      if (!/^[-=~\s]+$/.test(foldWord(characters)) && [...characters].length === 1)
        symbols.set(foldWord(characters), row.meaning)
    }
  }
  return { words, units, symbols, lookAlikes: alike, lookAlikeIdeographs: alikeIdeographs }
}

let built: Lexicon | undefined

/** Built at the first reading; importing the module does nothing. */
export function lexicon(): Lexicon {
  built ??= build()
  return built
}
