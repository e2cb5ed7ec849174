import type { Sourced } from './sourced.js'

/** A coaxial low-voltage plug. */
export interface DcPlugRow extends Sourced {
  readonly name: string
  readonly aliases: readonly string[]
  /** null where no standard names the size */
  readonly standard: string | null
  readonly outerMm: number
  /** bore of the plug: the jack's pin goes in here */
  readonly innerMm: number
  /** the plug's own pin, where it has one */
  readonly centrePinMm: number | null
  /** nominal voltages [V] of its class; null where the size has no class */
  readonly voltageMinV: number | null
  readonly voltageMaxV: number | null
  /** usual contact rating [A] */
  readonly contactA: number | null
  readonly notes: readonly string[]
}

export const dcPlugRows: readonly DcPlugRow[] = []
