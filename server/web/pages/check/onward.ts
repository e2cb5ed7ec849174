import type { CheckRequest } from '../../../chain/case/request.js'
import type { CheckResponse } from '../../../chain/finding.js'
import { figures } from '../../../facts/address.js'
import { mainsOf } from '../../../tables/mains.js'
import { fuseQuery } from '../fuse/form.js'

/** Where a check leads on to, with its values filled in. */
export interface Onward {
  fuse: string
  firstPower: string
  checklist: string
  /** the check's own query string, to be kept with a job */
  check: string
}

/** What reaches the supply: a converter's output, else the voltage given, else the country's where it has but one. */
function suppliedV({ converter, site }: CheckRequest): number | null {
  if (converter) return converter.outputV
  if (site.voltageV != null) return site.voltageV
  const [only, second] = site.country ? (mainsOf(site.country)?.systems ?? []) : []
  return only && !second ? only.voltageV : null
}

/** The single voltage a plate names, where it names but one [V]. */
function plateV(request: CheckRequest, response: CheckResponse): number | null {
  const [only, second] = request.supply.input?.voltages ?? response.readings.supply?.input?.voltages ?? []
  return only && !second && only.min === only.max ? only.min : null
}

function fuseAddress(request: CheckRequest, response: CheckResponse): string {
  const volts = suppliedV(request)
  // without a voltage the review cannot begin, and an empty form is friendlier than a fault
  if (volts === null) return '/fuse'
  const { supply } = response.readings
  const amps = request.supply.input?.currentA ?? supply?.input?.currentA
  const former = plateV(request, response)
  return `/fuse?${fuseQuery({
    marking: request.supply.fuse ?? '',
    prescribed: supply?.fuse ?? '',
    position: 'mains',
    volts: figures(volts),
    former: former !== null && former !== volts ? figures(former) : '',
    amps: amps == null ? '' : figures(amps),
  })}`
}

export const onward = (request: CheckRequest, response: CheckResponse, address: string): Onward => ({
  fuse: fuseAddress(request, response),
  firstPower: `/first-power?${address}`,
  checklist: `/checklist?${address}`,
  check: address,
})
