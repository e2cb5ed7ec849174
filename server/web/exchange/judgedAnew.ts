import { saysCause } from '../../bench/jobs/causeText.js'
import type { Assessment, Job } from '../../bench/jobs/job.js'
import { judgeAgain, withReadingsJudged } from '../../bench/jobs/jobChange.js'
import { withSent } from '../../bench/jobs/newJob.js'
import { stillHeld } from '../../bench/jobs/stops.js'
import { judgedAndPlanned } from '../judge.js'
import { givenOf } from '../parts/planGiven.js'

const isSame = (one: Assessment, { dataVersion, judgedAt }: Assessment, other: string): boolean =>
  JSON.stringify({ ...one, dataVersion, judgedAt }) === other

/**
 * A job of a file, judged by this program: its check, limits, gates, readings and steps. What the file says of them counts only where
 * it is a stop; a cause takes what a typed one takes.
 *
 * @param kept  the newer copy that is replaced; its open stops hold the job still. null where there is none
 */
export function judgedAnew(sent: Job, kept: Job | null, now: number): Job {
  const { assessment, limits, plan } = judgedAndPlanned(sent.check, null, now, givenOf(sent))
  const before: Job = { ...sent, ...(sent.causes && { causes: sent.causes.filter(({ text }) => saysCause(text)) }) }
  const again = withReadingsJudged(
    { ...before, plan: { ...(sent.plan as object | null), ...plan }, limits: withSent(limits, sent.limits) },
    before,
  )
  const judged = isSame(assessment, sent.assessment, JSON.stringify(sent.assessment))
    ? again
    : judgeAgain(again, assessment)
  return kept ? stillHeld(judged, kept) : judged
}
