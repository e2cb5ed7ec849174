import type { Sourced } from './sourced.js'

export interface ColourRow extends Sourced {
  readonly region: string
  /** null where no source was found */
  readonly line: string | null
  readonly neutral: string | null
  readonly earth: string | null
  readonly since: string
}

export const conductorColours: readonly ColourRow[] = []
