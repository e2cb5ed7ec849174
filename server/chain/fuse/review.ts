import type { FittedFuse } from '../../plate/fuseMarking.js'
import { nominalMatchOfMains } from '../../tables/fuseSelection.js'
import type { Outcome } from '../finding.js'
import { type Judgement, toFinding, worstFirst } from '../judgement.js'
import { answerOf, isLargerThanNeeded } from './fuseAnswer.js'
import { fittedLink, prescriptionAt } from './fuseLink.js'
import type { FuseOutcome, FuseRequest, FuseResponse } from './fuseRequest.js'
import type { FuseSituation } from './fuseSituation.js'
import { gatesOf } from './linkGates.js'
import { isTooSmall } from './prescriptionRules.js'
import { demandOf } from './required.js'
import { fuseRules } from './rules.js'
import { isQuicker } from './speedRules.js'

const facts = ({ ratedA, ratedV, characteristic, breaking, breakingCapacityA, scheme }: FittedFuse): FittedFuse => ({
  ratedA,
  ratedV,
  characteristic,
  breaking,
  breakingCapacityA,
  scheme,
})

/** Everything the rules look at, worked out once. */
function situationOf(request: FuseRequest): FuseSituation {
  const { circuit } = request
  const fitted = fittedLink(request, circuit.voltageV)
  const prescription = prescriptionAt(request.prescribed, circuit.voltageV)
  // "230V T800mA" is for 230 V, whatever the circuit is now
  const namedV = request.position === 'mains' && !prescription?.chosenByVoltage ? prescription?.link.circuitV : null
  const formerVoltageV = request.formerVoltageV ?? namedV ?? null
  const entered = Object.values(request.fuse ?? {}).some((value) => value != null)
  const moved =
    formerVoltageV != null &&
    !prescription?.chosenByVoltage &&
    Math.abs(formerVoltageV / circuit.voltageV - 1) > nominalMatchOfMains.value
  const link = prescription?.link
  const usable = link?.ratedA != null && !moved && !(link.ratedV !== null && link.ratedV < circuit.voltageV)
  return {
    request: { ...request, formerVoltageV },
    fitted,
    fittedEntered: entered || Boolean(request.marking?.trim()),
    prescription,
    moved,
    usable,
    demand: demandOf(request, fitted, prescription, moved),
  }
}

/** Every rule on one fuse-link, worst first; its words are made only when they are read. */
export const judgeFuse = (request: FuseRequest): Judgement[] => judgementsOn(situationOf(request))

const judgementsOn = (situation: FuseSituation): Judgement[] => worstFirst(fuseRules.flatMap((rule) => rule(situation)))

/**
 * Judges a fuse-link: what is fitted, what is prescribed, what the circuit asks.
 *
 * The prescription on the unit wins: nothing above its rating, slower, of lower breaking capacity or of lower voltage is
 * ever recommended; the calculation can only warn. Pure and cheap; unknown stays null.
 *
 * @param request  quantities in SI units, positive where given
 * @returns `replace` where something fitted is wrong, quicker than prescribed, or too small for the load, and what to fit is known; `find-out-first` where the cause or the
 *          right link has to be found; `keep` otherwise
 */
export function reviewFuse(request: FuseRequest): FuseResponse {
  const situation = situationOf(request)
  const { fitted, prescription, demand } = situation
  const judged = judgementsOn(situation)
  const drawn = fitted.ratedA === null && prescription ? prescription.link : fitted
  const { points, notes } = gatesOf(drawn)
  const ratedA = drawn.ratedA ?? 0
  const outcome = outcomeOf(situation, judged)
  return {
    answer: answerOf(outcome, situation, judged),
    outcome,
    fitted: facts(fitted),
    prescribed: prescription && prescription.link.ratedA !== null ? facts(prescription.link) : null,
    required: demand.required,
    findings: judged.map((judgement) => toFinding('fuse', judgement)),
    curve: points.map(({ multiple, minS, maxS }) => ({
      multiple,
      // 12 figures: 2.1 × 0.8 A is 1.68 A
      currentA: Number((multiple * ratedA).toPrecision(12)),
      minTimeS: minS,
      maxTimeS: maxS,
    })),
    curveNotes: notes,
  }
}

function outcomeOf(situation: FuseSituation, judged: readonly Judgement[]): FuseOutcome {
  const { request, usable } = situation
  const holds = (one: Outcome): boolean => judged.some(({ outcome }) => outcome === one)
  if (request.blown === true) return 'find-out-first'
  const known = usable || (request.position === 'plug' && !holds('unknown'))
  if (holds('stop')) return known ? 'replace' : 'find-out-first'
  if (usable && (isQuicker(situation) || isTooSmall(situation))) return 'replace'
  if (isLargerThanNeeded(situation) && !holds('unknown')) return 'replace'
  return holds('unknown') ? 'find-out-first' : 'keep'
}
