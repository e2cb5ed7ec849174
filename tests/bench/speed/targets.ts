import type { Measured } from './measured.js'

type Target = Required<Pick<Measured, 'what' | 'target'>>

/** What is to be reached, and by what. */
export const targets = {
  alone: { what: 'one connection', target: { atMost: 12 } },
  together: { what: 'twenty connections', target: { atLeast: 150 } },
  transient: { what: 'time of ngspice over ours', target: { atLeast: 50 } },
  agreement: { what: 'largest difference of peak current and filament temperature', target: { atMost: 1 } },
  start: { what: 'start to the first page in full', target: { atMost: 2000 } },
  atRest: { what: 'resident at rest, after the first page', target: { atMost: 250 } },
  underLoad: { what: 'resident under load, the most seen', target: { atMost: 400 } },
  heapGrowth: { what: 'heap after it, more than after the first round of load', target: { atMost: 5 } },
} as const satisfies Record<string, Target>
