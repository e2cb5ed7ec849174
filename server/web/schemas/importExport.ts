import { z } from 'zod'
import { partStates, tickAnswers } from '../../bench/jobs/job.js'
import { mostExamined } from '../../bench/jobs/mergedJob.js'
import { linkOrder } from '../../chain/chainLinks.js'
import { outcomes } from '../../chain/finding.js'
import { topicNames } from '../../chain/index.js'
import { checkSchema } from '../../facts/check.js'
import { atHandSchema } from './atHand.js'
import { foundSchema, readingSchema, seenKey } from './examine.js'
import { planSchema } from './jobs.js'
import { line, nameSchema, versionSchema, words } from './record.js'
import { shelfDeviceSchema, shelfSupplySchema } from './shelf.js'

/** What an exported file says it is; a file that says something else is refused. */
export const fileFormat = 'lampline records'
export const fileVersion = 1

/** Milliseconds since 1970, up to the year 9999. */
const time = z.int().min(0).max(253_402_300_799_999)

const idSchema = z.string().regex(/^[\w-]{16,64}$/, { error: 'must be 16 to 64 letters, figures, _ and -' })

const stamp = { id: idSchema, version: versionSchema, createdAt: time, updatedAt: time }

/** Checked against the schema but kept exactly as it was sent, so that what goes out again is the same to the byte. */
const asSent = <Schema extends z.ZodType>(schema: Schema) =>
  z.unknown().transform((sent, context): z.output<Schema> => {
    const parsed = schema.safeParse(sent, { reportInput: true })
    if (!parsed.success)
      for (const issue of parsed.error.issues) context.addIssue({ ...issue, code: 'custom', message: issue.message })
    return sent as z.output<Schema>
  })

const text = z.string().max(20_000)

const findingSchema = z.looseObject({
  topic: z.enum(topicNames),
  outcome: z.enum(outcomes),
  title: text,
  why: text,
  working: z.array(text).max(500),
  action: text.nullable(),
  sources: z
    .array(z.looseObject({ title: text, detail: text, kind: z.enum(['published', 'common practice', 'from memory']) }))
    .max(200),
})

const verdicts = ['do-not-connect', 'find-out-first', 'take-care', 'no-conflict-found'] as const

const shortFinding = z.strictObject({ outcome: z.enum(outcomes), title: text })

const assessmentSchema = asSent(
  z.looseObject({
    verdict: z.enum(verdicts),
    findings: z.array(findingSchema).max(1000),
    readings: z.looseObject({ supply: z.unknown(), device: z.unknown() }),
    dataVersion: z.string().max(100),
    judgedAt: time,
  }),
)

const finite = z.number().min(-1e12).max(1e12)
const limitText = words(2000).nullable()

/** Of a reading and of a step that was done, in the order in which they are kept. */
const step = { id: idSchema, key: line(120).min(1) }
const found = {
  at: time,
  typedAt: time.optional(),
  finding: asSent(findingSchema),
  withdrawn: z.strictObject({ at: time, why: words(2000).min(1) }).optional(),
}

const jobBody = {
  name: nameSchema,
  check: checkSchema,
  plan: asSent(planSchema.nullable()),
  limits: z
    .array(
      z.strictObject({
        key: line(120).min(1),
        text: words(2000),
        unit: line(20).nullable(),
        low: finite.nullable(),
        high: finite.nullable(),
        stopIf: limitText,
        strict: z.literal(true).optional(),
        notAbove: line(120).optional(),
        power: z.enum(['none', 'low-voltage', 'mains']).optional(),
        link: z.enum(linkOrder).optional(),
        sent: z.literal(true).optional(),
      }),
    )
    .max(4000),
  assessment: assessmentSchema,
  earlier: z.array(assessmentSchema).max(50),
  readings: z
    .array(
      z.strictObject({
        ...step,
        value: finite.nullable(),
        unit: line(20).min(1),
        ...found,
      }),
    )
    .max(2000),
  observations: z.strictObject({
    lamps: limitText,
    display: limitText,
    sounds: limitText,
    smells: limitText,
    moved: limitText,
    drawnA: z.number().min(0).max(1000).nullable(),
    works: z.enum(['yes', 'partly', 'no']).nullable(),
    note: words(4000).nullable(),
  }),
  parts: z
    .array(
      z.strictObject({
        id: idSchema,
        version: versionSchema,
        name: nameSchema,
        state: z.enum(partStates),
        note: words(4000).nullable(),
        since: time,
        expected: z.iso.date().optional(),
      }),
    )
    .max(2000),
  log: z.array(z.strictObject({ id: idSchema, at: time, text: words(10_000).min(1) })).max(2000),
  changes: z
    .array(
      z.strictObject({
        id: idSchema,
        at: time,
        facts: z
          .array(z.strictObject({ fact: line(60).min(1), before: text, after: text }))
          .min(1)
          .max(500),
        verdict: z.strictObject({ before: z.enum(verdicts), after: z.enum(verdicts) }),
        turned: z
          .array(
            z.strictObject({
              topic: z.enum(topicNames),
              before: shortFinding.nullable(),
              after: shortFinding.nullable(),
            }),
          )
          .max(100),
        undoes: idSchema.optional(),
      }),
    )
    .max(2000)
    .optional(),
  held: z
    .array(
      z.strictObject({
        of: line(64).min(1),
        key: line(120).nullable(),
        where: words(2000),
        at: time,
        title: words(4000),
        action: words(4000),
      }),
    )
    .max(2000)
    .optional(),
  ticks: z
    .array(z.strictObject({ ...step, as: z.enum(tickAnswers), words: words(2000).nullable(), ...found }))
    .max(2000)
    .optional(),
  examined: z
    .strictObject({
      seen: z.array(seenKey).max(20),
      found: z.array(foundSchema.extend({ at: time })).max(400),
      readings: z.array(readingSchema).max(mostExamined),
    })
    .optional(),
  causes: z
    .array(z.strictObject({ id: idSchema, at: time, of: line(64).min(1), text: words(2000).min(1) }))
    .max(2000)
    .optional(),
}

const most = 100_000

/** Everything that is kept, photos aside, as one file; `atHand` only where something was entered. */
export const recordsFileSchema = z.strictObject({
  format: z.literal(fileFormat),
  formatVersion: z.literal(fileVersion),
  supplies: z.array(z.strictObject({ ...stamp, ...shelfSupplySchema.shape })).max(most),
  devices: z.array(z.strictObject({ ...stamp, ...shelfDeviceSchema.shape })).max(most),
  jobs: z.array(z.strictObject({ ...stamp, ...jobBody })).max(most),
  atHand: z
    .strictObject({ version: versionSchema, createdAt: time, updatedAt: time, has: asSent(atHandSchema) })
    .optional(),
})

export type RecordsFile = z.output<typeof recordsFileSchema>

/** `?apply=1` does it; without it only what would change is answered. */
export const applyQuerySchema = z.object({
  apply: z
    .enum(['0', '1'], { error: 'apply must be 1 to do it, or 0 to see what would change' })
    .optional()
    .transform((value) => value === '1'),
})
