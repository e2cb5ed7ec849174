import { assess } from '../chain/assess.js'
import type { CheckRequest } from '../chain/request.js'
import type { Assessment } from '../jobs/job.js'
import type { SentPlan } from '../jobs/newJob.js'
import type { FirstPowerPlan } from '../plan/firstPowerPlan.js'
import { dataVersion } from './dataVersion.js'

/** A check judged now, by the tables and rules of this program. */
export const judged = (check: CheckRequest, now: number): Assessment => ({
  ...assess(check),
  dataVersion: dataVersion(),
  judgedAt: now,
})

/** The plan a job keeps: the one that was sent where it has stages. */
export const planned = (_check: CheckRequest, sent: SentPlan | null): SentPlan | FirstPowerPlan | null => sent
