import type { Job } from '../bench/jobs/job.js'
import { withActions } from '../bench/jobs/keptFinding.js'
import { type Case, prepareCase } from '../chain/case/case.js'
import type { CheckResponse } from '../chain/finding.js'
import { type Checklist, composeChecklist } from '../plan/checklist.js'
import { type FirstPowerPlan, stageNames, type ToldPlan } from '../plan/firstPowerPlan.js'
import { keptPlan } from '../plan/keptPlan.js'
import { planFirstPower } from '../plan/planFirstPower.js'
import { givenOf } from './parts/planGiven.js'

/** The bench checklist of a judged check and its plan. */
export const checklistOf = (of: Case, assessment: CheckResponse, plan: FirstPowerPlan): Checklist =>
  composeChecklist({ ...of, assessment, plan })

/** True of a plan with all that a checklist needs; a job may keep one that was sent in part. */
function isWhole(plan: unknown): plan is ToldPlan {
  const { stages, lamps } = (plan ?? {}) as Partial<ToldPlan>
  return (
    Array.isArray(stages) &&
    Array.isArray(lamps) &&
    stages.every(
      (stage) =>
        stageNames.includes(stage.name) &&
        typeof stage.title === 'string' &&
        Array.isArray(stage.steps) &&
        stage.steps.every((step) => typeof step.text === 'string' && typeof step.who === 'string'),
    )
  )
}

function jobPlan({ check, assessment: kept, plan }: Job): {
  of: Case
  assessment: CheckResponse
  plan: FirstPowerPlan
} {
  const of = prepareCase(check)
  const assessment = { ...kept, findings: kept.findings.map(withActions) }
  const anew = () => planFirstPower(of, assessment, givenOf({ plan }))
  return { of, assessment, plan: isWhole(plan) ? keptPlan(plan, () => anew().gates) : anew() }
}

/** The bench checklist of a job: of the plan it keeps, else of one worked out from its check. */
export function jobChecklist(job: Job): Checklist {
  const { of, assessment, plan } = jobPlan(job)
  return checklistOf(of, assessment, plan)
}

/** The gates of a job: those it keeps, else those of its check. */
export const jobGates = (job: Job): FirstPowerPlan['gates'] => jobPlan(job).plan.gates
