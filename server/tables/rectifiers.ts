import { frozen } from './frozen.js'
import { commonPractice, published, type Source } from './source.js'
import { table } from './table.js'

/** Forward voltage of a silicon rectifier diode [V]. */
export const diodeDrop = frozen({
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
export const loadedRule = frozen({
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
  frozen({ rectifier, factor, source })

const toroidNote = published('Toroid maker’s methods of determining secondary current', 'VA = 1.4 (W d.c. + 2 I)')

/** Published factors; they disagree, and the larger one is the more cautious. */
export const windingCurrents: readonly WindingCurrent[] = frozen([
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

export const windingTable = table<WindingCurrent>({
  name: 'winding-current',
  title: 'Winding current behind a rectifier',
  intro:
    'Effective winding current over direct load current with a reservoir capacitor. Sources disagree; the larger figure decides.',
  rows: windingCurrents,
  id: ({ rectifier, factor }) => [rectifier, factor],
  columns: [
    { key: 'rectifier', title: 'Rectifier' },
    { key: 'factor', title: 'Factor', unit: '', above: 0 },
  ],
})
