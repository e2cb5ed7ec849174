import type { Job } from '../../bench/jobs/job.js'
import { jobDraft } from '../../bench/jobs/jobDraft.js'
import type { Change, Draft, Kind, Stamp, Store } from '../../store/store.js'
import { judgedAnew } from './judgedAnew.js'

/** A record as a file has it. */
export interface Incoming {
  kind: Kind
  stamp: Stamp
  draft: Draft
}

/** What bringing one record in would do. */
export interface PlannedChange {
  change: 'add' | 'replace' | 'bring back'
  kind: Kind
  id: string
  name: string
  /** true where what is kept here was changed at least as often as what comes in */
  older: boolean
}

export interface ChangePlan {
  /** how many records come in as they are kept already */
  same: number
  planned: PlannedChange[]
  changes: Change[]
}

const everything = 1_000_000

async function bodiesOf(store: Store, kind: Kind): Promise<Map<string, { body: unknown; text: string }>> {
  const { rows } = await store.listWhole(kind, { limit: everything })
  return new Map(rows.map((row) => [row.id, { body: row.body, text: JSON.stringify(row.body) }]))
}

/**
 * What bringing these records in would change. A record that is not here is added as it was; one that differs is
 * replaced, and if it is no newer than what is kept here it gets the next version, so that nobody's open page takes it
 * for the one it knew.
 */
export async function changePlan(store: Store, incoming: Incoming[], now: number): Promise<ChangePlan> {
  const held = new Map((await store.held(incoming.map(({ stamp }) => stamp.id))).map((entry) => [entry.id, entry]))
  const kinds = [...new Set(incoming.map(({ kind }) => kind))]
  const bodies = new Map(await Promise.all(kinds.map(async (kind) => [kind, await bodiesOf(store, kind)] as const)))
  const plan: ChangePlan = { same: 0, planned: [], changes: [] }
  for (const { kind, stamp, draft } of incoming) {
    const here = held.get(stamp.id)
    if (here && !here.deleted && bodies.get(kind)?.get(stamp.id)?.text === JSON.stringify(draft.body)) {
      plan.same += 1
      continue
    }
    const older = here !== undefined && here.version >= stamp.version
    const next = older ? { ...stamp, version: here.version + 1, updatedAt: now } : stamp
    plan.planned.push({
      change: here === undefined ? 'add' : here.deleted ? 'bring back' : 'replace',
      kind,
      id: stamp.id,
      name: draft.name,
      older: older && !here.deleted,
    })
    const kept = older ? (bodies.get(kind)?.get(stamp.id)?.body ?? null) : null
    const judged = kind === 'job' ? jobDraft(judgedAnew(draft.body as Job, kept as Job | null, now)) : draft
    plan.changes.push({ do: 'put', kind, stamp: next, expects: here?.version ?? null, draft: judged })
  }
  return plan
}

/** The plan in JSON: numbers first, then each change. */
export const planJson = ({ same, planned }: ChangePlan, applied: boolean) => ({
  applied,
  adds: planned.filter(({ change }) => change === 'add').length,
  replaces: planned.filter(({ change }) => change === 'replace').length,
  bringsBack: planned.filter(({ change }) => change === 'bring back').length,
  same,
  changes: planned,
})
