import { type ExamineRequest, type Found, mendedKey, type ReadingSeen } from '../../examine/examineRequest.js'
import { measuredOf } from '../../examine/readingSeen.js'
import type { Job, JobExamined } from './job.js'
import { addLog, addPart } from './jobChange.js'
import { inTime } from './when.js'

/** What was examined in a job that began before anything was. */
const nothing: JobExamined = { seen: [], found: [], readings: [] }

interface Mark {
  id: string
  /** milliseconds since 1970 */
  at: number
}

/** What was seen, read and found in a job: what was said of it, and the readings at its steps that were not taken back. */
export function examinedOf(job: Job): ExamineRequest {
  const { seen, found, readings } = job.examined ?? nothing
  const atSteps = inTime(job.readings).flatMap(({ key, value, unit, withdrawn }): ReadingSeen[] => {
    if (withdrawn) return []
    const reading = { key, value, unit }
    return measuredOf(reading) ? [reading] : []
  })
  return { observations: seen, found, readings: [...atSteps, ...readings] }
}

/** A form that is sent again changes nothing more. */
const changed = (job: Job, change: Partial<JobExamined>, words: string, mark: Mark): Job =>
  job.log.some(({ id }) => id === mark.id)
    ? job
    : addLog({ ...job, examined: { ...nothing, ...job.examined, ...change } }, words, mark)

/** Keeps what was seen, in place of what was said before. */
export const keepSeen = (job: Job, seen: readonly string[], words: string, mark: Mark): Job =>
  changed(job, { seen: [...seen] }, words, mark)

/** What is kept of a result: its part comes on the list of parts, where the cause is confirmed and one is to be renewed. */
export interface Result {
  found: readonly Found[]
  /** the log says it so */
  words: string
  part: { name: string; note: string | null } | null
}

/** Keeps what an examination came to: the last result of a cause counts. */
export function keepFound(job: Job, { found, words, part }: Result, mark: Mark & { version: number }): Job {
  const told = new Set(found.map(({ cause }) => cause))
  const before = (job.examined ?? nothing).found.filter(({ cause }) => !told.has(cause))
  const kept = changed(job, { found: [...before, ...found.map((one) => ({ ...one, at: mark.at }))] }, words, mark)
  if (kept === job) return job
  const listed = part === null || kept.parts.some(({ name, state }) => name === part.name && state !== 'fitted')
  return listed ? kept : addPart(kept, { ...part, state: 'wanted' }, mark)
}

/** Takes results back, with what was said to be mended of them. */
export function takeBackFound(job: Job, causes: readonly string[], words: string, mark: Mark): Job {
  const gone = new Set(causes.flatMap((cause) => [cause, mendedKey(cause)]))
  const { found } = job.examined ?? nothing
  return changed(job, { found: found.filter(({ cause }) => !gone.has(cause)) }, words, mark)
}

/** Keeps something that was read while examining. */
export const keepReading = (job: Job, reading: ReadingSeen, words: string, mark: Mark): Job =>
  changed(job, { readings: [...(job.examined ?? nothing).readings, reading] }, words, mark)
