import type { Assessment, ReadingLimits } from '../bench/jobs/job.js'
import { limitsOf, type SentPlan } from '../bench/jobs/newJob.js'
import { assessCase } from '../chain/assess.js'
import { type Case, prepareCase } from '../chain/case/case.js'
import type { CheckRequest } from '../chain/case/request.js'
import type { ToldPlan } from '../plan/firstPowerPlan.js'
import { type FirstPowerOptions, planFirstPower } from '../plan/planFirstPower.js'
import { tell } from '../words/tell.js'
import { checklistOf } from './checklist.js'
import { dataVersion } from './dataVersion.js'

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
 * A check judged and planned. A plan that was sent with its stages is kept as it is; else one is worked out. Readings
 * are held against the steps of that plan and the lines of the checklist that is printed from the check.
 *
 * @param given  lamps at hand and what else was entered for the plan; kept with it, so that it can be opened again
 */
export function judgedAndPlanned(
  check: CheckRequest,
  sent: SentPlan | null,
  now: number,
  given?: FirstPowerOptions,
): JudgedCheck {
  const of = prepareCase(check)
  const assessment = judged(of, now)
  const worked = tell(planFirstPower(of, assessment, given))
  const plan = sent?.stages ? sent : { ...sent, ...worked, ...(given && Object.keys(given).length > 0 && { given }) }
  const { stages } = tell(checklistOf(of, assessment, worked))
  const fromPlan = new Map(limitsOf(plan).map((row) => [row.key, row]))
  const fromChecklist = limitsOf({ stages: stages.map(({ lines }) => ({ steps: lines })) })
  const known = new Set(fromChecklist.map(({ key }) => key))
  return {
    check,
    assessment,
    plan,
    // in the order of the paper; where both know a key, the plan that was sent decides
    limits: [
      ...fromChecklist.map((row) => fromPlan.get(row.key) ?? row),
      ...[...fromPlan.values()].filter(({ key }) => !known.has(key)),
    ],
  }
}
