import { examinedOf, keepFound, keepReading, keepSeen, type Result } from '../../../bench/jobs/examined.js'
import type { Job } from '../../../bench/jobs/job.js'
import { readText } from '../../../bench/jobs/readingFinding.js'
import { type Found, mendedOf, type ReadingSeen } from '../../../examine/examineRequest.js'
import { causeOf, seenOf } from '../../../examine/suspects.js'
import { say } from '../../../words/phrase.js'
import { tell } from '../../../words/tell.js'
import { examineCheck } from '../../examineCheck.js'
import { entryId } from '../../once.js'
import { readingChoices } from './readingChoices.js'
import type { ExamineState } from './state.js'

interface Mark {
  id: string
  /** milliseconds since 1970 */
  at: number
}

/** Keeps in a job what was seen, with its line in the log. */
export const withSeen = (job: Job, seen: readonly string[], mark: Mark): Job =>
  keepSeen(job, seen, `Seen: ${seen.map((key) => seenOf(key).words).join('; ') || 'nothing'}.`, mark)

/** Keeps a reading, with its line in the log. */
export function withReading(job: Job, reading: ReadingSeen, mark: Mark): Job {
  const of = readingChoices(job.check).find(
    ({ key, unit, state }) => key === reading.key && unit === reading.unit && state === (reading.state ?? null),
  )
  return keepReading(job, reading, tell(say`Examined: ${of?.label ?? reading.key}: ${readText(reading)}.`), mark)
}

/** Keeps results, with their line in the log and the part that a confirmed cause asks for. */
export const withFound = (job: Job, found: readonly Found[], mark: Mark & { version: number }): Job =>
  keepFound(job, resultOf(found, job), mark)

/** What the job keeps of a result: a confirmed cause brings its part, with what it must be rated for at the place of the job. */
function resultOf(found: readonly Found[], job: Job): Result {
  const asked = examinedOf(job)
  const { causes: told } = tell(
    examineCheck({
      check: job.check,
      observations: [...asked.observations],
      readings: [...asked.readings],
      found: [...asked.found, ...found],
      lamps: null,
    }),
  )
  const confirmed = told.find(({ key }) => found.some(({ cause, result }) => cause === key && result === 'confirmed'))
  const words = found.map(({ cause, result }) => {
    const mended = mendedOf(cause)
    return mended === null
      ? `${result}: ${causeOf(cause).cause}`
      : `mended, and what it may have taken looked at: ${causeOf(mended).cause}`
  })
  return {
    found,
    words: `Examined, ${words.join('; ')}.`,
    part: confirmed?.part
      ? { name: confirmed.part.name, note: [confirmed.part.rated, confirmed.remedy].filter(Boolean).join('. ') }
      : null,
  }
}

/** A job that goes on from what was examined without one: all of it is kept, each with its line in the log. */
export function withExamined(job: Job, { seen, readings, found }: ExamineState, { id, at }: Mark): Job {
  const mark = (of: string) => ({ id: entryId(id, of), at, version: 1 })
  const excluded = found.filter(({ result }) => result === 'excluded')
  const others = found.filter(({ result }) => result === 'confirmed')
  const looked = seen.length > 0 ? withSeen(job, seen, mark('seen')) : job
  const read = readings.reduce((one, reading, index) => withReading(one, reading, mark(`read ${index}`)), looked)
  const out = excluded.length > 0 ? withFound(read, excluded, mark('excluded')) : read
  return others.reduce((one, result) => withFound(one, [result], mark(result.cause)), out)
}
