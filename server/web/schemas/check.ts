import { z } from 'zod'
import { leastTaken } from '../../facts/leastTaken.js'
import { place } from '../../facts/place.js'
import { supply } from '../../facts/supply.js'

/** What `POST /api/converter` takes. */
export const chooseConverterSchema = z.strictObject({ supply: supply.schema, site: place.schema })

const { areaMm2, awg } = supply.parts.lead.parts
const { voltageV } = supply.parts.outputs.parts

/** What `POST /api/lead-drop` takes. */
export const leadDropSchema = z
  .strictObject({
    lengthM: z.number().min(leastTaken.lengthM).max(1000),
    areaMm2: areaMm2.schema,
    awg: awg.schema,
    currentA: z.number().min(leastTaken.currentA).max(1000),
    voltageV: voltageV.schema,
  })
  .refine((size) => (size.areaMm2 == null) !== (size.awg == null), {
    path: ['areaMm2'],
    error: 'areaMm2 or awg must be given, and not both: they say the size of one conductor',
  })
