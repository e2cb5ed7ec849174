import { amperes } from '../../physics/quantity.js'
import type { Judgement } from '../judgement.js'
import { describe } from './fuseLink.js'
import type { FuseOutcome } from './fuseRequest.js'
import type { FuseSituation } from './fuseSituation.js'
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
export function answerOf(outcome: FuseOutcome, situation: FuseSituation, judged: readonly Judgement[]): string {
  const { prescription, fitted, demand, request } = situation
  const worst = judged[0]
  const decides = worst ? within(worst.say().title) : ''
  const link = prescription?.link
  if (outcome === 'find-out-first') return `Find out first: ${decides}.`
  if (outcome === 'replace') {
    const plugA = request.position === 'plug' ? demand.required.recommendedRatedA : null
    const by =
      link && link.ratedA !== null
        ? describe(link)
        : plugA === null
          ? 'the prescribed one'
          : `${amperes(plugA)} to BS 1362`
    if (worst?.outcome === 'stop') return `Replace the link by ${by}: ${decides}.`
    return isQuicker(situation)
      ? `Replace the link by ${by}: the fitted one is faster (${fitted.characteristic}) than prescribed (${link?.characteristic}), and fails early rather than late.`
      : `Replace the link by ${by}: that carries the load, and ${amperes(fitted.ratedA ?? 0)} protects the cord less.`
  }
  return worst?.outcome === 'clear'
    ? `The link can stay: nothing entered speaks against ${describe(fitted)}.`
    : `The link can stay, with care: ${decides}.`
}

/** A title behind a colon: its first word in small letters, unless it is an abbreviation. */
const within = (title: string): string =>
  /^\p{Lu}(?:\p{Ll}|\s)/u.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title
