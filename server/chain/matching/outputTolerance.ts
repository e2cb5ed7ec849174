import { commonPractice, type Source } from '../../tables/source.js'
import { outputToleranceRegulated, outputToleranceWidest } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import type { DeviceRail, PreparedDevice } from '../case/situation.js'

const ownTolerance = commonPractice('The machine’s own tolerance', 'as its maker states it, or as entered')

export interface Tolerance {
  share: number
  says: Phrase
  source: Source
}

/** The machine's own; else 5 % where it needs a regulated supply or does not say; else the widest. */
export function toleranceOf({ tolerance }: DeviceRail, { regulatedNeeded }: PreparedDevice): Tolerance {
  if (tolerance !== null) return { share: tolerance, says: say`the machine’s own`, source: ownTolerance }
  if (regulatedNeeded === false)
    return {
      share: outputToleranceWidest.value,
      says: say`it needs no regulated supply`,
      source: outputToleranceWidest.source,
    }
  return {
    share: outputToleranceRegulated.value,
    says: regulatedNeeded ? say`it needs a regulated supply` : say`it states none`,
    source: outputToleranceRegulated.source,
  }
}
