import { overlapping } from './faults.js'
import { fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'
import { figure, rows, table } from './table.js'

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
// biome-ignore format: a row a line
export const regulationRows = rows<RegulationRow>()(['fromVA', 'toVA', 'low', 'high', 'doubt', 'sources'], [
  [1, 3, 0.195, 0.5, typicalOnly, [encapsulated, adaptor300]],
  [5, 7, 0.2, 0.31, typicalOnly, [encapsulated, adaptor666, ptc7]],
  [10, 12, 0.15, 0.3, typicalOnly, [encapsulated, seller]],
  [15, 25, 0.15, 0.3, typicalOnly, [encapsulated, toroids, seller]],
  [30, 30, 0.12, 0.18, typicalOnly, [encapsulated, toroids]],
  [50, 50, 0.1, 0.13, typicalOnly, [encapsulated, toroids]],
  [80, 80, 0.09, 0.12, typicalOnly, [encapsulated, toroids]],
  [120, 120, 0.08, 0.11, typicalOnly, [encapsulated, toroids]],
  [160, 225, 0.07, 0.09, typicalOnly, [encapsulated, toroids]],
  [300, 300, 0.06, 0.07, typicalOnly, [encapsulated, toroids]],
  [500, 500, 0.04, 0.05, typicalOnly, [encapsulated, toroids]],
])

// biome-ignore format: a row a line
export const allowedRiseRows = rows<AllowedRiseRow>()(['toVA', 'rise', 'riseInherentlyProof', 'sources'], [
  [10, 1, 1, [iec61558, bremer]],
  [25, 0.5, 1, [iec61558]],
  [63, 0.2, 1, [iec61558]],
  [250, 0.15, 0.5, [iec61558, bremer]],
  [630, 0.1, 0.5, [iec61558]],
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

export const regulationTable = table<RegulationRow>({
  name: 'transformer-regulation',
  title: 'Off-load rise of small transformers',
  intro:
    'How far an unloaded winding stands above its rated voltage, as a share of the rated voltage, by the size of the transformer.',
  rows: regulationRows,
  id: ({ fromVA, toVA }) => [fromVA, 'to', toVA, 'va'],
  columns: [
    {
      key: 'fromVA',
      title: 'Size',
      of: ({ fromVA, toVA }) => figure(fromVA, 'VA', fromVA === toVA ? {} : { to: toVA }),
      above: 0,
      rises: true,
    },
    { key: 'toVA', rises: true },
    { key: 'low', title: 'Rise from', each: '%', above: 0 },
    { key: 'high', title: 'Rise to', each: '%', to: 1 },
  ],
  rules: [
    { fault: 'has its sizes upside down', broken: ({ fromVA, toVA }) => !(fromVA <= toVA) },
    { fault: 'has its range upside down', broken: ({ low, high }) => !(low < high) },
  ],
  whole: (rows) => overlapping(rows.map(({ fromVA, toVA }) => [fromVA, toVA])),
})

export const allowedRiseTable = table<AllowedRiseRow>({
  name: 'transformer-rise-limits',
  title: 'Largest off-load rise allowed',
  intro: 'By the rated output of the transformer; rows reach from above the row before.',
  rows: allowedRiseRows,
  id: ({ toVA }) => ['to', toVA, 'va'],
  columns: [
    { key: 'toVA', title: 'Up to', unit: 'VA', above: 0, rises: true },
    { key: 'rise', title: 'Rise', each: '%', above: 0 },
    { key: 'riseInherentlyProof', title: 'Rise, inherently short-circuit-proof', each: '%', to: 1 },
  ],
  rules: [
    {
      fault: 'allows less where it is inherently proof',
      broken: ({ rise, riseInherentlyProof }) => !(rise <= riseInherentlyProof),
    },
  ],
})
