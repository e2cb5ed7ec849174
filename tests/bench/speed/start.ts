import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { startServer } from '../serverProcess.js'
import { figure, type Measured, median, type Part } from './measured.js'
import { targets } from './targets.js'

const runs = 7

/** Compiling as `npm start` does it, with npm's own start [ms]. */
function compilingMs(): number {
  const begun = performance.now()
  execFileSync('npm', ['run', 'prestart', '--silent'], { cwd: join(import.meta.dirname, '../../..') })
  return performance.now() - begun
}

async function measure(): Promise<Measured[]> {
  const listening: number[] = []
  const answered: number[] = []
  for (let run = 0; run < runs; run += 1) {
    const folder = mkdtempSync(join(tmpdir(), 'lampline-start-'))
    const begun = performance.now()
    const server = await startServer(folder)
    listening.push(performance.now() - begun)
    const answer = await fetch(`${server.address}/`)
    await answer.text()
    if (answer.status !== 200) throw new Error(`the first page was answered with ${answer.status}`)
    answered.push(performance.now() - begun)
    await server.stop()
    rmSync(folder, { recursive: true })
  }
  return [
    {
      ...targets.start,
      unit: 'ms',
      value: median(answered),
      note: `${figure(Math.min(...answered))} to ${figure(Math.max(...answered))} in ${runs} starts, each with a new database; listening after ${figure(median(listening))} ms`,
    },
    { what: 'npm and compiling, before it', unit: 'ms', value: median(Array.from({ length: runs }, compilingMs)) },
  ]
}

export const start: Part = {
  name: 'start',
  title: 'Start',
  method:
    'From starting the program that `npm start` runs, `node built/main.js`, to the last byte of the page `/`. `npm start` compiles first.',
  measure,
}
