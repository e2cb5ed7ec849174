import type { Job } from '../../bench/jobs/job.js'
import { Unfit } from '../../bench/jobs/jobChange.js'
import { jobDraft } from '../../bench/jobs/jobDraft.js'
import { entriesBeside } from '../../bench/jobs/mergedJob.js'
import { openStops } from '../../bench/jobs/stops.js'
import type { Change, Draft, Kind, Stamp, Store } from '../../store/store.js'
import { Unprocessable } from '../errors.js'
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
  /** of a job that is kept here: entries that the file does not have, and what holds it and holds it still */
  stays?: { entries: number; stops: string[] }
}

export interface ChangePlan {
  /** how many records come in as they are kept already */
  same: number
  planned: PlannedChange[]
  changes: Change[]
}

/**
 * What bringing these records in would change. A record that is not here is added as it was; one that differs is
 * replaced, and if it is no newer than what is kept here it gets the next version, so that nobody's open page takes it
 * for the one it knew. Of a job that is replaced, deleted or not, no entry and no stop is lost.
 */
export async function changePlan(store: Store, incoming: Incoming[], now: number): Promise<ChangePlan> {
  const held = new Map((await store.held(incoming.map(({ stamp }) => stamp.id))).map((entry) => [entry.id, entry]))
  const plan: ChangePlan = { same: 0, planned: [], changes: [] }
  for (const { kind, stamp, draft: sent } of incoming) {
    const here = held.get(stamp.id)
    const kept = here?.kind === 'job' ? (here.body as Job) : null
    const as = here && !here.deleted ? JSON.stringify(here.body) : null
    if (as === JSON.stringify(sent.body)) {
      plan.same += 1
      continue
    }
    const draft = kind === 'job' ? jobDraft(jobOf(sent.body as Job, kept, now)) : sent
    if (as === JSON.stringify(draft.body)) {
      plan.same += 1
      continue
    }
    const older = here !== undefined && here.version >= stamp.version
    plan.planned.push({
      change: here === undefined ? 'add' : here.deleted ? 'bring back' : 'replace',
      kind,
      id: stamp.id,
      name: draft.name,
      older: older && !here.deleted,
      ...(kept && staysOf(kept, sent.body as Job, draft.body as Job)),
    })
    const next = older ? { ...stamp, version: here.version + 1, updatedAt: now } : stamp
    plan.changes.push({ do: 'put', kind, stamp: next, expects: here?.version ?? null, draft })
  }
  return plan
}

/** A job of a file as it is kept; one that cannot be kept refuses the whole file. */
function jobOf(sent: Job, kept: Job | null, now: number): Job {
  try {
    return judgedAnew(sent, kept, now)
  } catch (error) {
    if (error instanceof Unfit) throw new Unprocessable(error.fields)
    throw error
  }
}

function staysOf(kept: Job, sent: Job, next: Job): Pick<PlannedChange, 'stays'> {
  const before = new Set(openStops(kept).map(({ of }) => of))
  const stops = openStops(next)
    .filter(({ of }) => before.has(of))
    .map(({ title }) => title)
  const entries = entriesBeside(kept, sent)
  return entries === 0 && stops.length === 0 ? {} : { stays: { entries, stops } }
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
