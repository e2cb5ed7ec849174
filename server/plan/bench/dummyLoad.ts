import { type DummyLoadPoint, dummyLoad as loadPointsFor } from '../../physics/dummyLoad.js'
import {
  type AcceptanceBand,
  acceptanceBands,
  loadPoints,
  logicMaximum,
  otherTolerance,
  powerMargin,
  resistorWarming,
  unregulatedBand,
} from '../../tables/dummyLoad.js'
import { preferredSeries, resistorRatings } from '../../tables/preferredValues.js'
import type { Source } from '../../tables/source.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes, decimal, duration, ohms, percent, volts, watts } from '../../words/quantity.js'
import type { Explained } from '../firstPower/lamps.js'

export interface DummyLoadRequest {
  /** signed [V] */
  voltageV: number
  currentA: number
  tolerancePercent?: number | null
  series?: 'E12' | 'E24' | null
  /** rise from full load to none of an unregulated supply; absent for a regulated one */
  regulationPercent?: number | null
}

export interface DummyLoadAnswer extends Explained {
  points: DummyLoadPoint[]
  tolerancePercent: number
  /** ripple and noise published for such a rail, peak to peak [V]; null where none is */
  rippleV: number | null
}

/** The published band of a rail of this voltage, if there is one. */
export const bandOf = (voltageV: number): AcceptanceBand | undefined =>
  acceptanceBands.find((row) => row.voltageV === voltageV)

/** Acceptance either side of a rail: its own, else the published band, else the usual one [1]. */
function toleranceOf(request: DummyLoadRequest): { tolerance: number; source: Source | null } {
  if (request.tolerancePercent != null) return { tolerance: request.tolerancePercent / 100, source: null }
  if (request.regulationPercent != null) return unregulatedBand
  return bandOf(request.voltageV) ?? otherTolerance
}

/**
 * Load resistors for one output, with what should be read across them.
 *
 * @throws RangeError for 0 V, no current, or a tolerance of 100 % and more
 * @source Ohm's law, IEC 60063; margins as in the sources of the answer
 */
export function dummyLoad(request: DummyLoadRequest): DummyLoadAnswer {
  const { voltageV, currentA } = request
  const series = preferredSeries[request.series ?? 'E12']
  const { tolerance, source } = toleranceOf(request)
  const band = bandOf(voltageV)
  const points = loadPointsFor(
    { voltageV, currentA, tolerance, regulation: (request.regulationPercent ?? 0) / 100 },
    {
      fractions: loadPoints.fractions,
      decade: series.values,
      ratingsW: resistorRatings.valuesW,
      powerMargin: powerMargin.factor,
      ...resistorWarming,
    },
  )
  const hot = points.filter((point) => point.tooHotAfterS !== null)
  const shared = points.filter((point) => point.ratedW === null)
  return {
    points,
    tolerancePercent: tolerance * 100,
    rippleV: band?.rippleV ?? null,
    working: points.flatMap((point) => pointWorking(point, series.name, voltageV, currentA)),
    cautions: [
      say`Connect the load before the supply is switched on and take the reading at the load, not at the supply’s plug.`,
      ...(hot.length
        ? [
            say`The resistor is too hot to touch after about ${duration(Math.min(...hot.map((point) => point.tooHotAfterS ?? 0)), 1)} at the heaviest point (project estimate, half to twice that): mount it on metal or ceramic, away from cables, and let it cool before you reach for it.`,
          ]
        : []),
      ...(shared.length
        ? [
            say`No single resistor on sale takes these watts: share them among several equal ones, each with at least twice its part.`,
          ]
        : []),
      say`A car lamp is a poor dummy load: cold it is a tenth of its hot resistance and may trip the supply.`,
      ...(request.regulationPercent != null
        ? [say`Off load an unregulated output reads high by design; only the reading under load decides.`]
        : [
            say`A failed regulator can put its whole unregulated input on the output: no machine is connected before all three readings lie in their bands.`,
          ]),
    ],
    sources: [
      series.source,
      loadPoints.source,
      powerMargin.source,
      resistorRatings.source,
      resistorWarming.source,
      ...(source ? [source] : []),
      ...(Math.abs(voltageV) === 5 ? [logicMaximum] : []),
    ],
  }
}

function pointWorking(point: DummyLoadPoint, series: string, voltageV: number, currentA: number): Phrase[] {
  const { fraction, resistanceOhm, standardOhm, powerW, ratedW, expectedV, lowV, highV } = point
  return [
    say`${percent(fraction)}: R = ${volts(Math.abs(voltageV))} / (${decimal(fraction)} × ${amperes(currentA)}) = ${ohms(resistanceOhm)}, next ${series} value up ${ohms(standardOhm)}`,
    say`${percent(fraction)}: I = ${volts(Math.abs(expectedV))} / ${ohms(standardOhm)} = ${amperes(point.currentA)}, P = (${volts(Math.abs(expectedV))})² / ${ohms(standardOhm)} = ${watts(powerW)}, fit ${ratedW === null ? say`${decimal(powerMargin.factor)} × as much or more, shared` : say`${watts(ratedW)} (at least ${decimal(powerMargin.factor)} × ${watts(powerW)})`}`,
    say`${percent(fraction)}: read ${volts(lowV)} to ${volts(highV)}`,
  ]
}
