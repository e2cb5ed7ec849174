import type { Sourced } from './sourced.js'

/**
 * 'supply' rows are what the network may deliver in normal times; only they decide a band.
 * 'rare' rows are short excursions, 'equipment terminals' rows add the drop inside a building, 'former' and 'proposed' rows are not in force.
 */
export type BandKind = 'supply' | 'rare' | 'equipment terminals' | 'former' | 'proposed'

export interface MainsBand extends Sourced {
  readonly name: string
  readonly voltageV: number
  readonly frequenciesHz: readonly number[]
  readonly minV: number
  readonly maxV: number
  readonly kind: BandKind
  /** ISO 3166-1 alpha-2; null: wherever no national row exists */
  readonly countries: readonly string[] | null
  readonly meaning: string
}

export const mainsBands: readonly MainsBand[] = []
