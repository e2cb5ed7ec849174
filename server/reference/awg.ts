import type { Sourced } from './sourced.js'

/** Solid copper wire of an American wire gauge number. */
export interface AwgRow extends Sourced {
  readonly awg: number
  readonly diameterMm: number
  readonly areaMm2: number
  /** at 20 °C */
  readonly ohmPerKm: number
}

export const awgRows: readonly AwgRow[] = []

/** The row of a gauge number; undefined outside 10 to 30. */
export const awgRow = (awg: number): AwgRow | undefined => awgRows.find((row) => row.awg === awg)
