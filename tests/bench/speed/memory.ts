import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { examples } from '../../../server/web/parts/examples.js'
import { startServer } from '../serverProcess.js'
import { load } from './load.js'
import { figure, type Measured, type Part } from './measured.js'
import { targets } from './targets.js'

const megabyte = 1e6
const rounds = 4
const seconds = 4

async function measure(): Promise<Measured[]> {
  const folder = mkdtempSync(join(tmpdir(), 'lampline-memory-'))
  const server = await startServer(folder)
  const paths = examples.flatMap(({ address }) =>
    ['/', '/first-power', '/checklist'].map((view) => address.replace(/^\//, view)),
  )
  await (await fetch(`${server.address}/`)).text()
  const rest = await server.memory()
  const heaps: number[] = []
  let most = rest.rss
  for (let round = 0; round < rounds; round += 1) {
    const running = load({ address: server.address, paths, connections: 16, seconds })
    await new Promise((resolve) => setTimeout(resolve, (seconds * 1000) / 2))
    most = Math.max(most, (await server.memory()).rss)
    await running
    heaps.push((await server.memory()).heapUsed)
  }
  const after = await server.memory()
  await server.stop()
  rmSync(folder, { recursive: true })
  const row = (told: Pick<Measured, 'what' | 'target' | 'note'>, bytes: number): Measured => ({
    ...told,
    unit: 'MB',
    value: bytes / megabyte,
  })
  const [first = 0] = heaps
  const note = `${heaps.map((heap) => figure(heap / megabyte)).join(', ')} MB after each round`
  return [
    row(targets.atRest, rest.rss),
    row({ what: 'heap at rest' }, rest.heapUsed),
    row(targets.underLoad, most),
    row({ what: 'resident after it' }, after.rss),
    row({ ...targets.heapGrowth, note }, after.heapUsed - first),
  ]
}

export const memory: Part = {
  name: 'memory',
  title: 'Memory',
  method:
    'Checks, first power-up plans and checklists over 16 connections, four rounds of 4 s. Heap is what is left after collecting.',
  measure,
}
