import { mainsSideOf } from '../../../chain/case/case.js'
import { prepareSite } from '../../../chain/case/prepareSite.js'
import type { CheckRequest } from '../../../chain/case/request.js'
import type { CheckResponse } from '../../../chain/finding.js'
import { fuseRequestOf } from '../../../chain/fuse.js'
import { reachOf } from '../../../chain/reach.js'
import { figures } from '../../../facts/address.js'
import { fuseQuery } from '../fuse/form.js'

/** Where a check leads on to, with its values filled in. */
export interface Onward {
  fuse: string
  firstPower: string
  checklist: string
  /** where something was seen, or went wrong */
  examine: string
  /** the check's own query string, to be kept with a job */
  check: string
}

const typed = (value: number | null | undefined): string => (value == null ? '' : figures(value))

function fuseAddress(request: CheckRequest, { readings }: CheckResponse): string {
  const [mains, other] = prepareSite(request.site).systems
  const reach = mains && !other ? reachOf(mains, request.converter ?? null) : null
  // without a voltage the review cannot begin, and an empty form is friendlier than a fault
  if (reach === null || reach.voltageV === null) return '/fuse'
  const asked = fuseRequestOf({ supply: mainsSideOf(request, (_text, side) => readings[side]!), reach })
  if (!asked) return '/fuse'
  const { marking, prescribed, position, circuit, formerVoltageV } = asked
  return `/fuse?${fuseQuery({
    marking: marking ?? '',
    prescribed: prescribed ?? '',
    position,
    volts: figures(circuit.voltageV),
    former: typed(formerVoltageV),
    amps: typed(circuit.currentA),
  })}`
}

export const onward = (request: CheckRequest, response: CheckResponse, address: string): Onward => ({
  fuse: fuseAddress(request, response),
  firstPower: `/first-power?${address}`,
  checklist: `/checklist?${address}`,
  examine: `/examine?${address}`,
  check: address,
})
