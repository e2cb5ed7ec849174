import { type Cell, matrixRow } from '../../bench/shelf/matrix.js'
import { deviceReady, eachInTurn, supplyReady } from '../../bench/shelf/prepared.js'
import type { ShelfDevice, ShelfSupply } from '../../bench/shelf/shelfItem.js'
import { prepareSite } from '../../chain/case/prepareSite.js'
import type { Store } from '../../store/store.js'

/** A part of the matrix: pages down and across, from 1, and how many supplies and machines stand on one. */
export interface Part {
  row: number
  column: number
  rows: number
  columns: number
}

/** A supply or a machine at the edge of the matrix. */
interface Edge {
  id: string
  name: string
}

export interface ShelfMatrix {
  supplies: Edge[]
  devices: Edge[]
  /** one row a supply, one cell a machine */
  cells: Cell[][]
  /** how many there are on the shelf */
  total: { supplies: number; devices: number }
}

const edge = ({ id, name }: Edge): Edge => ({ id, name })

/** Judges a part of the matrix of the shelf, every supply of it for every machine of it. */
export async function shelfMatrix(store: Store, country: string | undefined, part: Part): Promise<ShelfMatrix> {
  const { row, column, rows, columns } = part
  const supplies = await store.listWhole<ShelfSupply>('supply', { limit: rows, offset: (row - 1) * rows })
  const devices = await store.listWhole<ShelfDevice>('device', { limit: columns, offset: (column - 1) * columns })
  const site = prepareSite({ country })
  const machines = devices.rows.map(({ body }) => deviceReady(body.device))
  return {
    supplies: supplies.rows.map(edge),
    devices: devices.rows.map(edge),
    cells: await eachInTurn(supplies.rows, ({ body }) => matrixRow(site, supplyReady(body.supply), machines)),
    total: { supplies: supplies.total, devices: devices.total },
  }
}
