import { gateTimes } from '../physics/fuseCurve.js'
import { scaledRating } from '../physics/fuseRating.js'
import { amperes, decimal, duration, percent, volts } from '../physics/quantity.js'
import { breakingRank, slowness } from '../plate/fuseMarking.js'
import { schemeComparison } from '../reference/fuseGatesOther.js'
import { iecMarking } from '../reference/fuseMarks.js'
import { bs1362LargestA, iecBreakingCapacity, plugFuseSmall, ulInterruptingAt250V } from '../reference/fuseRatings.js'
import {
  bothPoles,
  breakingRule,
  currentLimited,
  dcRule,
  dualVoltage,
  likeWithLike,
  notInterchangeable,
  sourceOfPrescription,
  voltageRule,
} from '../reference/fuseSelection.js'
import type { Source } from '../reference/source.js'
import { caution, clear, type Finding, type Outcome, stop, unknown } from './finding.js'
import { describe, type FuseLink, gatesOf, meltingRange, type Prescription } from './fuseLink.js'
import type { FuseRequest } from './fuseRequest.js'
import type { Demand } from './fuseRequired.js'

/** Everything a rule may look at. */
export interface FuseSituation {
  request: FuseRequest
  fitted: FuseLink
  /** something was entered about the fitted link */
  fittedEntered: boolean
  prescription: Prescription | null
  /** the unit was made for another mains voltage, and no prescription for this one was read */
  moved: boolean
  /** the prescription tells what to fit at this voltage */
  usable: boolean
  demand: Demand
}

type Rule = (situation: FuseSituation) => Finding[]

const who =
  'Unplug the supply first. A link in a holder that opens from outside can be changed by you; one inside the mains enclosure is for a licensed electrician or other qualified person, under local codes.'

const rest = (why: string, action: string | null, working: string[] = [], sources: Source[] = []) => ({
  why,
  action,
  working,
  sources,
})

const fitThis = (link: FuseLink): string => `Fit ${describe(link)}, in every detail as prescribed. ${who}`

const makers = { sources: [sourceOfPrescription, likeWithLike.replacing] }

/** How a family of standards is written in text. */
const familyName = (scheme: string | null): string =>
  scheme === 'UL' ? 'UL 248-14' : scheme === 'IEC' ? 'IEC 60127' : scheme === 'BS1362' ? 'BS 1362' : 'BS 646'

/** The marking itself: what could not be read and what cannot be true. */
const marking: Rule = ({ request, fitted, fittedEntered }) => {
  if (!fittedEntered)
    return [
      unknown(
        'fuse',
        'Nothing is known of the link that is fitted',
        rest(
          'Without its rating and speed nothing can be compared.',
          'Unplug the supply and read the cap of the link with a lens: letter, current, letter, voltage.',
        ),
      ),
    ]
  const found: Finding[] = []
  const claim = fitted.scheme === 'BS1362' && fitted.ratedA === null && fitted.notes.length > 0
  const about = request.marking?.trim().slice(0, 60) ?? ''
  if (claim)
    found.push(
      stop(
        'fuse',
        `“${about}” cannot be a true BS 1362 link`,
        rest(
          'A counterfeit link may not open on a short circuit, or may burst.',
          `Take it out of use. ${fitted.notes.join(' ')}`,
          [`BS 1362 stops at ${amperes(bs1362LargestA.value)}`],
          [bs1362LargestA.source],
        ),
      ),
    )
  else if (fitted.ratedA === null)
    found.push(
      unknown(
        'fuse',
        about ? `No rated current could be read from “${about}”` : 'The rated current of the fitted link is not known',
        rest(
          'Without its rated current the link protects nothing that can be worked out.',
          `Read the cap again with a lens. ${fitted.notes.join(' ')}`.trim(),
          fitted.unread.length > 0 ? [`Not understood: ${fitted.unread.slice(0, 12).join(' ').slice(0, 120)}`] : [],
          [iecMarking],
        ),
      ),
    )
  else if (fitted.notes.length > 0 && request.marking)
    found.push(
      caution(
        'fuse',
        'The marking asks for a second look',
        rest(fitted.notes.join(' '), 'Compare the cap with what was read here.', [], [iecMarking]),
      ),
    )
  return found
}

/** Nothing prescribed, or not readable, or not for this mains. */
const prescribed: Rule = ({ request, prescription, moved, demand }) => {
  if (prescription && prescription.link.ratedA !== null) {
    if (!moved) return []
    return formerVoltage(request.formerVoltageV ?? 0, request.circuit.voltageV, prescription)
  }
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

function formerVoltage(formerV: number, nowV: number, { link }: Prescription): Finding[] {
  const ratedA = link.ratedA ?? 0
  const scaledA = scaledRating(ratedA, formerV, nowV)
  const up = nowV > formerV
  const working = [
    `Same watts: current × ${volts(formerV)} / ${volts(nowV)} = × ${decimal(formerV / nowV, 3)}`,
    `${amperes(ratedA)} × ${volts(formerV)} / ${volts(nowV)} = ${amperes(scaledA, 3, 'down')}`,
  ]
  const fit = `Only a unit with a range or a selector position for ${volts(nowV)} can be used on it: look at its plate. A single-voltage unit is not made fit for another mains by a fuse. Then look for the rating its maker gives at ${volts(nowV)}.`
  return [
    unknown(
      'fuse',
      up
        ? `The prescribed ${amperes(ratedA)} is for ${volts(formerV)}: at ${volts(nowV)} it is ${decimal(nowV / formerV, 3)} times too large`
        : `The prescribed ${amperes(ratedA)} is for ${volts(formerV)}: at ${volts(nowV)} the same watts draw ${decimal(formerV / nowV, 3)} times the current`,
      rest(
        up
          ? 'At the higher voltage the unit draws less current, so the old link lets about that many times the overload pass before it opens.'
          : 'The old link will open in normal use. A larger one is not permitted by this calculation: it is for the maker to say.',
        fit,
        working,
        [dualVoltage, ...makers.sources],
      ),
    ),
  ]
}

/** Fitted against prescribed: rating. */
const rating: Rule = ({ fitted, prescription, moved }) => {
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

/** Two families of standards under one number. */
const family: Rule = ({ fitted, prescription, request }) => {
  const link = prescription?.link
  const lines = schemeComparison.lines.map(
    (line) => `At ${percent(line.percent / 100)}: UL ${line.ul}; IEC ${line.iec}`,
  )
  const sources = [...schemeComparison.sources, notInterchangeable]
  const plugWrong = request.position === 'plug' && fitted.scheme !== null && fitted.scheme !== 'BS1362'
  if (plugWrong)
    return [
      stop(
        'fuse',
        `A link to ${familyName(fitted.scheme)} is fitted in a plug made for BS 1362`,
        rest(
          'A plug needs a link that breaks 6 kA and is 6.3 × 25.4 mm; other links of that size do not.',
          'Fit a link marked BS 1362.',
          [],
          [likeWithLike.sameSize],
        ),
      ),
    ]
  if (request.position === 'plug' && fitted.scheme === null && fitted.ratedA !== null)
    return [
      unknown(
        'fuse',
        'Whether the plug fuse is to BS 1362 is not known',
        rest(
          'A plug needs a link that breaks 6 kA.',
          'Look for the mark BS 1362 on the link; without it, fit one that has it.',
          [],
          [likeWithLike.sameSize],
        ),
      ),
    ]
  if (!link || link.scheme === null || fitted.scheme === null || link.scheme === fitted.scheme) return []
  if (link.scheme === 'UL' && fitted.scheme === 'IEC')
    return [
      stop(
        'fuse',
        'An IEC link is fitted where a UL link is prescribed: not the same link under one number',
        rest(
          'Between 135 % and 210 % of the number the IEC link goes on carrying where the UL link had to open: that overload is no longer cut off.',
          fitThis(link),
          lines,
          sources,
        ),
      ),
    ]
  if (link.scheme === 'IEC' && fitted.scheme === 'UL')
    return [
      caution(
        'fuse',
        'A UL link is fitted where an IEC link is prescribed: not the same link under one number',
        rest(
          'It may open in normal use at 135 % of its number, and its breaking capacity is stated differently.',
          fitThis(link),
          lines,
          sources,
        ),
      ),
    ]
  return [
    stop(
      'fuse',
      `A link to ${familyName(fitted.scheme)} is fitted where one to ${familyName(link.scheme)} is prescribed`,
      rest(
        'Size, breaking capacity and opening times differ between these standards.',
        fitThis(link),
        [],
        [likeWithLike.sameSize],
      ),
    ),
  ]
}

/** Fitted against prescribed: speed. */
const speed: Rule = ({ fitted, prescription, request }) => {
  const link = prescription?.link
  if (request.position === 'plug' || !link || link.ratedA === null || fitted.ratedA === null) return []
  const [want, have] = [link.characteristic, fitted.characteristic]
  if (want === null && have === null)
    return [
      unknown(
        'fuse',
        'Neither the print nor the link tells the speed',
        rest(
          'A time-lag link where a fast one belongs lets a fault last hundreds of times longer.',
          'Look in the service manual; a letter F or T stands before the current on IEC links.',
          [],
          [iecMarking],
        ),
      ),
    ]
  if (have === null)
    return [
      unknown(
        'fuse',
        `The speed of the fitted link is not marked; ${want} is prescribed`,
        rest('A slower link lets a fault last longer.', fitThis(link), [], [iecMarking, likeWithLike.replacing]),
      ),
    ]
  if (want === null)
    return slowness(have) <= slowness('F')
      ? [
          caution(
            'fuse',
            `The print gives no speed; the fitted link is ${have}`,
            rest(
              'A fast link cannot be slower than intended, but it may open at switch-on.',
              'Look in the service manual before fitting a slower one.',
              [],
              [likeWithLike.replacing],
            ),
          ),
        ]
      : [
          unknown(
            'fuse',
            `The print gives no speed; the fitted link is ${have}`,
            rest(
              'Where a fast link was meant, this one lets a fault last longer.',
              'Look in the service manual for the letter.',
              [],
              [likeWithLike.replacing],
            ),
          ),
        ]
  if (slowness(have) > slowness(want))
    return [
      stop(
        'fuse',
        `The fitted link is slower (${have}) than prescribed (${want})`,
        rest('A fault lasts longer before the link opens.', fitThis(link), [], makers.sources),
      ),
    ]
  if (slowness(have) < slowness(want))
    return [
      caution(
        'fuse',
        `The fitted link is faster (${have}) than prescribed (${want})`,
        rest(
          'It protects at least as well, but may open at every switch-on.',
          fitThis(link),
          [],
          [likeWithLike.replacing],
        ),
      ),
    ]
  return [
    clear(
      'fuse',
      `The speed is ${have} as prescribed`,
      rest('The pre-arcing behaviour is the one marked on the unit.', null, [], makers.sources),
    ),
  ]
}

/** Breaking capacity: against the prescription and against the fault current. */
const breaking: Rule = ({ fitted, prescription, request, fittedEntered }) => {
  const found: Finding[] = []
  const link = prescription?.link
  if (link?.breaking && request.position !== 'plug') {
    if (fitted.breaking === null) {
      // every IEC link breaks at least what the letter L promises
      if (link.breaking !== 'L' && fitted.ratedA !== null)
        found.push(
          unknown(
            'fuse',
            `Breaking capacity ${link.breaking} is prescribed; the fitted link shows no letter`,
            rest(
              'A link that cannot break the fault current may burst and go on arcing.',
              `Take it for a low one until shown otherwise. ${fitThis(link)}`,
              [],
              [breakingRule, likeWithLike.h],
            ),
          ),
        )
    } else if (breakingRank(fitted.breaking) < breakingRank(link.breaking))
      found.push(
        stop(
          'fuse',
          `Breaking capacity ${fitted.breaking} is fitted where ${link.breaking} is prescribed`,
          rest(
            'On a short circuit the link may burst instead of opening.',
            fitThis(link),
            [`${link.breaking}: ${breaks(link)}; ${fitted.breaking}: ${breaks(fitted)}`],
            [likeWithLike.h, iecBreakingCapacity[link.breaking].source],
          ),
        ),
      )
  }
  const faultA = request.circuit.prospectiveFaultA
  if (faultA == null || !fittedEntered) return found
  const capacityA = fitted.breakingCapacityA
  const listed = fitted.scheme === 'UL' ? ' (if UL Listed)' : ''
  const capacitySource =
    fitted.scheme === 'UL'
      ? ulInterruptingAt250V[0]?.source
      : fitted.breaking
        ? iecBreakingCapacity[fitted.breaking].source
        : undefined
  const sources = capacitySource ? [breakingRule, capacitySource] : [breakingRule]
  if (capacityA === null)
    found.push(
      unknown(
        'fuse',
        `A fault can draw ${amperes(faultA)}; what the fitted link can break is not known`,
        rest(
          'A link that cannot break the fault current may burst and go on arcing.',
          'Look for L, E or H after the current on the cap.',
          [],
          [breakingRule],
        ),
      ),
    )
  else if (capacityA < faultA)
    found.push(
      stop(
        'fuse',
        `The link breaks ${amperes(capacityA, 4, 'down')}${listed}; a fault can draw ${amperes(faultA, 4, 'up')}`,
        rest(
          'On a short circuit the link may burst and go on arcing.',
          `Use the same rating and speed with a breaking capacity of at least ${amperes(faultA, 4, 'up')} (H: 1.5 kA). ${who}`,
          [`${amperes(capacityA, 4, 'down')} < ${amperes(faultA, 4, 'up')}`],
          sources,
        ),
      ),
    )
  else
    found.push(
      clear(
        'fuse',
        `The link breaks ${amperes(capacityA, 4, 'down')}${listed}; a fault can draw ${amperes(faultA, 4, 'up')}`,
        rest(
          'It can break the fault current that was entered.',
          null,
          [`${amperes(capacityA, 4, 'down')} ≥ ${amperes(faultA, 4, 'up')}`],
          sources,
        ),
      ),
    )
  return found
}

const breaks = (link: FuseLink): string =>
  link.breakingCapacityA === null ? 'not known' : amperes(link.breakingCapacityA, 4, 'down')

/** Rated voltage: against the circuit and against the prescription. */
const voltage: Rule = ({ fitted, prescription, request, fittedEntered }) => {
  if (!fittedEntered || fitted.ratedA === null) return []
  const { voltageV } = request.circuit
  const link = prescription?.link
  const dc =
    request.position === 'low-voltage'
      ? ['On direct current a link needs a DC rating: an AC rating says nothing about it.']
      : []
  const sources = request.position === 'low-voltage' ? [voltageRule, dcRule] : [voltageRule]
  if (fitted.ratedV === null)
    return [
      request.position === 'low-voltage'
        ? caution(
            'fuse',
            'The rated voltage of the fitted link is not marked',
            rest(
              'A link opens an arc only up to its rated voltage.',
              `Look on the cap; it must be at least ${volts(voltageV)}.`,
              dc,
              sources,
            ),
          )
        : unknown(
            'fuse',
            'The rated voltage of the fitted link is not marked',
            rest(
              'A link for a lower voltage can go on arcing when it opens.',
              `Look on the cap; on ${volts(voltageV)} it must be at least that, commonly 250 V.`,
              dc,
              sources,
            ),
          ),
    ]
  const working = [`${volts(fitted.ratedV)} against ${volts(voltageV)}`, ...dc]
  if (fitted.ratedV < voltageV)
    return [
      stop(
        'fuse',
        `The link is rated ${volts(fitted.ratedV)}; the circuit is ${volts(voltageV)}`,
        rest(
          'When it opens, the arc can go on inside or outside the link.',
          link && link.ratedV !== null && link.ratedV >= voltageV
            ? fitThis(link)
            : `Use the prescribed rating and speed, rated for at least ${volts(voltageV)}. ${who}`,
          working,
          sources,
        ),
      ),
    ]
  if (link?.ratedV != null && fitted.ratedV < link.ratedV)
    return [
      stop(
        'fuse',
        `The link is rated ${volts(fitted.ratedV)} where ${volts(link.ratedV)} is prescribed`,
        rest(
          'When it opens, the arc can go on.',
          fitThis(link),
          [...working, `${volts(fitted.ratedV)} < ${volts(link.ratedV)}`],
          [voltageRule, likeWithLike.replacing],
        ),
      ),
    ]
  return [
    clear(
      'fuse',
      `The link is rated ${volts(fitted.ratedV)}; the circuit is ${volts(voltageV)}`,
      rest('The rated voltage covers the circuit.', null, working, sources),
    ),
  ]
}

/** Body size. */
const size: Rule = ({ fitted, prescription }) => {
  const want = prescription?.link.sizeMm ?? null
  if (want === null || fitted.sizeMm === null || want === fitted.sizeMm) return []
  return [
    stop(
      'fuse',
      `A link of ${fitted.sizeMm.replace('x', ' × ')} mm is fitted where ${want.replace('x', ' × ')} mm is prescribed`,
      rest(
        'A link of the wrong size makes poor contact, heats the holder or can touch live parts.',
        'Fit the prescribed size; never bridge or pad the holder.',
        [],
        [likeWithLike.sameSize],
      ),
    ),
  ]
}

/** Operating current against the rating that rules. */
const operating: Rule = ({ demand, fitted, prescription, moved, request }) => {
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
const ambient: Rule = ({ demand }) =>
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

/** Inrush against melting I²t. */
const inrush: Rule = ({ demand, fitted, prescription, request }) => {
  const { inrushI2t, minimumMeltingI2t } = demand.required
  if (inrushI2t === null) return []
  const link = fitted.ratedA !== null ? fitted : (prescription?.link ?? fitted)
  const range = meltingRange(link)
  const { working } = demand.pulse
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
  if (range === null) {
    const { peak, gate } = {
      peak: request.circuit.inrushPeakA ?? 0,
      gate:
        link.ratedA === null
          ? null
          : gateTimes(
              gatesOf(link).points,
              Math.max((request.circuit.inrushPeakA ?? 0) / link.ratedA, Number.MIN_VALUE),
            ),
    }
    const line =
      gate && gate.minS !== null && link.ratedA !== null
        ? [
            `At ${amperes(peak)} (${decimal(peak / link.ratedA, 3)} times rated) the gates let it open from ${duration(gate.minS)} on`,
          ]
        : []
    return [
      caution(
        'fuse',
        `The inrush asks for a melting I²t of ${decimal(minimumMeltingI2t, 3, 'up')} A²s; no two data sheets give that of this link`,
        rest(
          'Whether it survives its switch-ons cannot be told from here.',
          `Look in the data sheet of the link that is fitted. ${noLarger}`,
          [...working, ...line],
          demand.pulse.sources,
        ),
      ),
    ]
  }
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
const blown: Rule = ({ request }) => {
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

/** What the link does behind a series lamp. */
const lamp: Rule = ({ request, fitted, prescription }) => {
  const lampA = request.seriesLampA
  const link = fitted.ratedA !== null ? fitted : prescription?.link
  if (lampA == null || !link || link.ratedA === null) return []
  const multiple = lampA / link.ratedA
  const limit = multiple > 0 ? gateTimes(gatesOf(link).points, multiple) : { minS: null, maxS: null }
  const line =
    limit.maxS === null
      ? 'No gate makes the link open at that current'
      : `Between its gates the link may take up to ${duration(limit.maxS)}`
  return [
    caution(
      'fuse',
      `Behind the planned lamp a short circuit draws ${amperes(lampA)}, ${decimal(multiple, 3)} times the rating: the link will not clear it`,
      rest(
        'Behind a series lamp the lamp is the limit, not the fuse: a fault shows as a bright lamp and goes on until you switch off.',
        'Watch the lamp. Bright and staying bright: switch off and pull the plug.',
        [`${amperes(lampA)} / ${amperes(link.ratedA)} = ${decimal(multiple, 3)}`, line],
        [currentLimited],
      ),
    ),
  ]
}

/** In the order in which a person looks; the review sorts them worst first. */
export const fuseRules: readonly Rule[] = [
  blown,
  marking,
  prescribed,
  rating,
  family,
  speed,
  breaking,
  voltage,
  size,
  operating,
  ambient,
  inrush,
  lamp,
]

export const worst = (findings: readonly Finding[], outcome: Outcome): boolean =>
  findings.some((one) => one.outcome === outcome)
