import { groups as dataGroups } from '../../../tables/index.js'
import { findingsTable } from './findingsTable.js'
import { lampsTable } from './lampsTable.js'
import { limitsTable } from './limitsTable.js'
import type { Row, Table } from './pageTable.js'
import { rulesTable } from './rulesTable.js'
import { shownTable } from './shownTable.js'
import { wordsTable } from './wordsTable.js'

interface Group {
  title: string
  tables: readonly Table[]
}

/** Tables that are worked out rather than written down. */
const worked: Readonly<Record<string, readonly Table[]>> = { 'First power-up': [lampsTable] }

/** Every table the program decides from, as a reader looks for it. */
export const groups: readonly Group[] = [
  ...Object.entries(dataGroups).map(([title, tables]) => ({
    title,
    tables: [...(worked[title] ?? []), ...tables.map(shownTable)],
  })),
  { title: 'How it decides', tables: [findingsTable, limitsTable, rulesTable, wordsTable] },
]

export const tables: readonly Table[] = groups.flatMap((group) => group.tables)

const byName = new Map(tables.map((table) => [table.name, table]))

/** The table at an address; undefined where there is none. */
export const tableByName = (name: string): Table | undefined => byName.get(name)

const made = new Map<Table, readonly Row[]>()

/** The rows of a table, made when first asked for: the data do not change while the program runs. */
export function rowsOf(table: Table): readonly Row[] {
  const known = made.get(table) ?? table.rows()
  made.set(table, known)
  return known
}
