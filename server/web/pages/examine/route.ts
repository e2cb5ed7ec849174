import { type Request, type Response, Router } from 'express'
import { z } from 'zod'
import {
  examinedOf,
  keepFound,
  keepReading,
  keepSeen,
  type Result,
  takeBackFound,
} from '../../../bench/jobs/examined.js'
import type { Job } from '../../../bench/jobs/job.js'
import { jobDraft } from '../../../bench/jobs/jobDraft.js'
import { openStops } from '../../../bench/jobs/stops.js'
import type { CheckRequest } from '../../../chain/case/request.js'
import type { Examined, Stop } from '../../../examine/examine.js'
import { type Found, mendedKey, mendedOf, type ReadingSeen } from '../../../examine/request.js'
import { mayBeTungsten } from '../../../plan/firstPower/lampChoice.js'
import { causes } from '../../../tables/causes.js'
import { whatWasSeen } from '../../../tables/whatWasSeen.js'
import { say } from '../../../words/phrase.js'
import { tell } from '../../../words/tell.js'
import type { Context } from '../../context.js'
import { examineCheck, type LampsBefore } from '../../examined.js'
import { entryId, onceField } from '../../once.js'
import { show } from '../../page.js'
import { caseName } from '../../parts/caseName.js'
import { type FormFault, FormReader } from '../../parts/formState.js'
import { addressOf, checkNames, readCheckForm } from '../check/form.js'
import { type ExamineState, stateOf, stateQuery } from './state.js'
import { type Deeds, examineView, readingChoices } from './view.js'

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
  const value = form.number('value', {
    label: 'What the meter showed',
    unit: chosen.unit,
    min: -1e6,
    max: 1e9,
    required: true,
  })
  const { key, unit, state } = chosen
  return { form, reading: value === null ? null : { key, value, unit, ...(state && { state }) } }
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
    const now = reading ? { ...state, readings: [...state.readings, reading] } : state
    // what a form sends, and several ticks, are put together into one address
    const sentApart = 'what' in sent || 'value' in sent || Array.isArray(sent.seen)
    if (all.length === 0 && sentApart) {
      response.redirect(303, address(now))
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

  const page = async (
    request: Request,
    response: Response,
    typed?: { form: FormReader; faults: FormFault[] },
  ): Promise<void> => {
    const { id, body: job } = await store.get<Job>('job', idOf(request))
    const { observations, found, readings } = examinedOf(job)
    const state = { seen: observations, found, readings }
    const action = `/jobs/${id}/examine`
    const model = examineView({
      request: job.check,
      state,
      examined: examinedWith(job.check, state, lampsOf(job.plan), heldOf(job)),
      deeds: {
        found: (results) => ({
          send: Object.entries(results).map(([name, value]) => ({ name, value: [value].flat().join(',') })),
        }),
        form: { method: 'post', action, hidden: [] },
      },
      reading: typed?.form.state ?? new FormReader({}, [], String).state,
      faults: typed?.faults ?? [],
      name: job.name,
      back: { href: `/jobs/${id}`, text: 'Back to the job' },
      keep: null,
      inJob: true,
    })
    show(request, response, { view: 'examine', model })
  }

  router.get('/jobs/:id/examine', (request, response) => page(request, response))

  router.post('/jobs/:id/examine', async (request, response) => {
    const { once: _once, ...sent } = (request.body ?? {}) as Sent
    const { body: job } = await store.get<Job>('job', idOf(request))
    const { state, faults } = stateOf(sent)
    const { form, reading } = readingSent(sent, job.check)
    const back = typeof sent.back === 'string' && causeWords.has(sent.back) ? sent.back : null
    const all = [...faults, ...form.faults]
    if (all.length > 0) return page(request, response, { form, faults: all })
    const mark = { id: entryId(onceField(request), idOf(request), 'examine', JSON.stringify(sent)), at: now() }
    await store.change<Job>('job', idOf(request), null, ({ body, version }) => {
      const changed =
        back !== null
          ? takeBackFound(body, [back], `Examined, taken back: ${causeWords.get(back)}.`, mark)
          : reading
            ? keepReading(
                body,
                reading,
                `Examined: ${reading.key} read as ${reading.value} ${reading.unit}${reading.state ? `, ${reading.state}` : ''}.`,
                mark,
              )
            : state.found.length > 0
              ? keepFound(body, resultOf(state.found, body), { ...mark, version: version + 1 })
              : 'seen' in sent
                ? keepSeen(
                    body,
                    state.seen,
                    `Seen: ${state.seen.map((key) => seenWords.get(key)).join('; ') || 'nothing'}.`,
                    mark,
                  )
                : body
      return changed === body ? null : jobDraft(changed)
    })
    response.redirect(303, `/jobs/${idOf(request)}/examine`)
  })
  return router
}

const causeWords = new Map(causes.map(({ key, cause }) => [key, cause]))
const seenWords = new Map(whatWasSeen.map(({ key, words }) => [key, words]))

/** What the job keeps of a result: a confirmed cause brings its part, with what it must be rated for at the place of the job. */
function resultOf(found: readonly Found[], job: Job): Result {
  const asked = examinedOf(job)
  const { causes: told } = tell(
    examineCheck({
      check: job.check,
      observations: [...asked.observations],
      readings: [...asked.readings],
      found: [...asked.found, ...found],
      lamps: null,
    }),
  )
  const confirmed = told.find(({ key }) => found.some(({ cause, result }) => cause === key && result === 'confirmed'))
  const words = found.map(({ cause, result }) => {
    const of = causeWords.get(cause)
    return of === undefined
      ? `mended, and what it may have taken looked at: ${causeWords.get(mendedOf(cause) ?? cause)}`
      : `${result}: ${of}`
  })
  return {
    found,
    words: `Examined, ${words.join('; ')}.`,
    part: confirmed?.part
      ? { name: confirmed.part.name, note: [confirmed.part.rated, confirmed.remedy].filter(Boolean).join('. ') }
      : null,
  }
}
