import { volts } from '../physics/quantity.js'
import { ends } from './matchRails.js'
import type { Rail } from './situation.js'

/** "12 V dc", "−12 V dc", "9 V ac", "5 V to 11 V (ac or dc not stated)". */
export function railText(rail: Rail): string {
  const [low, high] = ends(rail)
  const kind = rail.kind ?? '(ac or dc not stated)'
  return low === high ? `${volts(low)} ${kind}` : `${volts(low)} to ${volts(high)} ${kind}`
}
