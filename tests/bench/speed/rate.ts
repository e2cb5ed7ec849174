import { median } from './measured.js'

const batchMs = 500
const runs = 5
/** Runs before, as the compiler of Node.js is done with much code only after seconds. */
const warming = 6

/** Processor time this process has used, all its threads together [ms]. */
const usedMs = (): number => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

/**
 * How often something can be done in a second of processor time, so that other programs on the machine do not count: the
 * middle of 5 runs of half a second each, after six to warm up.
 */
export function perSecond(work: (turn: number) => unknown): { perSecond: number; least: number; most: number } {
  const run = (): number => {
    const begun = usedMs()
    let turns = 0
    do {
      // the clock is looked at now and then only
      for (let more = 0; more < 50; more += 1) work(turns + more)
      turns += 50
    } while (usedMs() - begun < batchMs)
    return (1000 * turns) / (usedMs() - begun)
  }
  for (let before = 0; before < warming; before += 1) run()
  const rates = Array.from({ length: runs }, run)
  return { perSecond: median(rates), least: Math.min(...rates), most: Math.max(...rates) }
}
