import { readPlate } from '../../plate/readPlate.js'
import { prepareDevice } from './prepareDevice.js'
import { prepareSite } from './prepareSite.js'
import { prepareSupply } from './prepareSupply.js'
import type { CheckRequest } from './request.js'
import type { PreparedDevice, PreparedSite, PreparedSupply } from './situation.js'

/** A check made ready to judge, plan and print: its facts, both plates read, its place resolved, and what contradicts. */
export interface Case {
  request: CheckRequest
  site: PreparedSite
  supply: PreparedSupply
  device: PreparedDevice
}

/** Reads both plates and resolves the place. Done once for a request, and handed to all that works on it. */
export const prepareCase = (request: CheckRequest): Case => ({
  request,
  site: prepareSite(request.site),
  supply: prepareSupply(request.supply, readPlate, request.readings),
  device: prepareDevice(request.device, readPlate, request.readings),
})
