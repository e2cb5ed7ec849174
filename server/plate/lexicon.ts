import { plateSymbols, type SymbolMeaning } from '../reference/plateSymbols.js'
import { type PlateMeaning, type PlateUnit, plateUnits, plateWords } from '../reference/plateWords.js'
import { foldWord } from './fold.js'
import { WordTree } from './wordTree.js'

export interface LexiconWord {
  meaning: PlateMeaning
  weak: boolean
  /** names a side: input, output and their like */
  section: boolean
}

/** The tables in the form the lexer searches. */
export interface Lexicon {
  words: WordTree<LexiconWord>
  units: WordTree<PlateUnit>
  symbols: ReadonlyMap<string, SymbolMeaning>
  /** input and output words by their shape when l, 1 and I, 0 and O are not told apart */
  lookAlikes: ReadonlyMap<string, LexiconWord>
}

/** Capital letters with the pairs that a scan or an old print confuses made the same. */
export const lookAlikeShape = (upper: string): string => upper.replace(/[1L|]/g, 'I').replace(/0/g, 'O')

/** Up to this length a section word is as likely an everyday word ("IN", "UT", "NET"). */
const longestEverydayWord = 3
/** From this length a section word is told even with look-alike letters in it. */
const shortestLookAlike = 3

const sections: readonly PlateMeaning[] = ['input', 'output', 'primary', 'secondary', 'mains']

function build(): Lexicon {
  const words = new WordTree<LexiconWord>()
  const units = new WordTree<PlateUnit>()
  const lookAlikes = new Map<string, LexiconWord>()
  for (const row of plateWords) {
    for (const word of row.words) {
      const key = foldWord(word).replace(/\.$/, '')
      const weak = row.meaning === 'mains' || (sections.includes(row.meaning) && key.length <= longestEverydayWord)
      const entry = { meaning: row.meaning, weak, section: sections.includes(row.meaning) }
      words.add(word, entry)
      if (sections.includes(row.meaning) && row.meaning !== 'mains' && key.length >= shortestLookAlike) {
        if (/^[A-Z]+$/.test(key)) lookAlikes.set(lookAlikeShape(key), entry)
      }
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
  return { words, units, symbols, lookAlikes }
}

let built: Lexicon | undefined

/** Built at the first reading; importing the module does nothing. */
export function lexicon(): Lexicon {
  built ??= build()
  return built
}
