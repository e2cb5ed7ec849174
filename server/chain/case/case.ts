import { readPlate } from '../../plate/readPlate.js'
import { type Arrangement, arrangementOf } from './arrangement.js'
import { prepareDevice } from './prepareDevice.js'
import { prepareSite } from './prepareSite.js'
import { prepareMainsSide, prepareSupply, type ReadPlate } from './prepareSupply.js'
import type { CheckRequest } from './request.js'
import type { PreparedDevice, PreparedSite, PreparedSupply } from './situation.js'

/** A check made ready to judge, plan and print: its facts, both plates read, its place resolved, and what contradicts. */
export interface Case {
  arrangement: Arrangement
  request: CheckRequest
  site: PreparedSite
  supply: PreparedSupply
  device: PreparedDevice
}

/** Reads both plates and resolves the place. Done once for a request, and handed to all that works on it. */
export const prepareCase = (request: CheckRequest): Case => ({
  arrangement: arrangementOf(request),
  request,
  site: prepareSite(request.site),
  supply: mainsSideOf(request, readPlate),
  device: machineOf(request, readPlate),
})

/** What meets the mains: the supply, or the machine itself where its supply is inside. */
export function mainsSideOf(request: CheckRequest, read: ReadPlate): PreparedSupply {
  switch (arrangementOf(request)) {
    case 'built-in':
      return prepareMainsSide(request.device, read, request.readings, request.supply.isolated)
    case 'machine-only':
      return prepareSupply({}, read)
    case 'plug-in':
      // a block that is stated to be one has the plug on it, whatever its inlet is called
      return prepareSupply({ ...request.supply, inlet: 'plug-in' }, read, request.readings)
    default:
      return prepareSupply(request.supply, read, request.readings)
  }
}

/** The machine; one with its supply inside takes the mains itself, and nothing of low voltage is matched with it. */
export function machineOf(request: CheckRequest, read: ReadPlate): PreparedDevice {
  const arrangement = arrangementOf(request)
  const device = prepareDevice(arrangement === 'supply-only' ? {} : request.device, read, request.readings)
  if (arrangement !== 'built-in') return device
  return { ...device, rails: [], takesMains: true, contradictions: [], proposed: null }
}
