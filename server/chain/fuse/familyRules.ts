import { schemeComparison } from '../../tables/fuseGatesOther.js'
import { bs646Note, iecBetween, iecExtensions, iecPreferred } from '../../tables/fuseRatings.js'
import { likeWithLike, notInterchangeable } from '../../tables/fuseSelection.js'
import { say } from '../../words/phrase.js'
import { amperes, percent } from '../../words/quantity.js'
import { caution, stop, unknown } from '../judgement.js'
import { familyName, fitThis, type Rule } from './fuseSituation.js'

const isIecRating = (ratedA: number): boolean =>
  [iecPreferred, iecBetween, iecExtensions].some((series) => series.ratedA.includes(ratedA))

/** Two families of standards under one number. */
export const family: Rule = ({ fitted, prescription, request }) => {
  const link = prescription?.link
  const lines = schemeComparison.lines.map(
    (line) => say`At ${percent(line.percent / 100)}: UL ${line.ul}; IEC ${line.iec}`,
  )
  const sources = [...schemeComparison.sources, notInterchangeable]
  const plugWrong = request.position === 'plug' && fitted.scheme !== null && fitted.scheme !== 'BS1362'
  if (plugWrong)
    return [
      stop(() => ({
        title: say`A link to ${familyName(fitted.scheme)} is fitted in a plug made for BS 1362`,
        why: say`A plug needs a link that breaks 6\u00a0kA and is ${6.3} × ${25.4}\u00a0mm; other links of that size do not.`,
        working: [],
        action: say`Fit a link marked BS 1362.`,
        sources: fitted.scheme === 'BS646' ? [likeWithLike.sameSize, bs646Note] : [likeWithLike.sameSize],
      })),
    ]
  if (request.position === 'plug' && fitted.scheme === null && fitted.ratedA !== null)
    return [
      unknown(() => ({
        title: say`Whether the plug fuse is to BS 1362 is not known`,
        why: say`A plug needs a link that breaks 6\u00a0kA.`,
        working: [],
        action: say`Look for the mark BS 1362 on the link; without it, fit one that has it.`,
        sources: [likeWithLike.sameSize],
      })),
    ]
  const wantedA = link?.ratedA ?? null
  if (link?.scheme === null && fitted.scheme === 'IEC' && wantedA !== null && !isIecRating(wantedA))
    return [
      caution(() => ({
        title: say`${amperes(wantedA)} is not a rating of the IEC series: the print may mean a UL link`,
        why: say`Under one number an IEC link carries overloads that open a UL link.`,
        working: lines,
        action: say`Look for UL, CSA or a speed word in the print or the manual before an IEC link is fitted.`,
        sources: [...sources, ...iecPreferred.sources],
      })),
    ]
  if (!link || wantedA === null || fitted.ratedA === null || link.scheme === fitted.scheme) return []
  if (link.scheme === null || fitted.scheme === null)
    return [
      unknown(() => ({
        title:
          link.scheme === null
            ? say`The print does not tell by which standard its ${amperes(wantedA)} is meant; the fitted link is to ${familyName(fitted.scheme)}`
            : say`By which standard the fitted ${amperes(fitted.ratedA ?? 0)} is rated is not marked; ${familyName(link.scheme)} is prescribed`,
        why: say`Under one number an IEC link carries overloads that open a UL link.`,
        working: lines,
        action: say`Look for UL, CSA, LISTED or a maker’s catalogue letters (North America), or for a letter T or F before the current and L, E or H behind it (IEC). Until it is known, fit nothing.`,
        sources,
      })),
    ]
  if (link.scheme === 'UL' && fitted.scheme === 'IEC')
    return [
      stop(() => ({
        title: say`An IEC link is fitted where a UL link is prescribed: not the same link under one number`,
        why: say`Between 135 % and 210 % of the number the IEC link goes on carrying where the UL link had to open: that overload is no longer cut off.`,
        working: lines,
        action: fitThis(link),
        sources,
      })),
    ]
  if (link.scheme === 'IEC' && fitted.scheme === 'UL')
    return [
      caution(() => ({
        title: say`A UL link is fitted where an IEC link is prescribed: not the same link under one number`,
        why: say`It may open in normal use at 135 % of its number, and its breaking capacity is stated differently.`,
        working: lines,
        action: fitThis(link),
        sources,
      })),
    ]
  return [
    stop(() => ({
      title: say`A link to ${familyName(fitted.scheme)} is fitted where one to ${familyName(link.scheme)} is prescribed`,
      why: say`Size, breaking capacity and opening times differ between these standards.`,
      working: [],
      action: fitThis(link),
      sources: [likeWithLike.sameSize],
    })),
  ]
}

/** Body size. */
export const size: Rule = ({ fitted, prescription }) => {
  const want = prescription?.link.sizeMm ?? null
  const have = fitted.sizeMm
  if (want === null || have === null || want === have) return []
  return [
    stop(() => ({
      title: say`A link of ${have.replace('x', ' × ')} mm is fitted where ${want.replace('x', ' × ')} mm is prescribed`,
      why: say`A link of the wrong size makes poor contact, heats the holder or can touch live parts.`,
      working: [],
      action: say`Fit the prescribed size; never bridge or pad the holder.`,
      sources: [likeWithLike.sameSize],
    })),
  ]
}
