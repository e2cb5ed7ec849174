import type { Measured } from './measured.js'

type Target = Required<Pick<Measured, 'what' | 'target'>>

/** What is to be reached, and by what. */
export const targets = {
  page: { what: 'a full check, the page', target: { atLeast: 0.5 } },
  pageNewPlates: { what: 'a full check, the page, with plates never read before', target: { atLeast: 0.5 } },
  pageGzip: { what: 'a full check, the page, both compressed with gzip', target: { atLeast: 0.5 } },
  assess: { what: '`assess` of what is typed in the fields', target: { atLeast: 20_000 } },
  plates: { what: 'plates read', target: { atLeast: 5000 } },
  transient: { what: 'time of ngspice over ours', target: { atLeast: 50 } },
  agreement: { what: 'largest difference of peak current and filament temperature', target: { atMost: 1 } },
  growth: { what: 'growth: time goes as pairs to the power of', target: { atMost: 1.1 } },
  start: { what: 'start to the first page in full', target: { atMost: 2000 } },
  atRest: { what: 'resident at rest, after the first page', target: { atMost: 250 } },
  underLoad: { what: 'resident under load, the most seen', target: { atMost: 400 } },
  heapGrowth: { what: 'heap after it, more than after the first round of load', target: { atMost: 5 } },
  emptyCheck: { what: 'an empty check', target: { atMost: 150 } },
  fullCheck: { what: 'a full check', target: { atMost: 150 } },
  plan: { what: 'a first power-up plan', target: { atMost: 150 } },
  checklist: { what: 'a bench checklist', target: { atMost: 150 } },
  fuse: { what: 'a fuse review with its drawing', target: { atMost: 150 } },
  reference: { what: 'the list of reference tables', target: { atMost: 150 } },
  sockets: { what: 'the sockets of the world', target: { atMost: 150 } },
} as const satisfies Record<string, Target>
