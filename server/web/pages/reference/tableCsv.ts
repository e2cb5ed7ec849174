import { stringify } from 'csv-stringify/sync'
import { neutralised } from '../../../bench/shelf/formulaCell.js'
import type { Cell, Table } from './pageTable.js'
import { rowsOf } from './pageTables.js'
import { cellText, sourceText } from './search.js'
import { headingText } from './tableView.js'

/** A number plain, so that a spreadsheet can reckon with it; a text that a spreadsheet would run as a formula with an apostrophe in front. */
const csvCell = (cell: Cell): string =>
  typeof cell === 'number' ? String(cell) : neutralised(cellText(cell, undefined).replace(/\u00a0/g, ' '))

/** The whole table as CSV in UTF-8: its row names first, then its columns, sources, standing and doubt. */
export function tableCsv(table: Table): string {
  const heading = ['row', ...table.columns.map(headingText), 'sources', 'standing', 'doubt']
  const records = rowsOf(table).map(({ id, cells, sources, doubt }) => [
    neutralised(id),
    ...table.columns.map((_, index) => csvCell(cells[index] ?? null)),
    neutralised([...new Set(sources.map(sourceText))].join('; ')),
    [...new Set(sources.map(({ kind }) => kind))].join('; '),
    neutralised(doubt ?? ''),
  ])
  return stringify([heading, ...records], { quoted: true, bom: true, record_delimiter: '\r\n' })
}
