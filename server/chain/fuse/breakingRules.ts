import { breakingRank } from '../../plate/fuseMarking.js'
import { iecBreakingCapacity, ulInterruptingAt125V } from '../../tables/fuseRatings.js'
import { breakingRule, dcRule, likeWithLike } from '../../tables/fuseSelection.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes } from '../../words/quantity.js'
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
            title: say`Breaking capacity ${wanted} is prescribed; the fitted link shows no letter`,
            why: say`A link that cannot break the fault current may burst and go on arcing.`,
            working: [],
            action: say`Take it for a low one until shown otherwise. ${fitThis(link)}`,
            sources: [breakingRule, likeWithLike.h],
          })),
        )
    } else if (breakingRank(fitted.breaking) < breakingRank(wanted))
      found.push(
        stop(() => ({
          title: say`Breaking capacity ${fitted.breaking ?? say``} is fitted where ${wanted} is prescribed`,
          why: say`On a short circuit the link may burst instead of opening.`,
          working: [say`${wanted}: ${breaks(link)}; ${fitted.breaking ?? say``}: ${breaks(fitted)}`],
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
        title: say`The link breaks ${amperes(capacityA, 4, 'down')}${listed} on alternating current; what it breaks on direct current is not known`,
        why: say`A direct current has no zero at which its arc goes out.`,
        working: [say`A fault can draw ${amperes(faultA, 4, 'up')}`],
        action: say`Look in the data sheet of the link for its breaking capacity on direct current.`,
        sources: [dcRule, breakingRule],
      })),
    ]
  if (capacityA === null)
    found.push(
      unknown(() => ({
        title: say`A fault can draw ${amperes(faultA)}; what the fitted link can break is not known`,
        why: say`A link that cannot break the fault current may burst and go on arcing.`,
        working: [],
        action: say`Look for L, E or H after the current on the cap.`,
        sources: [breakingRule],
      })),
    )
  else if (capacityA < faultA)
    found.push(
      stop(() => ({
        title: say`The link breaks ${amperes(capacityA, 4, 'down')}${listed}; a fault can draw ${amperes(faultA, 4, 'up')}`,
        why: say`On a short circuit the link may burst and go on arcing.`,
        working: [say`${amperes(capacityA, 4, 'down')} < ${amperes(faultA, 4, 'up')}`],
        action: say`Use the prescribed rating and speed with a breaking capacity of at least ${amperes(faultA, 4, 'up')} (H: ${1.5}\u00a0kA). ${who}`,
        sources,
      })),
    )
  else
    found.push(
      clear(() => ({
        title: say`The link breaks ${amperes(capacityA, 4, 'down')}${listed}; a fault can draw ${amperes(faultA, 4, 'up')}`,
        why: say`It can break the fault current that was entered.`,
        working: [say`${amperes(capacityA, 4, 'down')} ≥ ${amperes(faultA, 4, 'up')}`],
        action: null,
        sources,
      })),
    )
  return found
}

const breaks = (link: FuseLink): Phrase =>
  link.breakingCapacityA === null ? say`not known` : amperes(link.breakingCapacityA, 4, 'down')
