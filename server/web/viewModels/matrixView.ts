import type { Outcome } from '../../chain/finding.js'
import type { Cell } from '../../shelf/matrix.js'
import { head, type PageHead } from '../page.js'
import type { ShelfMatrix } from '../shelfMatrix.js'
import { addressWith } from './pager.js'
import { outcomeWords } from './verdictWords.js'

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
  finished: boolean
  /** rows judged so far, of how many */
  done: number
  of: number
  machines: { name: string; address: string }[]
  rows: { name: string; address: string; cells: MatrixCell[] }[]
  /** which part of the matrix this page shows */
  shown: string
  ways: { text: string; address: string }[]
}

export interface MatrixAsked {
  country: string
  finished: boolean
  /** pages down and across, from 1 */
  row: number
  column: number
  cellOf: (code: number) => Cell
}

/** A part of the matrix, or how far it is. */
export function matrixView({ supplies, devices, run }: ShelfMatrix, asked: MatrixAsked): MatrixPage {
  const { country, finished, row, column, cellOf } = asked
  const top = (row - 1) * rowsShown
  const left = (column - 1) * columnsShown
  const at = (rowNumber: number, columnNumber: number): string =>
    addressWith('/shelf/matrix', { country, row: rowNumber, column: columnNumber })
  const bottom = Math.min(supplies.length, top + rowsShown)
  const right = Math.min(devices.length, left + columnsShown)
  const ways = [
    { text: 'Supplies before these', address: at(row - 1, column), there: row > 1 },
    { text: 'Supplies after these', address: at(row + 1, column), there: bottom < supplies.length },
    { text: 'Machines before these', address: at(row, column - 1), there: column > 1 },
    { text: 'Machines after these', address: at(row, column + 1), there: right < devices.length },
  ]
  return {
    page: head('Every supply for every machine', 'shelf'),
    country,
    finished,
    done: run.done(),
    of: supplies.length,
    machines: devices
      .slice(left, right)
      .map(({ id, name }) => ({ name, address: addressWith(`/shelf/devices/${id}`, { country }) })),
    rows: finished
      ? supplies.slice(top, bottom).map(({ id, name }, index) => ({
          name,
          address: addressWith(`/shelf/supplies/${id}`, { country }),
          cells: Array.from(run.rows[top + index]?.slice(left, right) ?? [], (code) => {
            const { outcome, topic } = cellOf(code)
            return {
              outcome,
              word: outcomeWords[outcome],
              topic: outcome === 'clear' ? '' : topic.replaceAll('-', ' '),
            }
          }),
        }))
      : [],
    shown: `Supplies ${Math.min(top + 1, bottom)} to ${bottom} of ${supplies.length}, machines ${Math.min(left + 1, right)} to ${right} of ${devices.length}`,
    ways: ways.filter(({ there }) => there).map(({ text, address }) => ({ text, address })),
  }
}
