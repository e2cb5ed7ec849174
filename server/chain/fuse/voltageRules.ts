import { dcAnyLinkMostV, dcRule, likeWithLike, voltageRule } from '../../tables/fuseSelection.js'
import { say } from '../../words/phrase.js'
import { volts } from '../../words/quantity.js'
import { caution, clear, type Judgement, stop, unknown } from '../judgement.js'
import { describe } from './fuseLink.js'
import type { FuseRequest } from './fuseRequest.js'
import { fitThis, type Rule, who } from './fuseSituation.js'

/** Alternating or direct current; null where it is not given on the low-voltage side. */
const kindOf = ({ position, circuit }: FuseRequest): 'ac' | 'dc' | null =>
  circuit.kind ?? (position === 'low-voltage' ? null : 'ac')

const aboveAny = ({ circuit }: FuseRequest): boolean => circuit.voltageV > dcAnyLinkMostV.value

/** Whether the circuit is one on which an ac rating is no rating. */
export const needsDcRating = (request: FuseRequest): boolean => kindOf(request) === 'dc' && aboveAny(request)

/** Rated voltage: against the circuit, of its own kind of current, and against the prescription. */
export const voltage: Rule = (situation) => {
  const { fitted, request, fittedEntered } = situation
  if (!fittedEntered || fitted.ratedA === null) return []
  if (needsDcRating(request)) return againstDc(situation)
  const found = againstRated(situation)
  const kindDecides = kindOf(request) === null && aboveAny(request) && found.every(({ outcome }) => outcome === 'clear')
  const { voltageV } = request.circuit
  return kindDecides && (fitted.ratedDcV ?? 0) < voltageV ? [kindNotKnown(voltageV, fitted.ratedV)] : found
}

const kindNotKnown = (voltageV: number, ratedV: number | null): Judgement =>
  unknown(() => ({
    title: say`Whether the ${volts(voltageV)} are alternating or direct current is not known`,
    why: say`${ratedV === null ? say`A rating` : say`The ${volts(ratedV)} of the link`} without DC beside it holds for alternating current only; on direct current the arc may go on.`,
    working: [say`${volts(voltageV)} > ${volts(dcAnyLinkMostV.value)}`],
    action: say`Enter the kind of current: ⎓ or DC, ~ or AC on the plate; behind a rectifier it is direct current (DC).`,
    sources: [voltageRule, dcRule, dcAnyLinkMostV.source],
  }))

const againstDc: Rule = ({ fitted: { ratedDcV, ratedV }, prescription, request }) => {
  const { voltageV } = request.circuit
  const sources = [voltageRule, dcRule]
  if (ratedDcV === null)
    return [
      unknown(() => ({
        title: say`The circuit is ${volts(voltageV)} direct current (DC); the link shows ${ratedV === null ? say`no rated voltage` : say`${volts(ratedV)}, which holds for alternating current`}`,
        why: say`A direct current has no zero at which its arc goes out: a link without a DC rating may go on burning.`,
        working: [say`${volts(voltageV)} > ${volts(dcAnyLinkMostV.value)}: a DC rating is needed`],
        action: say`Look on the cap and in the data sheet for a rating followed by DC, at least ${volts(voltageV)}. ${who}`,
        sources: [...sources, dcAnyLinkMostV.source],
      })),
    ]
  if (ratedDcV < voltageV)
    return [
      stop(() => ({
        title: say`The link is rated ${volts(ratedDcV)} DC; the circuit is ${volts(voltageV)} DC`,
        why: say`When it opens, the arc can go on inside or outside the link.`,
        working: [say`${volts(ratedDcV)} < ${volts(voltageV)}`],
        action: say`Use the prescribed ${prescription ? describe(prescription.link) : say`rating and speed`}, rated for at least ${volts(voltageV)} DC. ${who}`,
        sources,
      })),
    ]
  return [
    clear(() => ({
      title: say`The link is rated ${volts(ratedDcV)} DC; the circuit is ${volts(voltageV)} DC`,
      why: say`The DC rating covers the circuit.`,
      working: [say`${volts(ratedDcV)} ≥ ${volts(voltageV)}`],
      action: null,
      sources,
    })),
  ]
}

const againstRated: Rule = ({ fitted, prescription, request }) => {
  const { voltageV } = request.circuit
  const { ratedV } = fitted
  const link = prescription?.link
  const wantedV = link?.ratedV ?? null
  const sources = [voltageRule]
  const low = request.position === 'low-voltage'
  if (ratedV === null)
    return [
      (low ? caution : unknown)(() => ({
        title: say`The rated voltage of the fitted link is not marked`,
        why: say`A link for a lower voltage can go on arcing when it opens.`,
        working: [],
        action: say`Look on the cap; on ${volts(voltageV)} it must be at least that${low ? say`` : say`, commonly 250\u00a0V`}.`,
        sources,
      })),
    ]
  const working = [say`${volts(ratedV)} against ${volts(voltageV)}`]
  if (ratedV < voltageV)
    return [
      stop(() => ({
        title: say`The link is rated ${volts(ratedV)}; the circuit is ${volts(voltageV)}`,
        why: say`When it opens, the arc can go on inside or outside the link.`,
        working,
        action:
          link && wantedV !== null && wantedV >= voltageV
            ? fitThis(link)
            : say`Use the prescribed rating and speed, rated for at least ${volts(voltageV)}. ${who}`,
        sources,
      })),
    ]
  if (link && wantedV !== null && ratedV < wantedV)
    return [
      stop(() => ({
        title: say`The link is rated ${volts(ratedV)} where ${volts(wantedV)} is prescribed`,
        why: say`When it opens, the arc can go on.`,
        working: [...working, say`${volts(ratedV)} < ${volts(wantedV)}`],
        action: fitThis(link),
        sources: [voltageRule, likeWithLike.replacing],
      })),
    ]
  return [
    clear(() => ({
      title: say`The link is rated ${volts(ratedV)}; the circuit is ${volts(voltageV)}`,
      why: say`The rated voltage covers the circuit.`,
      working,
      action: null,
      sources,
    })),
  ]
}
