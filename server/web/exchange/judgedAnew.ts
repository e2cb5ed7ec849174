import { saysCause } from '../../bench/jobs/causeText.js'
import type { Assessment, Job } from '../../bench/jobs/job.js'
import { judgeAgain, withReadingsJudged } from '../../bench/jobs/jobChange.js'
import { mergedJob } from '../../bench/jobs/mergedJob.js'
import { withSent } from '../../bench/jobs/newJob.js'
import { stillHeld } from '../../bench/jobs/stops.js'
import { judgedAndPlanned } from '../judge.js'
import { givenOf } from '../parts/planGiven.js'

const isSame = (one: Assessment, { dataVersion, judgedAt }: Assessment, other: string): boolean =>
  JSON.stringify({ ...one, dataVersion, judgedAt }) === other

/** Causes that a person could have written here. */
const withCauses = (job: Job): Job => ({
  ...job,
  ...(job.causes && { causes: job.causes.filter(({ text }) => saysCause(text)) }),
})

/**
 * A job of a file, judged by this program: its check, limits, gates, readings and steps. What the file says of them counts only where
 * it is a stop; a cause takes what a typed one takes.
 *
 * @param kept  the copy of here that is replaced, newer or older: its entries stay, and its open stops hold the job still. null where
 *              there is none
 */
export function judgedAnew(file: Job, kept: Job | null, now: number): Job {
  const sent = withCauses(file)
  const { assessment, limits, plan } = judgedAndPlanned(sent.check, null, now, givenOf(sent))
  const before = kept ? mergedJob(sent, kept, now) : sent
  const again = withReadingsJudged(
    { ...before, plan: { ...(sent.plan as object | null), ...plan }, limits: withSent(limits, before.limits) },
    before,
  )
  // judged as it was here, or as the file says, is judged once
  const alike = [kept, sent].find((one) => one && isSame(assessment, one.assessment, JSON.stringify(one.assessment)))
  const judged = alike
    ? { ...again, assessment: alike.assessment, earlier: alike.earlier }
    : judgeAgain(again, assessment)
  if (!kept) return judged
  const { readings, ticks, causes } = before
  const own = new Set([...kept.readings, ...(kept.ticks ?? [])].map(({ id }) => id))
  const here = {
    ...kept,
    readings: readings.filter(({ id }) => own.has(id)),
    ...(ticks && { ticks: ticks.filter(({ id }) => own.has(id)) }),
    ...(causes && { causes }),
  }
  return stillHeld(judged, here)
}
