import { z } from 'zod'
import { meterCategories, transformerKinds } from '../../bench/atHand/atHand.js'
import { place } from '../../facts/place.js'
import { lampAtHandWatts } from '../../plan/firstPower/lamps.js'

/** Bounds of what can be at hand, the same for the forms, for JSON and for a plan. */
export const atHandBounds = {
  lampV: { min: 6, max: 500 },
  lampW: lampAtHandWatts,
  ohm: { min: 0.01, max: 1e7 },
  resistorW: { min: 0.05, max: 10_000 },
  benchV: { min: 1, max: 1000 },
  benchA: { min: 0.001, max: 1000 },
  outputs: { min: 1, max: 8 },
  ratedVA: { min: 1, max: 100_000 },
  meterV: { min: 6, max: 1000 },
  testerV: { min: 50, max: 5000 },
  residualA: { min: 0.001, max: 10 },
  count: { min: 1, max: 100 },
  /** of one group */
  rows: 20,
} as const

const within = ({ min, max }: { min: number; max: number }) => z.number().min(min).max(max)
const count = z.int().min(atHandBounds.count.min).max(atHandBounds.count.max)
const some = <Item extends z.ZodType>(item: Item) => z.array(item).max(atHandBounds.rows).default([])
const { country, socket } = place.parts

/** One kind of filament lamp. */
export const lampAtHandSchema = z.strictObject({
  ratedV: within(atHandBounds.lampV),
  ratedW: within(atHandBounds.lampW),
  count,
})

/** All of what is at hand; what is left out is not there, or not known. */
export const atHandSchema = z.strictObject({
  country: country.schema.transform((code) => code ?? null),
  socket: socket.schema.transform((letter) => letter ?? null),
  lamps: some(lampAtHandSchema),
  resistors: some(z.strictObject({ ohm: within(atHandBounds.ohm), ratedW: within(atHandBounds.resistorW), count })),
  benchSupply: z
    .strictObject({
      voltageV: within(atHandBounds.benchV),
      currentA: within(atHandBounds.benchA),
      outputs: z.int().min(atHandBounds.outputs.min).max(atHandBounds.outputs.max),
    })
    .nullable()
    .default(null),
  transformers: some(z.strictObject({ kind: z.enum(transformerKinds), ratedVA: within(atHandBounds.ratedVA) })),
  meters: some(z.strictObject({ category: z.enum(meterCategories), ratedV: within(atHandBounds.meterV) })),
  insulationTesterV: within(atHandBounds.testerV).nullable().default(null),
  residualCurrentA: within(atHandBounds.residualA).nullable().default(null),
})
