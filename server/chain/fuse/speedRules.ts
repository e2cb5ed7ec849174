import { slowness } from '../../plate/fuseMarking.js'
import { iecMarking } from '../../tables/fuseMarks.js'
import { likeWithLike } from '../../tables/fuseSelection.js'
import { say } from '../../words/phrase.js'
import { caution, clear, stop, unknown } from '../judgement.js'
import { type FuseSituation, fitThis, makers, type Rule } from './fuseSituation.js'

/** Whether the fitted link is quicker than the prescribed one: no danger, and still not what is prescribed. */
export const isQuicker: (situation: FuseSituation) => boolean = ({ fitted, prescription }) => {
  const [want, have] = [prescription?.link.characteristic ?? null, fitted.characteristic]
  return want !== null && have !== null && slowness(have) < slowness(want)
}

/** Fitted against prescribed: speed. */
export const speed: Rule = ({ fitted, prescription, request }) => {
  const link = prescription?.link
  if (request.position === 'plug' || !link || link.ratedA === null || fitted.ratedA === null) return []
  const [want, have] = [link.characteristic, fitted.characteristic]
  if (want === null && have === null)
    return [
      unknown(() => ({
        title: say`Neither the print nor the link tells the speed`,
        why: say`A time-lag link where a fast one belongs lets a fault last hundreds of times longer.`,
        working: [],
        action: say`Look in the service manual; a letter F or T stands before the current on IEC links.`,
        sources: [iecMarking],
      })),
    ]
  if (have === null)
    return [
      unknown(() => ({
        title: say`The speed of the fitted link is not marked; ${want ?? say``} is prescribed`,
        why: say`A slower link lets a fault last longer.`,
        working: [],
        action: fitThis(link),
        sources: [iecMarking, likeWithLike.replacing],
      })),
    ]
  if (want === null)
    return slowness(have) <= slowness('F')
      ? [
          caution(() => ({
            title: say`The print gives no speed; the fitted link is ${have}`,
            why: say`A fast link cannot be slower than intended, but it may open at switch-on.`,
            working: [],
            action: say`Look in the service manual before fitting a slower one.`,
            sources: [likeWithLike.replacing],
          })),
        ]
      : [
          unknown(() => ({
            title: say`The print gives no speed; the fitted link is ${have}`,
            why: say`Where a fast link was meant, this one lets a fault last longer.`,
            working: [],
            action: say`Look in the service manual for the letter.`,
            sources: [likeWithLike.replacing],
          })),
        ]
  if (slowness(have) > slowness(want))
    return [
      stop(() => ({
        title: say`The fitted link is slower (${have}) than prescribed (${want})`,
        why: say`It protects late: a fault lasts longer before the link opens, and what the quick one was to save burns first.`,
        working: [],
        action: fitThis(link),
        sources: makers.sources,
      })),
    ]
  if (slowness(have) < slowness(want))
    return [
      caution(() => ({
        title: say`The fitted link is faster (${have}) than prescribed (${want})`,
        why: say`The print decides. This one fails early, not late: it may open at a switch-on that the prescribed one stands.`,
        working: [],
        action: fitThis(link),
        sources: [likeWithLike.replacing],
      })),
    ]
  return [
    clear(() => ({
      title: say`The speed is ${have} as prescribed`,
      why: say`The pre-arcing behaviour is the one marked on the unit.`,
      working: [],
      action: null,
      sources: makers.sources,
    })),
  ]
}
