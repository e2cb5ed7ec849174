import { commonPractice, type Source } from './source.js'
import { figure, rows, table } from './table.js'

/** Mains frequencies of the regions that use a nominal voltage. */
export interface HomeFrequencies {
  readonly fromV: number
  readonly toV: number
  readonly frequenciesHz: readonly number[]
  readonly regions: string
  readonly source: Source
}

export const homeFrequencySource: Source = commonPractice(
  'Home regions of a plate voltage',
  'a plate without a frequency was made for the mains of where it was sold; a few 220 V countries have 60 Hz and a few 110 V ones 50 Hz',
)

// biome-ignore format: a row a line
export const homeFrequencyRows = rows<HomeFrequencies>({ source: homeFrequencySource })(['fromV', 'toV', 'frequenciesHz', 'regions'], [
  [95, 105, [50, 60], 'Japan, 50 Hz in the east and 60 Hz in the west'],
  [105, 130, [60], 'the Americas and the other 110 V to 127 V countries'],
  [195, 210, [50, 60], 'Japan, 50 Hz in the east and 60 Hz in the west'],
  [210, 255, [50], 'most 220 V to 240 V countries'],
])

/** The row of a plate's voltage [V]; undefined where no region uses it. */
export const homeFrequenciesOf = (voltageV: number): HomeFrequencies | undefined =>
  homeFrequencyRows.find(({ fromV, toV }) => voltageV >= fromV && voltageV <= toV)

export const homeFrequenciesTable = table<HomeFrequencies>({
  name: 'home-frequencies',
  title: 'Home regions of a plate voltage',
  intro: 'What frequency a plate was made for where it prints a voltage and no frequency.',
  rows: homeFrequencyRows,
  id: ({ fromV, toV }) => [fromV, 'to', toV, 'v'],
  columns: [
    {
      key: 'fromV',
      title: 'Plate voltage',
      of: ({ fromV, toV }) => figure(fromV, 'V', { to: toV }),
      above: 0,
      rises: true,
    },
    { key: 'toV', rises: true },
    { key: 'frequenciesHz', title: 'Frequencies', each: 'Hz', between: ' or ', oneOf: [50, 60], filled: true },
    { key: 'regions', title: 'Regions' },
  ],
  rules: [{ fault: 'has its voltages upside down', broken: ({ fromV, toV }) => !(fromV < toV) }],
})
