import { along, below } from './interpolate.js'
import { mustBePositive, mustNotBeNegative } from './range.js'
import type { Tungsten } from './tungsten.js'

export interface LampRating {
  /** [V rms] */
  readonly ratedV: number
  /** [W] */
  readonly ratedW: number
}

/** What sets one size of lamp apart. */
export interface LampSize {
  readonly ratedW: number
  /** part of the rated power that the gas carries off at rated voltage, 0 for a vacuum lamp */
  readonly gasShare: number
  /** filament temperature at rated voltage [K] */
  readonly ratedK: number
  /** heat stored at rated voltage above that at room temperature, of a lamp for `tableLampV` [J] */
  readonly heatContentJ: number
}

/** One filament: its curves over temperature, from cold to the melting point. */
export interface Filament extends LampRating {
  readonly size: LampSize
  readonly hotOhm: number
  readonly coldOhm: number
  readonly coldK: number
  readonly maxK: number
  /** equal length; temperatures rise from cold to melting, dense near cold */
  readonly temperatureK: Float64Array
  /** resistance [Ω] */
  readonly resistanceOhm: Float64Array
  /** power lost by radiation and gas [W], equal to the electrical power in steady state */
  readonly lossW: Float64Array
  /** steady voltage and current that hold that temperature [V rms], [A rms] */
  readonly voltageV: Float64Array
  readonly currentA: Float64Array
  /** heat stored above cold [J] */
  readonly heatJ: Float64Array
}

/** A lamp held at a voltage, in steady state. */
export interface FilamentState {
  voltageV: number
  currentA: number
  powerW: number
  resistanceOhm: number
  filamentK: number
}

const points = 1000

/**
 * Size data for any wattage, from a list of sizes that rises with wattage.
 *
 * Gas share and rated temperature are linear in log(watts), heat content is linear in log-log, between two rows.
 *
 * @param ratedW  [W]
 * @returns undefined below the smallest and above the largest row
 * @source interpolation of the rows, whose sources they keep
 */
export function sizeFor(ratedW: number, rows: readonly LampSize[]): LampSize | undefined {
  const watts = rows.map((row) => row.ratedW)
  const at = below(watts, ratedW)
  const low = rows[at]
  const high = rows[at + 1]
  if (!low || !high || !(ratedW >= low.ratedW && ratedW <= high.ratedW)) return undefined
  const part = Math.log(ratedW / low.ratedW) / Math.log(high.ratedW / low.ratedW)
  return {
    ratedW,
    gasShare: low.gasShare + part * (high.gasShare - low.gasShare),
    ratedK: low.ratedK + part * (high.ratedK - low.ratedK),
    heatContentJ: low.heatContentJ * (high.heatContentJ / low.heatContentJ) ** part,
  }
}

/**
 * The heat balance of a tungsten filament.
 *
 *   resistance R(T) = (Vn²/Pn) ρ(T) / ρ(Tn)
 *   loss       P(T) = Pn [(1 − g) (w(T) − w(T0)) / (w(Tn) − w(T0)) + g (Tⁿ − T0ⁿ) / (Tnⁿ − T0ⁿ)]
 *   steady state: V(T) = √(P R), I(T) = √(P / R)
 *   heat       H(T) = Hn h(T) / h(Tn)
 *
 * ρ resistivity, w radiated power and h heat of tungsten; g gas share; the exponent n of the gas loss; Vn, Pn, Tn, Hn at rated voltage;
 * T0 cold. The change of the
 * wire's size with temperature and the conduction to the supports (1 to 2 % of the power) are left out.
 *
 * @param rating     rated voltage [V rms] and power [W], more than 0
 * @param size       data of that wattage
 * @param tungsten   the metal
 * @param gasExponent  n of the loss through the gas, more than 0
 * @param heatScale  heat content of this lamp over that of the table's lamp of the same wattage, more than 0
 * @throws RangeError outside those ranges, NaN included
 * @source heat balance; inputs as given by the caller
 */
export function filament(
  rating: LampRating,
  size: LampSize,
  tungsten: Tungsten,
  gasExponent: number,
  heatScale: number,
): Filament {
  const { ratedV, ratedW } = rating
  mustBePositive({ ratedV, ratedW, gasExponent, heatScale })
  const { gasShare, ratedK } = size
  if (!(gasShare >= 0 && gasShare < 1)) throw new RangeError(`gasShare must be 0 to below 1, got ${gasShare}`)
  const coldK = tungsten.minK
  const hotOhm = ratedV ** 2 / ratedW
  const ratedResistivity = tungsten.resistivity(ratedK)
  const coldRadiated = tungsten.radiated(coldK)
  const ratedRadiated = tungsten.radiated(ratedK) - coldRadiated
  const ratedHeat = tungsten.heat(ratedK)

  const temperatureK = new Float64Array(points)
  const resistanceOhm = new Float64Array(points)
  const lossW = new Float64Array(points)
  const voltageV = new Float64Array(points)
  const currentA = new Float64Array(points)
  const heatJ = new Float64Array(points)
  for (let at = 0; at < points; at++) {
    // squared: volts go with the square root of the temperature rise near cold, so the grid is even in volts there
    const kelvin = at === points - 1 ? tungsten.maxK : coldK + (tungsten.maxK - coldK) * (at / (points - 1)) ** 2
    const ohm = (hotOhm * tungsten.resistivity(kelvin)) / ratedResistivity
    const loss =
      ratedW *
      (((1 - gasShare) * (tungsten.radiated(kelvin) - coldRadiated)) / ratedRadiated +
        (gasShare * (kelvin ** gasExponent - coldK ** gasExponent)) / (ratedK ** gasExponent - coldK ** gasExponent))
    temperatureK[at] = kelvin
    resistanceOhm[at] = ohm
    lossW[at] = loss
    voltageV[at] = Math.sqrt(loss * ohm)
    currentA[at] = Math.sqrt(loss / ohm)
    heatJ[at] = (size.heatContentJ * heatScale * tungsten.heat(kelvin)) / ratedHeat
  }
  return {
    ratedV,
    ratedW,
    size,
    hotOhm,
    coldOhm: resistanceOhm[0] as number,
    coldK,
    maxK: tungsten.maxK,
    temperatureK,
    resistanceOhm,
    lossW,
    voltageV,
    currentA,
    heatJ,
  }
}

/**
 * A filament held at a voltage until it is steady.
 *
 * @param voltageV  [V rms], 0 or more
 * @returns undefined where it would pass the melting point
 * @throws RangeError for a negative voltage, NaN included
 * @source {@link filament}
 */
export function atVoltage(lamp: Filament, voltageV: number): FilamentState | undefined {
  mustNotBeNegative({ voltageV })
  const filamentK = along(lamp.voltageV, lamp.temperatureK, voltageV)
  const currentA = along(lamp.voltageV, lamp.currentA, voltageV)
  if (filamentK === undefined || currentA === undefined) return undefined
  return {
    voltageV,
    currentA,
    powerW: voltageV * currentA,
    resistanceOhm: currentA > 0 ? voltageV / currentA : lamp.coldOhm,
    filamentK,
  }
}

/**
 * A filament carrying a current until it is steady.
 *
 * @param currentA  [A rms], 0 or more
 * @returns undefined where it would pass the melting point
 * @throws RangeError for a negative current, NaN included
 * @source {@link filament}
 */
export function atCurrent(lamp: Filament, currentA: number): FilamentState | undefined {
  mustNotBeNegative({ currentA })
  const voltageV = along(lamp.currentA, lamp.voltageV, currentA)
  return voltageV === undefined ? undefined : atVoltage(lamp, voltageV)
}
