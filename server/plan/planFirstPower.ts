import type { Case } from '../chain/case/case.js'
import type { CheckResponse } from '../chain/finding.js'
import { unique } from '../words/unique.js'
import type { FirstPowerPlan, FirstPowerStage } from './firstPowerPlan.js'
import { behindGates } from './gateResults.js'
import { gatesOf } from './gates.js'
import { insideStages } from './inside/stages.js'
import { benchStage } from './stages/benchStage.js'
import { dummyLoadStage } from './stages/dummyLoadStage.js'
import { type FirstPowerOptions, factsOf, type PlanFacts } from './stages/facts.js'
import { type RailPlan, railPlans } from './stages/rails.js'
import { supplyAlone } from './stages/supplyAlone.js'
import { together } from './stages/together.js'

export type { FirstPowerOptions } from './stages/facts.js'

/**
 * A bring-up in stages: four for one supply and one machine, three for a machine with its supply inside, and of a supply or a machine alone
 * those that it has. A stage that must not be done as things stand is left out
 * with its reason; what is not known is listed, never guessed.
 *
 * @param of          what was entered, prepared
 * @param assessment  what the check found in it
 * @param options     lamps at hand and what else is known for a first power-up
 * @source the functions under plan/bench and plan/firstPower, each with its own
 */
export function planFirstPower(of: Case, assessment: CheckResponse, options: FirstPowerOptions = {}): FirstPowerPlan {
  return planOf(factsOf(of, assessment, options))
}

/** The stages that an arrangement has. */
function stagesOf(facts: PlanFacts, rails: readonly RailPlan[]): FirstPowerStage[] {
  switch (facts.arrangement) {
    case 'built-in':
      return insideStages(facts)
    case 'supply-only':
      return [supplyAlone(facts, rails), dummyLoadStage(facts, rails)]
    case 'machine-only':
      return [benchStage(facts)]
    default:
      return [supplyAlone(facts, rails), dummyLoadStage(facts, rails), benchStage(facts), together(facts, rails)]
  }
}

/** The same from facts already prepared. */
export function planOf(facts: PlanFacts): FirstPowerPlan {
  const rails = railPlans(facts)
  const stages = stagesOf(facts, rails)
  const gates = gatesOf(facts, rails)
  const { reach, firstLamp, loadLamp } = facts
  return {
    mains: reach && { voltageV: reach.voltageV, frequencyHz: reach.frequencyHz },
    through: reach?.through ?? null,
    lamps: [firstLamp, loadLamp === firstLamp ? null : loadLamp].filter((lamp) => lamp !== null),
    gates,
    missing: unique(facts.missing),
    stages: behindGates(stages, gates, facts.options.gateResults ?? []),
  }
}
