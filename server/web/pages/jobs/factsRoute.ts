import { type Request, type Response, Router } from 'express'
import type { Job } from '../../../bench/jobs/job.js'
import { Unfit } from '../../../bench/jobs/jobChange.js'
import { jobDraft } from '../../../bench/jobs/jobDraft.js'
import { openStops } from '../../../bench/jobs/stops.js'
import { StorageFault } from '../../../store/errors.js'
import type { Kept } from '../../../store/store.js'
import type { Context } from '../../context.js'
import { NotFound, Unprocessable } from '../../errors.js'
import {
  answered,
  asRead,
  changedMeanwhile,
  markOf,
  planValuesOf,
  set,
  undone,
  type Values,
  valuesOf,
  withValues,
} from '../../jobFacts.js'
import { entryId, onceField } from '../../once.js'
import { show } from '../../page.js'
import { faultsOf } from '../../parts/faultsOf.js'
import type { FormFault } from '../../parts/formState.js'
import { readFirstPowerForm } from '../firstPower/form.js'
import { type FactsOf, factsOfNamed, factsView, sectionOfBox } from './factsView.js'

/** Someone else changed these boxes meanwhile. */
class Meanwhile extends Error {
  constructor(readonly boxes: string[]) {
    super('changed meanwhile')
  }
}

/** The facts of a kept job, changed where they stand: a section at a time, or an answer to a question. */
export function jobFactsRoutes({ store, now }: Context): Router {
  const router = Router()
  const idOf = (request: Request): string => String(request.params.id)

  interface Typed {
    at: FactsOf
    typed?: Values
    faults?: readonly FormFault[]
    meanwhile?: readonly string[]
    notSaved?: string | null
    status?: number
  }

  const page = async (
    request: Request,
    response: Response,
    { at, typed = {}, faults = [], meanwhile = [], notSaved = null, status }: Typed,
  ): Promise<void> => {
    const { id, body: job } = await store.get<Job>('job', idOf(request))
    const kept = boxesOf(job)
    const form = readFirstPowerForm({ ...kept, ...typed })
    const all = form.faults.length > 0 ? form.faults : faults
    const first = sectionOfBox(all[0]?.name ?? '')
    const model = factsView({ id, job, kept, typed: form, at: first ?? at, faults: all, meanwhile, notSaved })
    show(request, response, { view: 'job-facts', model, status })
  }

  /** what every box holds; a check of more rows than forms have is changed as JSON */
  const boxesOf = (job: Job): Values => {
    const values = valuesOf(job)
    if (!values) throw new NotFound()
    return { ...values, ...planValuesOf(job) }
  }

  const change = async (request: Request, next: (job: Job) => Job): Promise<Kept<Job>> =>
    store.change<Job>('job', idOf(request), null, ({ body }) => {
      const job = next(body)
      return job === body ? null : jobDraft(job)
    })

  const onwards = ({ id, body }: Kept<Job>, section: string): string =>
    `/jobs/${id}#${openStops(body).length > 0 ? 'stopped' : section}`

  router.get('/jobs/:id/facts', (request, response) =>
    page(request, response, { at: factsOfNamed(request.query.at) ?? 'supply' }),
  )

  router.post('/jobs/:id/facts', async (request, response) => {
    const body = (request.body ?? {}) as Record<string, unknown>
    const seen = typeof body.seen === 'string' ? body.seen : null
    const mark = { id: entryId(onceField(request), idOf(request), 'facts', JSON.stringify(body)), at: now() }
    let typed: Values = {}
    const next = (job: Job): Job => {
      const kept = boxesOf(job)
      typed = seen === null ? answered(kept, body) : set(body)
      const names = Object.keys(typed)
      const values = { ...kept, ...typed }
      const changed = withValues(job, values, mark)
      const others = changedMeanwhile(kept, asRead(values), names)
      const unseen = seen === null ? others.filter((name) => (kept[name] ?? '') !== '') : others
      if (seen === null ? unseen.length > 0 : markOf(kept, names) !== seen && unseen.length > 0)
        if (!(job.changes ?? []).some(({ id }) => id === mark.id)) throw new Meanwhile(unseen)
      return changed
    }
    const asked = factsOfNamed(body.at)
    const again = (rest: Omit<Typed, 'at' | 'typed'>): Promise<void> => {
      const named = Object.keys(typed)
        .map(sectionOfBox)
        .find((section) => section !== null)
      return page(request, response, { at: asked ?? named ?? 'supply', typed, ...rest })
    }
    try {
      response.redirect(303, onwards(await change(request, next), seen === null ? 'next' : 'answer'))
    } catch (error) {
      if (error instanceof Meanwhile) return again({ meanwhile: error.boxes, status: 409 })
      if (error instanceof StorageFault) return again({ notSaved: error.message, status: error.status })
      if (!(error instanceof Unprocessable || error instanceof Unfit)) throw error
      return again({ faults: faultsOf(error, 'facts', []), status: 422 })
    }
  })

  router.post('/jobs/:id/changes/:changeId/undo', async (request, response) => {
    const changeId = String(request.params.changeId)
    const mark = { id: entryId(onceField(request), idOf(request), 'undo', changeId), at: now() }
    response.redirect(303, onwards(await change(request, (job) => undone(job, changeId, mark)), 'answer'))
  })
  return router
}
