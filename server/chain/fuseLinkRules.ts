import { amperes, percent, volts } from '../physics/quantity.js'
import { breakingRank, slowness } from '../plate/fuseMarking.js'
import { schemeComparison } from '../reference/fuseGatesOther.js'
import { iecBreakingMark, iecColourCode, iecMarking } from '../reference/fuseMarks.js'
import {
  bs646Note,
  bs1362LargestA,
  iecBetween,
  iecBreakingCapacity,
  iecExtensions,
  iecPreferred,
  ulInterruptingAt250V,
} from '../reference/fuseRatings.js'
import { breakingRule, dcRule, likeWithLike, notInterchangeable, voltageRule } from '../reference/fuseSelection.js'
import { caution, clear, type Finding, stop, unknown } from './finding.js'
import { type FuseLink, isCounterfeit } from './fuseLink.js'
import { familyName, fitThis, makers, type Rule, rest, who } from './fuseSituation.js'

/** The marking itself: what could not be read and what cannot be true. */
export const marking: Rule = ({ request, fitted, fittedEntered }) => {
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
  const about = request.marking?.trim().slice(0, 60) ?? ''
  if (isCounterfeit(fitted))
    found.push(
      stop(
        'fuse',
        about ? `“${about}” cannot be a true BS 1362 link` : 'A link with this rating cannot be a true BS 1362 link',
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
          [iecMarking, iecBreakingMark],
        ),
      ),
    )
  else if (fitted.notes.length > 0 && request.marking)
    found.push(
      caution(
        'fuse',
        'The marking asks for a second look',
        rest(fitted.notes.join(' '), 'Compare the cap with what was read here.', [], [iecMarking, iecColourCode]),
      ),
    )
  return found
}

const isIecRating = (ratedA: number): boolean =>
  [iecPreferred, iecBetween, iecExtensions].some((series) => series.ratedA.includes(ratedA))

/** Two families of standards under one number. */
export const family: Rule = ({ fitted, prescription, request }) => {
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
          'A plug needs a link that breaks 6\u00a0kA and is 6.3 × 25.4\u00a0mm; other links of that size do not.',
          'Fit a link marked BS 1362.',
          [],
          fitted.scheme === 'BS646' ? [likeWithLike.sameSize, bs646Note] : [likeWithLike.sameSize],
        ),
      ),
    ]
  if (request.position === 'plug' && fitted.scheme === null && fitted.ratedA !== null)
    return [
      unknown(
        'fuse',
        'Whether the plug fuse is to BS 1362 is not known',
        rest(
          'A plug needs a link that breaks 6\u00a0kA.',
          'Look for the mark BS 1362 on the link; without it, fit one that has it.',
          [],
          [likeWithLike.sameSize],
        ),
      ),
    ]
  if (link?.scheme === null && fitted.scheme === 'IEC' && link.ratedA !== null && !isIecRating(link.ratedA))
    return [
      caution(
        'fuse',
        `${amperes(link.ratedA)} is not a rating of the IEC series: the print may mean a UL link`,
        rest(
          'Under one number an IEC link carries overloads that open a UL link.',
          'Look for UL, CSA or a speed word in the print or the manual before an IEC link is fitted.',
          lines,
          [...sources, ...iecPreferred.sources],
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
export const speed: Rule = ({ fitted, prescription, request }) => {
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
export const breaking: Rule = ({ fitted, prescription, request, fittedEntered }) => {
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
          `Use the prescribed rating and speed with a breaking capacity of at least ${amperes(faultA, 4, 'up')} (H: 1.5\u00a0kA). ${who}`,
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
export const voltage: Rule = ({ fitted, prescription, request, fittedEntered }) => {
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
              `Look on the cap; on ${volts(voltageV)} it must be at least that, commonly 250\u00a0V.`,
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
export const size: Rule = ({ fitted, prescription }) => {
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
