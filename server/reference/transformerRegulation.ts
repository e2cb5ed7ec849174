import { fromMemory, published, type Source } from './source.js'
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

const catalogues = [
  fromMemory(
    'Catalogues of encapsulated and laminated transformers',
    'typical regulation by size: an estimate with a range, no maker’s full table was found',
  ),
]
const estimate = 'project estimate: remembered ranges; measured units of 2.7 VA and 6 VA gave 19.5 % and 25 %'

const typical = (fromVA: number, toVA: number, low: number, high: number): RegulationRow =>
  Object.freeze({ fromVA, toVA, low, high, sources: catalogues, doubt: estimate })

/** Small laminated or encapsulated types, rising. */
export const regulationRows: readonly RegulationRow[] = Object.freeze([
  typical(1, 3, 0.25, 0.5),
  typical(5, 6, 0.2, 0.3),
  typical(10, 12, 0.15, 0.25),
  typical(15, 25, 0.15, 0.2),
  typical(30, 30, 0.12, 0.18),
  typical(50, 50, 0.1, 0.13),
  typical(80, 80, 0.09, 0.12),
  typical(120, 120, 0.08, 0.1),
  typical(160, 225, 0.07, 0.09),
  typical(300, 300, 0.06, 0.07),
  typical(500, 500, 0.05, 0.05),
])

const remembered = [fromMemory('IEC 61558-2-6', 'largest rise of the off-load output, by rated VA')]
const seen = [
  published(
    'Transformer maker’s answers on off-load voltage (bremer-trafo.de)',
    '15 % for 63 VA to 250 VA; very small types may reach twice the rated volts',
  ),
]

const allowed = (
  toVA: number,
  rise: number,
  riseInherentlyProof: number,
  sources: readonly Source[] = remembered,
): AllowedRiseRow => Object.freeze({ toVA, rise, riseInherentlyProof, sources })

export const allowedRiseRows: readonly AllowedRiseRow[] = Object.freeze([
  allowed(10, 1, 1),
  allowed(25, 0.5, 1),
  allowed(63, 0.2, 1),
  allowed(250, 0.15, 0.5, seen),
  allowed(630, 0.1, 0.5),
])

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
