import { z } from 'zod'

/** The longest plate text that is read. */
const longestLabel = 10_000

const volts = z.number().min(-1000).max(1000)
const mainsVolts = z.number().gt(0).max(1000)
const amperes = z.number().gt(0).max(1000).nullish()
const power = z.number().gt(0).max(100_000).nullish()
const hertz = z.number().gt(0).max(1000)
const areaMm2 = z.number().gt(0).max(100).nullish()
const awg = z.number().min(0).max(40).nullish()
const text = z.string().max(200).nullish()
const label = z.string().max(longestLabel).nullish()
const polarity = z.enum(['centre-positive', 'centre-negative']).nullish()
const kind = z.enum(['dc', 'ac']).nullish()

/** A kind that is not given is not known. */
const railKind = kind.transform((value) => value ?? null)

export const siteSchema = z.strictObject({
  country: z
    .string()
    .regex(/^[A-Za-z]{2}$/, { error: 'country must be two letters as in ISO 3166-1, such as DE' })
    .nullish(),
  voltageV: mainsVolts.nullish(),
  frequencyHz: hertz.nullish(),
  socket: z.string().max(10).nullish(),
})

const plugSchema = z.strictObject({
  outerMm: z.number().gt(0).max(30).nullish(),
  innerMm: z.number().gt(0).max(30).nullish(),
  polarity,
  name: text,
})

const outputSchema = z.strictObject({ kind: railKind, voltageV: volts, currentA: amperes, powerW: power })

export const supplySchema = z.strictObject({
  label,
  input: z
    .strictObject({
      voltages: z
        .array(z.strictObject({ min: mainsVolts, max: mainsVolts }))
        .max(8)
        .nullish(),
      frequenciesHz: z.array(hertz).max(8).nullish(),
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
  outputs: z.array(outputSchema).max(20).nullish(),
  plug: plugSchema.nullish(),
  lead: z.strictObject({ lengthM: z.number().gt(0).max(100), areaMm2, awg }).nullish(),
  fuse: text,
  measured: z.strictObject({ offLoadV: volts.nullish(), loadedV: volts.nullish(), polarity }).nullish(),
})

const deviceInputSchema = z.strictObject({
  kind: railKind,
  voltageV: volts,
  currentA: amperes,
  currentIs: z.enum(['plate', 'measured']).nullish(),
  tolerancePercent: z.number().min(0).max(50).nullish(),
})

export const deviceSchema = z.strictObject({
  label,
  inputs: z.array(deviceInputSchema).max(20).nullish(),
  regulatedNeeded: z.boolean().nullish(),
  jack: plugSchema.nullish(),
})

export const cordSchema = z.strictObject({
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

export const converterSchema = z.strictObject({
  kind: z
    .enum(['autotransformer', 'isolating', 'electronic'])
    .nullish()
    .transform((value) => value ?? null),
  outputV: mainsVolts.nullish().transform((value) => value ?? null),
  ratedVA: z
    .number()
    .gt(0)
    .max(100_000)
    .nullish()
    .transform((value) => value ?? null),
})

/** What `POST /api/check` takes, and a job keeps. */
export const checkSchema = z.strictObject({
  site: siteSchema,
  supply: supplySchema,
  device: deviceSchema,
  cord: cordSchema.nullish(),
  converter: converterSchema.nullish(),
})
