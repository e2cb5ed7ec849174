import { commonPractice } from '../../tables/source.js'
import { say } from '../../words/phrase.js'
import { stop } from '../judgement.js'
import { blown } from './circuitRules.js'
import { fitThis, type Rule, who } from './fuseSituation.js'

const opened =
  /\bblown\b|\bburnt?\b|\bburned\b|\bopen(?:ed)?\b|\bbroken\b|\bmelted\b|durchgebrannt|\bdefekt|grill[ée]\b|fundido|saltad[oa]/i
const bridged =
  /\bfoil\b|\bbridged?\b|\bjumper|\bnail\b|\bpaper\s?-?clip|\bsoldered\s+over|\b(?:copper|fuse|bare)\s+wire|\bwire\s+(?:around|across|instead)|überbrückt|alufolie|pont[ée]\b|puentead/i

const noLink = commonPractice(
  'Bridged fuse holders',
  'foil, wire or a nail in place of a link breaks nothing: the next fault burns in the flex or the transformer',
)

/** Words beside a marking that say the link is no longer one: bridged, or open. */
export const asFound: Rule = (situation) => {
  const { request, prescription, usable } = situation
  const text = request.marking ?? ''
  if (bridged.test(text))
    return [
      stop(() => ({
        title: say`What is fitted is described as bridged: it breaks no fault`,
        why: say`Foil, wire or a nail in place of a link, or around it, carries any fault until something else burns.`,
        working: [],
        action:
          usable && prescription ? fitThis(prescription.link) : say`Take it out and find the prescribed link. ${who}`,
        sources: [noLink],
      })),
    ]
  // the same as where it is ticked as open
  if (opened.test(text) && request.blown !== true) return blown({ ...situation, request: { ...request, blown: true } })
  return []
}
