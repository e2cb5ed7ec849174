import { Missing, Stale } from '../../store/errors.js'
import type { Assessment, Job, Observations, Part, PartState, ReadingLimits } from './job.js'
import { type Given, inUnit, readingFinding } from './readingFinding.js'
import { withEarlier } from './rejudge.js'

/** The most readings, parts and log entries of one job. */
export const mostEntries = 2000

/** What was sent cannot be added to this job: status 422, with the field that is wrong. */
export class Unfit extends Error {
  readonly status = 422
  readonly fields: { path: string; message: string }[]
  constructor(path: string, message: string) {
    super(message)
    this.fields = [{ path, message }]
  }
}

interface Mark {
  /** of the entry; one that the job has already is not added again, and the job is answered as it is */
  id: string
  /** milliseconds since 1970 */
  at: number
}

const holds = (entries: readonly { id: string }[], id: string): boolean => entries.some((entry) => entry.id === id)

const refuseFull = (entries: unknown[], what: string, path: string): void => {
  if (entries.length >= mostEntries)
    throw new Unfit(
      path,
      `This job has ${entries.length} ${what} already, which is the most that is kept; begin a new job.`,
    )
}

/** The limits a reading is held against; null where the plan has no such step. */
const limitsFor = ({ limits }: Job, key: string): ReadingLimits | null => limits.find((row) => row.key === key) ?? null

/** Adds a reading with what it means. Throws {@link Unfit} where its unit measures something else than the step asks. */
export function addReading(job: Job, given: Given, { id, at }: Mark): Job {
  if (holds(job.readings, id)) return job
  refuseFull(job.readings, 'readings', 'key')
  const limits = limitsFor(job, given.key)
  if (limits?.unit && inUnit(given.value, given.unit, limits.unit) === null)
    throw new Unfit(
      'unit',
      `unit must be one that the step “${given.key}” is read in, ${limits.unit} or a part or multiple of it; received “${given.unit}”.`,
    )
  const { key, value, unit } = given
  const reading = { id, key, value, unit, at, finding: readingFinding(given, limits) }
  return { ...job, readings: [...job.readings, reading] }
}

/** Holds every reading against the limits as they are now, after another plan. */
export const withReadingsJudged = (job: Job): Job => ({
  ...job,
  readings: job.readings.map((reading) => {
    const limits = limitsFor(job, reading.key)
    const comparable = !limits?.unit || inUnit(reading.value, reading.unit, limits.unit) !== null
    return { ...reading, finding: readingFinding(reading, comparable ? limits : null) }
  }),
})

interface PartGiven {
  name: string
  state: PartState
  note?: string | null | undefined
}

export function addPart(job: Job, { name, state, note }: PartGiven, mark: Mark & { version: number }): Job {
  if (holds(job.parts, mark.id)) return job
  refuseFull(job.parts, 'parts', 'name')
  const part: Part = { id: mark.id, version: mark.version, name, state, note: note ?? null, since: mark.at }
  return { ...job, parts: [...job.parts, part] }
}

/** Changes a part; a part that was changed after `version` is refused, whatever else of the job changed. */
export function changePart(
  job: Job,
  partId: string,
  patch: Partial<PartGiven> & { version?: number | undefined },
  { at, version }: { at: number; version: number },
): Job {
  const part = job.parts.find(({ id }) => id === partId)
  if (!part) throw new Missing('There is no such part in this job; it may have been deleted.')
  if (patch.version !== undefined && part.version > patch.version) throw new Stale(part)
  const state = patch.state ?? part.state
  const changed: Part = {
    ...part,
    version,
    name: patch.name ?? part.name,
    state,
    note: patch.note === undefined ? part.note : patch.note,
    since: state === part.state ? part.since : at,
  }
  return { ...job, parts: job.parts.map((other) => (other.id === partId ? changed : other)) }
}

export function removePart(job: Job, partId: string): Job {
  if (!job.parts.some(({ id }) => id === partId)) throw new Missing('There is no such part in this job.')
  return { ...job, parts: job.parts.filter(({ id }) => id !== partId) }
}

export function addLog(job: Job, text: string, { id, at }: Mark): Job {
  if (holds(job.log, id)) return job
  refuseFull(job.log, 'log entries', 'text')
  return { ...job, log: [...job.log, { id, at, text }] }
}

/** Changes the name and those observations that are given; null takes one away. */
export function patchJob(
  job: Job,
  {
    name,
    observations,
  }: {
    name?: string | undefined
    observations?: { [Key in keyof Observations]?: Observations[Key] | undefined } | undefined
  },
): Job {
  const given = Object.entries(observations ?? {}).filter(([, value]) => value !== undefined)
  return {
    ...job,
    name: name ?? job.name,
    observations: { ...job.observations, ...Object.fromEntries(given) },
  }
}

/** Takes another judgement and keeps the one it replaces. */
export const judgeAgain = (job: Job, assessment: Assessment): Job => ({
  ...job,
  assessment,
  earlier: withEarlier(job.earlier, job.assessment),
})
