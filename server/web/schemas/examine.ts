import { z } from 'zod'
import { mendedKey, type ReadingSeen } from '../../examine/examineRequest.js'
import { proofStates } from '../../examine/proof.js'
import { measuredOf } from '../../examine/readingSeen.js'
import { checkSchema } from '../../facts/check.js'
import { causes } from '../../tables/causes.js'
import { whatWasSeen } from '../../tables/whatWasSeen.js'
import { lampsInSeries } from './seriesLamp.js'

const seenKeys = new Set(whatWasSeen.map(({ key }) => key))
const foundKeys = new Set(causes.flatMap(({ key }) => [key, mendedKey(key)]))

export const seenKey = z.string().refine((key) => seenKeys.has(key), {
  error: 'must be the key of an observation: GET /api/observations lists them',
})

/** As in what was read: "mV", "kΩ". */
const unit = z.string().trim().min(1).max(20)

export const readingSchema = z
  .strictObject({
    key: z.string().trim().min(1).max(100),
    value: z.number().min(-1e12).max(1e12).nullable().describe('null: over the range of the meter, “OL”'),
    unit,
    state: z.enum(proofStates).nullish(),
  })
  .refine((sent: ReadingSeen) => measuredOf(sent) !== null, {
    path: ['key'],
    error:
      'key and unit must say what was read: lamp, output-1, ripple-1, case in V, output-1 or input in Ω, current in A, ripple in Hz, or the key of a step of the plan',
  })

export const foundSchema = z.strictObject({
  cause: z.string().refine((key) => foundKeys.has(key), {
    error: 'must be the key of a cause, or that key with “.mended” behind it',
  }),
  result: z.enum(['confirmed', 'excluded']),
  value: z.number().min(-1e12).max(1e12).nullish(),
  unit: unit.nullish(),
  by: z.string().trim().max(100).nullish(),
})

/** What `POST /api/examine` takes. */
export const examineSchema = z.strictObject({
  check: checkSchema,
  observations: z.array(seenKey).max(20),
  readings: z.array(readingSchema).max(100).default([]),
  found: z
    .array(
      foundSchema.refine(({ value, unit }) => (value == null) === (unit == null), {
        path: ['unit'],
        error: 'value and unit go together: what was read, and in which unit',
      }),
    )
    .max(400)
    .default([]),
  lamps: lampsInSeries.nullish(),
})
