import { z } from 'zod'
import { checkSchema } from '../../facts/check.js'
import { schemesNamed } from '../../plan/bench/insulation.js'
import { rectifiers, regulationKnown } from '../../plan/bench/offLoad.js'
import { safetySchemes } from '../../tables/safetyTestLimits.js'
import { atHandBounds, lampAtHandSchema } from './atHand.js'

const railV = z
  .number()
  .min(-1000)
  .max(1000)
  .refine((value) => Math.abs(value) >= 0.5, {
    error: (issue) => `voltageV must be at least 0.5 V in size, plus or minus; received ${String(issue.input)}`,
  })
const currentA = z.number().min(1e-6).max(1000)
const capacitanceF = z.number().min(1e-12).max(1)
const voltageV = z.number().min(0.1).max(10_000)
const frequencyHz = z.number().min(10).max(1000)
const mainsV = z.number().min(50).max(500)
const resistanceOhm = z.number().min(0.001).max(1e10)

const leadSchema = z
  .strictObject({
    lengthM: z.number().gt(0).max(100),
    areaMm2: z.number().min(0.01).max(100).nullish(),
    awg: z.number().min(0).max(40).nullish(),
  })
  .refine((lead) => lead.areaMm2 != null || lead.awg != null, {
    path: ['areaMm2'],
    error: 'lead.areaMm2 or lead.awg must be given: without the conductor’s size the loss cannot be worked out',
  })

export const benchSupplySchema = z.strictObject({
  rails: z
    .array(
      z.strictObject({
        kind: z
          .literal('dc', {
            error:
              'kind must be "dc": a bench supply gives no AC, and an AC input is not fed with DC unless its circuit is known',
          })
          .nullish(),
        voltageV: railV,
        currentA: currentA.nullish().transform((value) => value ?? null),
        tolerancePercent: z.number().min(0).max(50).nullish(),
      }),
    )
    .min(1)
    .max(8),
  lead: leadSchema.nullish(),
  measuredOhm: z.number().min(0).max(1e12).nullish(),
  input: z.enum(['constant-power', 'plain', 'unknown']).nullish(),
})

export const dummyLoadSchema = z.strictObject({
  voltageV: railV,
  currentA,
  tolerancePercent: z.number().min(0).max(50).nullish(),
  series: z.enum(['E12', 'E24']).nullish(),
  regulationPercent: z.number().min(0).max(100).nullish(),
})

export const dischargeSchema = z.strictObject({
  capacitanceF,
  voltageV,
  resistanceOhm: resistanceOhm.nullish(),
  limitV: z.number().min(0.1).max(1000).nullish(),
  withinS: z.number().min(0.001).max(86_400).nullish(),
  mainsV: mainsV.nullish(),
})

export const reformSchema = z
  .strictObject({
    capacitanceF: z.number().min(1e-9).max(1),
    ratedV: z.number().min(1).max(1000),
    yearsUnused: z.number().min(0).max(150),
    workingV: z.number().min(1).max(1000).nullish(),
  })
  .refine((request) => request.workingV == null || request.workingV <= request.ratedV, {
    path: ['workingV'],
    error: (issue) => {
      const { workingV, ratedV } = issue.input as { workingV: number; ratedV: number }
      return `workingV must be no more than ratedV of ${ratedV} V: a capacitor is never reformed above its rating; received ${workingV}`
    },
  })

export const offLoadSchema = z
  .strictObject({
    acV: z.number().min(1).max(1000),
    ratedVA: z.number().min(0.1).max(10_000),
    regulationPercent: z.number().min(0.1).max(200).nullish(),
    rectifier: z.enum(rectifiers),
    capacitanceF: z.number().min(1e-6).max(1).nullish(),
    currentA: z.number().min(0).max(1000).nullish(),
    frequencyHz: frequencyHz.nullish(),
    mainsV: mainsV.nullish(),
    ratedMainsV: mainsV.nullish(),
  })
  .refine((request) => request.regulationPercent != null || regulationKnown(request.ratedVA), {
    path: ['regulationPercent'],
    error: (issue) =>
      `regulationPercent must be given for ${(issue.input as { ratedVA: number }).ratedVA} VA: typical figures are known from 1 VA to 500 VA only`,
  })
  .refine((request) => (request.mainsV == null) === (request.ratedMainsV == null), {
    path: ['ratedMainsV'],
    error: 'mainsV and ratedMainsV belong together: give both, or neither where the mains is what the plate says',
  })

export const leakageSchema = z.strictObject({
  capacitanceF: z.number().min(1e-13).max(1e-3),
  voltageV: z.number().min(1).max(1000),
  frequencyHz,
  limitA: z.number().min(1e-7).max(1).nullish(),
})

export const insulationSchema = z.strictObject({
  scheme: z
    .string()
    .max(100)
    .transform((name, context) => {
      const found = schemesNamed(name)
      if (found.length > 0) return found
      context.addIssue({
        code: 'custom',
        message: `scheme must be one of ${safetySchemes.map(({ title }) => `"${title}"`).join(', ')}, or its key (${safetySchemes.map(({ key }) => key).join(', ')}); received ${JSON.stringify(name)}`,
      })
      return z.NEVER
    }),
  protectionClass: z.enum(['I', 'II', 'III']),
  earthOhm: z.number().min(0).max(1e9).nullish(),
  cordLengthM: z.number().min(0).max(1000).nullish(),
  cordAreaMm2: z.number().min(0.5).max(100).nullish(),
  insulationMOhm: z.number().min(0).max(1e9).nullish(),
  touchmA: z.number().min(0).max(10_000).nullish(),
})

/** A check, and what else is known for a first power-up. */
export const firstPowerSchema = z.strictObject({
  check: checkSchema,
  lampsOnHand: z.array(lampAtHandSchema).max(atHandBounds.rows).nullish(),
  idleW: z.number().min(0.05).max(5000).nullish(),
  bulkF: z.number().min(1e-7).max(0.1).nullish(),
  bulkRatedV: z.number().min(1).max(1000).nullish(),
  yearsUnused: z.number().min(0).max(150).nullish(),
  measuredOhm: z.number().min(0).max(1e12).nullish(),
  machineInput: z.enum(['constant-power', 'plain', 'unknown']).nullish(),
  gateResults: z
    .array(
      z.strictObject({
        key: z.string().min(1).max(120),
        value: z.number().min(-1e12).max(1e12).nullish(),
        passed: z.boolean().nullish(),
        testedBy: z.string().max(200).nullish(),
      }),
    )
    .max(60)
    .nullish(),
})
