import type { ShelfDevice, ShelfSupply } from '../../bench/shelf/shelfItem.js'
import type { Kept } from '../../store/store.js'
import { stampJson } from './stamp.js'

/** A supply of the shelf in JSON. */
export const supplyRecord = (kept: Kept<ShelfSupply>) => ({ ...stampJson(kept), ...kept.body })

/** A machine of the shelf in JSON. */
export const deviceRecord = (kept: Kept<ShelfDevice>) => ({ ...stampJson(kept), ...kept.body })
