import { assessPrepared, verdictOf } from './assessPrepared.js'
import { type Case, prepareCase } from './case/case.js'
import type { CheckRequest } from './case/request.js'
import type { CheckResponse } from './finding.js'

/** Judges a case by every topic that applies. Never throws for a request of the right shape. */
export function assessCase({ arrangement, request, site, supply, device }: Case): CheckResponse {
  const findings = assessPrepared(site, supply, device, request.cord, request.converter, arrangement)
  return { verdict: verdictOf(findings), findings, readings: { supply: supply.reading, device: device.reading } }
}

/** The same of a check that nothing else is done with. */
export const assess = (request: CheckRequest): CheckResponse => assessCase(prepareCase(request))
