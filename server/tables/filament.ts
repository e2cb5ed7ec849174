import { fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'
import { figure, rows, table } from './table.js'

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

// biome-ignore format: a row a line
export const tungstenRows = rows<TungstenRow>({ sources: [resistivitySource, radiationSource] })(['temperatureK', 'resistivityMicroOhmCm', 'radiatedWPerCm2'], [
  [300, 5.65, 3.183e-5],
  [400, 8.06, 0.001687, { doubt: 'the radiated power is 0.00169 W/cm² as remembered, but 0.00199 W/cm² follows from the other columns' }],
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
  [3655, 117.1, 382.6, { sources: [meltingSource, radiationSource] }],
])

// biome-ignore format: a row a line
export const heatCapacityRows = rows<HeatCapacityRow>()(['fromK', 'toK', 'a', 'b', 'c', 'd', 'e', 'sources'], [
  [298, 1900, 23.9593, 2.63968, 1.25775, -0.254642, -0.048407, [heatCapacitySource]],
  [1900, 3680, -22.5764, 90.2798, -44.2715, 7.17663, -24.0974, [heatCapacitySource]],
])

// biome-ignore format: a row a line
export const lampExponentRows = rows<LampExponentRow>()(['fill', 'of', 'exponent', 'sources'], [
  ['gas', 'current', 0.541, [exponentSource]],
  ['gas', 'power', 1.541, [exponentSource]],
  ['gas', 'light', 3.38, [exponentSource]],
  ['gas', 'life', -13.1, [exponentSource]],
  ['vacuum', 'current', 0.58, [exponentSource]],
  ['vacuum', 'power', 1.58, [exponentSource]],
  ['vacuum', 'light', 3.51, [exponentSource]],
  ['vacuum', 'life', -13.5, [exponentSource]],
])

export const tungstenTable = table<TungstenRow>({
  name: 'tungsten',
  title: 'Tungsten by temperature',
  intro:
    'Resistivity, and what a bare straight filament radiates in vacuum. The series lamp is worked out from these rows.',
  rows: tungstenRows,
  id: ({ temperatureK }) => [temperatureK, 'k'],
  columns: [
    { key: 'temperatureK', title: 'Temperature', unit: 'K', rises: true },
    { key: 'resistivityMicroOhmCm', title: 'Resistivity', unit: 'µΩ·cm', above: 0 },
    { key: 'radiatedWPerCm2', title: 'Radiated', unit: 'W/cm²', above: 0 },
  ],
})

export const heatCapacityTable = table<HeatCapacityRow>({
  name: 'tungsten-heat',
  title: 'Heat capacity of tungsten',
  intro:
    'Coefficients of cp = a + b t + c t² + d t³ + e / t² in J/(mol K), with t = T / 1000 K, for two ranges of temperature.',
  rows: heatCapacityRows,
  id: ({ fromK, toK }) => [fromK, 'to', toK, 'k'],
  columns: [
    { key: 'fromK', title: 'Range', of: ({ fromK, toK }) => figure(fromK, 'K', { to: toK }), rises: true },
    { key: 'a', title: 'a', unit: '' },
    { key: 'b', title: 'b', unit: '' },
    { key: 'c', title: 'c', unit: '' },
    { key: 'd', title: 'd', unit: '' },
    { key: 'e', title: 'e', unit: '' },
  ],
})

export const lampExponentsTable = table<LampExponentRow>({
  name: 'lamp-exponents',
  title: 'How a lamp follows its voltage',
  intro: 'Near the rated voltage a quantity goes with (voltage / rated voltage) to the power given here.',
  rows: lampExponentRows,
  id: ({ of, fill }) => [of, fill],
  columns: [
    { key: 'of', title: 'Quantity' },
    { key: 'fill', title: 'Lamp', of: ({ fill }) => (fill === 'vacuum' ? fill : `${fill}-filled`) },
    { key: 'exponent', title: 'Exponent', unit: '' },
  ],
})
