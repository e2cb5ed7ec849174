import { prepareDevice } from '../chain/prepareDevice.js'
import { prepareSite } from '../chain/prepareSite.js'
import { prepareSupply } from '../chain/prepareSupply.js'
import type { CheckRequest } from '../chain/request.js'
import type { Assessment } from '../jobs/job.js'
import { type Checklist, composeChecklist } from '../plan/checklist.js'
import type { FirstPowerPlan } from '../plan/firstPowerPlan.js'
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
