import { frozen } from './frozen.js'
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

const typicalOnly = 'Typical figures from memory: an estimate.'

const seller = published('mpja.com, power transformers', '20 to 30 % from no load to full load under 30 VA')
const ptc7 = published(
  'PTC7 toroidal transformer, data sheet',
  '7 VA: open-circuit volts 28 to 31 % above the rated volts',
)
const adaptor300 = published(
  'OpenEnergyMonitor, second measurement report on a.c. adaptors',
  '9 V 300 mA (2.7 VA): 9.37 V at rated load, 11.20 V open',
)
const adaptor666 = published(
  'OpenEnergyMonitor, measurement report on a.c. adaptors (2013)',
  '9 V 666 mA (6 VA): 9.09 V at rated load, 11.36 V open',
)
const encapsulated = fromMemory("Makers' catalogues of encapsulated and EI transformers", 'typical regulation by size')
const toroids = fromMemory("Makers' catalogues of toroidal transformers", 'typical regulation by size')
const bremer = published(
  'Bremer Transformatoren, questions and answers, "Leerlauf-Ausgangsspannung"',
  '15 % from 63 to 250 VA; very small types may reach twice the rated volts',
)
const iec61558 = fromMemory('IEC 61558-2-6', 'largest off-load rise by rated output')

/** Typical ranges from memory, widened by what was measured or printed. */
export const regulationRows: readonly RegulationRow[] = frozen([
  { fromVA: 1, toVA: 3, low: 0.195, high: 0.5, doubt: typicalOnly, sources: [encapsulated, adaptor300] },
  { fromVA: 5, toVA: 7, low: 0.2, high: 0.31, doubt: typicalOnly, sources: [encapsulated, adaptor666, ptc7] },
  { fromVA: 10, toVA: 12, low: 0.15, high: 0.3, doubt: typicalOnly, sources: [encapsulated, seller] },
  { fromVA: 15, toVA: 25, low: 0.15, high: 0.3, doubt: typicalOnly, sources: [encapsulated, toroids, seller] },
  { fromVA: 30, toVA: 30, low: 0.12, high: 0.18, doubt: typicalOnly, sources: [encapsulated, toroids] },
  { fromVA: 50, toVA: 50, low: 0.1, high: 0.13, doubt: typicalOnly, sources: [encapsulated, toroids] },
  { fromVA: 80, toVA: 80, low: 0.09, high: 0.12, doubt: typicalOnly, sources: [encapsulated, toroids] },
  { fromVA: 120, toVA: 120, low: 0.08, high: 0.11, doubt: typicalOnly, sources: [encapsulated, toroids] },
  { fromVA: 160, toVA: 225, low: 0.07, high: 0.09, doubt: typicalOnly, sources: [encapsulated, toroids] },
  { fromVA: 300, toVA: 300, low: 0.06, high: 0.07, doubt: typicalOnly, sources: [encapsulated, toroids] },
  { fromVA: 500, toVA: 500, low: 0.04, high: 0.05, doubt: typicalOnly, sources: [encapsulated, toroids] },
])

export const allowedRiseRows: readonly AllowedRiseRow[] = frozen([
  { toVA: 10, rise: 1, riseInherentlyProof: 1, sources: [iec61558, bremer] },
  { toVA: 25, rise: 0.5, riseInherentlyProof: 1, sources: [iec61558] },
  { toVA: 63, rise: 0.2, riseInherentlyProof: 1, sources: [iec61558] },
  { toVA: 250, rise: 0.15, riseInherentlyProof: 0.5, sources: [iec61558, bremer] },
  { toVA: 630, rise: 0.1, riseInherentlyProof: 0.5, sources: [iec61558] },
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
  const rise = allowedRiseRows.find((row) => ratedVA <= row.toVA)
  const larger = regulationRows.findIndex((row) => row.toVA >= ratedVA)
  const row = regulationRows[larger]
  const smaller = regulationRows[larger - 1]
  if (!row || !rise) return undefined
  // rows rise in size and do not overlap
  const lies = row.fromVA <= ratedVA
  if (!lies && !smaller) return undefined
  const rows = lies || !smaller ? [row] : [smaller, row]
  return {
    low: Math.min(...rows.map(({ low }) => low)),
    high: Math.max(...rows.map(({ high }) => high)),
    allowedRise: rise.rise,
    allowedRiseInherentlyProof: rise.riseInherentlyProof,
    sources: [...new Set([...rows, rise].flatMap(({ sources }) => sources))],
  }
}
