import { gateTimes } from '../physics/fuseCurve.js'
import { amperes, decimal, duration, percent, volts } from '../physics/quantity.js'
import { bs1362LargestA } from '../reference/fuseRatings.js'
import { bothPoles, currentLimited, likeWithLike } from '../reference/fuseSelection.js'
import { caution, clear, unknown } from './finding.js'
import { describe, type FuseLink, gatesOf, meltingRange } from './fuseLink.js'
import { type Rule, rest } from './fuseSituation.js'

/** Operating current against the rating that rules. */
export const operating: Rule = ({ demand, fitted, prescription, moved, request }) => {
  const { currentA, minimumRatedA, recommendedRatedA } = demand.required
  const { working, sources } = demand.steady
  const limitA = prescription?.link.ratedA ?? null
  const ruleA = limitA ?? fitted.ratedA
  if (currentA === null || minimumRatedA === null) {
    if (limitA !== null && !moved) return []
    return [
      unknown(
        'fuse',
        'What the circuit draws is not known',
        rest(
          'Without the operating current nothing can be said about the rating.',
          `Enter the current or the watts from the plate at ${volts(request.circuit.voltageV)}.`,
        ),
      ),
    ]
  }
  if (request.position === 'plug' && minimumRatedA > bs1362LargestA.value)
    return [
      unknown(
        'fuse',
        `The load of ${amperes(currentA, 4, 'up')} is more than any plug fuse carries`,
        rest(
          'BS 1362 stops at 13\u00a0A; a larger load does not belong on such a plug.',
          'Check the current or the watts on the plate. If they are right, a licensed electrician or other qualified person has to say how it may be connected.',
          working,
          [bs1362LargestA.source],
        ),
      ),
    ]
  if (ruleA === null) return []
  const name = limitA === null ? 'fitted' : 'prescribed'
  if (currentA > ruleA)
    return [
      unknown(
        'fuse',
        `The circuit draws ${amperes(currentA, 4, 'up')}, more than the ${name} ${amperes(ruleA)}`,
        rest(
          'Either an entry is wrong, or the unit draws too much: a fault, a wrong voltage setting or a wrong load.',
          'Check the plate and the voltage selector, and look for a fault before any power. Do not fit a larger link.',
          working,
          sources,
        ),
      ),
    ]
  if (ruleA < minimumRatedA)
    return [
      caution(
        'fuse',
        `The ${name} ${amperes(ruleA)} is less than the calculation asks for (${amperes(minimumRatedA, 4, 'up')})`,
        rest(
          'It may run hot and open in normal use.',
          limitA === null
            ? 'Find the prescription before changing anything.'
            : 'The prescription wins: keep it, and look for a fault or a wrong entry if it opens.',
          working,
          sources,
        ),
      ),
    ]
  if (limitA === null && recommendedRatedA !== null && ruleA > recommendedRatedA)
    return [
      caution(
        'fuse',
        `The fitted ${amperes(ruleA)} is more than the calculation asks for (${amperes(recommendedRatedA)})`,
        rest(
          'An overload can go on for long before a large link opens.',
          'Find the prescription; the calculation alone does not decide.',
          working,
          sources,
        ),
      ),
    ]
  return [
    clear(
      'fuse',
      `The ${name} ${amperes(ruleA)} carries ${amperes(currentA, 4, 'up')} for good`,
      rest('The rating is at least what the calculation asks for.', null, working, sources),
    ),
  ]
}

/** Heat: where no curve is published. */
export const ambient: Rule = ({ demand }) =>
  demand.ambient === null
    ? []
    : [
        caution(
          'fuse',
          demand.ambientShare < 1
            ? `In the heat the rating counts for ${percent(demand.ambientShare)}`
            : 'No published curve for this ambient temperature',
          rest(
            'A hot link opens at a lower current.',
            'Do not fit a larger link for the heat; see to the cooling.',
            [demand.ambient],
            demand.steady.sources,
          ),
        ),
      ]

/** What the gates say of a link at the peak of the inrush, as one line of working. */
function gateLine(link: FuseLink, peakA: number | null): string[] {
  if (peakA === null || link.ratedA === null) return []
  const multiple = peakA / link.ratedA
  const { minS, maxS } = gateTimes(gatesOf(link).points, multiple)
  const at = `Gates at ${amperes(peakA)}, ${decimal(multiple, 3)} times rated:`
  if (minS === null && maxS === null) return [`${at} none`]
  return [
    `${at} ${[minS === null ? null : `not before ${duration(minS)}`, maxS === null ? null : `not after ${duration(maxS)}`].filter((part) => part !== null).join(', ')}`,
  ]
}

/** Inrush against melting I²t. */
export const inrush: Rule = ({ demand, fitted, prescription, request }) => {
  const { inrushI2t, minimumMeltingI2t } = demand.required
  if (inrushI2t === null) return []
  const link = fitted.ratedA !== null ? fitted : (prescription?.link ?? fitted)
  const range = meltingRange(link)
  const working = [...demand.pulse.working, ...gateLine(link, request.circuit.inrushPeakA ?? null)]
  const noLarger =
    'Do not fit a larger or slower link than prescribed. If it opens at switch-on, look for a fault, a missing inrush limiter or a too low link.'
  if (minimumMeltingI2t === null)
    return [
      caution(
        'fuse',
        'So many switch-ons are beyond what is published',
        rest('The link ages with every inrush.', noLarger, working, demand.pulse.sources),
      ),
    ]
  if (range === null)
    return [
      caution(
        'fuse',
        `The inrush asks for a melting I²t of ${decimal(minimumMeltingI2t, 3, 'up')} A²s; no two data sheets give that of this link`,
        rest(
          'Whether it survives its switch-ons cannot be told from here.',
          `Look in the data sheet of the link that is fitted. ${noLarger}`,
          working,
          demand.pulse.sources,
        ),
      ),
    ]
  const span = `${decimal(range.lowI2t, 3, 'down')} to ${decimal(range.highI2t, 3, 'up')} A²s`
  const compared = [
    ...working,
    `Typical melting I²t of ${describe(link)} over ${range.sources.length} data sheets: ${span}, without a stated tolerance`,
  ]
  const sources = [...demand.pulse.sources, ...range.sources]
  if (range.lowI2t < minimumMeltingI2t)
    return [
      caution(
        'fuse',
        `The inrush asks for ${decimal(minimumMeltingI2t, 3, 'up')} A²s; such links melt at ${span}`,
        rest('It may open at switch-on, or after some of them.', noLarger, compared, sources),
      ),
    ]
  return [
    clear(
      'fuse',
      `The inrush asks for ${decimal(minimumMeltingI2t, 3, 'up')} A²s; such links melt at ${span}`,
      rest('By the typical figures the link survives the switch-ons.', null, compared, sources),
    ),
  ]
}

/** The link was found open. */
export const blown: Rule = ({ request }) => {
  if (request.blown !== true) return []
  const found = [
    unknown(
      'fuse',
      'The link has opened: a fault until shown otherwise',
      rest(
        'A new link into a standing fault feeds it again, and a larger one lets it burn.',
        'Find the cause first: with the plug out, measure for a short across the supply and its rectifier and capacitors. Then power it only behind a current limit (a series lamp), with a link exactly as prescribed. Never bridge the holder.',
        [],
        [likeWithLike.sameSize, currentLimited],
      ),
    ),
  ]
  if (request.position === 'mains')
    found.push(
      caution(
        'fuse',
        'An open link does not make the inside dead',
        rest(
          'Where both poles are fused, or the link is in the neutral conductor, one pole stays live inside.',
          'Pull the plug before opening anything; look for a second link and check both.',
          [],
          [bothPoles],
        ),
      ),
    )
  return found
}

/**
 * Whether a link would open on a short circuit behind a series lamp: never below the lowest current at which its gates
 * set a time; above it, perhaps.
 */
export function clearsBehindLamp(link: FuseLink, lampA: number): boolean {
  if (link.ratedA === null) return false
  const lowest = gatesOf(link).points.find((point) => point.maxS !== null)
  return lampA / link.ratedA >= (lowest?.multiple ?? 1)
}

/** What the link does behind a series lamp. */
export const lamp: Rule = ({ request, fitted, prescription }) => {
  const lampA = request.seriesLampA
  const link = fitted.ratedA !== null ? fitted : prescription?.link
  if (lampA == null || !link || link.ratedA === null) return []
  const multiple = lampA / link.ratedA
  const { maxS } = gateTimes(gatesOf(link).points, multiple)
  const says = clearsBehindLamp(link, lampA) ? 'do not count on the link to clear it' : 'the link will not clear it'
  return [
    caution(
      'fuse',
      `Behind the planned lamp a short circuit draws ${amperes(lampA)}, ${decimal(multiple, 3)} times the rating: ${says}`,
      rest(
        'Behind a series lamp the lamp is the limit, not the fuse: a fault shows as a bright lamp and goes on until you switch off.',
        'Watch the lamp. Bright and staying bright: switch off and pull the plug.',
        [
          `${amperes(lampA)} / ${amperes(link.ratedA)} = ${decimal(multiple, 3)}`,
          maxS === null
            ? 'No time limit is set for the link at that current'
            : `Between its gates the link may take up to ${duration(maxS)}`,
        ],
        [currentLimited],
      ),
    ),
  ]
}
