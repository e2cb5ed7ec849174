import { frozen } from './frozen.js'
import { fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'

/** One temperature of the tungsten table. */
export interface TungstenRow extends Sourced {
  readonly temperatureK: number
  readonly resistivityMicroOhmCm: number
  /** net of what the room radiates back, per surface of a straight wire in vacuum */
  readonly radiatedWPerCm2: number
}

/** Molar heat capacity cp = a + b t + c t² + d t³ + e / t² [J/(mol K)] with t = T / 1000 K. */
export interface HeatCapacityRow extends Sourced {
  readonly fromK: number
  readonly toK: number
  readonly a: number
  readonly b: number
  readonly c: number
  readonly d: number
  readonly e: number
}

/** quantity / rated quantity = (voltage / rated voltage) ^ exponent, near the rated voltage. */
export interface LampExponentRow extends Sourced {
  readonly fill: 'gas' | 'vacuum'
  readonly of: 'current' | 'power' | 'light' | 'life'
  readonly exponent: number
}

export const resistivitySource: Source = published(
  'CRC Handbook of Chemistry and Physics, resistivity of tungsten',
  'the column from 300 K to 3600 K as reprinted in two public data sets; some reprints name Forsythe and Worthing (1925), some Jones (1926)',
)

export const radiationSource: Source = fromMemory(
  'Jones and Langmuir, General Electric Review 30 (1927), the characteristics of tungsten filaments',
  'radiated power of the ideal filament per surface; every row agrees within 0.2 % with the current and resistance columns of the same table, 400 K excepted',
)

const meltingSource: Source = fromMemory(
  'Jones and Langmuir, General Electric Review 30 (1927)',
  'the melting point on the scale of that table, 3655 K; on the present scale it is 3695 K',
)

export const heatCapacitySource: Source = published(
  'NIST-JANAF Thermochemical Tables, 4th edition (Chase, 1998)',
  'tungsten, solid: heat capacity from 298 K to 3680 K in two ranges',
)

const exponentSource: Source = fromMemory(
  'IES Lighting Handbook, exponents of gas-filled and vacuum incandescent lamps',
  'supported by SPIE Field Guide to Illumination (2007), page 21: current exponent 1 / 1.9 = 0.526, power 1.526, light 3.42',
)

/** [K, µΩ cm, W/cm²] */
const tungsten: readonly (readonly [number, number, number])[] = [
  [300, 5.65, 3.183e-5],
  [400, 8.06, 0.001687],
  [500, 10.56, 0.009677],
  [600, 13.23, 0.03037],
  [700, 16.09, 0.07639],
  [800, 19.0, 0.1687],
  [900, 21.94, 0.3314],
  [1000, 24.93, 0.6019],
  [1100, 27.94, 1.026],
  [1200, 30.98, 1.658],
  [1300, 34.08, 2.566],
  [1400, 37.19, 3.823],
  [1500, 40.36, 5.516],
  [1600, 43.55, 7.741],
  [1700, 46.78, 10.59],
  [1800, 50.05, 14.18],
  [1900, 53.35, 18.61],
  [2000, 56.67, 23.99],
  [2100, 60.06, 30.46],
  [2200, 63.48, 38.13],
  [2300, 66.91, 47.17],
  [2400, 70.39, 57.68],
  [2500, 73.91, 69.81],
  [2600, 77.49, 83.72],
  [2700, 81.04, 99.54],
  [2800, 84.7, 117.4],
  [2900, 88.33, 137.6],
  [3000, 92.04, 160.3],
  [3100, 95.76, 185.6],
  [3200, 99.54, 213.7],
  [3300, 103.3, 245.0],
  [3400, 107.2, 279.6],
  [3500, 111.1, 317.7],
  [3600, 115.0, 359.7],
  [3655, 117.1, 382.6],
]

export const tungstenRows: readonly TungstenRow[] = frozen<TungstenRow[]>(
  tungsten.map(([temperatureK, resistivityMicroOhmCm, radiatedWPerCm2]) => ({
    temperatureK,
    resistivityMicroOhmCm,
    radiatedWPerCm2,
    sources: temperatureK === 3655 ? [meltingSource, radiationSource] : [resistivitySource, radiationSource],
    ...(temperatureK === 400 && {
      doubt: 'the radiated power is 0.00169 W/cm² as remembered, but 0.00199 W/cm² follows from the other columns',
    }),
  })),
)

export const heatCapacityRows: readonly HeatCapacityRow[] = frozen<HeatCapacityRow[]>([
  {
    fromK: 298,
    toK: 1900,
    a: 23.9593,
    b: 2.63968,
    c: 1.25775,
    d: -0.254642,
    e: -0.048407,
    sources: [heatCapacitySource],
  },
  {
    fromK: 1900,
    toK: 3680,
    a: -22.5764,
    b: 90.2798,
    c: -44.2715,
    d: 7.17663,
    e: -24.0974,
    sources: [heatCapacitySource],
  },
])

export const lampExponentRows: readonly LampExponentRow[] = frozen<LampExponentRow[]>([
  { fill: 'gas', of: 'current', exponent: 0.541, sources: [exponentSource] },
  { fill: 'gas', of: 'power', exponent: 1.541, sources: [exponentSource] },
  { fill: 'gas', of: 'light', exponent: 3.38, sources: [exponentSource] },
  { fill: 'gas', of: 'life', exponent: -13.1, sources: [exponentSource] },
  { fill: 'vacuum', of: 'current', exponent: 0.58, sources: [exponentSource] },
  { fill: 'vacuum', of: 'power', exponent: 1.58, sources: [exponentSource] },
  { fill: 'vacuum', of: 'light', exponent: 3.51, sources: [exponentSource] },
  { fill: 'vacuum', of: 'life', exponent: -13.5, sources: [exponentSource] },
])

/** The room and every filament that has been off for a while [K]: the first row of the tungsten table. */
export const ambientK = 300
