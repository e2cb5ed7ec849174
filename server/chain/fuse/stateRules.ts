import { says } from '../../plate/sayings.js'
import { commonPractice } from '../../tables/source.js'
import { say } from '../../words/phrase.js'
import { stop } from '../judgement.js'
import { blown } from './circuitRules.js'
import { fitThis, type Rule, who } from './fuseSituation.js'

const noLink = commonPractice(
  'Bridged fuse holders',
  'foil, wire or a nail in place of a link breaks nothing: the next fault burns in the flex or the transformer',
)

/** Words beside a marking that say the link is no longer one: bridged, or open. */
export const asFound: Rule = (situation) => {
  const { request, prescription, usable } = situation
  if (says(request.marking, 'link bridged'))
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
  if (says(request.marking, 'link opened') && request.blown !== true)
    return blown({ ...situation, request: { ...request, blown: true } })
  return []
}
