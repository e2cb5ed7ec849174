import { prepareDevice } from '../chain/prepareDevice.js'
import { prepareSite } from '../chain/prepareSite.js'
import { prepareSupply } from '../chain/prepareSupply.js'
import type { CheckRequest } from '../chain/request.js'
import type { Assessment, Job } from '../jobs/job.js'
import { type Checklist, composeChecklist } from '../plan/checklist.js'
import { type FirstPowerPlan, stageNames } from '../plan/firstPowerPlan.js'
import { planFirstPower } from '../plan/planFirstPower.js'
import { readPlate } from '../plate/readPlate.js'

/** The bench checklist of a judged check and its plan. */
export const checklistOf = (check: CheckRequest, assessment: Assessment, plan: FirstPowerPlan): Checklist =>
  composeChecklist({
    assessment,
    plan,
    site: prepareSite(check.site),
    supply: prepareSupply(check.supply, readPlate),
    device: prepareDevice(check.device, readPlate),
  })

/** True of a plan with all that a checklist needs; a job may keep one that was sent in part. */
function isWhole(plan: unknown): plan is FirstPowerPlan {
  const { stages, lamps } = (plan ?? {}) as Partial<FirstPowerPlan>
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

/** The bench checklist of a job: of the plan it keeps, else of one worked out from its check. */
export const jobChecklist = ({ check, assessment, plan }: Job): Checklist =>
  checklistOf(check, assessment, isWhole(plan) ? plan : planFirstPower(check, assessment))
