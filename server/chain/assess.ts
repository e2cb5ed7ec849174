import { readPlate } from '../plate/readPlate.js'
import { assessPrepared, verdictOf } from './assessPrepared.js'
import type { CheckResponse } from './finding.js'
import { prepareDevice } from './prepareDevice.js'
import { prepareSite } from './prepareSite.js'
import { prepareSupply } from './prepareSupply.js'
import type { CheckRequest } from './request.js'

/**
 * Judges a whole check: reads both plates, resolves the site, runs every topic that applies. Never throws for a request of
 * the right shape.
 */
export function assess(request: CheckRequest): CheckResponse {
  const site = prepareSite(request.site)
  const supply = prepareSupply(request.supply, readPlate)
  const device = prepareDevice(request.device, readPlate)
  const findings = assessPrepared(site, supply, device, request.cord, request.converter)
  return { verdict: verdictOf(findings), findings, readings: { supply: supply.reading, device: device.reading } }
}
