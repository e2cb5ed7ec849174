import { scaledRating } from '../../physics/fuseRating.js'
import { plugFuseSmall } from '../../tables/fuseRatings.js'
import { dualVoltage, likeWithLike } from '../../tables/fuseSelection.js'
import { say } from '../../words/phrase.js'
import { amperes, decimal, volts } from '../../words/quantity.js'
import { caution, clear, type Judgement, stop, unknown } from '../judgement.js'
import { type FuseSituation, fitThis, makers, type Rule } from './fuseSituation.js'

/** Nothing prescribed, or not readable, or not for this mains. */
export const prescribed: Rule = (situation) => {
  const { prescription, fitted, moved, request } = situation
  const known = prescription !== null && prescription.link.ratedA !== null
  const ratedA = known ? prescription.link.ratedA : fitted.ratedA
  const former =
    moved && request.formerVoltageV != null && ratedA !== null
      ? [formerVoltage(request.formerVoltageV, request.circuit.voltageV, ratedA, known ? 'prescribed' : 'fitted')]
      : []
  return known || prescription?.link.noLink ? former : [...former, ...notPrescribed(situation)]
}

/** What to say where nothing is prescribed, or what is printed cannot be read. */
const notPrescribed: Rule = ({ request, prescription, demand }) => {
  const text = prescription?.text.slice(0, 60)
  if (request.position === 'plug' && !prescription && demand.required.currentA !== null)
    return [
      caution(() => ({
        title: say`No rating is printed on the plug; the table for appliances stands in for it`,
        why: say`A plug fuse protects the cord. Equipment with a motor or a large inrush may be marked for more than its watts suggest.`,
        working: [
          say`Up to ${decimal(plugFuseSmall.uptoW)} W: ${amperes(plugFuseSmall.ratedA)}; above: the smallest rating that carries the load`,
        ],
        action: say`Look on the plug and the plate for a fuse rating; without one, ${amperes(demand.required.recommendedRatedA ?? plugFuseSmall.ratedA)} is the smallest that carries the load.`,
        sources: [plugFuseSmall.source],
      })),
    ]
  return [
    unknown(() => ({
      title: text
        ? say`No rated current could be read from the prescription “${text}”`
        : say`What link is prescribed is not known`,
      why: say`A calculation cannot tell what the maker tested the unit with; it can only warn.`,
      working: [],
      action: [
        say`Look beside the holder, inside the battery or mains flap, on the plate and in the service manual. Until it is known, fit nothing larger or slower than what is fitted now.`,
        ...(prescription?.link.notes ?? []),
      ],
      sources: makers.sources,
    })),
  ]
}

/** The link of another mains, worked out for this one and explained. */
function formerVoltage(formerV: number, nowV: number, ratedA: number, which: 'prescribed' | 'fitted'): Judgement {
  const scaledA = scaledRating(ratedA, formerV, nowV)
  const up = nowV > formerV
  const working = [
    say`Same watts: current × ${volts(formerV)} / ${volts(nowV)} = × ${decimal(formerV / nowV, 3)}`,
    say`${amperes(ratedA)} × ${volts(formerV)} / ${volts(nowV)} = ${amperes(scaledA, 3, 'down')}`,
  ]
  const fit = say`Only a unit with a range or a selector position for ${volts(nowV)} can be used on it: look at its plate. A single-voltage unit is not made fit for another mains by a fuse. Then look for the rating its maker gives at ${volts(nowV)}.`
  return unknown(() => ({
    title: up
      ? say`The ${which} ${amperes(ratedA)} is for ${volts(formerV)}: at ${volts(nowV)} it is ${decimal(nowV / formerV, 3)} times too large`
      : say`The ${which} ${amperes(ratedA)} is for ${volts(formerV)}: at ${volts(nowV)} the same watts draw ${decimal(formerV / nowV, 3)} times the current`,
    why: up
      ? say`At the higher voltage the unit draws less current, so the old link lets about that many times the overload pass before it opens.`
      : say`The old link will open in normal use. A larger one is not permitted by this calculation: it is for the maker to say.`,
    working,
    action: fit,
    sources: [dualVoltage, ...makers.sources],
  }))
}

/** Whether the fitted link is smaller than prescribed and carries less than the circuit draws: the wrong one is in, often by a factor of ten. */
export const isTooSmall = ({ fitted, prescription, demand }: FuseSituation): boolean => {
  const { currentA } = demand.required
  return (
    fitted.ratedA !== null &&
    currentA !== null &&
    fitted.ratedA < currentA &&
    (prescription?.link.ratedA ?? 0) > fitted.ratedA
  )
}

/** Fitted against prescribed: rating. */
export const rating: Rule = (situation) => {
  const { fitted, prescription, moved } = situation
  const link = prescription?.link
  const wantedA = link?.ratedA ?? null
  const fittedA = fitted.ratedA
  if (!link || wantedA === null || fittedA === null) return []
  const ratio = fittedA / wantedA
  const working = [say`${amperes(fittedA)} / ${amperes(wantedA)} = ${decimal(ratio, 3)}`]
  if (fittedA > wantedA)
    return [
      stop(() => ({
        title: say`${amperes(fittedA)} is fitted where ${amperes(wantedA)} is prescribed: ${decimal(ratio, 3)} times as much`,
        why: say`A fault that should open the link can go on heating the transformer, the wiring or the cord until something burns.`,
        working,
        action: fitThis(link),
        sources: makers.sources,
      })),
    ]
  if (fittedA < wantedA)
    return [
      caution(() => ({
        title: say`${amperes(fittedA)} is fitted where ${amperes(wantedA)} is prescribed: less than marked`,
        why: say`It protects at least as well, but may open at switch-on or in normal use.`,
        working,
        action: isTooSmall(situation)
          ? fitThis(link)
          : moved
            ? say`It may stay while the rating for this mains is being looked up.`
            : say`It may stay; if it opens, do not go above ${amperes(wantedA)}.`,
        sources: [likeWithLike.replacing],
      })),
    ]
  return [
    clear(() => ({
      title: say`${amperes(fittedA)} is fitted as prescribed`,
      why: say`The rated current is the one marked on the unit.`,
      working,
      action: null,
      sources: makers.sources,
    })),
  ]
}
