import { z } from 'zod'
import { arrangement } from './arrangement.js'
import { converter } from './converter.js'
import { cord } from './cord.js'
import { machine } from './machine.js'
import { place } from './place.js'
import { readings } from './readings.js'
import { supply } from './supply.js'

/** Every fact of a check, by the names they have in JSON. */
export const check = { arrangement, site: place, supply, device: machine, cord, converter, readings }

/** What a check is as JSON: facts that are not known are absent or null, never 0. */
export const checkSchema = z.strictObject({
  arrangement: arrangement.schema,
  site: place.schema,
  supply: supply.schema,
  device: machine.schema,
  cord: cord.schema,
  converter: converter.schema,
  readings: readings.schema,
})

export type CheckRequest = z.output<typeof checkSchema>
export type Arrangement = NonNullable<CheckRequest['arrangement']>
export type Readings = CheckRequest['readings']
export type Site = CheckRequest['site']
export type Supply = CheckRequest['supply']
export type Device = CheckRequest['device']
export type Cord = NonNullable<CheckRequest['cord']>
export type Converter = NonNullable<CheckRequest['converter']>
export type Output = NonNullable<Supply['outputs']>[number]
export type DeviceInput = NonNullable<Device['inputs']>[number]
export type Pin = NonNullable<Supply['pins']>[number]
export type DcPlug = NonNullable<Supply['plug']>
export type Lead = NonNullable<Supply['lead']>
export type Measured = NonNullable<Supply['measured']>
