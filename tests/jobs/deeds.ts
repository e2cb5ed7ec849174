import fc from 'fast-check'
import { changeFacts } from '../../server/bench/jobs/factChange.js'
import type { Job } from '../../server/bench/jobs/job.js'
import { addReading, addTick, judgeAgain, patchJob, Unfit } from '../../server/bench/jobs/jobChange.js'
import { newJob } from '../../server/bench/jobs/newJob.js'
import type { CheckRequest } from '../../server/facts/check.js'
import { undone } from '../../server/web/jobFacts.js'
import { judgedAndPlanned } from '../../server/web/judge.js'
import { anyRequest } from '../chain/anyRequest.js'
import { matching, reversed } from '../web/exampleChecks.js'

export const at = Date.UTC(2026, 0, 5, 9)
export const job = (check: CheckRequest = matching): Job =>
  newJob({ name: 'Radio', ...judgedAndPlanned(check, null, at) })
export const changed = (of: Job, check: CheckRequest, id: string): Job =>
  changeFacts(of, judgedAndPlanned(check, null, at), { id, at })

export type Deed = (job: Job, id: string) => Job

/** What people do to a job, whole or refused. */
export const deeds: fc.Arbitrary<Deed> = fc.oneof(
  anyRequest.map(
    (check): Deed =>
      (of, id) =>
        changed(of, check, id),
  ),
  fc.constantFrom(matching, reversed).map(
    (check): Deed =>
      (of, id) =>
        changed(of, check, id),
  ),
  fc.nat().map(
    (pick): Deed =>
      (of, id) => {
        const changes = of.changes ?? []
        const change = changes[pick % Math.max(1, changes.length)]
        return change ? undone(of, change.id, { id, at }) : of
      },
  ),
  fc.tuple(fc.nat(), fc.constantFrom(0, 0.2, 12, 14.9, 325, 1e7)).map(
    ([pick, value]): Deed =>
      (of, id) => {
        const steps = of.limits.filter(({ unit }) => unit !== null)
        const step = steps[pick % Math.max(1, steps.length)]
        return step ? addReading(of, { key: step.key, value, unit: step.unit ?? '' }, { id, at }) : of
      },
  ),
  fc.tuple(fc.nat(), fc.constantFrom('as-expected' as const, 'wrong' as const)).map(
    ([pick, as]): Deed =>
      (of, id) => {
        const step = of.limits[pick % Math.max(1, of.limits.length)]
        return step ? addTick(of, { key: step.key, as, words: null }, { id, at }) : of
      },
  ),
  fc
    .record({
      smells: fc.constantFrom(null, 'none', 'smoke', 'smoke and tar'),
      drawnA: fc.constantFrom(null, 0.1, 5),
      works: fc.constantFrom('yes' as const, null),
    })
    .map(
      (observations): Deed =>
        (of, id) =>
          patchJob(of, { observations }, { id, at }),
    ),
  fc.constant<Deed>((of) => judgeAgain(of, judgedAndPlanned(of.check, null, at).assessment)),
)

/** A job after a deed; as it was where that is refused, such as power on a stopped job. */
export function after(of: Job, deed: Deed, id: string): Job {
  try {
    return deed(of, id)
  } catch (error) {
    if (!(error instanceof Unfit) && !(error as { status?: number }).status) throw error
    return of
  }
}
