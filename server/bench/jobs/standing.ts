import type { ToldFinding } from '../../chain/finding.js'
import type { Assessment, Job, Part, Reading } from './job.js'
import { openStops } from './stops.js'
import { inTime } from './when.js'

/** In the order in which they stand in the list: what can go on first, then what a cause is found for, what is done last. */
export const standingStates = [
  'under-way',
  'ready',
  'out-of-limits',
  'find-out',
  'waits-for-parts',
  'must-change',
  'finished',
] as const

export type StandingState = (typeof standingStates)[number]

/** Parts that did not arrive yet. */
export const openParts = (parts: readonly Part[]): Part[] =>
  parts.filter(({ state }) => state === 'wanted' || state === 'ordered')

/** Whether work can go on in this state. */
export const goesOn = (state: StandingState): boolean => state === 'under-way' || state === 'ready'

export interface Wait {
  for: 'reading' | 'change' | 'part' | 'fact'
  text: string
  /** milliseconds since 1970 */
  since: number
}

/** Where a job stands: never set by hand, always what the check, the readings, the parts and the observations say. */
export interface Standing {
  state: StandingState
  waits: Wait[]
  since: number
}

/** The last reading of each key that was not taken back, in the order of their keys' first reading. */
export function latestReadings(readings: readonly Reading[]): Reading[] {
  const counted = inTime(readings).filter(({ withdrawn }) => !withdrawn)
  return [...new Map(counted.map((reading) => [reading.key, reading])).values()]
}

const has = (assessment: Assessment, { topic, outcome }: ToldFinding): boolean =>
  assessment.findings.some((other) => other.topic === topic && other.outcome === outcome)

/** Since when a finding stands: the first of the unbroken run of judgements that had it. */
function since(finding: ToldFinding, { assessment, earlier }: Pick<Job, 'assessment' | 'earlier'>): number {
  let at = assessment.judgedAt
  for (const before of [...earlier].reverse()) {
    if (!has(before, finding)) break
    at = before.judgedAt
  }
  return at
}

type Judged = Pick<
  Job,
  'assessment' | 'earlier' | 'readings' | 'ticks' | 'causes' | 'parts' | 'observations' | 'limits'
>

const stateOf: Record<Wait['for'], StandingState> = {
  reading: 'out-of-limits',
  change: 'must-change',
  part: 'waits-for-parts',
  fact: 'find-out',
}

/** Derives where a job stands. It can go on only where nothing is waited for. */
export function standing(job: Judged): Standing {
  const waits: Wait[] = [
    ...openStops(job).map(({ where, title, at }) => ({
      for: 'reading' as const,
      text: `The cause of the stop at “${where}”: ${title}`,
      since: at,
    })),
    ...job.assessment.findings
      .filter(({ outcome }) => outcome === 'stop')
      .map((finding) => ({ for: 'change' as const, text: finding.title, since: since(finding, job) })),
    ...openParts(job.parts).map(({ name, state, since: at, expected }) => ({
      for: 'part' as const,
      text: `${name} (${state}${expected === undefined ? '' : `, expected ${expected}`})`,
      since: at,
    })),
    ...job.assessment.findings
      .filter(({ outcome }) => outcome === 'unknown')
      .map((finding) => ({ for: 'fact' as const, text: finding.title, since: since(finding, job) })),
  ]
  const first = waits[0]
  if (first)
    return {
      state: stateOf[first.for],
      waits,
      since: Math.min(...waits.filter((wait) => wait.for === first.for).map((wait) => wait.since)),
    }
  const latest = Math.max(
    job.assessment.judgedAt,
    ...job.parts.map((part) => part.since),
    ...job.readings.map(({ at }) => at),
    ...(job.ticks ?? []).map(({ at }) => at),
  )
  const finished = job.observations.works === 'yes' && job.parts.every(({ state }) => state === 'fitted')
  if (finished) return { state: 'finished', waits, since: latest }
  const begun = job.readings.length > 0 || (job.ticks ?? []).length > 0
  return { state: begun ? 'under-way' : 'ready', waits, since: latest }
}
