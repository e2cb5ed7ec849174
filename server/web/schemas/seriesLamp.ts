import { z } from 'zod'
import { lampAtHandWatts, lampWattRange } from '../../plan/firstPower/lamps.js'
import { plannedMains } from '../../tables/firstPower.js'

const mains = z.strictObject({
  voltageV: z.number().min(plannedMains.minV).max(plannedMains.maxV),
  frequencyHz: z.number().min(plannedMains.minHz).max(plannedMains.maxHz),
})

/** Where a steady state does not depend on the frequency it may be left out. */
const mainsOnceSteady = mains.extend({ frequencyHz: mains.shape.frequencyHz.nullish() })

const lampRating = {
  ratedV: z.number().min(6).max(500),
  ratedW: z.number().min(lampWattRange.min).max(lampWattRange.max),
}

const lamps = z.array(z.strictObject(lampRating)).min(1).max(6)

/** Lamps one behind the other. */
export const lampsInSeries = lamps

const arrangement = z
  .enum(['series', 'parallel'])
  .nullish()
  .transform((value) => value ?? ('series' as const))

const powerW = z.number().gt(0).max(5000)
const minimumV = z.number().min(0).max(500).nullish()

export const seriesLampSchema = z.strictObject({
  mains: mainsOnceSteady,
  lamps,
  arrangement,
  load: z.discriminatedUnion(
    'kind',
    [
      z.strictObject({ kind: z.literal('resistance'), resistanceOhm: z.number().min(0.001).max(1e9) }),
      z.strictObject({ kind: z.literal('constant-power'), powerW, minimumV }),
      z.strictObject({ kind: z.literal('short') }),
      z.strictObject({ kind: z.literal('open') }),
    ],
    {
      error: (issue) =>
        issue.code === 'invalid_union'
          ? 'load.kind must be one of "resistance", "constant-power", "short", "open"'
          : undefined,
    },
  ),
})

export const lampReadingSchema = z
  .strictObject({ mains: mainsOnceSteady, lamps, arrangement, lampV: z.number().min(0).max(500) })
  .refine((request) => request.lampV <= request.mains.voltageV, {
    path: ['lampV'],
    error: (issue) => {
      const { lampV, mains: site } = issue.input as { lampV: number; mains: { voltageV: number } }
      return `lampV must be no more than the mains voltage of ${site.voltageV} V; received ${lampV}`
    },
  })

export const lampChoiceSchema = z.strictObject({
  mains: mainsOnceSteady,
  load: z
    .strictObject({
      idleW: z.number().min(0).max(5000),
      ratedW: z.number().gt(0).max(5000),
      minimumV,
    })
    .refine((load) => load.idleW <= load.ratedW, {
      path: ['idleW'],
      error: 'load.idleW must be no more than load.ratedW',
    }),
  lampsOnHand: z
    .array(
      z.strictObject({
        ...lampRating,
        ratedW: z.number().min(lampAtHandWatts.min).max(lampAtHandWatts.max),
        count: z.int().min(1).max(100),
      }),
    )
    .max(50)
    .nullish(),
})

const switchAt = z
  .enum(['crest', 'zero'])
  .nullish()
  .transform((value) => value ?? ('crest' as const))

const bulkF = z.number().min(1e-6).max(0.1)
const loadOhm = z.number().min(1).max(1e9).nullish()

/** Longest run that is worked out [s], and in mains cycles; a filament settles within a few seconds. */
const longestRunS = 20
const mostCycles = 1200

const durationS = z.number().min(0.001).max(longestRunS)

interface Run {
  mains: { frequencyHz: number }
  durationS?: number | null
}

const fewCycles = {
  path: ['durationS'],
  error: (issue: { input?: unknown }) => {
    const { mains: site, durationS: asked } = issue.input as Run
    return `durationS must be no more than ${mostCycles} mains cycles, ${mostCycles / site.frequencyHz} s at ${site.frequencyHz} Hz; received ${asked}`
  },
}

const isShort = (run: Run): boolean => (run.durationS ?? 0) * run.mains.frequencyHz <= mostCycles

export const lampTransientSchema = z
  .strictObject({
    mains,
    lamps,
    arrangement,
    load: z
      .strictObject({
        bulkF,
        loadOhm,
        loadW: z.number().min(0).max(5000).nullish(),
        startV: z.number().min(5).max(800).nullish(),
        shortAfterS: z.number().min(0).max(longestRunS).nullish(),
      })
      .refine((load) => load.loadOhm == null || load.loadW == null, {
        path: ['loadW'],
        error: 'load.loadW and load.loadOhm must not both be given: the load is one or the other',
      })
      .refine((load) => load.startV == null || load.loadW != null, {
        path: ['startV'],
        error: 'load.startV belongs to a constant-power load: give load.loadW as well, or leave load.startV out',
      }),
    switchAt,
    durationS,
  })
  .refine(isShort, fewCycles)

export const inrushSchema = z
  .strictObject({
    mains,
    seriesOhm: z.number().min(0.01).max(10000),
    bulkF,
    loadOhm,
    switchAt,
    durationS: durationS.nullish(),
  })
  .refine(isShort, fewCycles)
