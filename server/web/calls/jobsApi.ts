import { type Request, Router } from 'express'
import type { Job } from '../../bench/jobs/job.js'
import {
  addLog,
  addPart,
  addReading,
  changePart,
  judgeAgain,
  patchJob,
  removePart,
  withReadingsJudged,
} from '../../bench/jobs/jobChange.js'
import { type JobSummary, jobDraft } from '../../bench/jobs/jobDraft.js'
import { newJob } from '../../bench/jobs/newJob.js'
import { direction, findingChanges } from '../../bench/jobs/rejudge.js'
import { standingStates } from '../../bench/jobs/standing.js'
import { prepareCase } from '../../chain/case/case.js'
import type { Kept } from '../../store/store.js'
import type { Context } from '../context.js'
import { judged, judgedAndPlanned } from '../judge.js'
import { entryId, onceHeader } from '../once.js'
import { parse } from '../parse.js'
import { conflictAs } from '../records/conflict.js'
import { assessmentJson, jobRecord, jobRow, logJson, partJson, readingJson } from '../records/jobRecord.js'
import {
  jobPatchSchema,
  jobsQuerySchema,
  logSchema,
  newJobSchema,
  partPatchSchema,
  partSchema,
  readingSchema,
  rejudgeSchema,
} from '../schemas/jobs.js'
import { mostListed, versionQuerySchema } from '../schemas/record.js'

/** The jobs on the bench as JSON. */
export function jobsApiRoutes({ store, now }: Context): Router {
  const router = Router()
  const all = '/api/jobs'
  const one = `${all}/:id`
  const entryOf = <Entry extends { id: string }>(entries: Entry[], id: string): Entry =>
    entries.find((entry) => entry.id === id) as Entry
  /** the id of what a call adds: the same for the same call sent again with its key, so that it is added once */
  const newEntry = (request: Request, given: unknown): string =>
    entryId(onceHeader(request), request.path, JSON.stringify(given))
  const record = async (kept: Kept<Job>) => jobRecord(kept, await store.photos(kept.id))
  const change = (id: string, version: number | null, next: (job: Job, version: number) => Job): Promise<Kept<Job>> =>
    conflictAs(
      record,
      store.change<Job>('job', id, version, (kept) => {
        const job = next(kept.body, kept.version + 1)
        return job === kept.body ? null : jobDraft(job)
      }),
    )

  router.get(all, async (request, response) => {
    const { search, limit = mostListed, offset, state } = parse(jobsQuerySchema, request.query)
    const states = state === undefined ? undefined : [state]
    const { rows, total } = await store.list<JobSummary>('job', { search, states, order: 'latest', limit, offset })
    const counts = await store.countStates('job')
    const byState = Object.fromEntries(standingStates.map((name) => [name, counts[name] ?? 0]))
    response.json({ jobs: rows.map(jobRow), total, states: byState })
  })
  router.post(all, async (request, response) => {
    const given = parse(newJobSchema, request.body)
    const { name, check, plan } = given
    const job = newJob({ name, ...judgedAndPlanned(check, plan ?? null, now()) })
    const kept = await store.add('job', jobDraft(job), newEntry(request, given))
    response
      .status(201)
      .location(`${all}/${kept.id}`)
      .json(await record(kept))
  })
  router.get(one, async (request, response) => {
    response.json(await record(await store.get<Job>('job', request.params.id)))
  })
  router.patch(one, async (request, response) => {
    const { version, check, plan, ...patch } = parse(jobPatchSchema, request.body)
    const kept = await change(request.params.id, version, (job) => {
      const next = patchJob(job, patch)
      if (!check && plan === undefined) return next
      const { assessment, ...again } = judgedAndPlanned(check ?? job.check, plan ?? null, now())
      const replanned = withReadingsJudged({ ...next, ...again })
      return check ? judgeAgain(replanned, assessment) : replanned
    })
    response.json(await record(kept))
  })
  router.delete(one, async (request, response) => {
    const version = parse(versionQuerySchema, request.query.version) ?? null
    await conflictAs(record, store.remove('job', request.params.id, version))
    response.status(204).end()
  })
  router.post(`${one}/restore`, async (request, response) => {
    response.json(await record(await store.restore<Job>('job', request.params.id)))
  })

  router.post(`${one}/readings`, async (request, response) => {
    const given = parse(readingSchema, request.body)
    const id = newEntry(request, given)
    const kept = await change(request.params.id, null, (job) => addReading(job, given, { id, at: now() }))
    response.status(201).json(readingJson(entryOf(kept.body.readings, id)))
  })
  router.post(`${one}/parts`, async (request, response) => {
    const given = parse(partSchema, request.body)
    const id = newEntry(request, given)
    const kept = await change(request.params.id, null, (job, version) =>
      addPart(job, given, { id, at: now(), version }),
    )
    response.status(201).json(partJson(entryOf(kept.body.parts, id)))
  })
  router.patch(`${one}/parts/:partId`, async (request, response) => {
    const { id, partId } = request.params
    const given = parse(partPatchSchema, request.body)
    const kept = await conflictAs(
      partJson,
      store.change<Job>('job', id, null, (kept) =>
        jobDraft(changePart(kept.body, partId, given, { at: now(), version: kept.version + 1 })),
      ),
    )
    const part = kept.body.parts.find((other) => other.id === partId)
    response.json(part && partJson(part))
  })
  router.delete(`${one}/parts/:partId`, async (request, response) => {
    const { id, partId } = request.params
    await change(id, null, (job) => removePart(job, partId))
    response.status(204).end()
  })
  router.post(`${one}/log`, async (request, response) => {
    const { text } = parse(logSchema, request.body)
    const id = newEntry(request, text)
    const kept = await change(request.params.id, null, (job) => addLog(job, text, { id, at: now() }))
    response.status(201).json(logJson(entryOf(kept.body.log, id)))
  })

  /** what judging the check again with today's tables would change; nothing is kept */
  router.get(`${one}/rejudge`, async (request, response) => {
    const { body, version } = await store.get<Job>('job', request.params.id)
    const again = judged(prepareCase(body.check), now())
    const changes = findingChanges(body.assessment.findings, again.findings)
    response.json({
      version,
      before: { dataVersion: body.assessment.dataVersion, verdict: body.assessment.verdict },
      after: assessmentJson(again),
      changes: changes.map((entry) => ({ ...entry, direction: direction(entry) })),
    })
  })
  router.post(`${one}/rejudge`, async (request, response) => {
    const { version } = parse(rejudgeSchema, request.body ?? {})
    const kept = await change(request.params.id, version ?? null, (job) =>
      judgeAgain(job, judged(prepareCase(job.check), now())),
    )
    response.json(await record(kept))
  })
  return router
}
