import type { Job } from '../../bench/jobs/job.js'
import type { FirstPowerOptions } from '../../plan/planFirstPower.js'
import { firstPowerSchema } from '../schemas/bench.js'

/** What a job's plan was given besides the check; an empty one where it was planned without, or elsewhere. */
export function givenOf({ plan }: Pick<Job, 'plan'>): FirstPowerOptions {
  const { given } = (plan ?? {}) as { given?: unknown }
  return firstPowerSchema.omit({ check: true }).safeParse(given ?? {}).data ?? {}
}
