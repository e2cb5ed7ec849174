import { below } from './interpolate.js'

/** A temperature of the tungsten table, as physics needs it. */
export interface TungstenPoint {
  readonly temperatureK: number
  readonly resistivityMicroOhmCm: number
  readonly radiatedWPerCm2: number
}

/** cp = a + b t + c t² + d t³ + e / t² [J/(mol K)], t = T / 1000 K, from `fromK` to `toK`. */
export interface HeatCapacityRange {
  readonly fromK: number
  readonly toK: number
  readonly a: number
  readonly b: number
  readonly c: number
  readonly d: number
  readonly e: number
}

/** Tungsten as functions of temperature [K] over the range of its table. */
export interface Tungsten {
  readonly minK: number
  readonly maxK: number
  /** [µΩ cm] */
  resistivity(temperatureK: number): number
  /** [W/cm²] */
  radiated(temperatureK: number): number
  /** heat taken up from `minK` [J/mol] */
  heat(temperatureK: number): number
}

/**
 * Tungsten from table rows: resistivity linear between rows, radiated power linear on log-log axes, heat from the
 * integral of the heat capacity.
 *
 *   heat(T) = ∫ cp dT = 1000 [a t + b t²/2 + c t³/3 + d t⁴/4 − e/t]
 *
 * @param rows    temperatures rising, at least two
 * @param ranges  heat-capacity ranges that cover the table
 * @throws RangeError for unordered rows, and for a temperature outside the table, NaN included
 * @source the rows' own
 */
export function tungstenFrom(rows: readonly TungstenPoint[], ranges: readonly HeatCapacityRange[]): Tungsten {
  if (rows.length < 2) throw new RangeError('the tungsten table needs at least two rows')
  const temperatures = rows.map((row) => row.temperatureK)
  if (temperatures.some((temperature, at) => at > 0 && !(temperature > (temperatures[at - 1] as number))))
    throw new RangeError('the temperatures of the tungsten table must rise')
  const minK = temperatures[0] as number
  const maxK = temperatures[temperatures.length - 1] as number

  function between(temperatureK: number): { low: TungstenPoint; high: TungstenPoint } {
    if (!(temperatureK >= minK && temperatureK <= maxK))
      throw new RangeError(`temperature must be ${minK} K to ${maxK} K, got ${temperatureK}`)
    const at = below(temperatures, temperatureK)
    return { low: rows[at] as TungstenPoint, high: rows[at + 1] as TungstenPoint }
  }

  function heat(temperatureK: number): number {
    between(temperatureK)
    return ranges.reduce((sum, { fromK, toK, a, b, c, d, e }) => {
      const integral = (kelvin: number): number => {
        const t = kelvin / 1000
        return 1000 * (a * t + (b * t ** 2) / 2 + (c * t ** 3) / 3 + (d * t ** 4) / 4 - e / t)
      }
      const from = Math.max(fromK, minK)
      const to = Math.min(toK, temperatureK)
      return to > from ? sum + integral(to) - integral(from) : sum
    }, 0)
  }

  return {
    minK,
    maxK,
    resistivity(temperatureK) {
      const { low, high } = between(temperatureK)
      const part = (temperatureK - low.temperatureK) / (high.temperatureK - low.temperatureK)
      return low.resistivityMicroOhmCm + part * (high.resistivityMicroOhmCm - low.resistivityMicroOhmCm)
    },
    radiated(temperatureK) {
      const { low, high } = between(temperatureK)
      const part = Math.log(temperatureK / low.temperatureK) / Math.log(high.temperatureK / low.temperatureK)
      return low.radiatedWPerCm2 * (high.radiatedWPerCm2 / low.radiatedWPerCm2) ** part
    },
    heat,
  }
}
