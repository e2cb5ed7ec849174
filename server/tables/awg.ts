import { published, type Source } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/** Solid copper wire of an American wire gauge number. */
export interface AwgRow extends Sourced {
  readonly awg: number
  readonly diameterMm: number
  readonly areaMm2: number
  /** at 20 °C */
  readonly ohmPerKm: number
}

const printed: readonly Source[] = [
  published(
    'Cirris, wire resistance table (cirris.com/wire-resistance-calculator)',
    'diameter in mils, area in circular mils, resistance in Ω per 100 ft; converted to metric units',
  ),
]
const floyd: readonly Source[] = [
  published(
    'Floyd, Electric Circuit Fundamentals, 2nd edition, wire table as given by HyperPhysics (Georgia State University)',
    'diameter in inches, area in circular mils, resistance in Ω per 1000 ft at 20 °C; converted to metric units',
  ),
]

// biome-ignore format: a row a line
export const awgRows = rows<AwgRow>()(['awg', 'diameterMm', 'areaMm2', 'ohmPerKm', 'sources'], [
  [10, 2.588, 5.26, 3.277, floyd],
  [11, 2.305, 4.172, 4.134, floyd],
  [12, 2.053, 3.309, 5.21, printed],
  [13, 1.828, 2.624, 6.572, floyd],
  [14, 1.628, 2.081, 8.284, printed],
  [15, 1.45, 1.65, 10.45, printed],
  [16, 1.291, 1.309, 13.18, printed],
  [17, 1.15, 1.038, 16.61, printed],
  [18, 1.024, 0.823, 20.95, printed],
  [19, 0.9116, 0.6527, 26.41, printed],
  [20, 0.8118, 0.5176, 33.3, printed],
  [21, 0.7229, 0.4105, 41.99, floyd],
  [22, 0.6438, 0.3255, 52.95, printed],
  [23, 0.5733, 0.2581, 66.8, printed],
  [24, 0.5105, 0.2047, 84.22, printed],
  [25, 0.4547, 0.1623, 106.2, printed],
  [26, 0.4049, 0.1288, 133.9, printed],
  [27, 0.3606, 0.1021, 168.9, printed],
  [28, 0.3211, 0.08097, 212.9, printed],
  [29, 0.2859, 0.06421, 268.5, printed],
  [30, 0.2546, 0.05092, 338.6, printed],
])

export const awgTable = table<AwgRow>({
  name: 'awg',
  title: 'American wire gauge',
  intro: 'Solid copper wire at 20 °C. Stranded wire of a gauge has the same copper area and a larger diameter.',
  rows: awgRows,
  id: ({ awg }) => ['awg', awg],
  columns: [
    { key: 'awg', title: 'Gauge', of: ({ awg }) => `AWG ${awg}`, rises: true },
    { key: 'diameterMm', title: 'Diameter', unit: 'mm', above: 0 },
    { key: 'areaMm2', title: 'Area', unit: 'mm²', above: 0 },
    { key: 'ohmPerKm', title: 'Resistance', unit: 'Ω/km', above: 0 },
  ],
  rules: [
    {
      fault: 'diameter and area disagree',
      broken: ({ diameterMm, areaMm2 }) => Math.abs((Math.PI * diameterMm ** 2) / 4 / areaMm2 - 1) > 0.005,
    },
  ],
})
