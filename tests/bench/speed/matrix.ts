import { prepareSite } from '../../../server/chain/prepareSite.js'
import { machinesOf, matrixRow } from '../../../server/shelf/matrix.js'
import { deviceReady, supplyReady } from '../../../server/shelf/prepared.js'
import { deviceAt, supplyAt } from '../../support/collection.js'
import { figure, type Measured, type Part } from './measured.js'
import { targets } from './targets.js'

/** Supplies and as many machines: 1 k, 4 k, 16 k … pairs. */
const sides = [32, 64, 128, 256, 512, 1024]

/** Processor time of judging each of `side` supplies for each of `side` machines, plates read before [ms]; the least of 3. */
function pairsMs(side: number): number {
  const site = prepareSite({ country: 'DE' })
  const supplies = Array.from({ length: side }, (_, index) => supplyReady(supplyAt(index)))
  const devices = Array.from({ length: side }, (_, index) => deviceReady(deviceAt(index)))
  // short ones are repeated, or the clock's own step would be seen
  const repeats = Math.ceil(65_536 / side ** 2)
  let least = Number.POSITIVE_INFINITY
  for (let run = 0; run < 3; run += 1) {
    const before = process.cpuUsage().user
    for (let repeat = 0; repeat < repeats; repeat += 1) {
      const machines = machinesOf(devices)
      for (const supply of supplies) matrixRow(site, supply, machines)
    }
    least = Math.min(least, (process.cpuUsage().user - before) / 1000 / repeats)
  }
  return least
}

/** The slope of a straight line through (ln x, ln y): y grows as x to this power. */
function exponent(points: readonly { x: number; y: number }[]): number {
  const logs = points.map(({ x, y }) => ({ x: Math.log(x), y: Math.log(y) }))
  const mean = (of: (log: { x: number; y: number }) => number) =>
    logs.reduce((sum, log) => sum + of(log), 0) / logs.length
  const [meanX, meanY] = [mean(({ x }) => x), mean(({ y }) => y)]
  return mean(({ x, y }) => (x - meanX) * (y - meanY)) / mean(({ x }) => (x - meanX) ** 2)
}

async function measure(): Promise<Measured[]> {
  pairsMs(128)
  const found = sides.map((side) => ({ x: side ** 2, y: pairsMs(side) }))
  return [
    {
      ...targets.growth,
      unit: '1',
      value: exponent(found),
      note: `fitted to ${found.map(({ x, y }) => `${figure(x)} pairs ${figure(y)} ms`).join(', ')}`,
    },
  ]
}

export const matrix: Part = {
  name: 'matrix',
  title: 'The matrix of a shelf against its size',
  method:
    'Supplies and machines that all differ, every supply judged for every machine on one core. Plates are read before, once each, so the time measured is that of the pairs.',
  measure,
}
