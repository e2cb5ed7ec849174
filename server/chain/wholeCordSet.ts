import { type Phrase, say } from '../words/phrase.js'
import { type Action, buying, byQualified, nearWiring } from './action.js'
import type { MainsSituation } from './case/situation.js'
import { isCaptive } from './protectionClass.js'

/**
 * To have another cord: a whole set is bought; one that is led into the unit is changed by qualified hands, and nothing is bought.
 *
 * @param which  what it has to be, after the words "cord set": "rated 250 V or more"
 */
export function wholeCordSet(situation: MainsSituation, which: Phrase): Action {
  if (cordIsCaptive(situation))
    return nearWiring(
      byQualified(
        say`The cord is led into the unit: do not cut it, nor change its plug yourself. Have one fitted ${which}.`,
      ),
    )
  return buying(nearWiring(say`Use a whole cord set ${which}.`))
}

/** Whether the cord is known to be led into the unit. */
export const cordIsCaptive = ({ supply, cord }: MainsSituation): boolean =>
  isCaptive(supply.inlet) || isCaptive(cord?.connector?.trim() ?? null)
