import { commonPractice, fromMemory, published, type Source } from './source.js'
import { rows, table } from './table.js'
import { frequencyMatch, nominalMatch } from './thresholds.js'

/** A plate's voltage that was made for a mains of another nominal: older names of the same mains. */
export interface PlateNominal {
  readonly plateV: number
  readonly mainsV: number
  /** [Hz]; null for any */
  readonly mainsHz: number | null
  readonly sources: readonly Source[]
}

const utilization = published(
  'ANSI C84.1, nominal system voltage and utilization voltage',
  'equipment for the 120 V system bears the nameplate voltage 115 V',
)
const oldNominal = commonPractice('Nominal mains of North America', '110, 115 and 117 V were its names before 120 V')
const harmonised = fromMemory(
  'IEC 60038, as introduced where 220 V and 240 V were used',
  '230 V took the place of 240 V and what was supplied stayed as it was: units of either plate are used on either mains',
)

// biome-ignore format: a row a line
export const plateNominals = rows<PlateNominal>()(['plateV', 'mainsV', 'mainsHz', 'sources'], [
  [115, 120, 60, [utilization]],
  [117, 120, 60, [oldNominal]],
  [240, 230, null, [harmonised]],
  [230, 240, null, [harmonised]],
])

/** The row by which a plate's window was made for a mains of another nominal; undefined where none says so. */
export const plateNominalFor = (
  window: { min: number; max: number },
  mains: { voltageV: number; frequencyHz: number | null },
): PlateNominal | undefined =>
  plateNominals.find(
    ({ plateV, mainsV, mainsHz }) =>
      window.min <= plateV &&
      plateV <= window.max &&
      Math.abs(mains.voltageV - mainsV) <= nominalMatch.value * mainsV &&
      (mainsHz === null ||
        (mains.frequencyHz !== null && Math.abs(mains.frequencyHz - mainsHz) <= frequencyMatch.value * mainsHz)),
  )

export const plateNominalsTable = table<PlateNominal>({
  name: 'plate-nominals',
  title: 'Plates made for a mains under another name',
  intro: 'Voltages on plates that name, by an older or a neighbouring nominal, the mains they were made for.',
  rows: plateNominals,
  id: ({ plateV, mainsV }) => [plateV, 'on', mainsV],
  columns: [
    { key: 'plateV', title: 'Plate', each: 'V', above: 0 },
    { key: 'mainsV', title: 'Mains', each: 'V', above: 0 },
    { key: 'mainsHz', title: 'Frequency', each: 'Hz', oneOf: [50, 60, null] },
  ],
})
