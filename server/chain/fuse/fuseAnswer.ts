import { type Phrase, say, within } from '../../words/phrase.js'
import { amperes } from '../../words/quantity.js'
import type { Judgement } from '../judgement.js'
import { describe } from './fuseLink.js'
import type { FuseOutcome } from './fuseRequest.js'
import type { FuseSituation } from './fuseSituation.js'
import { isTooSmall } from './prescriptionRules.js'
import { isQuicker } from './speedRules.js'

/** Whether a plug holds a larger link than the load needs, with none prescribed that asks for it. */
export const isLargerThanNeeded = ({ request, fitted, prescription, demand }: FuseSituation): boolean =>
  request.position === 'plug' &&
  prescription?.link.ratedA == null &&
  fitted.ratedA !== null &&
  fitted.ratedA > (demand.required.recommendedRatedA ?? fitted.ratedA)

/**
 * The review in one sentence: what to do, and the fact that decides it with its number.
 *
 * @param judged  worst first
 */
export function answerOf(outcome: FuseOutcome, situation: FuseSituation, judged: readonly Judgement[]): Phrase {
  const { prescription, fitted, demand, request } = situation
  const worst = judged[0]
  const decides = worst ? within(worst.say().title) : say``
  const link = prescription?.link
  if (outcome === 'find-out-first') return say`Find out first: ${decides}.`
  if (outcome === 'replace') {
    const plugA = request.position === 'plug' ? demand.required.recommendedRatedA : null
    const by =
      link && link.ratedA !== null
        ? describe(link)
        : plugA === null
          ? 'the prescribed one'
          : say`${amperes(plugA)} to BS 1362`
    if (worst?.outcome === 'stop') return say`Replace the link by ${by}: ${decides}.`
    if (isTooSmall(situation))
      return say`Replace the link by ${by}: the fitted ${amperes(fitted.ratedA ?? 0)} is less than the circuit draws, and opens in use.`
    return isQuicker(situation)
      ? say`Replace the link by ${by}: the fitted one is faster (${fitted.characteristic ?? say``}) than prescribed (${link?.characteristic ?? say``}), and fails early rather than late.`
      : say`Replace the link by ${by}: that carries the load, and ${amperes(fitted.ratedA ?? 0)} protects the cord less.`
  }
  return worst?.outcome === 'clear'
    ? say`The link can stay: nothing entered speaks against ${describe(fitted)}.`
    : say`The link can stay, with care: ${decides}.`
}
