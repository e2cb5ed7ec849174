import { amperes, volts } from '../../physics/quantity.js'
import { breakingRank } from '../../plate/fuseMarking.js'
import { iecBreakingCapacity, ulInterruptingAt250V } from '../../reference/fuseRatings.js'
import { breakingRule, dcRule, likeWithLike, voltageRule } from '../../reference/fuseSelection.js'
import { caution, clear, type Judgement, stop, unknown } from '../judgement.js'
import type { FuseLink } from './fuseLink.js'
import { fitThis, type Rule, who } from './fuseSituation.js'

/** Breaking capacity: against the prescription and against the fault current. */
export const breaking: Rule = ({ fitted, prescription, request, fittedEntered }) => {
  const found: Judgement[] = []
  const link = prescription?.link
  const wanted = link?.breaking ?? null
  if (link && wanted && request.position !== 'plug') {
    if (fitted.breaking === null) {
      // every IEC link breaks at least what the letter L promises
      if (wanted !== 'L' && fitted.ratedA !== null)
        found.push(
          unknown(() => ({
            title: `Breaking capacity ${wanted} is prescribed; the fitted link shows no letter`,
            why: 'A link that cannot break the fault current may burst and go on arcing.',
            working: [],
            action: `Take it for a low one until shown otherwise. ${fitThis(link)}`,
            sources: [breakingRule, likeWithLike.h],
          })),
        )
    } else if (breakingRank(fitted.breaking) < breakingRank(wanted))
      found.push(
        stop(() => ({
          title: `Breaking capacity ${fitted.breaking} is fitted where ${wanted} is prescribed`,
          why: 'On a short circuit the link may burst instead of opening.',
          working: [`${wanted}: ${breaks(link)}; ${fitted.breaking}: ${breaks(fitted)}`],
          action: fitThis(link),
          sources: [likeWithLike.h, iecBreakingCapacity[wanted].source],
        })),
      )
  }
  const faultA = request.circuit.prospectiveFaultA
  if (faultA == null || !fittedEntered) return found
  const capacityA = fitted.breakingCapacityA
  const listed = fitted.scheme === 'UL' ? ' (if UL Listed)' : ''
  const capacitySource =
    fitted.scheme === 'UL'
      ? ulInterruptingAt250V[0]?.source
      : fitted.breaking
        ? iecBreakingCapacity[fitted.breaking].source
        : undefined
  const sources = capacitySource ? [breakingRule, capacitySource] : [breakingRule]
  if (capacityA === null)
    found.push(
      unknown(() => ({
        title: `A fault can draw ${amperes(faultA)}; what the fitted link can break is not known`,
        why: 'A link that cannot break the fault current may burst and go on arcing.',
        working: [],
        action: 'Look for L, E or H after the current on the cap.',
        sources: [breakingRule],
      })),
    )
  else if (capacityA < faultA)
    found.push(
      stop(() => ({
        title: `The link breaks ${amperes(capacityA, 4, 'down')}${listed}; a fault can draw ${amperes(faultA, 4, 'up')}`,
        why: 'On a short circuit the link may burst and go on arcing.',
        working: [`${amperes(capacityA, 4, 'down')} < ${amperes(faultA, 4, 'up')}`],
        action: `Use the prescribed rating and speed with a breaking capacity of at least ${amperes(faultA, 4, 'up')} (H: 1.5\u00a0kA). ${who}`,
        sources,
      })),
    )
  else
    found.push(
      clear(() => ({
        title: `The link breaks ${amperes(capacityA, 4, 'down')}${listed}; a fault can draw ${amperes(faultA, 4, 'up')}`,
        why: 'It can break the fault current that was entered.',
        working: [`${amperes(capacityA, 4, 'down')} ≥ ${amperes(faultA, 4, 'up')}`],
        action: null,
        sources,
      })),
    )
  return found
}

const breaks = (link: FuseLink): string =>
  link.breakingCapacityA === null ? 'not known' : amperes(link.breakingCapacityA, 4, 'down')

/** Rated voltage: against the circuit and against the prescription. */
export const voltage: Rule = ({ fitted, prescription, request, fittedEntered }) => {
  if (!fittedEntered || fitted.ratedA === null) return []
  const { voltageV } = request.circuit
  const { ratedV } = fitted
  const link = prescription?.link
  const wantedV = link?.ratedV ?? null
  const dc =
    request.position === 'low-voltage'
      ? ['On direct current a link needs a DC rating: an AC rating says nothing about it.']
      : []
  const sources = request.position === 'low-voltage' ? [voltageRule, dcRule] : [voltageRule]
  if (ratedV === null)
    return [
      request.position === 'low-voltage'
        ? caution(() => ({
            title: 'The rated voltage of the fitted link is not marked',
            why: 'A link opens an arc only up to its rated voltage.',
            working: dc,
            action: `Look on the cap; it must be at least ${volts(voltageV)}.`,
            sources,
          }))
        : unknown(() => ({
            title: 'The rated voltage of the fitted link is not marked',
            why: 'A link for a lower voltage can go on arcing when it opens.',
            working: dc,
            action: `Look on the cap; on ${volts(voltageV)} it must be at least that, commonly 250\u00a0V.`,
            sources,
          })),
    ]
  const working = [`${volts(ratedV)} against ${volts(voltageV)}`, ...dc]
  if (ratedV < voltageV)
    return [
      stop(() => ({
        title: `The link is rated ${volts(ratedV)}; the circuit is ${volts(voltageV)}`,
        why: 'When it opens, the arc can go on inside or outside the link.',
        working,
        action:
          link && wantedV !== null && wantedV >= voltageV
            ? fitThis(link)
            : `Use the prescribed rating and speed, rated for at least ${volts(voltageV)}. ${who}`,
        sources,
      })),
    ]
  if (link && wantedV !== null && ratedV < wantedV)
    return [
      stop(() => ({
        title: `The link is rated ${volts(ratedV)} where ${volts(wantedV)} is prescribed`,
        why: 'When it opens, the arc can go on.',
        working: [...working, `${volts(ratedV)} < ${volts(wantedV)}`],
        action: fitThis(link),
        sources: [voltageRule, likeWithLike.replacing],
      })),
    ]
  return [
    clear(() => ({
      title: `The link is rated ${volts(ratedV)}; the circuit is ${volts(voltageV)}`,
      why: 'The rated voltage covers the circuit.',
      working,
      action: null,
      sources,
    })),
  ]
}
