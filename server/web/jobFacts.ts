import { createHash } from 'node:crypto'
import { canUndo, changedValues, changeFacts } from '../bench/jobs/factChange.js'
import type { FactChange, Job } from '../bench/jobs/job.js'
import { addLog, Unfit } from '../bench/jobs/jobChange.js'
import { openStops } from '../bench/jobs/stops.js'
import { checkValues } from '../facts/address.js'
import { boxOf, labelOf } from '../facts/boxes.js'
import { type CheckRequest, checkSchema } from '../facts/check.js'
import type { FirstPowerOptions } from '../plan/planFirstPower.js'
import { Missing } from '../store/errors.js'
import { Unprocessable } from './errors.js'
import { judgedAndPlanned } from './judge.js'
import type { CheckForm } from './pages/check/form.js'
import { firstPowerValues, planLabel, readFirstPowerForm } from './pages/firstPower/form.js'
import { parse } from './parse.js'
import { jobName } from './parts/caseName.js'
import { givenOf } from './parts/planGiven.js'

export type Values = Record<string, string>

/** What the boxes of a job's check hold; null where it has more rows than forms have. */
export function valuesOf({ check }: Pick<Job, 'check'>): Values | null {
  try {
    return checkValues(check)
  } catch (error) {
    if (error instanceof RangeError) return null
    throw error
  }
}

/** What the boxes of a job's plan hold, besides those of its check. */
export const planValuesOf = (job: Pick<Job, 'plan'>): Values => firstPowerValues(givenOf(job))

/** Both, where there is no way on without them. */
function formValues(job: Job): Values {
  const values = valuesOf(job)
  if (values) return { ...values, ...planValuesOf(job) }
  throw new Unfit('check', 'This check has more rows than a form has boxes for; change it as JSON.')
}

const none: CheckRequest = { site: {}, supply: {}, device: {} }

/** The check that boxes tell of, as a job keeps it. */
export const checkOf = ({ usable }: CheckForm): CheckRequest => parse(checkSchema, usable ?? none)

interface Mark {
  id: string
  at: number
  undoes?: string
}

/** What boxes hold once they were read: "12,0 V" is "12". */
export function asRead(values: Values): Values {
  const { check, options } = readFirstPowerForm(values)
  return { ...checkValues(checkOf(check)), ...firstPowerValues(options) }
}

/**
 * A job with another check, or planned with something else, judged and planned by them. A name that the program gave follows the plates.
 *
 * @param given  what its plan is worked out with, lamps and the like
 */
export function withFacts(job: Job, check: CheckRequest, given: FirstPowerOptions, mark: Mark): Job {
  const planned = changedValues(planValuesOf(job), firstPowerValues(given))
  const changed = changeFacts(job, judgedAndPlanned(check, null, mark.at, given), { ...mark, planned })
  if (changed === job || job.name !== jobName(job.check)) return changed
  return { ...changed, name: jobName(check) }
}

/**
 * The same from boxes; of those of the plan that are not there, what is kept.
 *
 * @throws Unprocessable where a box holds what cannot be used
 */
export function withValues(job: Job, values: Values, mark: Mark): Job {
  const kept = planValuesOf(job)
  const { check, options, faults } = readFirstPowerForm({ ...kept, ...values })
  if (faults.length > 0) throw new Unprocessable(faults.map(({ name, message }) => ({ path: name, message })))
  const given = givenOf(job)
  const isSame = changedValues(kept, firstPowerValues(options)).length === 0
  return withFacts(job, checkOf(check), isSame ? given : { ...given, ...options }, mark)
}

/**
 * A job with one change of its facts taken back, as a change of its own that can be taken back in turn.
 *
 * @throws Missing where there is no such change
 * @throws Unfit where something of it was changed again
 */
export function undone(job: Job, changeId: string, mark: Omit<Mark, 'undoes'>): Job {
  const changes = job.changes ?? []
  if (changes.some(({ id }) => id === mark.id)) return job
  const change = changes.find(({ id }) => id === changeId)
  if (!change) throw new Missing('There is no such change in this job.')
  if (!canUndo(changes, change))
    throw new Unfit('change', 'Something of this was changed again since; take the later change back first.')
  const before = Object.fromEntries(change.facts.map(({ fact, before }) => [fact, before]))
  const back = withValues(job, { ...formValues(job), ...before }, { ...mark, undoes: changeId })
  return back === job ? job : addLog(back, undoneWords(back, change), mark)
}

/** What the log says of a change that was taken back: no stop goes with it, also one that only its facts made. */
function undoneWords(job: Job, { facts }: FactChange): string {
  const stops = openStops(job).map(({ where, title }) => `“${where}”: ${title}`)
  const names = [...new Set(facts.map(({ fact }) => planLabel(fact) ?? labelOf(fact)))].join(', ')
  return [
    `Taken back: ${names}.`,
    ...(stops.length === 0
      ? []
      : [
          'The job is stopped still, also by what was read under the facts of then, until each cause is written:',
          ...stops,
        ]),
  ]
    .join(' ')
    .slice(0, 10_000)
}

/** A mark of what some boxes hold: equal marks mean that nobody changed these between. */
export const markOf = (values: Values, names: readonly string[]): string =>
  createHash('sha256')
    .update(JSON.stringify([...names].sort().map((name) => [name, values[name] ?? ''])))
    .digest('base64url')
    .slice(0, 22)

/** Boxes that gather what was ticked one by one, and what parts it. */
const gathered = (name: string): RegExp | null => {
  const kind = boxOf(name)?.fact.kind
  return kind === 'keys' ? /\s+/ : kind === 'phrases' ? /\s*[\r\n]+\s*/ : null
}

/** The boxes of a check among what a form sent; of one sent several times, each. */
function boxesSent(body: Record<string, unknown>): [string, string[]][] {
  return Object.entries(body).flatMap(([name, raw]): [string, string[]][] => {
    if (boxOf(name) === undefined && planLabel(name) === null) return []
    const all = (Array.isArray(raw) ? raw : [raw]).filter((one) => typeof one === 'string')
    return [[name, all]]
  })
}

/** What a form of some facts sets: of a box that gathers, everything that was ticked. */
export const set = (body: Record<string, unknown>): Values =>
  Object.fromEntries(boxesSent(body).map(([name, all]) => [name, all.join(gathered(name) ? '\n' : '')]))

/** What answers add: those that are there; to a box that gathers they come in addition. */
export function answered(kept: Values, body: Record<string, unknown>): Values {
  const given = boxesSent(body).filter(([, all]) => all.some((one) => one.trim() !== ''))
  return Object.fromEntries(
    given.map(([name, all]) => {
      const parting = gathered(name)
      if (!parting) return [name, all.find((one) => one.trim() !== '') ?? '']
      const pieces = [kept[name] ?? '', ...all].flatMap((one) => one.split(parting)).filter((one) => one !== '')
      return [name, [...new Set(pieces)].join('\n')]
    }),
  )
}

/** Boxes that someone else filled otherwise meanwhile: those that differ from what is typed here. */
export const changedMeanwhile = (kept: Values, typed: Values, names: readonly string[]): string[] =>
  names.filter((name) => gathered(name) === null && (kept[name] ?? '') !== (typed[name] ?? ''))
