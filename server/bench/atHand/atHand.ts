import { Missing, StorageFault } from '../../store/errors.js'
import type { Draft, Store } from '../../store/store.js'

/** What stands in the workshop, the same for every job. */
export interface AtHand {
  /** where things are used, ISO 3166-1 alpha-2 */
  country: string | null
  /** letter of the socket in the wall */
  socket: string | null
  lamps: { ratedV: number; ratedW: number; count: number }[]
  resistors: { ohm: number; ratedW: number; count: number }[]
  benchSupply: { voltageV: number; currentA: number; outputs: number } | null
  transformers: { kind: TransformerKind; ratedVA: number }[]
  /** measurement category of IEC 61010-2-033 and the voltage it holds for */
  meters: { category: MeterCategory; ratedV: number }[]
  /** test voltage [V] */
  insulationTesterV: number | null
  /** rated residual current of the device that the bench hangs on [A] */
  residualCurrentA: number | null
}

export const transformerKinds = ['isolating', 'variable', 'step-down', 'step-up'] as const
export type TransformerKind = (typeof transformerKinds)[number]

export const meterCategories = ['CAT II', 'CAT III', 'CAT IV'] as const
export type MeterCategory = (typeof meterCategories)[number]

/** One for the installation. */
export const atHandId = 'at-hand'

export const nothingAtHand: AtHand = {
  country: null,
  socket: null,
  lamps: [],
  resistors: [],
  benchSupply: null,
  transformers: [],
  meters: [],
  insulationTesterV: null,
  residualCurrentA: null,
}

/** What is at hand as the store keeps it. */
export const atHandDraft = (body: AtHand): Draft<AtHand> => ({
  name: 'At hand',
  search: 'at hand',
  state: null,
  summary: {},
  body,
})

/** What was entered as at hand; nothing where nothing was. */
export async function readAtHand(store: Store): Promise<AtHand> {
  try {
    return { ...nothingAtHand, ...(await store.get<AtHand>('at-hand', atHandId)).body }
  } catch (error) {
    if (error instanceof Missing) return nothingAtHand
    throw error
  }
}

/** The same for a page that works without records: nothing at hand where they cannot be read. */
export async function atHandIfReadable(store: Store): Promise<AtHand> {
  try {
    return await readAtHand(store)
  } catch (error) {
    if (error instanceof StorageFault) return nothingAtHand
    throw error
  }
}

/** Keeps it, in place of what was kept before. */
export async function keepAtHand(store: Store, body: AtHand): Promise<AtHand> {
  await store.add('at-hand', atHandDraft(body), atHandId)
  return (await store.change<AtHand>('at-hand', atHandId, null, () => atHandDraft(body))).body
}
