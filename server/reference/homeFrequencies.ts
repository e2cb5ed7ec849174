import { frozen } from './frozen.js'
import { commonPractice, type Source } from './source.js'

/** Mains frequencies of the regions that use a nominal voltage. */
export interface HomeFrequencies {
  readonly fromV: number
  readonly toV: number
  readonly frequenciesHz: readonly number[]
  readonly regions: string
}

export const homeFrequencyRows: readonly HomeFrequencies[] = frozen([
  { fromV: 95, toV: 105, frequenciesHz: [50, 60], regions: 'Japan, 50 Hz in the east and 60 Hz in the west' },
  { fromV: 105, toV: 130, frequenciesHz: [60], regions: 'the Americas and the other 110 V to 127 V countries' },
  { fromV: 195, toV: 210, frequenciesHz: [50, 60], regions: 'Japan, 50 Hz in the east and 60 Hz in the west' },
  { fromV: 210, toV: 255, frequenciesHz: [50], regions: 'most 220 V to 240 V countries' },
])

export const homeFrequencySource: Source = commonPractice(
  'Home regions of a plate voltage',
  'a plate without a frequency was made for the mains of where it was sold; a few 220 V countries have 60 Hz and a few 110 V ones 50 Hz',
)

/** The row of a plate's voltage [V]; undefined where no region uses it. */
export const homeFrequenciesOf = (voltageV: number): HomeFrequencies | undefined =>
  homeFrequencyRows.find(({ fromV, toV }) => voltageV >= fromV && voltageV <= toV)
