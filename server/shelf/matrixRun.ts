import { existsSync } from 'node:fs'
import { createRequire } from 'node:module'
import { availableParallelism } from 'node:os'
import { pathToFileURL } from 'node:url'
import { Worker } from 'node:worker_threads'
import { prepareSite } from '../chain/prepareSite.js'
import type { Device, Site, Supply } from '../chain/request.js'
import { machinesOf, matrixRow } from './matrix.js'
import { deviceReady, eachInTurn, supplyReady } from './prepared.js'

/** What one thread is given. */
export interface MatrixShare {
  site: Site
  supplies: Supply[]
  devices: Device[]
}

/** A matrix on its way: rows appear in `rows` as they are judged. */
export interface MatrixRun {
  /** one row a supply; undefined until it is judged */
  rows: (Uint8Array | undefined)[]
  /** how many rows are judged */
  done(): number
  finished: Promise<void>
}

/** Threads beyond the first take the plates of all machines to read again, so few rows are not worth a second one. */
const leastRows = 50

const mostThreads = 4

/** A shelf up to this size is judged before a thread would have loaded the program; rows and plates in all. */
const mostHere = { plates: 300, pairs: 20_000 }

/** Judges a small shelf in this thread, a few rows at a time, so that others are let through. */
async function judgeHere({ site, supplies, devices }: MatrixShare, done: (row: number, cells: Uint8Array) => void) {
  const place = prepareSite(site)
  const machines = machinesOf(await eachInTurn(devices, deviceReady))
  const rows = supplies.map((supply, row) => ({ supply, row }))
  await eachInTurn(rows, ({ supply, row }) => done(row, matrixRow(place, supplyReady(supply), machines)))
}

/** Compiled, a thread is a file beside this one; run as they are written, the sources want a loader in each thread. */
function threadFor(share: MatrixShare): Worker {
  const compiled = new URL('./matrixWorker.js', import.meta.url)
  if (existsSync(compiled)) return new Worker(compiled, { workerData: share, execArgv: [] })
  const loader = pathToFileURL(
    createRequire(import.meta.url)
      .resolve('tsx/esm/api')
      .replace(/cjs$/, 'mjs'),
  ).href
  const file = new URL('./matrixWorker.ts', import.meta.url).href
  const begin = `import(${JSON.stringify(loader)}).then(({ tsImport }) => tsImport(${JSON.stringify(file)}, ${JSON.stringify(file)}))`
  return new Worker(begin, { eval: true, workerData: share, execArgv: [] })
}

/** Judges every supply for every machine, a large shelf in threads of their own, so that the process goes on answering. */
export function runMatrix({ site, supplies, devices }: MatrixShare): MatrixRun {
  if (supplies.length + devices.length <= mostHere.plates && supplies.length * devices.length <= mostHere.pairs) {
    const rows: (Uint8Array | undefined)[] = new Array(supplies.length).fill(undefined)
    let done = 0
    const finished = judgeHere({ site, supplies, devices }, (row, cells) => {
      rows[row] = cells
      done += 1
    })
    return { rows, done: () => done, finished }
  }
  const threads = Math.min(mostThreads, availableParallelism(), Math.max(1, Math.floor(supplies.length / leastRows)))
  const size = Math.ceil(supplies.length / threads)
  const rows: (Uint8Array | undefined)[] = new Array(supplies.length).fill(undefined)
  let done = 0
  const shares = Array.from({ length: threads }, (_, thread) => thread * size).map(
    (from) =>
      new Promise<void>((resolve, reject) => {
        const worker = threadFor({ site, supplies: supplies.slice(from, from + size), devices })
        worker.on('message', ({ row, cells }: { row: number; cells: Uint8Array }) => {
          rows[from + row] = cells
          done += 1
        })
        worker.on('error', reject)
        worker.on('exit', () => resolve())
      }),
  )
  return { rows, done: () => done, finished: Promise.all(shares).then(() => undefined) }
}
