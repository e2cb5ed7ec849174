import { gateTimes } from '../../physics/fuseCurve.js'
import { plugFuseRows } from '../../tables/cordRows.js'
import { bs1362LargestA } from '../../tables/fuseRatings.js'
import { bothPoles, currentLimited, likeWithLike } from '../../tables/fuseSelection.js'
import { smallestPlugFuseA } from '../../tables/thresholds.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { amperes, decimal, duration, percent, plain, volts } from '../../words/quantity.js'
import { caution, clear, unknown } from '../judgement.js'
import { ratingPlate } from '../words.js'
import { describe, type FuseLink } from './fuseLink.js'
import type { Rule } from './fuseSituation.js'
import { gatesOf } from './linkGates.js'
import { meltingRange } from './meltingRange.js'

/** Operating current against the rating that rules. */
export const operating: Rule = ({ demand, fitted, prescription, moved, request }) => {
  const { currentA, minimumRatedA, recommendedRatedA } = demand.required
  const { working, sources } = demand.steady
  const limitA = prescription?.link.ratedA ?? null
  const ruleA = limitA ?? fitted.ratedA
  if (currentA === null || minimumRatedA === null) {
    if (limitA !== null && !moved) return []
    return [
      unknown(() => ({
        title: say`What the circuit draws is not known`,
        why: say`Without the operating current nothing can be said about the rating.`,
        working: [],
        action: say`Enter the current or the watts from the plate at ${volts(request.circuit.voltageV)}.`,
        sources: [ratingPlate],
      })),
    ]
  }
  if (request.position === 'plug' && minimumRatedA > bs1362LargestA.value)
    return [
      unknown(() => ({
        title: say`The load of ${amperes(currentA, 4, 'up')} is more than any plug fuse carries`,
        why: say`BS 1362 stops at 13\u00a0A; a larger load does not belong on such a plug.`,
        working,
        action: say`Check the current or the watts on the plate. If they are right, a licensed electrician or other qualified person has to say how it may be connected.`,
        sources: [bs1362LargestA.source],
      })),
    ]
  if (ruleA === null) return []
  const name = limitA === null ? 'fitted' : 'prescribed'
  if (currentA > ruleA)
    return [
      unknown(() => ({
        title: say`The circuit draws ${amperes(currentA, 4, 'up')}, more than the ${name} ${amperes(ruleA)}`,
        why: say`Either an entry is wrong, or the unit draws too much: a fault, a wrong voltage setting or a wrong load.`,
        working,
        action: say`Check the plate and the voltage selector, and look for a fault before any power. Do not fit a larger link.`,
        sources,
      })),
    ]
  if (ruleA < minimumRatedA)
    return [
      caution(() => ({
        title: say`The ${name} ${amperes(ruleA)} is less than the calculation asks for (${amperes(minimumRatedA, 4, 'up')})`,
        why: say`It may run hot and open in normal use.`,
        working,
        action:
          limitA === null
            ? say`Find the prescription before changing anything.`
            : say`The prescription wins: keep it, and look for a fault or a wrong entry if it opens.`,
        sources,
      })),
    ]
  if (request.position === 'plug' && limitA === null && recommendedRatedA !== null && ruleA > recommendedRatedA)
    return [
      caution(() => ({
        title: say`The plug holds ${amperes(ruleA)}; the smallest BS 1362 link that carries the load is ${amperes(recommendedRatedA)}`,
        why: say`The plug link protects the cord: a larger one lets more current heat it before it opens.`,
        working: [
          ...working,
          ...plugFuseRows.map(
            ({ areaMm2, largestFuseA }) =>
              say`Largest that may be fitted on ${plain(areaMm2, 'mm²')}: ${amperes(largestFuseA)}`,
          ),
        ],
        action: say`Pull the plug and fit ${amperes(recommendedRatedA)} to BS 1362, unless plate or plug are marked for a larger one that the cord allows.`,
        sources: [smallestPlugFuseA.source, ...(plugFuseRows[0]?.sources ?? [])],
      })),
    ]
  if (limitA === null && recommendedRatedA !== null && ruleA > recommendedRatedA)
    return [
      caution(() => ({
        title: say`The fitted ${amperes(ruleA)} is more than the calculation asks for (${amperes(recommendedRatedA)})`,
        why: say`An overload can go on for long before a large link opens.`,
        working,
        action: say`Find the prescription; the calculation alone does not decide.`,
        sources,
      })),
    ]
  return [
    clear(() => ({
      title: say`The ${name} ${amperes(ruleA)} carries ${amperes(currentA, 4, 'up')} for good`,
      why: say`The rating is at least what the calculation asks for.`,
      working,
      action: null,
      sources,
    })),
  ]
}

/** Heat: where no curve is published. */
export const ambient: Rule = ({ demand: { ambient, ambientShare, steady } }) => {
  if (ambient === null) return []
  return [
    caution(() => ({
      title:
        ambientShare < 1
          ? say`In the heat the rating counts for ${percent(ambientShare)}`
          : say`No published curve for this ambient temperature`,
      why: say`A hot link opens at a lower current.`,
      working: [ambient],
      action: say`Do not fit a larger link for the heat; see to the cooling.`,
      sources: steady.sources,
    })),
  ]
}

/** What the gates say of a link at the peak of the inrush, as one line of working. */
function gateLine(link: FuseLink, peakA: number | null): Phrase[] {
  if (peakA === null || link.ratedA === null) return []
  const multiple = peakA / link.ratedA
  const { minS, maxS } = gateTimes(gatesOf(link).points, multiple)
  const at = say`Gates at ${amperes(peakA)}, ${decimal(multiple, 3)} times rated:`
  if (minS === null && maxS === null) return [say`${at} none`]
  return [
    say`${at} ${joined([...(minS === null ? [] : [say`not before ${duration(minS)}`]), ...(maxS === null ? [] : [say`not after ${duration(maxS)}`])], say`, `)}`,
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
      caution(() => ({
        title: say`So many switch-ons are beyond what is published`,
        why: say`The link ages with every inrush.`,
        working,
        action: noLarger,
        sources: demand.pulse.sources,
      })),
    ]
  if (range === null)
    return [
      caution(() => ({
        title: say`The inrush asks for a melting I²t of ${decimal(minimumMeltingI2t, 3, 'up')} A²s; no two data sheets give that of this link`,
        why: say`Whether it survives its switch-ons cannot be told from here.`,
        working,
        action: say`Look in the data sheet of the link that is fitted. ${noLarger}`,
        sources: demand.pulse.sources,
      })),
    ]
  const span = say`${decimal(range.lowI2t, 3, 'down')} to ${decimal(range.highI2t, 3, 'up')} A²s`
  const compared = [
    ...working,
    say`Typical melting I²t of ${describe(link)} over ${range.sources.length} data sheets: ${span}, without a stated tolerance`,
  ]
  const sources = [...demand.pulse.sources, ...range.sources]
  if (range.lowI2t < minimumMeltingI2t)
    return [
      caution(() => ({
        title: say`The inrush asks for ${decimal(minimumMeltingI2t, 3, 'up')} A²s; such links melt at ${span}`,
        why: say`It may open at switch-on, or after some of them.`,
        working: compared,
        action: noLarger,
        sources,
      })),
    ]
  return [
    clear(() => ({
      title: say`The inrush asks for ${decimal(minimumMeltingI2t, 3, 'up')} A²s; such links melt at ${span}`,
      why: say`By the typical figures the link survives the switch-ons.`,
      working: compared,
      action: null,
      sources,
    })),
  ]
}

/** The link was found open. */
export const blown: Rule = ({ request }) => {
  if (request.blown !== true) return []
  const found = [
    unknown(() => ({
      title: say`The link has opened: a fault until shown otherwise`,
      why: say`A new link into a standing fault feeds it again, and a larger one lets it burn.`,
      working: [],
      action: say`Find the cause first: with the plug out, measure for a short across the supply and its rectifier and capacitors. Then power it only behind a current limit (a series lamp), with a link exactly as prescribed. Never bridge the holder.`,
      sources: [likeWithLike.sameSize, currentLimited],
    })),
  ]
  if (request.position === 'mains')
    found.push(
      caution(() => ({
        title: say`An open link does not make the inside dead`,
        why: say`Where both poles are fused, or the link is in the neutral conductor, one pole stays live inside.`,
        working: [],
        action: say`Pull the plug before opening anything; look for a second link and check both.`,
        sources: [bothPoles],
      })),
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
  const ratedA = link?.ratedA ?? null
  if (lampA == null || !link || ratedA === null) return []
  const multiple = lampA / ratedA
  const { maxS } = gateTimes(gatesOf(link).points, multiple)
  const says = clearsBehindLamp(link, lampA) ? 'do not count on the link to clear it' : 'the link will not clear it'
  return [
    caution(() => ({
      title: say`Behind the planned lamp a short circuit draws ${amperes(lampA)}, ${decimal(multiple, 3)} times the rating: ${says}`,
      why: say`Behind a series lamp the lamp is the limit, not the fuse: a fault shows as a bright lamp and goes on until you switch off.`,
      working: [
        say`${amperes(lampA)} / ${amperes(ratedA)} = ${decimal(multiple, 3)}`,
        maxS === null
          ? say`No time limit is set for the link at that current`
          : say`Between its gates the link may take up to ${duration(maxS)}`,
      ],
      action: say`Watch the lamp. Bright and staying bright: switch off and pull the plug.`,
      sources: [currentLimited],
    })),
  ]
}
