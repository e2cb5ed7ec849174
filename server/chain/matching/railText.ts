import { type Phrase, say } from '../../words/phrase.js'
import { volts } from '../../words/quantity.js'
import type { Rail } from '../case/situation.js'
import { ends } from './matchRails.js'

/** "AC" or "DC", as every text here writes it. */
export const kindText = (kind: 'ac' | 'dc'): string => kind.toUpperCase()

/** "12 V DC", "−12 V DC", "9 V AC", "5 V to 11 V (AC or DC not stated)". */
export function railText(rail: Rail): Phrase {
  const [low, high] = ends(rail)
  const kind = rail.kind === null ? '(AC or DC not stated)' : kindText(rail.kind)
  return low === high ? say`${volts(low)} ${kind}` : say`${volts(low)} to ${volts(high)} ${kind}`
}
