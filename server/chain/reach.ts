import type { Converter } from './case/request.js'
import type { Mains, Reach } from './case/situation.js'

/**
 * What reaches the supply: the mains, or a converter's output with the mains' percentage band and the mains' frequency,
 * which no transformer changes.
 */
export function reachOf(mains: Mains, converter: Converter | null): Reach {
  if (!converter) return { ...mains, through: 'mains' }
  const { voltageV, minV, maxV, frequencyHz, sources } = mains
  const outputV = converter.outputV
  const known = outputV !== null && voltageV !== null && minV !== null && maxV !== null
  return {
    voltageV: outputV,
    frequencyHz,
    minV: known ? (outputV * minV) / voltageV : null,
    maxV: known ? (outputV * maxV) / voltageV : null,
    sources,
    through: 'converter',
  }
}
