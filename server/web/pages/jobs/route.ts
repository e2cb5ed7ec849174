import { parse as parseQuery } from 'node:querystring'
import { type Request, type Response, Router } from 'express'
import { z } from 'zod'
import { atHandIfReadable } from '../../../bench/atHand/atHand.js'
import { detailsMark } from '../../../bench/jobs/detailsMark.js'
import { type Job, partStates } from '../../../bench/jobs/job.js'
import {
  addCause,
  addLog,
  addPart,
  addReading,
  changePart,
  judgeAgain,
  patchJob,
  removePart,
  Unfit,
  withdraw,
} from '../../../bench/jobs/jobChange.js'
import { jobDraft } from '../../../bench/jobs/jobDraft.js'
import { newJob } from '../../../bench/jobs/newJob.js'
import { direction, findingChanges } from '../../../bench/jobs/rejudge.js'
import { standingStates } from '../../../bench/jobs/standing.js'
import { openStops } from '../../../bench/jobs/stops.js'
import { prepareCase } from '../../../chain/case/case.js'
import { topicTag } from '../../../chain/topicTag.js'
import { isLoopback } from '../../../config.js'
import { figures } from '../../../facts/address.js'
import { checkSchema } from '../../../facts/check.js'
import type { FirstPowerOptions } from '../../../plan/planFirstPower.js'
import { Full, Stale, StorageFault } from '../../../store/errors.js'
import { newId } from '../../../store/openStore.js'
import type { Kept, Photo } from '../../../store/store.js'
import type { Context } from '../../context.js'
import { dataVersion } from '../../dataVersion.js'
import { NotFound, Unprocessable } from '../../errors.js'
import { judged, judgedAndPlanned } from '../../judge.js'
import { entryId, onceField } from '../../once.js'
import { head, show } from '../../page.js'
import { parse } from '../../parse.js'
import { jobName } from '../../parts/caseName.js'
import { faultsOf } from '../../parts/faultsOf.js'
import { type FormFault, FormReader } from '../../parts/formState.js'
import { keepPhoto, mostPhotos, photoForm } from '../../parts/keepPhoto.js'
import { metered } from '../../parts/metered.js'
import { pageNumber } from '../../parts/pager.js'
import { phoneAddress } from '../../parts/phoneAddress.js'
import { deletedPhoto } from '../../parts/photoViews.js'
import { sharing } from '../../parts/sharing.js'
import { verdictWords } from '../../parts/verdictWords.js'
import { logSchema, newJobSchema, observationsSchema, partSchema } from '../../schemas/jobs.js'
import { typedBefore } from '../../typedAt.js'
import { type CheckForm, readCheckAddress, readCheckForm } from '../check/form.js'
import { withExamined } from '../examine/keep.js'
import { stateOf } from '../examine/state.js'
import { readFirstPowerForm } from '../firstPower/form.js'
import { jobsView } from './listView.js'
import { detailLabels, observedOf, worksChoices } from './observed.js'
import { type ChangedField, detailsForm, type JobFormName, jobView } from './view.js'

type Sent = Record<string, unknown>

/** What a form brings: the address of a check or of a first power-up in one field, or the fields of a check. */
function askedOf({
  once: _once,
  ...body
}: Sent): Pick<CheckForm, 'faults' | 'request'> & { given?: FirstPowerOptions } {
  if (typeof body.plan !== 'string')
    return typeof body.check === 'string' ? readCheckAddress(body.check) : readCheckForm(body)
  const { check, faults, options } = readFirstPowerForm(parseQuery(body.plan))
  return { faults, request: check.request, given: options }
}

const labelled =
  (labels: Record<string, string>) =>
  (name: string): string =>
    labels[name] ?? name

/** A day as the browser's own box sends it; null where it is empty, or a fault. */
function dayOf(read: FormReader, name: string): string | null {
  const text = read.text(name)
  if (text === null || z.iso.date().safeParse(text).success) return text
  read.fault(name, 'Expected on must be a day such as 2026-01-05.')
  return null
}

const versionOf = (sent: unknown): number => {
  if (typeof sent !== 'string' || !/^[1-9]\d{0,9}$/.test(sent))
    throw new Unprocessable([
      { path: 'version', message: 'The form has no version; open the page again and send it from there.' },
    ])
  return Number(sent)
}

/** The jobs as pages: every change is a form of its own that works without script. */
export function jobsPageRoutes(context: Context): Router {
  const { store, now, config, lan } = context
  const router = Router()
  const id = (request: Request): string => String(request.params.id)
  const sent = (request: Request): Sent => (request.body ?? {}) as Sent
  const keepTogether = sharing<Photo>()

  /** the id of what a form adds: the same for the same form sent again, so that it is added once */
  const newEntry = (request: Request, form: JobFormName, { state }: FormReader, file?: Uint8Array): string =>
    entryId(onceField(request), id(request), form, JSON.stringify(state.values), ...(file ? [file] : []))

  interface Changing {
    form: JobFormName
    /** which part the form stands at; absent where it adds one */
    partId?: string
    read: FormReader
    /** names of the form's boxes, the main one first */
    boxes: string[]
    work: () => Promise<unknown>
    section: string
  }

  interface Refused {
    form?: JobFormName
    partId?: string | undefined
    read?: FormReader
    faults?: FormFault[]
    changed?: ChangedField[]
    notSaved?: string
    status: number
  }

  const page = async (request: Request, response: Response, refused?: Refused): Promise<void> => {
    const kept = await store.get<Job>('job', id(request))
    const { form, partId, read } = refused ?? {}
    const typedPart = partId !== undefined && read ? { id: partId, form: read.state } : null
    const forms = form && read && !typedPart ? { [form]: read.state } : {}
    const inPart = (fault: FormFault): FormFault => ({ ...fault, name: `${fault.name}-${partId}` })
    const model = jobView({
      kept,
      photos: await store.photos(kept.id),
      deletedPhoto: deletedPhoto(request.query.photo),
      now: now(),
      dataVersion: dataVersion(),
      shared: !isLoopback(config.host),
      phone: phoneAddress({
        listensOn: config.host,
        protocol: request.protocol,
        host: request.get('Host'),
        lan: lan(),
        path: `/jobs/${kept.id}`,
      }),
      forms,
      typedPart,
      faults: typedPart ? refused?.faults?.map(inPart) : refused?.faults,
      changed: refused?.changed,
      notSaved: refused?.notSaved ?? null,
    })
    show(request, response, { view: 'job', model, status: refused?.status })
  }

  /** Does the change of a form; what is wrong with it, or with the disk, becomes the same page with what was typed. */
  const changing = async (
    request: Request,
    response: Response,
    { form, partId, read, boxes, work, section }: Changing,
  ): Promise<void> => {
    const again = (refused: Omit<Refused, 'form' | 'read'>) =>
      page(request, response, { form, partId, read, ...refused })
    if (read.faults.length > 0) return again({ faults: read.faults, status: 422 })
    try {
      await work()
    } catch (error) {
      if (error instanceof StorageFault) return again({ notSaved: error.message, status: error.status })
      if (error instanceof Unprocessable || error instanceof Unfit || error instanceof Full) {
        for (const fault of faultsOf(error, boxes[0] ?? '', boxes)) read.fault(fault.name, fault.message)
        return again({ faults: read.faults, status: 422 })
      }
      throw error
    }
    response.redirect(303, await afterwards(request, section))
  }

  /** Back to where the form stood; a job that is stopped shows that first. */
  const afterwards = async (request: Request, section: string): Promise<string> => {
    const at = `/jobs/${id(request)}`
    if (sent(request).back === 'bench') return `${at}/bench`
    return `${at}#${openStops((await store.get<Job>('job', id(request))).body).length > 0 ? 'stopped' : section}`
  }

  /** when it was written, where it waited on a device; `arrived` where what is sent takes its time */
  const written = (request: Request, arrived = now()): number => typedBefore(sent(request).age, arrived) ?? arrived

  const change = (request: Request, version: number | null, next: (job: Job, version: number) => Job) =>
    store.change<Job>('job', id(request), version, (kept) => {
      const job = next(kept.body, kept.version + 1)
      return job === kept.body ? null : jobDraft(job)
    })

  router.get('/jobs', async (request, response) => {
    const { search, state, page: number, deleted } = request.query
    const model = await jobsView(store, {
      search: typeof search === 'string' ? search.trim().slice(0, 200) : '',
      state: standingStates.find((name) => name === state) ?? null,
      number: pageNumber(number),
      deleted: typeof deleted === 'string' && /^[\w-]{16,64}$/.test(deleted) ? deleted : null,
      now: now(),
    })
    show(request, response, { view: 'jobs', model })
  })

  router.post('/jobs', async (request, response) => {
    const form = askedOf(sent(request))
    if (form.faults.length > 0)
      throw new Unprocessable(form.faults.map(({ name, message }) => ({ path: name, message })))
    if (!form.request)
      throw new Unprocessable([
        { path: 'check', message: 'Nothing was entered; enter a check first, then keep it as a job.' },
      ])
    // the same form as a check sent as JSON, so that a job goes out and in again unchanged
    const check = parse(checkSchema, form.request)
    const name = jobName(check)
    const { once: _once, ...asked } = sent(request)
    const entry = entryId(onceField(request), 'job', JSON.stringify(asked))
    // a plan was made with the lamps that stand in it; a check alone is planned with those at hand
    const { lamps } = await atHandIfReadable(store)
    const given = form.given ?? (lamps.length > 0 ? { lampsOnHand: lamps } : undefined)
    const job = newJob({ name, ...judgedAndPlanned(check, null, now(), given) })
    // what was examined before there was a job goes on in it
    const examined = typeof asked.check === 'string' ? stateOf(asked).state : null
    const begun = examined ? withExamined(job, examined, { id: entry, at: now() }) : job
    const kept = await store.add('job', jobDraft(begun), entry)
    response.redirect(303, begun.examined ? `/jobs/${kept.id}/examine` : `/jobs/${kept.id}`)
  })

  router.get('/jobs/:id', (request, response) => page(request, response))

  router.post('/jobs/:id', async (request, response) => {
    const body = sent(request)
    const read = new FormReader(body, Object.keys(detailLabels), labelled(detailLabels))
    const seen = typeof body.seen === 'string' ? body.seen : ''
    const drawnA = metered(read, 'drawn', 'A', null)
    if (read.text('name') === null) read.fault('name', 'Enter the name of the job.')
    const works = read.choice(
      'works',
      worksChoices.map(({ value }) => value),
      'Did it do its work',
    )
    const work = async (): Promise<void> => {
      const { name } = parse(newJobSchema.pick({ name: true }), { name: read.text('name') })
      const observations = parse(
        observationsSchema,
        observedOf((box) => read.text(box), { drawnA, works }),
      )
      await store.change<Job>('job', id(request), null, (kept) => {
        const job = patchJob(kept.body, { name, observations }, { id: newId(), at: written(request) })
        // sent again, or nothing new: as good as done
        if (detailsMark(job) === detailsMark(kept.body)) return null
        if (detailsMark(kept.body) !== seen) throw new Stale(kept)
        return jobDraft(job)
      })
    }
    try {
      await changing(request, response, {
        form: 'details',
        read,
        boxes: Object.keys(detailLabels),
        work,
        section: 'observed',
      })
    } catch (error) {
      if (!(error instanceof Stale)) throw error
      const kept = detailsForm((error.current as unknown as Kept<Job>).body).values
      const changed = Object.entries(detailLabels)
        .map(([name, label]) => {
          const typed = name === 'drawn' ? (drawnA === null ? '' : figures(drawnA)) : (read.text(name) ?? '')
          return { label, kept: kept[name] ?? '', typed }
        })
        .filter((field) => field.kept !== field.typed)
      await page(request, response, { form: 'details', read, changed, status: 409 })
    }
  })

  router.post('/jobs/:id/readings', async (request, response) => {
    const labels = { value: 'Value read', what: 'What was read', unit: 'Unit' }
    const read = new FormReader(sent(request), Object.keys(labels), labelled(labels))
    const [what, unit] = [read.text('what'), read.text('unit')]
    if (what === null) read.fault('what', 'Enter what was read.')
    if (unit === null) read.fault('unit', 'Enter the unit, such as V or A.')
    const value = read.number('value', { label: 'Value read', required: true })
    const entry = newEntry(request, 'reading', read)
    const given = { key: what ?? '', value, unit: unit ?? '' }
    const mark = { id: entry, at: now(), typedAt: typedBefore(sent(request).age, now()) }
    const work = () => change(request, null, (current) => addReading(current, given, mark))
    await changing(request, response, {
      form: 'reading',
      read,
      boxes: ['value', 'what', 'unit'],
      work,
      section: 'readings',
    })
  })

  router.post('/jobs/:id/causes', async (request, response) => {
    const read = new FormReader(sent(request), ['of', 'text'], labelled({ of: 'Stop', text: 'Cause' }))
    const text = read.text('text')
    if (text === null) read.fault('text', 'Enter the cause: what was wrong, and what was done about it.')
    const given = { of: read.text('of') ?? '', text: text ?? '' }
    const entry = newEntry(request, 'cause', read)
    await changing(request, response, {
      form: 'cause',
      read,
      boxes: ['text', 'of'],
      work: () => change(request, null, (job) => addCause(job, given, { id: entry, at: written(request) })),
      section: 'standing',
    })
  })

  router.post('/jobs/:id/entries/:entryId/withdraw', async (request, response) => {
    const names = { why: 'Why', value: 'Value it should have been', entry: 'Reading' }
    const entryId = String(request.params.entryId)
    const read = new FormReader({ ...sent(request), entry: entryId }, Object.keys(names), labelled(names))
    const why = read.text('why')
    if (why === null) read.fault('why', 'Enter why it is taken back.')
    const job = (await store.get<Job>('job', id(request))).body
    const reading = job.readings.find((one) => one.id === entryId)
    const given = reading && read.text('value') !== null ? metered(read, 'value', reading.unit, null) : undefined
    const mark = { id: newEntry(request, 'withdraw', read), at: written(request) }
    const corrected = (current: Job): Job => {
      const taken = withdraw(current, entryId, why ?? '', mark)
      if (!reading || given === undefined) return taken
      return addReading(
        taken,
        { ...reading, value: given },
        { ...mark, typedAt: reading.typedAt ?? reading.at, despite: true },
      )
    }
    await changing(request, response, {
      form: 'withdraw',
      read,
      boxes: ['why', 'value', 'entry'],
      work: () => change(request, null, corrected),
      section: 'readings',
    })
  })

  router.post('/jobs/:id/parts', async (request, response) => {
    const read = new FormReader(
      sent(request),
      ['part', 'state', 'partnote', 'partexpected'],
      labelled({
        part: 'Part',
        state: 'State',
        partnote: 'Note',
        partexpected: 'Expected on',
      }),
    )
    const expected = dayOf(read, 'partexpected')
    if (read.text('part') === null) read.fault('part', 'Enter the part.')
    const state = read.choice('state', partStates, 'State')
    const work = async (): Promise<void> => {
      const given = parse(partSchema, {
        name: read.text('part'),
        state: state ?? 'wanted',
        note: read.text('partnote'),
        expected,
      })
      await change(request, null, (job, version) =>
        addPart(job, given, { id: newEntry(request, 'part', read), at: written(request), version }),
      )
    }
    await changing(request, response, {
      form: 'part',
      read,
      boxes: ['part', 'state', 'partnote', 'partexpected'],
      work,
      section: 'parts',
    })
  })

  router.post('/jobs/:id/parts/:partId', async (request, response) => {
    const body = sent(request)
    const labels = { state: 'State', note: 'Note', expected: 'Expected on' }
    const read = new FormReader(body, Object.keys(labels), labelled(labels))
    // a form of an earlier page has no such box, and leaves the day as it is
    const expected = 'expected' in body ? dayOf(read, 'expected') : undefined
    const version = versionOf(body.version)
    const partId = String(request.params.partId)
    const state = read.choice('state', partStates, 'State') ?? undefined
    const work = async (): Promise<void> => {
      const { note } = parse(partSchema.pick({ note: true }), { note: read.text('note') })
      await change(request, null, (job, next) =>
        changePart(
          job,
          partId,
          { state, note: note ?? null, expected, version },
          { at: written(request), version: next },
        ),
      )
    }
    try {
      await changing(request, response, {
        form: 'part',
        partId,
        read,
        boxes: ['note', 'state', 'expected'],
        work,
        section: 'parts',
      })
    } catch (error) {
      if (!(error instanceof Stale)) throw error
      const part = error.current as unknown as Job['parts'][number]
      // sent again after an answer that was lost: as good as done
      const sameDay = expected === undefined || (part.expected ?? null) === expected
      if (part.state === state && (part.note ?? '') === (read.text('note') ?? '') && sameDay) {
        response.redirect(303, `/jobs/${id(request)}#parts`)
        return
      }
      const changed = [
        { label: `State of ${part.name}`, kept: part.state, typed: state ?? '' },
        { label: `Note on ${part.name}`, kept: part.note ?? '', typed: read.text('note') ?? '' },
        ...(sameDay ? [] : [{ label: `${part.name} expected on`, kept: part.expected ?? '', typed: expected ?? '' }]),
      ]
      // the form names the version it was compared with, so that it can be saved again
      await page(request, response, { form: 'part', partId, read, changed, status: 409 })
    }
  })

  router.post('/jobs/:id/parts/:partId/delete', async (request, response) => {
    await change(request, null, (job) => removePart(job, String(request.params.partId)))
    response.redirect(303, `/jobs/${id(request)}#parts`)
  })

  router.post('/jobs/:id/log', async (request, response) => {
    const read = new FormReader(sent(request), ['text'], labelled({ text: 'What was done' }))
    if (read.text('text') === null) read.fault('text', 'Enter what was done.')
    const work = async (): Promise<void> => {
      const { text } = parse(logSchema, { text: read.text('text') })
      await change(request, null, (job) =>
        addLog(job, text, { id: newEntry(request, 'log', read), at: written(request) }),
      )
    }
    await changing(request, response, { form: 'log', read, boxes: ['text'], work, section: 'log' })
  })

  router.post('/jobs/:id/photos', (request, response, next) => {
    const arrived = now()
    photoForm(request, response, (fault?: unknown) => {
      const read = new FormReader(
        sent(request),
        ['photo', 'caption'],
        labelled({ photo: 'Photo', caption: 'What it shows' }),
      )
      if (fault instanceof Unprocessable) read.fault('photo', fault.message)
      else if (!request.file || request.file.size === 0) read.fault('photo', 'Choose a photo.')
      const caption = read.text('caption') ?? ''
      const work = async (): Promise<void> => {
        await store.get('job', id(request))
        const bytes = request.file?.buffer ?? Buffer.alloc(0)
        const entry = newEntry(request, 'photo', read, bytes)
        const taken = { createdAt: written(request, arrived) }
        await keepTogether(entry, () => keepPhoto(context, id(request), caption.slice(0, 200), bytes, entry, taken))
      }
      changing(request, response, { form: 'photo', read, boxes: ['photo', 'caption'], work, section: 'photos' }).catch(
        next,
      )
    })
  })
  router.post('/jobs/:id/photos/:photoId/delete', async (request, response) => {
    const photo = await store.photo(String(request.params.photoId))
    if (photo.owner !== id(request)) throw new NotFound()
    await store.removePhoto(photo.id)
    response.redirect(303, `/jobs/${id(request)}?photo=${photo.id}#photos`)
  })
  router.post('/jobs/:id/photos/:photoId/restore', async (request, response) => {
    await store.restorePhoto(String(request.params.photoId), mostPhotos)
    response.redirect(303, `/jobs/${id(request)}#photos`)
  })

  /** @param meanwhile  whether the job was changed since this page was last shown */
  const rejudgePage = async (request: Request, response: Response, meanwhile: boolean): Promise<void> => {
    const { body, version } = await store.get<Job>('job', id(request))
    const again = judged(prepareCase(body.check), now())
    const words = { worse: 'judged worse now', better: 'judged better now', other: 'changed' } as const
    const changes = findingChanges(body.assessment.findings, again.findings).map((entry) => ({
      ...entry,
      topic: topicTag(entry.topic),
      word: words[direction(entry)],
    }))
    const model = {
      page: head(`Judge again: ${body.name}`, 'jobs'),
      id: id(request),
      name: body.name,
      version,
      meanwhile,
      before: { title: verdictWords[body.assessment.verdict].title, dataVersion: body.assessment.dataVersion },
      after: { title: verdictWords[again.verdict].title, dataVersion: again.dataVersion },
      changes,
    }
    show(request, response, { view: 'rejudge', model, ...(meanwhile ? { status: 409 } : {}) })
  }
  router.get('/jobs/:id/rejudge', (request, response) => rejudgePage(request, response, false))
  router.post('/jobs/:id/rejudge', async (request, response) => {
    const version = versionOf(sent(request).version)
    try {
      await change(request, version, (job) => judgeAgain(job, judged(prepareCase(job.check), now())))
    } catch (error) {
      if (!(error instanceof Stale)) throw error
      await rejudgePage(request, response, true)
      return
    }
    response.redirect(303, `/jobs/${id(request)}#answer`)
  })

  router.post('/jobs/:id/delete', async (request, response) => {
    await store.remove('job', id(request), null)
    response.redirect(303, `/jobs?deleted=${id(request)}`)
  })
  router.post('/jobs/:id/restore', async (request, response) => {
    await store.restore('job', id(request))
    response.redirect(303, `/jobs/${id(request)}`)
  })
  return router
}
