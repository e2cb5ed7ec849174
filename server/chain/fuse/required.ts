import { neededMeltingI2t, pulseFormula, pulseI2t, pulseShare } from '../../physics/fuseI2t.js'
import { loadCurrent, minimumRating, nextRating } from '../../physics/fuseRating.js'
import {
  bs1362Ratings,
  iecExtensions,
  iecPreferred,
  northAmerican,
  northAmericanMetric,
} from '../../tables/fuseRatings.js'
import {
  ambientMatchC,
  ambientPoints,
  continuousShare,
  iecUpperShare,
  pulseShares,
  referenceAmbientC,
} from '../../tables/fuseSelection.js'
import type { Source } from '../../tables/source.js'
import { lowClassMostV, smallestPlugFuseA } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes, decimal, percent, plain, seconds, volts, watts } from '../../words/quantity.js'
import type { FuseLink, Prescription } from './fuseLink.js'
import type { FuseCircuit, FuseRequest, FuseRequired } from './fuseRequest.js'
import { meltingRange } from './meltingRange.js'

type Family = keyof typeof continuousShare

/** A number that was worked out, with how. */
export interface Worked {
  working: Phrase[]
  sources: Source[]
}

export interface Demand {
  /** current and least rating */
  steady: Worked
  /** inrush and melting I²t */
  pulse: Worked
  required: FuseRequired
  family: Family
  /** said where the ambient is above the reference: re-rated or not, and why */
  ambient: Phrase | null
  ambientShare: number
  /** said where the number of pulses lies beyond what is published */
  pulsesBeyond: boolean
}

const i2tText = (value: number): Phrase => say`${decimal(value, 3)}\u00a0A²s`

/** Family of standards the calculation is made for, and why that one. */
function familyOf(
  request: FuseRequest,
  fitted: FuseLink,
  prescription: Prescription | null,
): { family: Family; why: Phrase } {
  if (request.position === 'plug') return { family: 'BS1362', why: say`a plug fuse` }
  const named = prescription?.link.scheme ?? fitted.scheme
  if (named === 'UL' || named === 'IEC' || named === 'BS1362') return { family: named, why: say`as marked` }
  if (request.position === 'mains' && request.circuit.voltageV <= lowClassMostV.value)
    return { family: 'UL', why: say`family not marked; usual on 100 V to 127 V mains` }
  return { family: 'IEC', why: say`family not marked; usual on 220 V to 240 V mains` }
}

function operatingCurrent(circuit: FuseCircuit): Worked & { currentA: number | null } {
  const { voltageV, currentA, powerW, powerFactor } = circuit
  if (currentA != null && currentA > 0)
    return { currentA, working: [say`Operating current ${amperes(currentA)}, as entered`], sources: [] }
  if (powerW == null || !(powerW > 0) || !(voltageV > 0)) return { currentA: null, working: [], sources: [] }
  const known = powerFactor != null && powerFactor > 0 && powerFactor <= 1
  const value = loadCurrent(powerW, voltageV, known ? powerFactor : 1)
  const working = known
    ? [say`${watts(powerW)} / (${volts(voltageV)} × ${decimal(powerFactor, 3)}) = ${amperes(value, 4, 'up')}`]
    : [
        say`${watts(powerW)} / ${volts(voltageV)} = ${amperes(value, 4, 'up')}`,
        say`Power factor not entered: 1 is taken; a supply without correction draws up to ${1.67} times as much (power factor ${0.6})`,
      ]
  return { currentA: value, working, sources: [] }
}

function ambientShareOf(
  request: FuseRequest,
  fitted: FuseLink,
  prescription: Prescription | null,
): { share: number; text: Phrase | null; sources: Source[] } {
  const ambientC = request.circuit.ambientC ?? null
  if (ambientC === null || ambientC <= referenceAmbientC.value) return { share: 1, text: null, sources: [] }
  const characteristic = prescription?.link.characteristic ?? fitted.characteristic
  const timeLag = characteristic === 'T' || characteristic === 'TT'
  const point =
    request.position === 'plug'
      ? undefined
      : ambientPoints.find((one) => one.timeLag === timeLag && Math.abs(ambientC - one.ambientC) <= ambientMatchC.value)
  if (!point)
    return {
      share: 1,
      text: say`No published re-rating curve for this link at ${plain(ambientC, '°C')}: the rating is not reduced here, and it may carry less than shown.`,
      sources: [referenceAmbientC.source],
    }
  return {
    share: point.share,
    text: say`At ${plain(ambientC, '°C')} the rating is taken at ${percent(point.share)}, the published point for one time-lag link of another body; for this one there is no published curve.`,
    sources: [point.source],
  }
}

function pulseOf(circuit: FuseCircuit): Worked & { i2t: number | null; neededI2t: number | null; beyond: boolean } {
  const { inrushPeakA, inrushTimeS, inrushShape, pulses } = circuit
  if (inrushPeakA == null || inrushTimeS == null || !(inrushPeakA > 0) || !(inrushTimeS > 0))
    return { i2t: null, neededI2t: null, beyond: false, working: [], sources: [] }
  const shape = inrushShape ?? 'rectangle'
  const i2t = pulseI2t(shape, inrushPeakA, inrushTimeS)
  const largest = pulseShares[pulseShares.length - 1]
  const point = pulses != null && pulses >= 1 ? pulseShare(pulses, pulseShares) : largest
  const neededI2t = point ? neededMeltingI2t(i2t, point.share) : null
  const shapeWords = inrushShape == null ? 'shape not entered: rectangle, the largest, is taken' : shape
  return {
    i2t,
    neededI2t,
    beyond: point === undefined,
    sources: point ? [point.source] : [],
    working: [
      say`Inrush (${shapeWords}): ${pulseFormula[shape]} with ${amperes(inrushPeakA)} and ${seconds(inrushTimeS)} = ${i2tText(i2t)}`,
      point && neededI2t !== null
        ? say`Melting I²t needed for ${decimal(point.uptoPulses)} pulses${pulses == null ? say` (number not entered: the most that is published)` : say``}: ${i2tText(i2t)} / ${percent(point.share)} = ${i2tText(neededI2t)}`
        : say`No published share beyond ${decimal(largest?.uptoPulses ?? 0)} pulses`,
    ],
  }
}

const seriesOf = (family: Family, sizeMm: string | null): readonly number[] => {
  if (family === 'UL')
    return sizeMm === '5x20'
      ? [...new Set([...northAmerican.ratedA, ...northAmericanMetric.ratedA])].sort((a, b) => a - b)
      : northAmerican.ratedA
  if (family === 'IEC') return [...iecPreferred.ratedA, ...iecExtensions.ratedA]
  // links below 3 A are made, and open at the switch-on of small supplies
  return bs1362Ratings.ratedA.filter((ratedA) => ratedA >= smallestPlugFuseA.value)
}

/**
 * What the circuit asks of a link: operating current, least rating, inrush. The recommendation is the smallest preferred
 * rating that satisfies both, and is never above the prescription; without a current it is the prescription itself.
 *
 * @param moved  the prescription is for another mains: it limits, but recommends nothing
 */
export function demandOf(
  request: FuseRequest,
  fitted: FuseLink,
  prescription: Prescription | null,
  moved: boolean,
): Demand {
  const { circuit } = request
  const { family, why } = familyOf(request, fitted, prescription)
  const { value: share, reason, sources } = continuousShare[family]
  const operating = operatingCurrent(circuit)
  const ambient = ambientShareOf(request, fitted, prescription)
  const pulse = pulseOf(circuit)
  const working = [...operating.working]
  const { currentA } = operating
  const minimumRatedA = currentA === null ? null : minimumRating(currentA, share, ambient.share)
  if (currentA !== null && minimumRatedA !== null) {
    const product = ambient.share === 1 ? percent(share) : say`(${percent(share)} × ${percent(ambient.share)})`
    working.push(
      say`Least rating, ${family === 'BS1362' ? say`BS 1362` : family} (${why}): ${amperes(currentA)} / ${product} = ${amperes(minimumRatedA, 4, 'up')}; ${reason}`,
    )
    if (family === 'IEC')
      working.push(
        say`At ${percent(iecUpperShare)} of the rating it would be ${amperes(minimumRating(currentA, iecUpperShare, ambient.share), 4, 'up')}`,
      )
  }

  const like = prescription?.link.ratedA != null ? prescription.link : fitted
  const survives = (ratedA: number): boolean => {
    const range = meltingRange({ ...like, ratedA })
    return range === null || pulse.neededI2t === null || range.lowI2t >= pulse.neededI2t
  }
  const series = seriesOf(family, like.sizeMm)
  const numericA = minimumRatedA === null ? null : (nextRating(minimumRatedA, series, survives) ?? null)
  const limitA = prescription?.link.ratedA ?? null
  const largestA = series[series.length - 1] ?? null
  const workedA = minimumRatedA === null ? null : (numericA ?? largestA)
  const cappedA = workedA === null || limitA === null ? workedA : Math.min(workedA, limitA)
  // a prescription for this voltage wins; the calculation only warns
  const recommendedRatedA = limitA !== null && !moved ? limitA : cappedA
  if (numericA !== null)
    working.push(
      say`Next preferred rating that carries this${pulse.neededI2t === null ? say`` : say` and, where data sheets tell, survives the inrush`}: ${amperes(numericA)}`,
    )
  if (minimumRatedA !== null && numericA === null)
    working.push(say`No preferred rating up to ${amperes(largestA ?? 0)} carries this`)
  if (numericA !== null && limitA !== null && limitA !== numericA && (!moved || limitA < numericA))
    working.push(say`The prescription of ${amperes(limitA)} wins`)
  return {
    required: {
      currentA,
      minimumRatedA,
      recommendedRatedA,
      scheme: family,
      inrushI2t: pulse.i2t,
      minimumMeltingI2t: pulse.neededI2t,
    },
    family,
    ambient: ambient.text,
    ambientShare: ambient.share,
    pulsesBeyond: pulse.beyond,
    steady: { working, sources: currentA === null ? [] : [...sources, ...ambient.sources] },
    pulse: { working: pulse.working, sources: pulse.sources },
  }
}
