import type { Memory } from '../serverProcess.js'
import type { Timed } from './load.js'

export interface Measured {
  second: number
  memory: Memory
}

export interface SoakResult {
  seconds: number
  perSecond: number
  count: number
  timed: Timed[]
  measured: Measured[]
  failed: string[]
  lost: string[]
  acknowledged: number
}

/** The value below which a share of the sorted values lies. */
export const percentile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(sorted.length * share) - 1))] ?? 0

const ms = (value: number): string => value.toFixed(value < 10 ? 1 : 0)
const mb = (bytes: number): string => (bytes / 2 ** 20).toFixed(0)

const row = (cells: (string | number)[]): string => `| ${cells.join(' | ')} |`

/** The result as the soak's part of docs/performance.md. */
export function soakMarkdown({
  seconds,
  perSecond,
  count,
  timed,
  measured,
  failed,
  lost,
  acknowledged,
}: SoakResult): string {
  const kinds = [...new Set(timed.map(({ kind }) => kind))].sort()
  const latencies = ['all', ...kinds].map((kind) => {
    const of = timed.filter((one) => kind === 'all' || one.kind === kind).map((one) => one.ms)
    const sorted = of.sort((one, other) => one - other)
    const at = [0.5, 0.9, 0.99, 0.999, 1].map((share) => ms(percentile(sorted, share)))
    return row([kind, sorted.length, ...at])
  })
  return `\`npm run soak -- ${seconds}\`: ${seconds} s of mixed load at a steady ${perSecond} requests a second, ${count} in all. Times run from the moment a request was
due, not from when it was sent, so a stall counts for everything it delays.

${row(['kind', 'requests', 'p50 ms', 'p90 ms', 'p99 ms', 'p99.9 ms', 'longest ms'])}
|---|---:|---:|---:|---:|---:|---:|
${latencies.join('\n')}

${row(['after s', 'heap after collecting MB', 'resident MB'])}
|---:|---:|---:|
${measured.map(({ second, memory }) => row([second, mb(memory.heapUsed), mb(memory.rss)])).join('\n')}

Writes acknowledged: ${acknowledged}. Of these lost, changed or doubled, after a stop and a new start: ${lost.length}. Requests not answered as they should be: ${failed.length}.
`
}
