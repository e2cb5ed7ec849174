import { type CellFault, type Cells, columnsOf, putCells, readCells } from '../../facts/cells.js'
import { check } from '../../facts/check.js'
import type { ShelfItem, ShelfKind } from './shelfItem.js'

export type { Cells }

const { supply, device } = check

/** The columns of the shelf as CSV, in their order; docs/records.md describes each. */
export const columns: readonly string[] = [
  ...new Set(['kind', 'id', 'version', 'name', 'place', 'note', ...columnsOf(supply), ...columnsOf(device)]),
]

const emptyCells = Object.fromEntries(columns.map((column) => [column, '']))

/** The cells of one row of the shelf; what is not known is an empty cell. */
export function cellsOf(kind: ShelfKind, stamp: { id: string; version: number } | null, item: ShelfItem): Cells {
  const cells: Cells = {
    ...emptyCells,
    kind,
    id: stamp?.id ?? '',
    version: String(stamp?.version ?? ''),
    name: item.name,
    place: item.place ?? '',
    note: item.note ?? '',
  }
  if ('supply' in item) putCells(cells, supply, item.supply)
  else putCells(cells, device, item.device)
  return cells
}

const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/**
 * The same facts in one form: without null, empty text, empty lists and empty objects, keys in order. Two rows of the
 * shelf say the same when their forms are equal as JSON.
 */
export function canonical(value: unknown): unknown {
  if (Array.isArray(value)) return value.map((entry) => canonical(entry))
  if (!isPlain(value)) return value
  const entries = Object.entries(value)
    .map(([key, inner]) => [key, canonical(inner)] as const)
    .filter(
      ([, inner]) =>
        inner !== undefined &&
        inner !== null &&
        inner !== '' &&
        !(Array.isArray(inner) && inner.length === 0) &&
        !(isPlain(inner) && Object.keys(inner).length === 0),
    )
    .sort(([one], [other]) => (one < other ? -1 : 1))
  return Object.fromEntries(entries)
}

export const sayTheSame = (one: unknown, other: unknown): boolean =>
  JSON.stringify(canonical(one)) === JSON.stringify(canonical(other))

const ofDevice = new Set(columnsOf(device))
const supplyOnly = columnsOf(supply).filter((column) => !ofDevice.has(column))

/** A row of the shelf from its cells, and every cell that cannot be read. */
export function itemOf(kind: ShelfKind, cells: Cells): { item: ShelfItem; faults: CellFault[] } {
  const common = { name: cells.name ?? '', place: cells.place || null, note: cells.note || null }
  const { value, faults } = readCells(kind === 'supply' ? supply : device, cells)
  if (kind === 'supply') return { item: { ...common, supply: value }, faults }
  const strange = supplyOnly.filter((column) => cells[column])
  return {
    item: { ...common, device: value },
    faults: [
      ...faults,
      ...strange.map((column) => ({
        column,
        message: `${column}: is for supplies only and must be empty in the row of a machine.`,
      })),
    ],
  }
}
