import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { examples } from '../../../server/web/parts/examples.js'
import { startServer } from '../serverProcess.js'
import { load } from './load.js'
import { figure, type Measured, median, type Part } from './measured.js'
import { targets } from './targets.js'

const paths = examples.map(({ address }) => address)
const rounds = 5

async function measure(): Promise<Measured[]> {
  const folder = mkdtempSync(join(tmpdir(), 'lampline-check-'))
  const server = await startServer(folder)
  try {
    const asked = { address: server.address, paths }
    await load({ ...asked, connections: 20, seconds: 10 })
    const alone: number[] = []
    const together: number[] = []
    for (let round = 0; round < rounds; round += 1) {
      alone.push((await load({ ...asked, connections: 1, seconds: 3 })).middleMs)
      together.push((await load({ ...asked, connections: 20, seconds: 3 })).perSecond)
    }
    const within = (found: number[]): string =>
      `${figure(Math.min(...found))} to ${figure(Math.max(...found))} in ${rounds} rounds`
    return [
      { ...targets.alone, unit: 'ms', value: median(alone), note: within(alone) },
      { ...targets.together, unit: 'a second', value: median(together), note: within(together) },
    ]
  } finally {
    await server.stop()
    rmSync(folder, { recursive: true })
  }
}

export const check: Part = {
  name: 'check',
  title: 'A full check, the page',
  method:
    'The worked cases of the start page in turn, asked of the program that `npm start` runs by a second process, after 10 s of load.',
  measure,
}
