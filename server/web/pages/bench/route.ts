import { type Request, type Response, Router } from 'express'
import { type Job, tickAnswers } from '../../../bench/jobs/job.js'
import { addReading, addTick, Unfit } from '../../../bench/jobs/jobChange.js'
import { jobDraft } from '../../../bench/jobs/jobDraft.js'
import { limitsFor } from '../../../bench/jobs/laterLimits.js'
import { openGates } from '../../../bench/jobs/openGates.js'
import { openStops } from '../../../bench/jobs/stops.js'
import { numbersOf } from '../../../plan/checklist.js'
import { Full, StorageFault } from '../../../store/errors.js'
import { jobChecklist } from '../../checklistOf.js'
import type { Context } from '../../context.js'
import { Unprocessable } from '../../errors.js'
import { entryId, onceField } from '../../once.js'
import { show } from '../../page.js'
import { faultsOf } from '../../parts/faultsOf.js'
import { FormReader } from '../../parts/formState.js'
import { metered } from '../../parts/metered.js'
import { typedBefore } from '../../typedAt.js'
import { benchView, stepAfter, waitsFor } from './view.js'

const labels: Record<string, string> = {
  value: 'Value read',
  unit: 'Unit',
  as: 'Answer',
  words: 'What was seen',
  key: 'Step',
  despite: 'Measured all the same',
}

/** One step a screen, for a phone beside the machine: a page and a form a step, that works without script. */
export function benchPageRoutes({ store, now }: Context): Router {
  const router = Router()
  const at = '/jobs/:id/bench'
  const stepOf = ({ query }: Request): string | null => (typeof query.step === 'string' ? query.step : null)

  router.get(at, async (request, response) => {
    const kept = await store.get<Job>('job', String(request.params.id))
    const asked = { step: stepOf(request), despite: request.query.despite === 'yes' }
    show(request, response, { view: 'bench', model: benchView(kept, asked, null) })
  })

  router.post(at, async (request, response) => {
    const id = String(request.params.id)
    const kept = await store.get<Job>('job', id)
    const body = (request.body ?? {}) as Record<string, unknown>
    const key = stepOf(request) ?? ''
    const checklist = jobChecklist(kept.body)
    const line = checklist.stages.flatMap(({ lines }) => lines).find((one) => one.key === key)
    const read = new FormReader({ ...body, key }, Object.keys(labels), (name) => labels[name] ?? name)
    if (!line) read.fault('key', 'Step must be one of the steps of this job.')
    const unit = limitsFor(kept.body, key)?.unit ?? line?.unit ?? null
    const entry = entryId(onceField(request), id, 'bench', JSON.stringify(read.state.values))
    const mark = { id: entry, at: now(), typedAt: typedBefore(body.age, now()) }
    const wrong = body.as === 'wrong'
    const despite = wrong || (unit !== null && body.despite === 'yes') || openStops(kept.body).length > 0
    const gates = despite ? [] : openGates(kept.body, key)
    const box = unit === null ? 'words' : 'value'
    if (gates.length > 0) read.fault(box, waitsFor(gates, numbersOf(checklist)))
    const done = unit === null || wrong ? tickOf(read, key) : readingOf(read, key, unit, despite)
    const again = (status: number, notSaved: string | null = null) =>
      refused(request, response, { key, read, status, notSaved })
    if (read.faults.length > 0) return again(422)
    try {
      await store.change<Job>('job', id, null, ({ body: job }) => {
        const changed = done(job, mark)
        return changed === job ? null : jobDraft(changed)
      })
    } catch (error) {
      if (error instanceof StorageFault) return again(error.status, error.message)
      if (!(error instanceof Unprocessable || error instanceof Unfit || error instanceof Full)) throw error
      for (const fault of faultsOf(error, box, [box])) read.fault(fault.name, fault.message)
      return again(422)
    }
    const next = stepAfter((await store.get<Job>('job', id)).body, key)
    response.redirect(303, `/jobs/${id}/bench${next === null ? '' : `?step=${encodeURIComponent(next)}`}`)
  })

  type Done = (job: Job, mark: { id: string; at: number; typedAt?: number | undefined }) => Job

  const readingOf = (read: FormReader, key: string, unit: string, despite: boolean): Done => {
    const value = metered(read, 'value', unit, read.text('unit'), true)
    return (job, mark) => addReading(job, { key, value, unit }, { ...mark, despite })
  }

  const tickOf = (read: FormReader, key: string): Done => {
    const as = read.choice('as', tickAnswers, 'Answer')
    if (as === null && read.faults.length === 0) read.fault('words', 'Say whether it is as it should be, or wrong.')
    return (job, mark) => addTick(job, { key, as: as ?? 'wrong', words: read.text('words') }, mark)
  }

  const refused = async (
    request: Request,
    response: Response,
    { key, read, status, notSaved }: { key: string; read: FormReader; status: number; notSaved: string | null },
  ): Promise<void> => {
    const kept = await store.get<Job>('job', String(request.params.id))
    const asked = { step: null, despite: read.state.values.despite === 'yes' }
    const model = benchView(kept, asked, { key, form: read.state, faults: read.faults }, notSaved)
    show(request, response, { view: 'bench', model, status })
  }
  return router
}
