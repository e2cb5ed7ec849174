import { nextUp, standardRating } from './eSeries.js'
import { mustBePositive, mustNotBeNegative, mustNotBeZero } from './range.js'
import { timeToRise } from './resistorHeat.js'

export interface DummyLoadRail {
  /** signed [V] */
  voltageV: number
  /** rated output current [A] */
  currentA: number
  /** acceptance either side of the rated voltage [1] */
  tolerance: number
  /** rise from full load to no load of an unregulated supply [1]; 0 for a regulated one */
  regulation: number
}

export interface DummyLoadRules {
  /** shares of the rated current to load with [1], rising */
  fractions: readonly number[]
  /** one decade of preferred numbers */
  decade: readonly number[]
  /** ratings on sale [W], rising */
  ratingsW: readonly number[]
  /** fitted watts over dissipated watts [1] */
  powerMargin: number
  /** rise of a fully loaded resistor's surface over the room [K] */
  fullRiseK: number
  /** thermal time constant of a power resistor [s] */
  heatTimeS: number
  /** rise over the room at which a surface can no longer be touched [K] */
  touchRiseK: number
}

export interface DummyLoadPoint {
  fraction: number
  resistanceOhm: number
  standardOhm: number
  currentA: number
  powerW: number
  /** null where no single resistor on sale is large enough */
  ratedW: number | null
  /** expected output [V], signed as the rail */
  expectedV: number
  lowV: number
  highV: number
  /** until the fitted resistor is too hot to touch [s]; null where it stays below */
  tooHotAfterS: number | null
}

/**
 * Load resistors for a supply's output at several shares of its rated current.
 *
 *   R = |V| / (fraction I),  R' = next preferred value up,  V' = |V| (1 + regulation (1 − fraction)),
 *   I' = V' / R',  P = V'² / R',  fitted ≥ margin P,  low = |V| (1 − tol),  high = V' (1 + tol)
 *
 * For a negative rail low and high are signed and stay in numerical order.
 *
 * @param rail   voltage [V], not 0; current [A], more than 0; tolerance [1], 0 to below 1; regulation [1], 0 or more
 * @param rules  tables and thresholds
 * @throws RangeError outside those ranges
 * @source Ohm's law; next value up and twice the watts: common practice for load resistors
 */
export function dummyLoad(rail: DummyLoadRail, rules: DummyLoadRules): DummyLoadPoint[] {
  const { voltageV, currentA, tolerance, regulation } = rail
  mustNotBeZero({ voltageV })
  mustBePositive({ currentA })
  mustNotBeNegative({ regulation })
  if (!(tolerance >= 0 && tolerance < 1)) throw new RangeError(`tolerance must be 0 to below 1, got ${tolerance}`)
  const size = Math.abs(voltageV)
  const sign = Math.sign(voltageV)
  return rules.fractions.map((fraction) => {
    const resistanceOhm = size / (fraction * currentA)
    const standardOhm = nextUp(resistanceOhm, rules.decade)
    const loadedV = size * (1 + regulation * (1 - fraction))
    const powerW = loadedV ** 2 / standardOhm
    const ratedW = standardRating(powerW * rules.powerMargin, rules.ratingsW) ?? null
    const edges = [sign * size * (1 - tolerance), sign * loadedV * (1 + tolerance)]
    const endRiseK = ratedW === null ? rules.fullRiseK : (rules.fullRiseK * powerW) / ratedW
    return {
      fraction,
      resistanceOhm,
      standardOhm,
      currentA: loadedV / standardOhm,
      powerW,
      ratedW,
      expectedV: sign * loadedV,
      lowV: Math.min(...edges),
      highV: Math.max(...edges),
      tooHotAfterS: timeToRise(rules.touchRiseK, endRiseK, rules.heatTimeS),
    }
  })
}
