import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { examples } from '../../../server/web/viewModels/examples.js'
import { startServer } from '../serverProcess.js'
import { figure, type Measured, median, type Part } from './measured.js'
import { targets } from './targets.js'

const runs = 15

const asked: [Pick<Measured, 'what' | 'target'>, string[]][] = [
  [targets.emptyCheck, ['/']],
  [targets.fullCheck, examples.map(({ address }) => address)],
  [targets.plan, examples.map(({ address }) => address.replace(/^\//, '/first-power'))],
  [targets.checklist, examples.map(({ address }) => address.replace(/^\//, '/checklist'))],
  [targets.fuse, ['/fuse?marking=T1.6AH250V&position=mains&volts=230&former=120&amps=0.8']],
  [targets.reference, ['/reference']],
  [targets.sockets, ['/reference/sockets']],
]

async function measure(): Promise<Measured[]> {
  const folder = mkdtempSync(join(tmpdir(), 'lampline-pages-'))
  const server = await startServer(folder)
  const figures: Measured[] = []
  for (const [told, paths] of asked) {
    const took: number[] = []
    const first = new Map<string, number>()
    for (let run = 0; run < runs; run += 1)
      for (const path of paths) {
        const begun = performance.now()
        const answer = await fetch(server.address + path)
        await answer.text()
        if (answer.status !== 200) throw new Error(`${path} was answered with ${answer.status}`)
        const ms = performance.now() - begun
        if (first.has(path)) took.push(ms)
        else first.set(path, ms)
      }
    figures.push({
      ...told,
      unit: 'ms',
      value: median(took),
      note: `slowest ${figure(Math.max(...took))} ms; the very first ${figure(Math.max(...first.values()))} ms`,
    })
  }
  await server.stop()
  rmSync(folder, { recursive: true })
  return figures
}

export const pages: Part = {
  name: 'pages',
  title: 'Single pages',
  method:
    'One after the other over HTTP, the middle of 14 times; the very first time a view is used it is compiled, and is told apart. Pages with 2 000 kept records are held to 150 ms by `tests/bench/kept.test.ts`.',
  measure,
}
