import { readFileSync, writeFileSync } from 'node:fs'
import { availableParallelism, totalmem } from 'node:os'
import { join } from 'node:path'
import { withMarkedPart } from '../support/markedPart.js'
import { check } from './speed/check.js'
import { figure, type Part, tableOf } from './speed/measured.js'
import { memory } from './speed/memory.js'
import { start } from './speed/start.js'
import { transient } from './speed/transient.js'

/**
 * Measures and prints; all parts together are also written to docs/performance.md. Names of parts given to it run those
 * alone: `npm run bench -- check`.
 */
const parts: readonly Part[] = [check, transient, start, memory]
const page = join(import.meta.dirname, '../../docs/performance.md')

/** Each step waits for the one before, 4 cycles on any recent core. */
function loop(steps: number): number {
  let value = 1
  for (let step = 0; step < steps; step += 1) value = (Math.imul(value, 31) + step) | 0
  return value
}

function gigahertz(): number {
  const steps = 3e8
  const before = process.cpuUsage().user
  const value = loop(steps)
  const ms = (process.cpuUsage().user - before) / 1000
  // the value is used, so that the loop is not left out
  return (4 * steps) / ms / 1e6 + (value === 0 ? 1e-9 : 0)
}

const machine = (): string =>
  `${availableParallelism()} cores that do as much as ${figure(gigahertz())} GHz of their own, ${figure(totalmem() / 1e9)} GB of memory, ${process.platform} ${process.arch}, Node.js ${process.version}, ${new Date().toISOString().slice(0, 10)}.`

const asked = process.argv.slice(2)
const unknown = asked.filter((name) => !parts.some((part) => part.name === name))
if (unknown.length > 0)
  throw new Error(`no part is called ${unknown.join(', ')}; there are ${parts.map(({ name }) => name).join(', ')}`)

const written = [`Measured with \`npm run bench\` on ${machine()}`]
for (const part of parts.filter(({ name }) => asked.length === 0 || asked.includes(name))) {
  const text = `### ${part.title}\n\n\`npm run bench -- ${part.name}\`. ${part.method}\n\n${tableOf(await part.measure())}`
  console.log(`${text}\n`)
  written.push(text)
}
if (asked.length === 0) writeFileSync(page, withMarkedPart(readFileSync(page, 'utf8'), 'bench', written.join('\n\n')))
