import { median } from './measured.js'

/** How often a second of processor time, over some runs. */
export interface Rate {
  perSecond: number
  least: number
  most: number
}

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
 * How often each of some things can be done in a second of processor time, so that other programs on the machine do not
 * count: the middle of 5 runs of half a second each, after six to warm up. They are done in turn, run by run, so that what
 * slows the whole machine for a while meets all of them.
 */
export function perSecond<Name extends string>(works: Record<Name, (turn: number) => unknown>): Record<Name, Rate> {
  const names = Object.keys(works) as Name[]
  const rounds = Array.from({ length: warming + runs }, () => names.map((name) => run(works[name])))
  const rates = names.map((name, index) => {
    const each = rounds.slice(warming).map((round) => round[index] as number)
    return [name, { perSecond: median(each), least: Math.min(...each), most: Math.max(...each) }] as const
  })
  return Object.fromEntries(rates) as Record<Name, Rate>
}

function run(work: (turn: number) => unknown): number {
  const begun = usedMs()
  let turns = 0
  do {
    // the clock is looked at now and then only
    for (let more = 0; more < 50; more += 1) work(turns + more)
    turns += 50
  } while (usedMs() - begun < batchMs)
  return (1000 * turns) / (usedMs() - begun)
}
