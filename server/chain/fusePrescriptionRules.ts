import { scaledRating } from '../physics/fuseRating.js'
import { amperes, decimal, volts } from '../physics/quantity.js'
import { plugFuseSmall } from '../reference/fuseRatings.js'
import { dualVoltage, likeWithLike } from '../reference/fuseSelection.js'
import { caution, clear, type Finding, stop, unknown } from './finding.js'
import { fitThis, makers, type Rule, rest } from './fuseSituation.js'

/** Nothing prescribed, or not readable, or not for this mains. */
export const prescribed: Rule = (situation) => {
  const { prescription, fitted, moved, request } = situation
  const known = prescription !== null && prescription.link.ratedA !== null
  const ratedA = known ? prescription.link.ratedA : fitted.ratedA
  const former =
    moved && request.formerVoltageV != null && ratedA !== null
      ? [formerVoltage(request.formerVoltageV, request.circuit.voltageV, ratedA, known ? 'prescribed' : 'fitted')]
      : []
  return known ? former : [...former, ...notPrescribed(situation)]
}

/** What to say where nothing is prescribed, or what is printed cannot be read. */
const notPrescribed: Rule = ({ request, prescription, demand }) => {
  const text = prescription?.text.slice(0, 60)
  if (request.position === 'plug' && !prescription && demand.required.currentA !== null)
    return [
      caution(
        'fuse',
        'No rating is printed on the plug; the table for appliances stands in for it',
        rest(
          'A plug fuse protects the cord. Equipment with a motor or a large inrush may be marked for more than its watts suggest.',
          `Look on the plug and the plate for a fuse rating; without one, ${amperes(demand.required.recommendedRatedA ?? plugFuseSmall.ratedA)} is the smallest that carries the load.`,
          [
            `Up to ${decimal(plugFuseSmall.uptoW)} W: ${amperes(plugFuseSmall.ratedA)}; above: the smallest rating that carries the load`,
          ],
          [plugFuseSmall.source],
        ),
      ),
    ]
  return [
    unknown(
      'fuse',
      text ? `No rated current could be read from the prescription “${text}”` : 'What link is prescribed is not known',
      rest(
        'A calculation cannot tell what the maker tested the unit with; it can only warn.',
        `Look beside the holder, inside the battery or mains flap, on the plate and in the service manual. Until it is known, fit nothing larger or slower than what is fitted now.${prescription ? ` ${prescription.link.notes.join(' ')}` : ''}`.trim(),
        [],
        makers.sources,
      ),
    ),
  ]
}

/** The link of another mains, worked out for this one and explained. */
function formerVoltage(formerV: number, nowV: number, ratedA: number, which: 'prescribed' | 'fitted'): Finding {
  const scaledA = scaledRating(ratedA, formerV, nowV)
  const up = nowV > formerV
  const working = [
    `Same watts: current × ${volts(formerV)} / ${volts(nowV)} = × ${decimal(formerV / nowV, 3)}`,
    `${amperes(ratedA)} × ${volts(formerV)} / ${volts(nowV)} = ${amperes(scaledA, 3, 'down')}`,
  ]
  const fit = `Only a unit with a range or a selector position for ${volts(nowV)} can be used on it: look at its plate. A single-voltage unit is not made fit for another mains by a fuse. Then look for the rating its maker gives at ${volts(nowV)}.`
  return unknown(
    'fuse',
    up
      ? `The ${which} ${amperes(ratedA)} is for ${volts(formerV)}: at ${volts(nowV)} it is ${decimal(nowV / formerV, 3)} times too large`
      : `The ${which} ${amperes(ratedA)} is for ${volts(formerV)}: at ${volts(nowV)} the same watts draw ${decimal(formerV / nowV, 3)} times the current`,
    rest(
      up
        ? 'At the higher voltage the unit draws less current, so the old link lets about that many times the overload pass before it opens.'
        : 'The old link will open in normal use. A larger one is not permitted by this calculation: it is for the maker to say.',
      fit,
      working,
      [dualVoltage, ...makers.sources],
    ),
  )
}

/** Fitted against prescribed: rating. */
export const rating: Rule = ({ fitted, prescription, moved }) => {
  const link = prescription?.link
  if (!link || link.ratedA === null || fitted.ratedA === null) return []
  const ratio = fitted.ratedA / link.ratedA
  const working = [`${amperes(fitted.ratedA)} / ${amperes(link.ratedA)} = ${decimal(ratio, 3)}`]
  if (fitted.ratedA > link.ratedA)
    return [
      stop(
        'fuse',
        `${amperes(fitted.ratedA)} is fitted where ${amperes(link.ratedA)} is prescribed: ${decimal(ratio, 3)} times as much`,
        rest(
          'A fault that should open the link can go on heating the transformer, the wiring or the cord until something burns.',
          fitThis(link),
          working,
          makers.sources,
        ),
      ),
    ]
  if (fitted.ratedA < link.ratedA)
    return [
      caution(
        'fuse',
        `${amperes(fitted.ratedA)} is fitted where ${amperes(link.ratedA)} is prescribed: less than marked`,
        rest(
          'It protects at least as well, but may open at switch-on or in normal use.',
          `${moved ? 'It may stay while the rating for this mains is being looked up.' : `It may stay; if it opens, do not go above ${amperes(link.ratedA)}.`}`,
          working,
          [likeWithLike.replacing],
        ),
      ),
    ]
  return [
    clear(
      'fuse',
      `${amperes(fitted.ratedA)} is fitted as prescribed`,
      rest('The rated current is the one marked on the unit.', null, working, makers.sources),
    ),
  ]
}
