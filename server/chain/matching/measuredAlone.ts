import { atMost } from '../../physics/tolerance.js'
import { outputToleranceRegulated, outputToleranceWidest } from '../../tables/thresholds.js'
import { say } from '../../words/phrase.js'
import { percent, volts } from '../../words/quantity.js'
import { underPower } from '../action.js'
import type { PairSituation, Rail } from '../case/situation.js'
import { caution, type Judgement, stop } from '../judgement.js'
import { measuredThere, ratingPlate } from '../words.js'
import { ends } from './matchRails.js'
import { type MeasuredAs, measuredOf, strayReading } from './measuredOutput.js'
import { railText } from './railText.js'
import { implausible, isUnregulated, regulatedOf } from './unregulatedOutput.js'

/**
 * What was read of a supply against its own plate, where no machine is there to hold it against.
 *
 *   δ = |V_read − V_plate| / V_plate, from the nearest end of a printed range
 *
 * A regulated output keeps to its plate; an unregulated one, and one of which nobody knows, lies between its plate and what it may
 * reach with nothing connected.
 */
export function judgeReadingsAlone(situation: PairSituation): Judgement[] {
  const { supply } = situation
  const [rail, ...others] = supply.rails
  if (!rail || others.length > 0) return strayReading(situation)
  const measured = measuredOf(situation, rail)
  const steady =
    rail.kind !== 'ac' &&
    !isUnregulated(situation, rail) &&
    (regulatedOf(supply, rail) === true || supply.technology === 'switch-mode')
  return steady ? measured.flatMap((one) => offPlate(rail, one)) : implausible(situation, rail, measured)
}

function offPlate(rail: Rail, { value, what }: MeasuredAs): Judgement[] {
  const readV = Math.abs(value.voltageV)
  const sizes = ends(rail).map(Math.abs)
  const [low, high] = [Math.min(...sizes), Math.max(...sizes)]
  const nearestV = Math.min(Math.max(readV, low), high)
  const off = Math.abs(readV - nearestV) / nearestV
  if (atMost(off, outputToleranceRegulated.value)) return []
  const far = !atMost(off, outputToleranceWidest.value)
  return [
    (far ? stop : caution)(() => ({
      title: say`${volts(readV)} measured ${what} is ${percent(off)} off the regulated ${railText(rail)} of its plate`,
      why: say`A regulated output that leaves its plate’s voltage is faulty, is set otherwise, or has another unit’s plate.`,
      working: [say`|${volts(readV)} − ${volts(nearestV)}| / ${volts(nearestV)} = ${percent(off)}`],
      action: [
        ...(far ? [say`Connect no machine to it before the cause is found.`] : []),
        underPower(
          say`Measure it again with nothing connected and with a load that draws a tenth of its current.`,
          'mains',
        ),
      ],
      sources: [measuredThere, ratingPlate, (far ? outputToleranceWidest : outputToleranceRegulated).source],
    })),
  ]
}
