import type { Sourced } from './sourced.js'

/** A connector of IEC 60320 and the appliance inlet it is made for. */
export interface InletPair extends Sourced {
  readonly connector: string
  readonly inlet: string
  /** international rating [A] at 250 V */
  readonly ratedA: number
  /** lowest North American rating seen [A]; null where none was found */
  readonly ratedANorthAmerica: number | null
  readonly protectionClass: 'I' | 'II'
  readonly earthed: boolean
  /** highest pin temperature the pair is made for [°C] */
  readonly maxPinC: number
  readonly nicknames: readonly string[]
  readonly usualCord: string | null
  readonly notes: readonly string[]
}

/** A connector that goes, or notably does not go, into the inlet of another pair. */
export interface CrossMating extends Sourced {
  readonly connector: string
  readonly inlet: string
  readonly fits: boolean
  readonly why: string
}

export const inletPairs: readonly InletPair[] = []

export const crossMatings: readonly CrossMating[] = []
