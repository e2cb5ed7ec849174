import type { Source } from './source.js'
import type { Sourced } from './sourced.js'

/** Regulation here: (no-load volts − full-load volts) / full-load volts. */
export interface RegulationRow extends Sourced {
  readonly fromVA: number
  readonly toVA: number
  readonly low: number
  readonly high: number
}

export interface AllowedRiseRow extends Sourced {
  /** rows reach from above the row before up to and including this */
  readonly toVA: number
  /** largest off-load rise allowed, as a fraction of the rated volts: not inherently short-circuit-proof */
  readonly rise: number
  /** the same for an inherently short-circuit-proof transformer */
  readonly riseInherentlyProof: number
}

export const regulationRows: readonly RegulationRow[] = []

export const allowedRiseRows: readonly AllowedRiseRow[] = []

export interface Regulation {
  /** fraction of the full-load volts */
  readonly low: number
  readonly high: number
  readonly allowedRise: number
  readonly allowedRiseInherentlyProof: number
  readonly sources: readonly Source[]
}

/**
 * How far a small mains transformer rises above its rated volts with no load: the widest of what is
 * attested for its size. Between two listed sizes, the lower figure of the larger and the upper figure of the smaller.
 *
 * @param ratedVA  rated output [VA]
 * @returns undefined outside 1 to 500 VA
 * @source the rows above
 */
export function regulationFor(ratedVA: number): Regulation | undefined {
  const smaller = regulationRows.filter((row) => row.fromVA <= ratedVA)
  const larger = regulationRows.filter((row) => row.toVA >= ratedVA)
  const rise = allowedRiseRows.find((row) => ratedVA <= row.toVA)
  const containing = smaller.filter((row) => row.toVA >= ratedVA)
  const nearest = [
    smaller.reduce<RegulationRow | undefined>((best, row) => (best && best.toVA >= row.toVA ? best : row), undefined),
    larger.reduce<RegulationRow | undefined>(
      (best, row) => (best && best.fromVA <= row.fromVA ? best : row),
      undefined,
    ),
  ]
  const rows = containing.length > 0 ? containing : nearest.filter((row) => row !== undefined)
  if (smaller.length === 0 || larger.length === 0 || !rise) return undefined
  return {
    low: Math.min(...rows.map((row) => row.low)),
    high: Math.max(...rows.map((row) => row.high)),
    allowedRise: rise.rise,
    allowedRiseInherentlyProof: rise.riseInherentlyProof,
    sources: [...new Set([...rows, rise].flatMap((row) => row.sources))],
  }
}
