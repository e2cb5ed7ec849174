import { amperes } from '../../physics/quantity.js'
import { breakingRank } from '../../plate/fuseMarking.js'
import { iecBreakingCapacity, ulInterruptingAt125V } from '../../tables/fuseRatings.js'
import { breakingRule, dcRule, likeWithLike } from '../../tables/fuseSelection.js'
import { clear, type Judgement, stop, unknown } from '../judgement.js'
import type { FuseLink } from './fuseLink.js'
import { fitThis, type Rule, who } from './fuseSituation.js'
import { needsDcRating } from './voltageRules.js'

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
      ? ulInterruptingAt125V.source
      : fitted.breaking
        ? iecBreakingCapacity[fitted.breaking].source
        : undefined
  const sources = capacitySource ? [breakingRule, capacitySource] : [breakingRule]
  if (capacityA !== null && capacityA >= faultA && needsDcRating(request))
    return [
      ...found,
      unknown(() => ({
        title: `The link breaks ${amperes(capacityA, 4, 'down')}${listed} on alternating current; what it breaks on direct current is not known`,
        why: 'A direct current has no zero at which its arc goes out.',
        working: [`A fault can draw ${amperes(faultA, 4, 'up')}`],
        action: 'Look in the data sheet of the link for its breaking capacity on direct current.',
        sources: [dcRule, breakingRule],
      })),
    ]
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
