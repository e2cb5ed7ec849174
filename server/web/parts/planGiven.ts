import type { Job } from '../../bench/jobs/job.js'
import type { FirstPowerOptions } from '../../plan/planFirstPower.js'
import { lampAtHandSchema } from '../schemas/atHand.js'
import { firstPowerSchema } from '../schemas/bench.js'

/** What a job's plan was given besides the check; an empty one where it was planned without, or elsewhere. */
export function givenOf({ plan }: Pick<Job, 'plan'>): FirstPowerOptions {
  const { given } = (plan ?? {}) as { given?: unknown }
  return firstPowerSchema.omit({ check: true }).safeParse(given ?? {}).data ?? {}
}

/** What a plan that was sent was made with: what it was given, else the lamps that it names. */
export function sentWith(plan: unknown): FirstPowerOptions {
  const given = givenOf({ plan })
  const { lamps } = (plan ?? {}) as { lamps?: unknown }
  if (given.lampsOnHand || !Array.isArray(lamps)) return given
  const lampsOnHand = lamps.flatMap((lamp) => lampAtHandSchema.strip().safeParse(lamp).data ?? [])
  return lampsOnHand.length > 0 ? { ...given, lampsOnHand } : given
}
