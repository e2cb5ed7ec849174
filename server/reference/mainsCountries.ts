import type { Sourced } from './sourced.js'

export interface CountryRow extends Sourced {
  /** ISO 3166-1 alpha-2 */
  readonly country: string
  readonly name: string
  /** nominal voltage [V] and frequency [Hz] of each system met there */
  readonly systems: readonly (readonly [voltageV: number, frequencyHz: number])[]
  /** IEC letters */
  readonly sockets: readonly string[]
  readonly notes: readonly string[]
}

export const countryRows: readonly CountryRow[] = []
