import type { Source, SourceKind } from '../../../tables/source.js'
import { Phrase, type Words } from '../../../words/phrase.js'
import { prose } from '../../../words/prose.js'
import { head, type PageHead } from '../../page.js'
import { unbroken } from '../../parts/unbroken.js'
import type { Cell, Column, Link, Row, Table } from './pageTable.js'
import { rowsOf } from './pageTables.js'
import { cellWords, findRows, sourceText, wordsOf } from './search.js'

interface CellView {
  /** heading of its column, for where the row is shown as a card */
  label: string
  text: Words
  links: readonly Link[]
  svg: Phrase | null
  number: boolean
}

interface Citation {
  kind: SourceKind
  /** numbers in the list of sources under the table */
  numbers: number[]
}

interface RowView {
  id: string
  lang: string | null
  cells: CellView[]
  citations: Citation[]
  doubt: Phrase | null
}

export interface TableView {
  page: PageHead
  table: { name: string; title: string; intro: Phrase; warning: Phrase | null }
  search: string
  headings: { text: string; number: boolean }[]
  rows: RowView[]
  total: number
  sources: Source[]
  csv: string
}

/** Best attested first. */
const kinds: readonly SourceKind[] = ['published', 'common practice', 'from memory']

export const headingText = ({ title, unit }: Column): string => (unit ? `${title} (${unit})` : title)

function cellView(cell: Cell, column: Column): CellView {
  const shape = typeof cell === 'object' && cell !== null && !(cell instanceof Phrase) ? cell : null
  const drawing = shape && 'svg' in shape ? shape.svg : null
  return {
    label: headingText(column),
    // the unit stands in the heading
    text: typeof cell === 'number' ? cellWords(cell, undefined) : cellWords(cell, column),
    links: shape && !('svg' in shape) ? shape : [],
    svg: drawing,
    number: column.unit !== undefined,
  }
}

/** Numbers the sources of some rows in the order they are first named. */
function numbering() {
  const numbers = new Map<string, number>()
  const sources: Source[] = []
  return {
    sources,
    numberOf(source: Source): number {
      const key = sourceText(source)
      const known = numbers.get(key)
      if (known !== undefined) return known
      sources.push(source)
      numbers.set(key, sources.length)
      return sources.length
    },
  }
}

/** The page of one table; with a search only the rows that hold its words, each still under its own id. */
export function tableView(table: Table, search: string): TableView {
  const words = wordsOf(search)
  const all = rowsOf(table)
  const found = words.length === 0 ? all : findRows(all, table.columns, words)
  const { sources, numberOf } = numbering()
  const rowView = (row: Row): RowView => ({
    id: row.id,
    lang: row.lang ?? null,
    cells: table.columns.map((column, index) => cellView(row.cells[index] ?? null, column)),
    citations: kinds.flatMap((kind) => {
      const numbers = [...new Set(row.sources.filter((source) => source.kind === kind).map(numberOf))]
      return numbers.length > 0 ? [{ kind, numbers: numbers.sort((one, other) => one - other) }] : []
    }),
    doubt: row.doubt === undefined ? null : prose(unbroken(row.doubt)),
  })
  return {
    page: head(table.title, 'reference'),
    table: {
      name: table.name,
      title: table.title,
      intro: prose(unbroken(table.intro)),
      warning: table.warning === undefined ? null : prose(unbroken(table.warning)),
    },
    search,
    headings: table.columns.map((column) => ({ text: headingText(column), number: column.unit !== undefined })),
    rows: found.map(rowView),
    total: all.length,
    sources,
    csv: `/reference/${table.name}.csv`,
  }
}
