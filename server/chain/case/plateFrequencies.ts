import { homeFrequenciesOf } from '../../tables/homeFrequencies.js'
import { listed, type Phrase, say } from '../../words/phrase.js'
import { hertz } from '../../words/quantity.js'
import type { VoltageWindow } from './request.js'

/** What the plate lists, else what the home regions of its voltage have, with the sentence that says so. */
export function plateFrequencies(
  printedHz: readonly number[],
  window: VoltageWindow | null,
): { frequenciesHz: readonly number[]; assumed: Phrase | null } | null {
  if (printedHz.length > 0) return { frequenciesHz: printedHz, assumed: null }
  if (!window) return null
  const homes = [homeFrequenciesOf(window.min), homeFrequenciesOf(window.max)].filter((home) => home !== undefined)
  if (homes.length === 0) return null
  const frequenciesHz = [...new Set(homes.flatMap((home) => home.frequenciesHz))].toSorted((a, b) => a - b)
  const regions = [...new Set(homes.map((home) => home.regions))]
  return {
    frequenciesHz,
    assumed: say`no frequency on the plate: taken as ${listed(frequenciesHz.map((hz) => hertz(hz)))}, as in ${listed(regions)}`,
  }
}
