import { type Request, type Response, Router } from 'express'
import { z } from 'zod'
import { examinedOf, takeBackFound } from '../../../bench/jobs/examined.js'
import type { Job } from '../../../bench/jobs/job.js'
import { jobDraft } from '../../../bench/jobs/jobDraft.js'
import { openStops } from '../../../bench/jobs/stops.js'
import type { CheckRequest } from '../../../chain/case/request.js'
import type { Examined, Stop } from '../../../examine/examine.js'
import { type Found, mendedKey, type ReadingSeen } from '../../../examine/examineRequest.js'
import { causeOf, isCause } from '../../../examine/suspects.js'
import { mayBeTungsten } from '../../../plan/firstPower/lampChoice.js'
import { StorageFault } from '../../../store/errors.js'
import { say } from '../../../words/phrase.js'
import type { Context } from '../../context.js'
import { examineCheck, type LampsBefore } from '../../examineCheck.js'
import { entryId, onceField } from '../../once.js'
import { show } from '../../page.js'
import { caseName } from '../../parts/caseName.js'
import { type FormFault, FormReader, type FormState } from '../../parts/formState.js'
import { metered } from '../../parts/metered.js'
import { addressOf, checkNames, readCheckForm } from '../check/form.js'
import { withFound, withReading, withSeen } from './keep.js'
import { readingChoices } from './readingChoices.js'
import { type ExamineState, stateOf, stateQuery } from './state.js'
import { type Deeds, examineView } from './view.js'

type Sent = Record<string, unknown>

const nothing: CheckRequest = { site: {}, supply: {}, device: {} }

/** What was typed as a reading: what it is of, and its number. */
const readingNames = ['what', 'value']

function readingSent(sent: Sent, request: CheckRequest): { form: FormReader; reading: ReadingSeen | null } {
  const form = new FormReader(sent, readingNames, (name) =>
    name === 'what' ? 'What was read' : 'What the meter showed',
  )
  const choices = readingChoices(request)
  const what = form.choice(
    'what',
    choices.map(({ value }) => value),
    'What was read',
  )
  const chosen = choices.find(({ value }) => value === what)
  if (!chosen) {
    if (form.text('value') !== null) form.fault('what', 'Choose what was read.')
    return { form, reading: null }
  }
  const value = metered(form, 'value', chosen.unit, null, true)
  const { key, unit, state } = chosen
  return { form, reading: form.faults.length > 0 ? null : { key, value, unit, ...(state && { state }) } }
}

const examinedWith = (
  request: CheckRequest,
  { seen, found, readings }: ExamineState,
  lamps: LampsBefore | null = null,
  held: readonly Stop[] = [],
): Examined | null =>
  seen.length + readings.length === 0
    ? null
    : examineCheck({ check: request, observations: [...seen], found: [...found], readings: [...readings], lamps }, held)

const lamp = z.object({ ratedV: z.number(), ratedW: z.number(), count: z.int().min(1).max(6) })
const oneLamp = z.object({ lamps: z.tuple([lamp.extend({ arrangement: z.enum(['series', 'parallel']) })]) })
const oneAtHand = z.object({ given: z.object({ lampsOnHand: z.tuple([lamp.extend({ count: z.literal(1) })]) }) })

/** The lamps that a plan has, or the one of tungsten that was at hand; null where there are others, so that nobody knows which was read. */
function lampsOf(plan: unknown): LampsBefore | null {
  const planned = oneLamp.safeParse(plan).data?.lamps[0]
  const used = planned ?? oneAtHand.safeParse(plan).data?.given.lampsOnHand[0]
  if (!used || !mayBeTungsten(used)) return null
  const { count, ratedV, ratedW } = used
  return {
    lamps: Array.from({ length: count }, () => ({ ratedV, ratedW })),
    arrangement: planned?.arrangement ?? 'series',
  }
}

/** What holds a job besides what was examined in it, of which the examination tells itself. */
const heldOf = (job: Job): Stop[] =>
  openStops(job).flatMap(({ of, title }) => (of.startsWith('examined-') ? [] : [{ title: say`${title}` }]))

type Results = Parameters<Deeds['found']>[0]

/** What a button says was found. */
const foundBy = ({ yes, no = [], done }: Results): Found[] => [
  ...(yes ? [{ cause: yes, result: 'confirmed' as const }] : []),
  ...no.map((cause) => ({ cause, result: 'excluded' as const })),
  ...(done ? [{ cause: mendedKey(done), result: 'confirmed' as const }] : []),
]

/** The state after a button. */
function after(state: ExamineState, results: Results): ExamineState {
  const gone = results.back ? [results.back, mendedKey(results.back)] : foundBy(results).map(({ cause }) => cause)
  return { ...state, found: [...state.found.filter(({ cause }) => !gone.includes(cause)), ...foundBy(results)] }
}

/** "/examine" holds all in its address; "/jobs/…/examine" keeps it in the job. */
export function examineRoutes({ store, now }: Context): Router {
  const router = Router()

  router.get('/examine', (request, response) => {
    const sent = request.query as Sent
    const check = readCheckForm(Object.fromEntries(Object.entries(sent).filter(([name]) => checkNames.includes(name))))
    const asked = check.usable ?? nothing
    const { state, faults } = stateOf(sent)
    const { form, reading } = readingSent(sent, asked)
    const address = (of: ExamineState): string => {
      const query = new URLSearchParams([...new URLSearchParams(addressOf(check.state.values)), ...stateQuery(of)])
      return query.size === 0 ? '/examine' : `/examine?${query}`
    }
    const all = [...check.faults, ...faults, ...form.faults]
    const withReading = reading ? { ...state, readings: [...state.readings, reading] } : state
    // what a form sends, and several ticks, are put together into one address
    const sentApart = 'what' in sent || 'value' in sent || Array.isArray(sent.seen)
    if (all.length === 0 && sentApart) {
      response.redirect(303, address(withReading))
      return
    }
    const query = addressOf(check.state.values)
    const model = examineView({
      request: asked,
      state,
      examined: examinedWith(asked, state),
      deeds: {
        found: (results) => {
          const href = address(after(state, results))
          const fields = [...new URLSearchParams(href.replace(/^[^?]*\??/, ''))]
          return { href, send: fields.map(([name, value]) => ({ name, value })) }
        },
        form: {
          method: 'get',
          action: '/examine',
          hidden: [...new URLSearchParams(query)].map(([name, value]) => ({ name, value })),
        },
      },
      reading: form.state,
      faults: all,
      name: caseName(asked),
      back:
        query === ''
          ? { href: '/', text: 'Begin a check: the figures are worked out from it' }
          : { href: `/?${query}`, text: 'Back to the check' },
      keep: query === '' ? null : query,
      inJob: false,
    })
    show(request, response, { view: 'examine', model })
  })

  const idOf = (request: Request): string => String(request.params.id)

  /** What was sent and is not kept, with the reason. */
  interface Refused {
    reading: FormState
    faults: readonly FormFault[]
    /** what was ticked, where the ticks were sent */
    seen: readonly string[] | null
    by: string
    notSaved?: string
    status?: number
  }

  const page = async (request: Request, response: Response, refused?: Refused): Promise<void> => {
    const { id, body: job } = await store.get<Job>('job', idOf(request))
    const { observations, found, readings } = examinedOf(job)
    const kept = { seen: observations, found, readings }
    const action = `/jobs/${id}/examine`
    const model = examineView({
      request: job.check,
      state: { ...kept, seen: refused?.seen ?? kept.seen },
      examined: examinedWith(job.check, kept, lampsOf(job.plan), heldOf(job)),
      deeds: {
        found: (results) => ({
          send: Object.entries(results).map(([name, value]) => ({ name, value: [value].flat().join(',') })),
        }),
        form: { method: 'post', action, hidden: [] },
      },
      reading: refused?.reading ?? new FormReader({}, [], String).state,
      by: refused?.by,
      faults: [...(refused?.faults ?? [])],
      notSaved: refused?.notSaved ?? null,
      name: job.name,
      back: { href: `/jobs/${id}`, text: 'Back to the job' },
      keep: null,
      inJob: true,
    })
    show(request, response, { view: 'examine', model, status: refused?.status })
  }

  router.get('/jobs/:id/examine', (request, response) => page(request, response))

  router.post('/jobs/:id/examine', async (request, response) => {
    const { once: _once, ...sent } = (request.body ?? {}) as Sent
    const { body: job } = await store.get<Job>('job', idOf(request))
    const { state, faults } = stateOf(sent)
    const { form, reading } = readingSent(sent, job.check)
    const back = typeof sent.back === 'string' && isCause(sent.back) ? sent.back : null
    const again = (more: Pick<Refused, 'faults' | 'notSaved' | 'status'>) =>
      page(request, response, {
        reading: form.state,
        seen: 'seen' in sent ? state.seen : null,
        by: typeof sent.by === 'string' ? sent.by : '',
        ...more,
      })
    const all = [...faults, ...form.faults]
    if (all.length > 0) return again({ faults: all })
    const mark = { id: entryId(onceField(request), idOf(request), 'examine', JSON.stringify(sent)), at: now() }
    const next = (body: Job, version: number): Job => {
      if (back !== null) return takeBackFound(body, [back], `Examined, taken back: ${causeOf(back).cause}.`, mark)
      if (reading) return withReading(body, reading, mark)
      if (state.found.length > 0) return withFound(body, state.found, { ...mark, version })
      return 'seen' in sent ? withSeen(body, state.seen, mark) : body
    }
    try {
      await store.change<Job>('job', idOf(request), null, ({ body, version }) => {
        const changed = next(body, version + 1)
        return changed === body ? null : jobDraft(changed)
      })
    } catch (error) {
      if (error instanceof StorageFault) return again({ faults: [], notSaved: error.message, status: error.status })
      throw error
    }
    response.redirect(303, `/jobs/${idOf(request)}/examine`)
  })
  return router
}
