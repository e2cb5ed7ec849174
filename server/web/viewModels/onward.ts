import type { CheckResponse } from '../../chain/finding.js'
import type { CheckRequest } from '../../chain/request.js'

/** Where a check leads on to, with its values filled in. */
export interface Onward {
  fuse: string
  firstPower: string
  /** the check's own query string, to be kept with a job */
  check: string
}

export function onward(_request: CheckRequest, _response: CheckResponse, address: string): Onward {
  return { fuse: '/fuse', firstPower: '/first-power', check: address }
}
