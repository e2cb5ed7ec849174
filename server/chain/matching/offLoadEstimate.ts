import { ratedWindingV, transformerSizeVA } from '../../physics/adaptorTransformer.js'
import { rectifiedCrest, windingVoltage } from '../../physics/offLoad.js'
import { diodeDrop } from '../../tables/rectifiers.js'
import { published, type Source } from '../../tables/source.js'
import { regulationFor } from '../../tables/transformerRegulation.js'
import { type Phrase, say } from '../../words/phrase.js'
import { decimal, percent, voltAmperes, volts } from '../../words/quantity.js'
import type { PairSituation, Rail } from '../case/situation.js'
import { measuredThere } from '../words.js'
import { ratedA } from './matchRails.js'

const windingRule = published(
  'Petra Toroid, "Methods of determining secondary current"',
  'bridge: V ac = 0.8 (V dc + 2), VA = 1.4 (W dc + 2 I)',
)

export interface Estimate {
  lowV: number
  highV: number
  /** put into words when it is asked for */
  readonly working: Phrase[]
  sources: Source[]
}

/** What an unregulated output reads with nothing connected: measured, else estimated from its size. */
export function offLoadEstimate(situation: PairSituation, rail: Rail): Estimate | null {
  const { supply } = situation
  const { offLoadV } = supply.measured
  if (offLoadV != null && supply.rails.length === 1)
    return {
      lowV: Math.abs(offLoadV),
      highV: Math.abs(offLoadV),
      working: [say`measured off load: ${volts(Math.abs(offLoadV))}`],
      sources: [measuredThere],
    }
  return ratingEstimate(situation, rail)
}

/** The same from its size alone. */
export function ratingEstimate({ mainsRatio }: Pick<PairSituation, 'mainsRatio'>, rail: Rail): Estimate | null {
  const currentA = ratedA(rail)
  const ratedV = Math.abs(rail.voltageV)
  if (currentA === null || !(currentA > 0) || !(ratedV > 0)) return null
  const dc = rail.kind !== 'ac'
  const sizeVA = dc ? transformerSizeVA(ratedV, currentA) : ratedV * currentA
  const regulation = regulationFor(sizeVA)
  if (!regulation) return null
  const ratio = mainsRatio ?? 1
  const windingV = dc ? ratedWindingV(ratedV) : ratedV
  const offLoad = (share: number): number => {
    const acV = windingVoltage(windingV, share, 0, ratio)
    return dc ? rectifiedCrest(acV, 2, diodeDrop.offLoadV) : acV
  }
  const [lowV, highV] = [offLoad(regulation.low), offLoad(regulation.high)]
  return {
    lowV,
    highV,
    get working() {
      const range = say`${percent(regulation.low)} to ${percent(regulation.high)}`
      return [
        dc
          ? say`transformer inside, estimated: ${1.4} × (${volts(ratedV)} + 2\u00a0V) × I = ${voltAmperes(sizeVA, 3)}, winding ${0.8} × (${volts(ratedV)} + 2\u00a0V) = ${volts(windingV, 3)}`
          : say`size: ${volts(ratedV)} × I = ${voltAmperes(sizeVA, 3)}`,
        say`typical regulation at ${voltAmperes(sizeVA, 3)}: ${range}`,
        say`mains over plate: ${decimal(ratio, 3)}${mainsRatio === null ? say` (not known, taken as 1)` : say``}`,
        dc
          ? say`off load: ${volts(windingV, 3)} × (1 + ${range}) × ${decimal(ratio, 3)} × √2 − 2 × ${volts(diodeDrop.offLoadV)} = ${volts(lowV, 3)} to ${volts(highV, 3)}`
          : say`off load: ${volts(windingV, 3)} × (1 + ${range}) × ${decimal(ratio, 3)} = ${volts(lowV, 3)} to ${volts(highV, 3)}`,
      ]
    },
    sources: [...regulation.sources, ...(dc ? [windingRule, diodeDrop.source] : [])],
  }
}
