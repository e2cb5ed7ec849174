import { z } from 'zod'
import { partStates, tickAnswers } from '../../bench/jobs/job.js'
import { standingStates } from '../../bench/jobs/standing.js'
import { linkOrder } from '../../chain/chainLinks.js'
import { checkSchema } from '../../facts/check.js'
import { firstPowerSchema } from './bench.js'
import { line, listQuerySchema, nameSchema, noteSchema, versionSchema, words } from './record.js'

const finite = z.number().min(-1e12).max(1e12)

/** What of a plan's step readings are held against; the rest of a step is kept as it was sent. */
const stepSchema = z.looseObject({
  key: line(120).min(1),
  text: words(2000).nullish(),
  unit: line(20).nullish(),
  low: finite.nullish(),
  high: finite.nullish(),
  stopIf: words(2000).nullish(),
  strict: z.literal(true).nullish(),
  notAbove: line(120).nullish(),
  power: z.enum(['none', 'low-voltage', 'mains']).nullish(),
  link: z.enum(linkOrder).nullish(),
})

/** A plan as the first-power calls answer it, or a part of one. */
export const planSchema = z.looseObject({
  stages: z
    .array(
      z.looseObject({
        leftOut: words(2000).nullish(),
        steps: z.array(stepSchema).max(200).nullish(),
      }),
    )
    .max(20)
    .nullish(),
})

export const observationsSchema = z.strictObject({
  lamps: words(2000).nullish(),
  display: words(2000).nullish(),
  sounds: words(2000).nullish(),
  smells: words(2000).nullish(),
  moved: words(2000).nullish(),
  drawnA: z.number().min(0).max(1000).nullish(),
  works: z.enum(['yes', 'partly', 'no']).nullish(),
  note: noteSchema,
})

export const newJobSchema = z.strictObject({ name: nameSchema, check: checkSchema, plan: planSchema.nullish() })

export const jobPatchSchema = z.strictObject({
  version: versionSchema,
  name: nameSchema.optional(),
  check: checkSchema.optional(),
  plan: planSchema.nullish(),
  /** what the plan is worked out with besides the check; what is not there stays */
  given: firstPowerSchema.omit({ check: true }).optional(),
  observations: observationsSchema.optional(),
})

/** When it was typed, where that was before it is sent. */
const typedAt = z.iso
  .datetime({ offset: true })
  .transform((text) => Date.parse(text))
  .optional()

export const readingSchema = z.strictObject({
  key: line(120).min(1),
  /** null: over the range of the meter, "OL" */
  value: finite.nullable(),
  unit: line(20).min(1),
  typedAt,
})

export const tickSchema = z.strictObject({
  key: line(120).min(1),
  as: z.enum(tickAnswers),
  words: words(2000).nullish(),
  typedAt,
})

export const causeSchema = z.strictObject({ of: line(120).min(1), text: words(2000).min(1) })

export const withdrawSchema = z.strictObject({ why: words(2000).min(1) })

const partStateSchema = z.enum(partStates)

/** The day something is expected, "2026-01-05". */
const expected = z.iso.date({ error: 'expected must be a day such as 2026-01-05' }).nullish()

export const partSchema = z.strictObject({ name: nameSchema, state: partStateSchema, note: noteSchema, expected })

export const partPatchSchema = z.strictObject({
  version: versionSchema.optional(),
  name: nameSchema.optional(),
  state: partStateSchema.optional(),
  note: noteSchema,
  expected,
})

export const logSchema = z.strictObject({ text: words(10_000).min(1) })

export const rejudgeSchema = z.strictObject({ version: versionSchema.optional() })

/** `?state=` beside what every list takes. */
export const jobsQuerySchema = listQuerySchema.extend({ state: z.enum(standingStates).optional() })
