import type { Sourced } from './sourced.js'

/** A flexible cord of one size. Exactly one of areaMm2 and awg is set. */
export interface CordRow extends Sourced {
  readonly designation: string
  readonly areaMm2: number | null
  readonly awg: number | null
  readonly ratedInsulation: string
  /** current it carries with two loaded conductors [A]; the earth conductor is not counted */
  readonly ratedA: number
  /** the same with three loaded conductors, where stated */
  readonly ratedAThreeLoaded: number | null
  readonly sheath: string
  readonly lengthRule: string | null
  readonly notes: readonly string[]
}

/** The smallest conductor for an appliance of a rated current. */
export interface MinimumAreaRow extends Sourced {
  /** rows reach from above the row before up to and including this [A] */
  readonly toA: number
  readonly areaMm2: number
  /** allowed instead where the cord is no longer than shortM */
  readonly shortAreaMm2: number | null
  readonly shortM: number | null
}

/** The largest BS 1362 fuse-link in the plug of a cord of one size. */
export interface PlugFuseRow extends Sourced {
  readonly areaMm2: number
  readonly largestFuseA: number
  readonly note: string | null
}

export const cordRows: readonly CordRow[] = []

export const minimumAreaRows: readonly MinimumAreaRow[] = []

export const plugFuseRows: readonly PlugFuseRow[] = []
