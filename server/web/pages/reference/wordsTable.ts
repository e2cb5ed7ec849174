import { commonPractice } from '../../../tables/source.js'
import { glossary, type Word } from '../../glossary.js'
import { byName } from '../../language.js'
import type { Table } from './pageTable.js'
import { firstText } from './search.js'

const usage = commonPractice(
  'Words as they are used here',
  'explained in our own words; the terms are those of the IEC standards and the trade',
)

export const wordsTable: Table = {
  name: 'words',
  title: 'Words',
  intro: 'The words of the trade that are used here, each in two sentences.',
  columns: [{ title: 'Word' }, { title: 'Also called' }, { title: 'What it means' }],
  rows: () =>
    Object.entries<Word>(glossary)
      .map(([id, { word, also, text }]) => ({ id, cells: [word, also.join(', '), text], sources: [usage] }))
      .sort((one, other) => byName(firstText(one), firstText(other))),
}
