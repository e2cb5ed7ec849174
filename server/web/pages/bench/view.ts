import type { Job, ReadingLimits } from '../../../bench/jobs/job.js'
import { limitsFor } from '../../../bench/jobs/laterLimits.js'
import { openGates } from '../../../bench/jobs/openGates.js'
import { limitsText } from '../../../bench/jobs/readingFinding.js'
import { latestReadings } from '../../../bench/jobs/standing.js'
import { openStops } from '../../../bench/jobs/stops.js'
import { type NumberedLine, numbersOf } from '../../../plan/checklist.js'
import { noResultYet } from '../../../plan/gateResults.js'
import type { Kept } from '../../../store/store.js'
import { behindHeadline, headline } from '../../../words/headline.js'
import { type Phrase, say, type Words } from '../../../words/phrase.js'
import { inUnit } from '../../../words/unit.js'
import { jobChecklist } from '../../checklistOf.js'
import { unitsShown } from '../../meter.js'
import { head, type PageHead } from '../../page.js'
import { moment } from '../../parts/dates.js'
import type { FormFault, FormState } from '../../parts/formState.js'
import { type Done, doneOf } from '../checklist/view.js'
import type { JobPage } from '../jobs/view.js'

interface BenchStep {
  key: string
  number: string
  stage: Words
  /** what is read at a glance, and what is left of the line of the paper */
  text: Words
  rest: Words
  /** whose work it is, where it is not the reader’s */
  qualified: boolean
  /** in one sentence; what comes of it and how to avoid it are in `more` */
  hazard: Words | null
  signal: string | null
  /** what folds away */
  more: Words[]
  /** gates that it waits for */
  gates: { key: string; number: string }[]
  /** gates are open, and it was not asked for all the same */
  waiting: boolean
  despite: boolean
  expect: Words | null
  stopIf: Words | null
  /** something is waited for: it has power, or is read */
  timed: boolean
  /** null: nothing is measured, it is done or wrong */
  unit: string | null
  units: readonly string[]
  done: Done | null
  previous: string | null
  next: string | null
  current: boolean
  form: FormState
}

/** What the form and buttons of any step are made of, for the template that the script fills in. */
type StepHands = Pick<
  BenchStep,
  | 'key'
  | 'number'
  | 'gates'
  | 'waiting'
  | 'despite'
  | 'timed'
  | 'unit'
  | 'units'
  | 'done'
  | 'previous'
  | 'next'
  | 'form'
>

export interface BenchPage {
  page: PageHead
  id: string
  name: string
  stops: JobPage['stops']
  forms: Pick<JobPage['forms'], 'cause' | 'withdraw'>
  steps: BenchStep[]
  blank: StepHands
  /** what is said where gates are waited for */
  noPowerBefore: Words
  /** what the phone judges each step by, as JSON for a script element */
  limits: string
  /** how many lines there are */
  of: number
  notSaved: string | null
}

/** Words of a sentence that are read at a glance. */
const mostWords = 20

const empty: FormState = { values: {}, errors: {}, shown: {}, read: {} }

/** A step of which nothing is known yet. */
const blank: StepHands = {
  key: '',
  number: '',
  gates: [{ key: '', number: '' }],
  waiting: true,
  despite: false,
  timed: true,
  unit: null,
  units: [],
  done: { id: '', text: '', at: { iso: '', text: '' }, stop: false },
  previous: '-',
  next: '-',
  form: empty,
}

/** JSON that can stand in a script element: no tag ends it. */
const scriptJson = (value: unknown): string =>
  JSON.stringify(value, (_key, one) => one ?? undefined).replaceAll('<', '\\u003c')

type JudgedBy = ReadingLimits & { before: number | null }

/** What the phone needs of a step to judge it, with what was read last at the step that it may not exceed. */
function judgedBy(job: Job, line: NumberedLine): JudgedBy {
  const { key, unit, low, high, strict, notAbove, power, link } = line
  const limits = limitsFor(job, key) ?? { key, text: '', unit, low, high, stopIf: null, strict, notAbove, power, link }
  const last = latestReadings(job.readings).find((reading) => reading.key === limits.notAbove)
  const before = last?.value == null || limits.unit === null ? null : inUnit(last.value, last.unit, limits.unit)
  return { ...limits, before }
}

/** The next line that is not done: behind this one, else the first there is; the last where all are done. */
function nextOf(keys: readonly string[], done: ReadonlyMap<string, unknown>, after: string | null): string | null {
  const open = (key: string): boolean => !done.has(key)
  return keys.slice(after === null ? 0 : keys.indexOf(after) + 1).find(open) ?? keys.find(open) ?? keys.at(-1) ?? null
}

/** Where one goes on once a step is done. */
export const stepAfter = (job: Job, after: string): string | null =>
  nextOf(
    jobChecklist(job).stages.flatMap(({ lines }) => lines.map(({ key }) => key)),
    doneOf(job),
    after,
  )

const noPowerBefore = say`${noResultYet} Nothing has power before.`

/** Why a step under power cannot be done yet. */
export const waitsFor = (gates: readonly string[], numbers: ReadonlyMap<string, string>): Phrase =>
  say`Waits for ${numbers.get(gates[0] ?? '') ?? ''}${gates.length > 1 ? say` and ${gates.length - 1} more` : ''}: ${noPowerBefore}`

/** One step a screen: every line of the paper in its order, the one that is next in sight. */
export function benchView(
  kept: Kept<Job>,
  asked: { step: string | null; despite: boolean },
  typed: { key: string; form: FormState; faults: readonly FormFault[] } | null,
  notSaved: string | null = null,
): BenchPage {
  const job = kept.body
  const checklist = jobChecklist(job)
  const done = doneOf(job)
  const lines = checklist.stages.flatMap((stage) =>
    stage.lines.map((line) => ({ line, stage, limits: judgedBy(job, line) })),
  )
  const keys = lines.map(({ line }) => line.key)
  const numbers = numbersOf(checklist)
  const wanted = typed?.key ?? asked.step
  const wantedOrNext = keys.includes(wanted ?? '') ? wanted : nextOf(keys, done, null)
  return {
    page: head(`At the machine: ${job.name}`, 'jobs', [...(typed?.faults ?? [])]),
    id: kept.id,
    name: job.name,
    stops: openStops(job).map(({ at, ...stop }) => ({ ...stop, at: moment(at), reading: stop.key !== null })),
    forms: { cause: empty, withdraw: empty },
    of: lines.length,
    notSaved,
    blank,
    noPowerBefore,
    // the page has its key and its number
    limits: scriptJson(Object.fromEntries(lines.map(({ limits: { key, text: _, ...limits } }) => [key, limits]))),
    steps: lines.map(({ line, stage, limits }, at) => {
      const expect = limits.unit === null ? line.expect : (line.expect ?? limitsText(limits))
      const gates = openGates(job, line.key).map((key) => ({ key, number: numbers.get(key) ?? key }))
      const current = line.key === wantedOrNext
      return {
        key: line.key,
        number: line.number,
        stage: stage.title,
        text: headline(line.text, mostWords),
        rest: behindHeadline(line.text, mostWords),
        qualified: line.who === 'qualified',
        hazard: line.caution && headline(line.caution.hazard, mostWords),
        signal: line.caution?.signal ?? null,
        more: [
          ...(expect === null ? [] : [behindHeadline(expect, mostWords)]),
          ...(line.caution
            ? [say`${behindHeadline(line.caution.hazard, mostWords)} ${line.caution.consequence} ${line.caution.avoid}`]
            : []),
        ],
        gates,
        waiting: gates.length > 0 && !(current && asked.despite),
        despite: gates.length > 0 && current && asked.despite,
        expect: expect && headline(expect, mostWords),
        stopIf: line.stopIf,
        timed: line.power !== 'none' || limits.unit !== null,
        unit: limits.unit,
        units: limits.unit === null ? [] : unitsShown(limits.unit),
        done: done.get(line.key) ?? null,
        previous: keys[at - 1] ?? null,
        next: keys[at + 1] ?? null,
        current,
        form: typed?.key === line.key ? typed.form : empty,
      }
    }),
  }
}
