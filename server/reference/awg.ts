import { frozen } from './frozen.js'
import { published, type Source } from './source.js'
import type { Sourced } from './sourced.js'

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

export const awgRows: readonly AwgRow[] = frozen([
  { awg: 10, diameterMm: 2.588, areaMm2: 5.26, ohmPerKm: 3.277, sources: floyd },
  { awg: 11, diameterMm: 2.305, areaMm2: 4.172, ohmPerKm: 4.134, sources: floyd },
  { awg: 12, diameterMm: 2.053, areaMm2: 3.309, ohmPerKm: 5.21, sources: printed },
  { awg: 13, diameterMm: 1.828, areaMm2: 2.624, ohmPerKm: 6.572, sources: floyd },
  { awg: 14, diameterMm: 1.628, areaMm2: 2.081, ohmPerKm: 8.284, sources: printed },
  { awg: 15, diameterMm: 1.45, areaMm2: 1.65, ohmPerKm: 10.45, sources: printed },
  { awg: 16, diameterMm: 1.291, areaMm2: 1.309, ohmPerKm: 13.18, sources: printed },
  { awg: 17, diameterMm: 1.15, areaMm2: 1.038, ohmPerKm: 16.61, sources: printed },
  { awg: 18, diameterMm: 1.024, areaMm2: 0.823, ohmPerKm: 20.95, sources: printed },
  { awg: 19, diameterMm: 0.9116, areaMm2: 0.6527, ohmPerKm: 26.41, sources: printed },
  { awg: 20, diameterMm: 0.8118, areaMm2: 0.5176, ohmPerKm: 33.3, sources: printed },
  { awg: 21, diameterMm: 0.7229, areaMm2: 0.4105, ohmPerKm: 41.99, sources: floyd },
  { awg: 22, diameterMm: 0.6438, areaMm2: 0.3255, ohmPerKm: 52.95, sources: printed },
  { awg: 23, diameterMm: 0.5733, areaMm2: 0.2581, ohmPerKm: 66.8, sources: printed },
  { awg: 24, diameterMm: 0.5105, areaMm2: 0.2047, ohmPerKm: 84.22, sources: printed },
  { awg: 25, diameterMm: 0.4547, areaMm2: 0.1623, ohmPerKm: 106.2, sources: printed },
  { awg: 26, diameterMm: 0.4049, areaMm2: 0.1288, ohmPerKm: 133.9, sources: printed },
  { awg: 27, diameterMm: 0.3606, areaMm2: 0.1021, ohmPerKm: 168.9, sources: printed },
  { awg: 28, diameterMm: 0.3211, areaMm2: 0.08097, ohmPerKm: 212.9, sources: printed },
  { awg: 29, diameterMm: 0.2859, areaMm2: 0.06421, ohmPerKm: 268.5, sources: printed },
  { awg: 30, diameterMm: 0.2546, areaMm2: 0.05092, ohmPerKm: 338.6, sources: printed },
])

/** The row of a gauge number; undefined outside 10 to 30. */
export const awgRow = (awg: number): AwgRow | undefined => awgRows.find((row) => row.awg === awg)
