import { z } from 'zod'
import { mainsOf } from '../../reference/mains.js'
import { socketLetters } from '../../reference/sockets.js'
import { checkLeast } from '../checkLimits.js'

/** The longest plate text that is read. */
const longestLabel = 10_000

/** A voltage with its sign; 0 V is not a rail. */
const volts = z
  .number()
  .min(-1000)
  .max(1000)
  .refine((value) => Math.abs(value) >= checkLeast.voltageV, {
    error: (issue) =>
      `A voltage must not be 0 V, and ${checkLeast.voltageV} V or more in size, plus or minus; leave out what is not known; received ${String(issue.input)}`,
  })
const mainsVolts = z.number().min(checkLeast.voltageV).max(1000)
const amperes = z.number().min(checkLeast.currentA).max(1000).nullish()
const power = z.number().min(checkLeast.power).max(100_000).nullish()
const hertz = z.number().min(checkLeast.frequencyHz).max(1000)
const areaMm2 = z.number().min(checkLeast.areaMm2).max(100).nullish()
const lengthM = z.number().min(checkLeast.lengthM)
const diameterMm = z.number().min(checkLeast.diameterMm).max(30).nullish()
const awg = z.number().min(-3).max(40).nullish()

const controlCharacter = /[\u0000-\u001f\u007f-\u009f]/
const controlExceptLines = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/
/** One line of text. */
const text = z
  .string()
  .max(200)
  .refine((value) => !controlCharacter.test(value), {
    error: 'A name or marking must be one line without control characters',
  })
  .nullish()
/** A plate's text: lines and tabs, no other control characters. */
const label = z
  .string()
  .max(longestLabel)
  .refine((value) => !controlExceptLines.test(value), {
    error: 'A plate’s text must not hold control characters other than line ends and tabs',
  })
  .nullish()
const polarity = z.enum(['centre-positive', 'centre-negative']).nullish()
const kind = z.enum(['dc', 'ac']).nullish()

/** A kind that is not given is not known. */
const railKind = kind.transform((value) => value ?? null)

export const siteSchema = z
  .strictObject({
    country: z
      .string()
      .refine((value) => /^[A-Za-z]{2}$/.test(value) && mainsOf(value) !== undefined, {
        error: (issue) =>
          `site.country must be two letters of ISO 3166-1 that are listed, such as DE or JP (GET /api/mains lists all); received ${JSON.stringify(String(issue.input).slice(0, 40))}`,
      })
      .nullish(),
    voltageV: mainsVolts.nullish(),
    frequencyHz: hertz.nullish(),
    socket: z
      .string()
      .transform((value) => value.trim().toUpperCase())
      .refine((value) => (socketLetters as readonly string[]).includes(value), {
        error: (issue) =>
          `site.socket must be a letter from A to O; received ${JSON.stringify(String(issue.input).slice(0, 40))}`,
      })
      .nullish(),
  })
  .meta({ id: 'Site' })

const plugSchema = z.strictObject({
  outerMm: diameterMm,
  innerMm: diameterMm,
  polarity,
  name: text,
})

const outputSchema = z.strictObject({ kind: railKind, voltageV: volts, currentA: amperes, powerW: power })

export const supplySchema = z
  .strictObject({
    label,
    input: z
      .strictObject({
        voltages: z
          .array(
            z.strictObject({ min: mainsVolts, max: mainsVolts }).refine(({ min, max }) => min <= max, {
              path: ['max'],
              error: (issue) => {
                const { min, max } = issue.input as { min: number; max: number }
                return `max must be min or more; received min ${min} and max ${max}`
              },
            }),
          )
          .min(1)
          .max(8)
          .nullish(),
        frequenciesHz: z.array(hertz).min(1).max(8).nullish(),
        currentA: amperes,
        powerVA: power,
        powerW: power,
        selectorV: mainsVolts.nullish(),
      })
      .nullish(),
    technology: z.enum(['switch-mode', 'transformer', 'unknown']).nullish(),
    regulated: z.boolean().nullish(),
    protectionClass: z.enum(['I', 'II', 'III']).nullish(),
    inlet: text,
    outputs: z.array(outputSchema).min(1).max(20).nullish(),
    outputsTotalW: power,
    plug: plugSchema.nullish(),
    lead: z.strictObject({ lengthM: lengthM.max(100), areaMm2, awg }).nullish(),
    fuse: text,
    measured: z.strictObject({ offLoadV: volts.nullish(), loadedV: volts.nullish(), polarity }).nullish(),
  })
  .meta({ id: 'Supply' })

const deviceInputSchema = z.strictObject({
  kind: railKind,
  voltageV: volts,
  currentA: amperes,
  currentIs: z.enum(['plate', 'measured']).nullish(),
  tolerancePercent: z.number().min(0).max(50).nullish(),
})

export const deviceSchema = z
  .strictObject({
    label,
    inputs: z.array(deviceInputSchema).min(1).max(20).nullish(),
    regulatedNeeded: z.boolean().nullish(),
    jack: plugSchema.nullish(),
  })
  .meta({ id: 'Device' })

export const cordSchema = z
  .strictObject({
    plug: text,
    connector: text,
    ratedV: mainsVolts.nullish(),
    ratedA: amperes,
    earthed: z.boolean().nullish(),
    areaMm2,
    awg,
    plugFitted: z.enum(['moulded', 'rewired']).nullish(),
    adapter: z
      .strictObject({
        earthed: z
          .boolean()
          .nullish()
          .transform((value) => value ?? null),
      })
      .nullish(),
  })
  .meta({ id: 'Cord' })

export const converterSchema = z
  .strictObject({
    kind: z
      .enum(['autotransformer', 'isolating', 'electronic'])
      .nullish()
      .transform((value) => value ?? null),
    outputV: mainsVolts.nullish().transform((value) => value ?? null),
    ratedVA: z
      .number()
      .min(checkLeast.power)
      .max(100_000)
      .nullish()
      .transform((value) => value ?? null),
  })
  .meta({ id: 'Converter' })

/** What `POST /api/converter` takes. */
export const chooseConverterSchema = z.strictObject({ supply: supplySchema, site: siteSchema })

/** What `POST /api/lead-drop` takes. */
export const leadDropSchema = z
  .strictObject({
    lengthM: lengthM.max(1000),
    areaMm2,
    awg,
    currentA: z.number().min(checkLeast.currentA).max(1000),
    voltageV: volts,
  })
  .refine(({ areaMm2, awg }) => (areaMm2 == null) !== (awg == null), {
    path: ['areaMm2'],
    error: 'areaMm2 or awg must be given, and not both: they say the size of one conductor',
  })

/** What `POST /api/check` takes, and a job keeps. */
export const checkSchema = z.strictObject({
  site: siteSchema,
  supply: supplySchema,
  device: deviceSchema,
  cord: cordSchema.nullish(),
  converter: converterSchema.nullish(),
})
