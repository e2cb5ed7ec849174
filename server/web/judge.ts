import type { Assessment, ReadingLimits } from '../bench/jobs/job.js'
import { limitsOf, type SentPlan, withSent } from '../bench/jobs/newJob.js'
import { assessCase } from '../chain/assess.js'
import { type Case, prepareCase } from '../chain/case/case.js'
import type { CheckRequest } from '../chain/case/request.js'
import type { ToldPlan } from '../plan/firstPowerPlan.js'
import { type FirstPowerOptions, planFirstPower } from '../plan/planFirstPower.js'
import { tell } from '../words/tell.js'
import { checklistOf } from './checklistOf.js'
import { dataVersion } from './dataVersion.js'
import { sentWith } from './parts/planGiven.js'

export interface JudgedCheck {
  check: CheckRequest
  assessment: Assessment
  plan: SentPlan | ToldPlan
  limits: ReadingLimits[]
}

/** A case judged now, by the tables and rules of this program. */
export const judged = (of: Case, now: number): Assessment => ({
  ...tell(assessCase(of)),
  dataVersion: dataVersion(),
  judgedAt: now,
})

/**
 * A check judged and planned. Readings are held against the steps of the plan that is worked out from the check and the lamps, and
 * the lines of the checklist that is printed from it. A plan that was sent tells the lamps, and may have steps besides.
 *
 * @param given  lamps at hand and what else was entered for the plan; kept with it, so that it can be opened again
 */
export function judgedAndPlanned(
  check: CheckRequest,
  sent: SentPlan | null,
  now: number,
  given: FirstPowerOptions = sentWith(sent),
): JudgedCheck {
  const of = prepareCase(check)
  const assessment = judged(of, now)
  const worked = tell(planFirstPower(of, assessment, given))
  const { stages } = tell(checklistOf(of, assessment, worked))
  const paper = limitsOf({ stages: stages.map(({ lines }) => ({ steps: lines })) })
  const own = new Map([...paper, ...limitsOf(worked)].map((row) => [row.key, row]))
  return {
    check,
    assessment,
    plan: { ...sent, ...worked, ...(Object.keys(given).length > 0 && { given }) },
    limits: withSent([...own.values()], limitsOf(sent)),
  }
}
