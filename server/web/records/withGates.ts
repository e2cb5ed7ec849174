import type { Job } from '../../bench/jobs/job.js'
import { limitsOf } from '../../bench/jobs/newJob.js'
import type { Kept, Kind, Store } from '../../store/store.js'
import { tell } from '../../words/tell.js'
import { jobChecklist, jobGates } from '../checklistOf.js'

/** A job whose plan was kept without gates, with those of its own check, and the lines of its paper that have no limits yet. */
function gated(job: Job): Job {
  const plan = (job.plan ?? {}) as { gates?: unknown }
  if (Array.isArray(plan.gates)) return job
  const known = new Set(job.limits.map(({ key }) => key))
  const { stages } = tell(jobChecklist(job))
  const paper = limitsOf({ stages: stages.map(({ lines }) => ({ steps: lines })) })
  return {
    ...job,
    plan: { ...plan, gates: tell(jobGates(job)) },
    limits: [...job.limits, ...paper.filter(({ key }) => !known.has(key))],
  }
}

const broughtUp = <Body>(kept: Kept<Body>): Kept<Body> =>
  kept.kind === 'job' ? { ...kept, body: gated(kept.body as Job) as Body } : kept

/** The same records; a job has its gates, whenever it was kept. */
export const withGates = (store: Store): Store => ({
  ...store,
  get: async <Body>(kind: Kind, id: string) => broughtUp(await store.get<Body>(kind, id)),
  restore: async <Body>(kind: Kind, id: string) => broughtUp(await store.restore<Body>(kind, id)),
  change: (kind, id, version, draftOf) => store.change(kind, id, version, (kept) => draftOf(broughtUp(kept))),
})
