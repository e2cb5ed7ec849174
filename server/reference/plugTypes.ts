import type { Sourced } from './sourced.js'

export interface PlugType extends Sourced {
  /** as the standard writes it: "CEE 7/16" */
  readonly name: string
  /** IEC letters the plug is filed under */
  readonly letters: readonly string[]
  readonly ratedV: number
  readonly ratedA: number
  readonly earthed: boolean
  /** line and neutral cannot be swapped; null where sources differ */
  readonly polarised: boolean | null
  /** may be fitted by hand; null where not known */
  readonly rewirable: boolean | null
  readonly fused: boolean
  readonly notes: readonly string[]
  /** other ways it is written */
  readonly aliases: readonly string[]
}

export const plugTypes: readonly PlugType[] = []
