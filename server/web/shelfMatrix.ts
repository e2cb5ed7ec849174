import { type MatrixRun, runMatrix } from '../shelf/matrixRun.js'
import type { ShelfDevice, ShelfSupply } from '../shelf/shelfItem.js'
import type { Store } from '../store/store.js'

/** A supply or a machine at the edge of the matrix. */
export interface Edge {
  id: string
  name: string
}

export interface ShelfMatrix {
  supplies: Edge[]
  devices: Edge[]
  run: MatrixRun
  /** why it could not be finished; null while it is running and when it is done */
  failed: unknown
}

const everything = { limit: 1_000_000 }

/** The most matrices kept at once: of a changed shelf, or of other countries. */
const mostKept = 3

const edge = ({ id, name }: Edge): Edge => ({ id, name })

/**
 * The matrix of the whole shelf, judged once for each state of the shelf and each country: asking again while it is
 * judged answers the same run.
 */
export function shelfMatrix(store: Store): (country: string | undefined) => Promise<ShelfMatrix> {
  const kept = new Map<string, ShelfMatrix>()
  return async (country) => {
    const key = [await store.fingerprint('supply'), await store.fingerprint('device'), country ?? ''].join(' ')
    const known = kept.get(key)
    if (known && known.failed === null) return known
    const supplies = (await store.listWhole<ShelfSupply>('supply', everything)).rows
    const devices = (await store.listWhole<ShelfDevice>('device', everything)).rows
    const share = {
      site: { country },
      supplies: supplies.map(({ body }) => body.supply),
      devices: devices.map(({ body }) => body.device),
    }
    const matrix: ShelfMatrix = {
      supplies: supplies.map(edge),
      devices: devices.map(edge),
      run: runMatrix(share),
      failed: null,
    }
    matrix.run.finished.catch((error: unknown) => {
      matrix.failed = error
    })
    kept.set(key, matrix)
    for (const oldest of [...kept.keys()].slice(0, -mostKept)) kept.delete(oldest)
    return matrix
  }
}

/** Waits until the matrix is finished, but no longer than this [ms]; throws what went wrong in a thread. */
export async function finishedWithin({ run }: ShelfMatrix, ms: number): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined
  const late = new Promise<boolean>((resolve) => {
    timer = setTimeout(resolve, ms, false)
  })
  try {
    return await Promise.race([run.finished.then(() => true), late])
  } finally {
    clearTimeout(timer)
  }
}
