import { leastLoadShare } from '../../tables/firstPower.js'
import type { PlanFacts } from './facts.js'
import type { RailPlan } from './rails.js'

/** A load that must hang on an output from the first second. */
export interface LeastLoad {
  plan: RailPlan
  /** which output, from 1 */
  number: number
  leastA: number
  /** false where it is the usual share and not what the supply states */
  known: boolean
}

/**
 * The least loads of a supply: those it states; of a switch-mode supply with several outputs that states none, a tenth of the rating on
 * the output of the largest current, which is the one it regulates by.
 */
export function leastLoads({ supply, technology }: PlanFacts, rails: readonly RailPlan[]): LeastLoad[] {
  const stated = rails.flatMap((plan, index): LeastLoad[] =>
    plan.rail.leastA == null ? [] : [{ plan, number: index + 1, leastA: plan.rail.leastA, known: true }],
  )
  if (stated.length > 0 || technology === 'transformer' || supply.railsMayBePositions || rails.length < 2) return stated
  const largest = Math.max(...rails.map(({ rail }) => rail.currentA ?? 0))
  const index = rails.findIndex(({ rail }) => rail.currentA === largest)
  const plan = rails[index]
  return plan ? [{ plan, number: index + 1, leastA: leastLoadShare.value * largest, known: false }] : []
}
