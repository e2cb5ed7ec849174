import { z } from 'zod'
import type { Job } from '../../bench/jobs/job.js'
import {
  addCause,
  addLog,
  addPart,
  addReading,
  addTick,
  changePart,
  judgeAgain,
  patchJob,
  removePart,
  withdraw,
  withReadingsJudged,
} from '../../bench/jobs/jobChange.js'
import { type JobSummary, jobDraft } from '../../bench/jobs/jobDraft.js'
import { newJob } from '../../bench/jobs/newJob.js'
import { direction, findingChanges } from '../../bench/jobs/rejudge.js'
import { standingStates } from '../../bench/jobs/standing.js'
import { prepareCase } from '../../chain/case/case.js'
import { newId } from '../../store/openStore.js'
import type { Kept, Store } from '../../store/store.js'
import { jobChecklist } from '../checklistOf.js'
import { undone, withFacts } from '../jobFacts.js'
import { judged, judgedAndPlanned } from '../judge.js'
import { newEntry } from '../once.js'
import { parse } from '../parse.js'
import { givenOf, sentWith } from '../parts/planGiven.js'
import { conflictAs } from '../records/conflict.js'
import {
  assessmentJson,
  causeJson,
  jobRecord,
  jobRow,
  logJson,
  partJson,
  readingJson,
  tickJson,
} from '../records/jobRecord.js'
import * as answers from '../schemas/answers.js'
import * as schemas from '../schemas/jobs.js'
import { mostListed, versionQuerySchema } from '../schemas/record.js'
import { typedAtOf } from '../typedAt.js'
import { type Call, call } from './call.js'
import { recordCalls } from './records.js'

const all = '/api/jobs'
const one = `${all}/:id`

const entryOf = <Entry extends { id: string }>(entries: Entry[], id: string): Entry =>
  entries.find((entry) => entry.id === id) as Entry

const recordOf = async (store: Store, kept: Kept<Job>) => jobRecord(kept, await store.photos(kept.id))

const change = (
  store: Store,
  id: string,
  version: number | null,
  next: (job: Job, version: number) => Job,
): Promise<Kept<Job>> =>
  conflictAs(
    (kept: Kept<Job>) => recordOf(store, kept),
    store.change<Job>('job', id, version, (kept) => {
      const job = next(kept.body, kept.version + 1)
      return job === kept.body ? null : jobDraft(job)
    }),
  )

/** The jobs on the bench. */
export const jobCalls: readonly Call[] = [
  ...recordCalls(
    {
      group: 'Jobs',
      path: all,
      plural: 'jobs',
      noun: 'job',
      list: z.object({ jobs: z.array(answers.jobAnswer), total: z.number() }),
      record: answers.jobAnswer,
    },
    {
      body: schemas.newJobSchema,
      async run(given, { store, now, request }) {
        const { name, check, plan } = given
        const job = newJob({ name, ...judgedAndPlanned(check, plan ?? null, now()) })
        return recordOf(store, await store.add('job', jobDraft(job), newEntry(request, given)))
      },
    },
    {
      method: 'patch',
      body: schemas.jobPatchSchema,
      async run({ version, check, plan, given, ...patch }, { store, now, named }) {
        const kept = await change(store, named('id'), version, (job) => {
          const next = patchJob(job, patch, { id: newId(), at: now() })
          if (!check && !given && plan === undefined) return next
          const planned = { ...givenOf(job), ...sentWith(plan ?? null), ...given }
          const changed = withFacts(next, check ?? job.check, planned, { id: newId(), at: now() })
          if (changed !== next && plan == null) return changed
          const { assessment, ...replanned } = judgedAndPlanned(changed.check, plan ?? null, now(), planned)
          if (changed !== next) return withReadingsJudged({ ...changed, ...replanned }, changed)
          const held = withReadingsJudged({ ...next, ...replanned }, next)
          return check ? judgeAgain(held, assessment) : held
        })
        return recordOf(store, kept)
      },
    },
    {
      async list({ store, request }) {
        const { search, limit = mostListed, offset, state } = parse(schemas.jobsQuerySchema, request.query)
        const states = state === undefined ? undefined : [state]
        const { rows, total } = await store.list<JobSummary>('job', { search, states, order: 'latest', limit, offset })
        const counts = await store.countStates('job')
        const byState = Object.fromEntries(standingStates.map((name) => [name, counts[name] ?? 0]))
        return { jobs: rows.map(jobRow), total, states: byState }
      },
      one: async ({ store, named }) => recordOf(store, await store.get<Job>('job', named('id'))),
      async remove({ store, named, request }) {
        const version = parse(versionQuerySchema, request.query.version) ?? null
        await conflictAs((kept: Kept<Job>) => recordOf(store, kept), store.remove('job', named('id'), version))
      },
      restore: async ({ store, named }) => recordOf(store, await store.restore<Job>('job', named('id'))),
    },
  ),
  call({
    method: 'post',
    path: `${one}/readings`,
    group: 'Jobs',
    summary: 'Keep a reading, judged at once',
    body: schemas.readingSchema,
    answer: answers.readingAnswer,
    status: 201,
    once: true,
    async run(given, { store, now, named, request }) {
      const id = newEntry(request, given)
      const mark = { id, at: now(), typedAt: typedAtOf(given.typedAt, now()) }
      const kept = await change(store, named('id'), null, (job) => addReading(job, given, mark))
      return readingJson(entryOf(kept.body.readings, id))
    },
  }),
  call({
    method: 'post',
    path: `${one}/ticks`,
    group: 'Jobs',
    summary: 'Keep a step without a number as done, judged at once',
    body: schemas.tickSchema,
    answer: answers.tickAnswer,
    status: 201,
    once: true,
    async run(given, { store, now, named, request }) {
      const id = newEntry(request, given)
      const mark = { id, at: now(), typedAt: typedAtOf(given.typedAt, now()) }
      const tick = { ...given, words: given.words ?? null }
      const kept = await change(store, named('id'), null, (job) => addTick(job, tick, mark))
      return tickJson(entryOf(kept.body.ticks ?? [], id))
    },
  }),
  call({
    method: 'post',
    path: `${one}/causes`,
    group: 'Jobs',
    summary: 'Write the cause of a stop, so that the job goes on',
    body: schemas.causeSchema,
    answer: answers.causeAnswer,
    status: 201,
    once: true,
    async run(given, { store, now, named, request }) {
      const id = newEntry(request, given)
      const kept = await change(store, named('id'), null, (job) => addCause(job, given, { id, at: now() }))
      return causeJson(entryOf(kept.body.causes ?? [], id))
    },
  }),
  call({
    method: 'post',
    path: `${one}/entries/:entryId/withdraw`,
    group: 'Jobs',
    summary: 'Take a reading or a step back, with the reason',
    body: schemas.withdrawSchema,
    answer: answers.jobAnswer,
    async run({ why }, { store, now, named, request }) {
      const mark = { id: newEntry(request, why), at: now() }
      return recordOf(
        store,
        await change(store, named('id'), null, (job) => withdraw(job, named('entryId'), why, mark)),
      )
    },
  }),
  call({
    method: 'post',
    path: `${one}/parts`,
    group: 'Jobs',
    summary: 'Keep a part',
    body: schemas.partSchema,
    answer: answers.partAnswer,
    status: 201,
    once: true,
    async run(given, { store, now, named, request }) {
      const id = newEntry(request, given)
      const kept = await change(store, named('id'), null, (job, version) =>
        addPart(job, given, { id, at: now(), version }),
      )
      return partJson(entryOf(kept.body.parts, id))
    },
  }),
  call({
    method: 'delete',
    path: `${one}/parts/:partId`,
    group: 'Jobs',
    summary: 'Take a part away that is not needed after all',
    answer: 'nothing',
    status: 204,
    run: (_body, { store, named }) => change(store, named('id'), null, (job) => removePart(job, named('partId'))),
  }),
  call({
    method: 'patch',
    path: `${one}/parts/:partId`,
    group: 'Jobs',
    summary: 'Change a part',
    body: schemas.partPatchSchema,
    answer: answers.partAnswer,
    async run(given, { store, now, named }) {
      const kept = await conflictAs(
        partJson,
        store.change<Job>('job', named('id'), null, ({ body, version }) =>
          jobDraft(changePart(body, named('partId'), given, { at: now(), version: version + 1 })),
        ),
      )
      return partJson(entryOf(kept.body.parts, named('partId')))
    },
  }),
  call({
    method: 'post',
    path: `${one}/log`,
    group: 'Jobs',
    summary: 'Write into the log',
    body: schemas.logSchema,
    answer: z.looseObject({ text: z.string() }),
    status: 201,
    once: true,
    async run({ text }, { store, now, named, request }) {
      const id = newEntry(request, text)
      const kept = await change(store, named('id'), null, (job) => addLog(job, text, { id, at: now() }))
      return logJson(entryOf(kept.body.log, id))
    },
  }),
  call({
    method: 'post',
    path: `${one}/changes/:changeId/undo`,
    group: 'Jobs',
    summary: 'Take a change of facts back; that is a change of its own',
    answer: answers.jobAnswer,
    async run(_body, { store, now, named, request }) {
      const mark = { id: newEntry(request), at: now() }
      return recordOf(store, await change(store, named('id'), null, (job) => undone(job, named('changeId'), mark)))
    },
  }),
  call({
    method: 'get',
    path: `${one}/rejudge`,
    group: 'Jobs',
    summary: 'What judging anew would change',
    answer: answers.whatChanges,
    async run(_body, { store, now, named }) {
      const { body, version } = await store.get<Job>('job', named('id'))
      const again = judged(prepareCase(body.check), now())
      const changes = findingChanges(body.assessment.findings, again.findings)
      return {
        version,
        before: { dataVersion: body.assessment.dataVersion, verdict: body.assessment.verdict },
        after: assessmentJson(again),
        changes: changes.map((entry) => ({ ...entry, direction: direction(entry) })),
      }
    },
  }),
  call({
    method: 'post',
    path: `${one}/rejudge`,
    group: 'Jobs',
    summary: 'Judge anew with the data of today',
    body: schemas.rejudgeSchema,
    answer: answers.jobAnswer,
    async run({ version }, { store, now, named }) {
      const kept = await change(store, named('id'), version ?? null, (job) =>
        judgeAgain(job, judged(prepareCase(job.check), now())),
      )
      return recordOf(store, kept)
    },
  }),
  call({
    method: 'get',
    path: `${one}/checklist`,
    group: 'Jobs',
    summary: 'The bench checklist',
    answer: answers.checklistAnswer,
    async run(_body, { store, named }) {
      const { body } = await store.get<Job>('job', named('id'))
      return { name: body.name, dataVersion: body.assessment.dataVersion, ...jobChecklist(body) }
    },
  }),
]
