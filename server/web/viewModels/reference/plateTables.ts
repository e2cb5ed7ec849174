import { plateSymbols } from '../../../reference/plateSymbols.js'
import { plateUnits, plateWords } from '../../../reference/plateWords.js'
import { polarityTerms } from '../../../reference/polarityTerms.js'
import { language as ours } from '../../language.js'
import { slug, type Table } from './table.js'

const languages = new Intl.DisplayNames([ours], { type: 'language' })
const languageName = (code: string): string => (code === 'any' ? 'any language' : (languages.of(code) ?? code))

export const plateWordsTable: Table = {
  name: 'plate-words',
  title: 'Words of rating plates',
  intro: 'What a word on a plate is read as, by language. Case, accents and a closing full stop do not matter.',
  columns: [{ title: 'Words' }, { title: 'Language' }, { title: 'Read as' }],
  rows: () =>
    plateWords.map(({ language, meaning, words, source }) => ({
      id: slug(language, meaning, words[0] ?? ''),
      lang: language === 'any' ? undefined : language,
      cells: [words.join('; '), languageName(language), meaning],
      sources: [source],
    })),
}

export const polarityTermsTable: Table = {
  name: 'polarity-words',
  title: 'Words that tell a polarity',
  intro:
    'What a word does in a sentence on the polarity of a plug. After a denial the sentence says nothing; earth is negative only where the other place is called positive.',
  columns: [{ title: 'Words' }, { title: 'Language' }, { title: 'Read as' }],
  rows: () =>
    polarityTerms.map(({ language, part, everyday, words, source }) => ({
      id: slug(language, part, words[0] ?? ''),
      lang: language,
      cells: [words.join('; '), languageName(language), everyday ? `${part}, beside its other half only` : part],
      sources: [source],
    })),
}

export const plateUnitsTable: Table = {
  name: 'plate-units',
  title: 'Units as plates write them',
  intro:
    'Written forms of one unit, and what each counts for. Forms of other quantities are known only so that they are not taken for one of these.',
  columns: [{ title: 'Forms' }, { title: 'Unit' }, { title: 'Times', unit: '' }, { title: 'Kind it tells' }],
  rows: () =>
    plateUnits.map(({ dimension, scale, kind, forms, source }) => ({
      id: slug(dimension, scale, kind ?? '', forms[0] ?? ''),
      cells: [forms.join('; '), dimension === 'other' ? 'another quantity' : dimension, scale, kind],
      sources: [source],
    })),
}

export const plateSymbolsTable: Table = {
  name: 'plate-symbols',
  title: 'Symbols of rating plates',
  intro:
    'Signs printed on supplies and machines, what they tell, and the characters that stand for them where there are any.',
  columns: [
    { title: 'Symbol' },
    { title: 'Typed as' },
    { title: 'Standard' },
    { title: 'Read as' },
    { title: 'What it tells' },
  ],
  rows: () =>
    plateSymbols.map(({ name, meaning, characters, standard, tells, source }) => ({
      id: slug(name),
      cells: [name, characters.join(' '), standard, meaning === 'note' ? 'noted, not judged' : meaning, tells],
      sources: [source],
    })),
}
