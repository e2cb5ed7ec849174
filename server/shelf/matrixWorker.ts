import { parentPort, workerData } from 'node:worker_threads'
import { prepareSite } from '../chain/prepareSite.js'
import { machinesOf, matrixRow } from './matrix.js'
import type { MatrixShare } from './matrixRun.js'
import { deviceReady, supplyReady } from './prepared.js'

/** Judges one share of the matrix in a thread of its own and tells each row as it is ready. */
const { site, supplies, devices } = workerData as MatrixShare
const place = prepareSite(site)
const machines = machinesOf(devices.map(deviceReady))
supplies.forEach((supply, row) => {
  parentPort?.postMessage({ row, cells: matrixRow(place, supplyReady(supply), machines) })
})
