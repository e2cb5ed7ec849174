import type { Verdict } from '../../chain/finding.js'
import type { Draft } from '../../store/store.js'
import type { Job } from './job.js'
import { openParts, standing, type Wait } from './standing.js'

/** What the list shows of a job. */
export interface JobSummary {
  verdict: Verdict
  waits: Wait[]
  since: number
  parts: number
  readings: number
  /** parts to come that have a day, the earliest first; absent in rows written before there were any */
  due?: { part: string; expected: string }[]
  /** parts that arrived and are not fitted */
  arrived?: string[]
}

/** The most waits a list shows of one job; the job's own page shows all. */
const mostShown = 6

/** A job as the store keeps it: the state and the summary follow from the body, so they never disagree with it. */
export function jobDraft(job: Job): Draft<Job> {
  const { state, waits, since } = standing(job)
  const summary: JobSummary = {
    verdict: job.assessment.verdict,
    waits: waits.slice(0, mostShown),
    since,
    parts: job.parts.length,
    readings: job.readings.length,
    due: openParts(job.parts)
      .flatMap(({ name, expected }) => (expected === undefined ? [] : [{ part: name, expected }]))
      .toSorted((one, other) => (one.expected < other.expected ? -1 : 1))
      .slice(0, mostShown),
    arrived: job.parts
      .filter(({ state }) => state === 'arrived')
      .slice(0, mostShown)
      .map(({ name }) => name),
  }
  const words = [job.name, job.check.supply.label, job.check.device.label, ...job.parts.map(({ name }) => name)]
  return { name: job.name, search: words.filter(Boolean).join('\n'), state, summary, body: job }
}
