import { z } from 'zod'
import { measuredOf, readingUnits } from '../../examine/readings.js'
import { mendedKey, type ReadingSeen } from '../../examine/request.js'
import { checkSchema } from '../../facts/check.js'
import { causes } from '../../tables/causes.js'
import { whatWasSeen } from '../../tables/whatWasSeen.js'
import { lampsInSeries } from './seriesLamp.js'

const seenKeys = new Set(whatWasSeen.map(({ key }) => key))
const foundKeys = new Set(causes.flatMap(({ key }) => [key, mendedKey(key)]))

const reading = z
  .strictObject({
    key: z.string().trim().min(1).max(100),
    value: z.number().min(-1e12).max(1e12),
    unit: z.enum(readingUnits),
    state: z.enum(['open', 'loaded', 'warm']).nullish(),
  })
  .refine((sent: ReadingSeen) => measuredOf(sent) !== null, {
    path: ['key'],
    error:
      'key and unit must say what was read: lamp, output-1, ripple-1, case in V, output-1 or input in Ω, current in A, ripple in Hz, or the key of a step of the plan',
  })

/** What `POST /api/examine` takes. */
export const examineSchema = z.strictObject({
  check: checkSchema,
  observations: z
    .array(
      z.string().refine((key) => seenKeys.has(key), {
        error: 'must be the key of an observation: GET /api/observations lists them',
      }),
    )
    .max(20),
  readings: z.array(reading).max(100).default([]),
  found: z
    .array(
      z.strictObject({
        cause: z.string().refine((key) => foundKeys.has(key), {
          error: 'must be the key of a cause, or that key with “.mended” behind it',
        }),
        result: z.enum(['confirmed', 'excluded']),
        value: z.number().min(-1e12).max(1e12).nullish(),
        unit: z.enum(readingUnits).nullish(),
      }),
    )
    .max(200)
    .default([]),
  lamps: lampsInSeries.nullish(),
})
