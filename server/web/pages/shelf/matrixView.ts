import type { Outcome } from '../../../chain/finding.js'
import { topicTag } from '../../../chain/topicTag.js'
import { head, type PageHead } from '../../page.js'
import { addressWith } from '../../parts/pager.js'
import type { ShelfMatrix } from '../../parts/shelfMatrix.js'
import { outcomeWords } from '../../parts/verdictWords.js'

/** How many supplies down and machines across one page shows. */
export const rowsShown = 40
export const columnsShown = 15

interface MatrixCell {
  outcome: Outcome
  word: string
  topic: string
}

export interface MatrixPage {
  page: PageHead
  country: string
  /** true where the shelf holds no supply or no machine */
  none: boolean
  machines: { name: string; address: string }[]
  rows: { name: string; address: string; cells: MatrixCell[] }[]
  /** which part of the matrix this page shows */
  shown: string
  ways: { text: string; address: string }[]
}

export interface MatrixAsked {
  country: string
  /** pages down and across, from 1 */
  row: number
  column: number
}

/** A part of the matrix. */
export function matrixView({ supplies, devices, cells, total }: ShelfMatrix, asked: MatrixAsked): MatrixPage {
  const { country, row, column } = asked
  const top = (row - 1) * rowsShown
  const left = (column - 1) * columnsShown
  const at = (rowNumber: number, columnNumber: number): string =>
    addressWith('/shelf/matrix', { country, row: rowNumber, column: columnNumber })
  const bottom = Math.min(total.supplies, top + rowsShown)
  const right = Math.min(total.devices, left + columnsShown)
  const ways = [
    { text: 'Supplies before these', address: at(row - 1, column), there: row > 1 },
    { text: 'Supplies after these', address: at(row + 1, column), there: bottom < total.supplies },
    { text: 'Machines before these', address: at(row, column - 1), there: column > 1 },
    { text: 'Machines after these', address: at(row, column + 1), there: right < total.devices },
  ]
  return {
    page: head('Every supply for every machine', 'shelf'),
    country,
    none: total.supplies === 0 || total.devices === 0,
    machines: devices.map(({ id, name }) => ({ name, address: addressWith(`/shelf/devices/${id}`, { country }) })),
    rows: supplies.map(({ id, name }, index) => ({
      name,
      address: addressWith(`/shelf/supplies/${id}`, { country }),
      cells: (cells[index] ?? []).map(({ outcome, topic }) => ({
        outcome,
        word: outcomeWords[outcome],
        topic: outcome === 'clear' ? '' : topicTag(topic),
      })),
    })),
    shown: `Supplies ${Math.min(top + 1, bottom)} to ${bottom} of ${total.supplies}, machines ${Math.min(left + 1, right)} to ${right} of ${total.devices}`,
    ways: ways.filter(({ there }) => there).map(({ text, address }) => ({ text, address })),
  }
}
