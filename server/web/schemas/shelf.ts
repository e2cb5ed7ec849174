import { z } from 'zod'
import { checkSchema } from '../../facts/check.js'
import { machine } from '../../facts/machine.js'
import { supply } from '../../facts/supply.js'
import { nameSchema, noteSchema, placeSchema, versionSchema } from './record.js'

export const shelfSupplySchema = z.strictObject({
  name: nameSchema,
  place: placeSchema,
  note: noteSchema,
  supply: supply.schema,
})

export const shelfDeviceSchema = z.strictObject({
  name: nameSchema,
  place: placeSchema,
  note: noteSchema,
  device: machine.schema,
})

export const shelfSupplyPutSchema = shelfSupplySchema.extend({ version: versionSchema })

export const shelfDevicePutSchema = shelfDeviceSchema.extend({ version: versionSchema })

/** `?country=` of the matches; without it mains topics answer unknown. */
export const countryQuerySchema = z
  .string()
  .regex(/^[A-Za-z]{2}$/, { error: 'country must be two letters as in ISO 3166-1, such as DE' })
  .transform((code) => code.toUpperCase())
  .optional()

/** What of a check says which machine is to be fed, and where. */
export const offeredSchema = checkSchema.pick({ site: true, device: true, readings: true })
