import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fuzz } from './run.js'

/** `npm run fuzz [count] [seed]`: sends generated requests to a server of its own and prints what came of it. */
const [count = '100000', seed = String(Date.now() % 1_000_000)] = process.argv.slice(2)
/** What the heap may grow by over the last three quarters of a run: caches that fill up, never more with more requests [bytes]. */
const mostGrowth = 12 * 2 ** 20

const dataDir = mkdtempSync(join(tmpdir(), 'lampline-fuzz-'))
const mb = (bytes: number): string => (bytes / 2 ** 20).toFixed(1)

const outcome = await fuzz({
  dataDir,
  seed: Number(seed),
  count: Number(count),
  progress: (sent, { heapUsed, rss }) => console.log(`${sent} sent, heap ${mb(heapUsed)} MB, resident ${mb(rss)} MB`),
})
rmSync(dataDir, { recursive: true, force: true })

const [first] = outcome.memory
const last = outcome.memory[outcome.memory.length - 1]
console.log(`
seed               ${outcome.seed}
requests           ${outcome.count} in ${Math.round(outcome.seconds)} s
by status          ${Object.entries(outcome.statuses)
  .sort(([one], [other]) => one.localeCompare(other))
  .map(([status, times]) => `${status}: ${times}`)
  .join(', ')}
p50, p99           ${outcome.p50Ms.toFixed(1)} ms, ${outcome.p99Ms.toFixed(1)} ms
slowest            ${outcome.slowest.ms.toFixed(0)} ms  ${outcome.slowest.request.slice(0, 200)}
heap after collecting   ${mb(first?.memory.heapUsed ?? 0)} MB at the start, ${mb(last?.memory.heapUsed ?? 0)} MB at the end, trend ${mb(outcome.heapGrowth)} MB
resident           ${mb(first?.memory.rss ?? 0)} MB at the start, ${mb(last?.memory.rss ?? 0)} MB at the end
slow alone         ${outcome.slowAlone.length}
faults             ${outcome.faults.length}`)
for (const { ms, request } of outcome.slowAlone.slice(0, 20)) console.log(`\n${ms} ms alone: ${request}`)
for (const { what, request } of outcome.faults.slice(0, 40)) console.log(`\n${what}\n  ${request}`)
if (outcome.heapGrowth > mostGrowth) console.log(`\nThe heap grows: ${mb(outcome.heapGrowth)} MB over the run.`)
process.exitCode = outcome.faults.length > 0 || outcome.heapGrowth > mostGrowth ? 1 : 0
