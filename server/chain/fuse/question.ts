import { readPlate } from '../../plate/readPlate.js'
import { prepareSite } from '../case/prepareSite.js'
import { prepareSupply } from '../case/prepareSupply.js'
import type { CheckRequest } from '../case/request.js'
import { fuseRequestOf } from '../fuse.js'
import { reachOf } from '../reach.js'
import type { FuseRequest } from './fuseRequest.js'

/**
 * The fuse review that a check amounts to, to open it with the check's values filled in.
 * Null where no fuse marking is entered or read, or no voltage is known; of several mains systems the highest voltage is taken.
 */
export function fuseQuestion(request: CheckRequest): FuseRequest | null {
  const supply = prepareSupply(request.supply, readPlate, request.readings)
  if (supply.fuse.fitted === null && supply.fuse.prescribed === null) return null
  const [mains] = prepareSite(request.site).systems.toSorted(
    (one, other) => (other.voltageV ?? 0) - (one.voltageV ?? 0),
  )
  return mains ? fuseRequestOf({ supply, reach: reachOf(mains, request.converter ?? null) }) : null
}
