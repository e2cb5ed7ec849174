import { atMost } from '../../physics/tolerance.js'
import { largestRise } from '../../tables/dummyLoad.js'
import { outputToleranceWidest } from '../../tables/thresholds.js'
import { listed, say } from '../../words/phrase.js'
import { volts } from '../../words/quantity.js'
import { underPower } from '../action.js'
import type { PairSituation, Rail } from '../case/situation.js'
import { type Judgement, unknown } from '../judgement.js'
import { measuredThere, ratingPlate } from '../words.js'
import { ends } from './matchRails.js'
import { railText } from './railText.js'

export interface MeasuredAs {
  value: Rail
  what: 'off load' | 'loaded'
}

/** What was measured, as rails with the plate's kind and sign. Only where there is one output is it known which was measured. */
export function measuredOf({ supply }: PairSituation, rail: Rail): MeasuredAs[] {
  if (supply.rails.length !== 1) return []
  const { offLoadV, loadedV } = supply.measured
  if (offLoadV == null && loadedV == null) return []
  const as = (voltageV: number): Rail => ({
    ...rail,
    // a meter connected the other way round reads minus: polarity is judged in its own topic
    voltageV: Math.sign(rail.voltageV || 1) * Math.abs(voltageV),
    voltageMaxV: null,
  })
  return [
    ...(loadedV == null ? [] : [{ value: as(loadedV), what: 'loaded' as const }]),
    ...(offLoadV == null ? [] : [{ value: as(offLoadV), what: 'off load' as const }]),
  ]
}

/**
 * A reading of a supply with several outputs that is near none of them: which one was measured is not known, and whichever
 * it was, its plate is wrong or it is faulty.
 */
export function strayReading({ supply }: PairSituation): Judgement[] {
  if (supply.rails.length < 2) return []
  const { offLoadV, loadedV } = supply.measured
  const riseOf = (rail: Rail): number => {
    const regulated = rail.regulated ?? supply.regulated
    const steady = regulated === true || (regulated === null && supply.technology === 'switch-mode')
    return steady ? outputToleranceWidest.value : largestRise.rise
  }
  const stray = [offLoadV, loadedV].filter(
    (readV): readV is number =>
      readV != null &&
      !supply.rails.some((rail) => {
        const [low, high] = ends(rail)
          .map(Math.abs)
          .toSorted((a, b) => a - b) as [number, number]
        return (
          atMost(low * (1 - outputToleranceWidest.value), Math.abs(readV)) &&
          atMost(Math.abs(readV), high * (1 + riseOf(rail)))
        )
      }),
  )
  if (stray.length === 0) return []
  return [
    unknown(() => ({
      title: say`${listed(stray.map((readV) => volts(readV)))} was measured, which is none of the supply’s outputs: ${listed(supply.rails.map(railText))}`,
      why: say`An output that does not give what its plate says is faulty, or the plate is another unit’s.`,
      working: [],
      action: underPower(
        say`Measure each output with nothing connected, write down which pin it was, and enter what each gives as the outputs.`,
        'mains',
      ),
      sources: [measuredThere, ratingPlate],
    })),
  ]
}
