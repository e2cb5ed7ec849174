import { commonPractice, fromMemory, published, type Source } from './source.js'

export interface RegulationRow {
  /** rated VA the row covers */
  readonly fromVA: number
  readonly toVA: number
  /** rise from full load to no load, small laminated or encapsulated types [1] */
  readonly low: number
  readonly high: number
  /** largest off-load rise allowed of a type that is not short-circuit-proof by itself [1] */
  readonly largestRise: number
  readonly source: Source
}

const catalogues = fromMemory(
  'Catalogues of encapsulated and laminated transformers',
  'typical regulation by size: an estimate with a range, no maker’s full table was found; measured units of 2.7 VA and 6 VA gave 19.5 % and 25 %',
)

const row = (fromVA: number, toVA: number, low: number, high: number, largestRise: number): RegulationRow =>
  Object.freeze({ fromVA, toVA, low, high, largestRise, source: catalogues })

/** Typical regulation by rated VA, rising; between rows the envelope of both neighbours holds. */
export const regulationRows: readonly RegulationRow[] = Object.freeze([
  row(1, 3, 0.25, 0.5, 1),
  row(5, 6, 0.2, 0.3, 1),
  row(10, 12, 0.15, 0.25, 0.5),
  row(15, 25, 0.15, 0.2, 0.5),
  row(30, 30, 0.12, 0.18, 0.2),
  row(50, 50, 0.1, 0.13, 0.2),
  row(80, 80, 0.09, 0.12, 0.15),
  row(120, 120, 0.08, 0.1, 0.15),
  row(160, 225, 0.07, 0.09, 0.15),
  row(300, 300, 0.06, 0.07, 0.1),
  row(500, 500, 0.05, 0.05, 0.1),
])

/** Typical regulation for a size; undefined below 1 VA and above 500 VA. */
export function typicalRegulation(ratedVA: number): { low: number; high: number; source: Source } | undefined {
  const below = regulationRows.findLast((row) => row.fromVA <= ratedVA)
  const above = regulationRows.find((row) => row.toVA >= ratedVA)
  if (!below || !above) return undefined
  return { low: Math.min(below.low, above.low), high: Math.max(below.high, above.high), source: catalogues }
}

/** Forward voltage of a silicon rectifier diode [V]. */
export const diodeDrop = Object.freeze({
  offLoadV: 0.7,
  loadedV: 0.9,
  source: commonPractice(
    'Silicon rectifier diodes',
    '0.7 V for the small currents of an unloaded output, 0.9 V to 1.0 V at rated current; at microamperes 0.4 V to 0.5 V',
  ),
})

export const offLoadHigh = published(
  'Transformer maker’s answers on off-load voltage',
  'rated volts are reached only at rated current, so an idle unit reads high; very small types may reach twice the rated volts',
)

export const cheapAdaptors = published(
  'Measurement reports on two plug-in a.c. adaptors, 2013, public repository of an energy-monitor project',
  '9 V types gave 11.20 V and 11.36 V off load on 240 V; the waveform was distorted by core saturation at 253 V',
)

/** Quick rule: loaded average of a bridge with capacitor over the winding's rated volts [1]. */
export const loadedRule = Object.freeze({
  factor: 0.9,
  source: published(
    'Transformer maker’s design guide for rectifier use',
    'capacitor input, bridge: d.c. = 0.90 × a.c.; d.c. current = 0.62 × a.c. current',
  ),
})

export interface WindingCurrent {
  readonly rectifier: 'bridge' | 'centre-tap' | 'half-wave'
  /** rms winding current over d.c. load current [1] */
  readonly factor: number
  readonly source: Source
}

const winding = (rectifier: WindingCurrent['rectifier'], factor: number, source: Source): WindingCurrent =>
  Object.freeze({ rectifier, factor, source })

const toroidNote = published('Toroid maker’s methods of determining secondary current', 'VA = 1.4 (W d.c. + 2 I)')

/** Published factors; they disagree, and the larger one is the more cautious. */
export const windingCurrents: readonly WindingCurrent[] = Object.freeze([
  winding('bridge', 1.61, loadedRule.source),
  winding('bridge', 1.8, toroidNote),
  winding('centre-tap', 1, loadedRule.source),
  winding('centre-tap', 0.8, toroidNote),
  winding('half-wave', 3.6, loadedRule.source),
  winding('half-wave', 2.6, toroidNote),
])

export const rippleSource = published(
  'Textbook ripple of a reservoir capacitor',
  'ΔV = I / (2 f C) full wave; an upper bound, about 0.7 of it is seen on real supplies',
)
