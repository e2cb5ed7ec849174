import type { Job } from '../../../bench/jobs/job.js'
import { openStops } from '../../../bench/jobs/stops.js'
import { answerCheck } from '../../../chain/answer.js'
import { knownReading } from '../../../chain/case/knownReading.js'
import type { Outcome } from '../../../chain/finding.js'
import { boxOf, labelOf } from '../../../facts/boxes.js'
import { readPlate } from '../../../plate/readPlate.js'
import { say, type Words } from '../../../words/phrase.js'
import type { ChainLink } from '../../charts/powerChain.js'
import { powerChain } from '../../charts/powerChain.js'
import { markOf, type Values } from '../../jobFacts.js'
import { head, type PageHead } from '../../page.js'
import { countryName } from '../../parts/countryNames.js'
import { type FactField, type FactSection, factSection } from '../../parts/factFields.js'
import type { FormFault, FormState } from '../../parts/formState.js'
import { shownRows } from '../../parts/shownRows.js'
import { verdictWords } from '../../parts/verdictWords.js'
import { type CheckForm, readCheckForm } from '../check/form.js'
import { type NextView, nextView } from '../check/nextView.js'
import { plateValues, type ReadingView, readingView } from '../check/readingView.js'
import { type SectionName, sectionAt, sectionNamed, sectionNames, sectionOf } from '../check/sections.js'
import { type FirstPowerForm, lampRow, lampRows, machineInputs, planLabel, planNames } from '../firstPower/form.js'
import type { ChangedField } from './view.js'

/** What a page of facts is about: a thing, or what the first power-up is planned with. */
export type FactsOf = SectionName | 'plan'

export const factsOfNamed = (name: unknown): FactsOf | null => (name === 'plan' ? 'plan' : sectionNamed(name))

export interface FactsPage {
  page: PageHead
  id: string
  name: string
  result: { verdict: { outcome: Outcome }; chain: (ChainLink & { address: string })[] }
  answer: Words
  form: FormState
  at: FactsOf
  /** what the boxes held when the page was made */
  seen: string
  sections: { section: FactSection; reading: ReadingView | null }[]
  /** boxes of what the plan is worked out with; null where they are not asked for */
  plan: { lamps: { row: number; names: ReturnType<typeof lampRow> }[]; inputs: typeof machineInputs } | null
  ways: { words: string; href: string; current: boolean }[]
  changed: ChangedField[]
  notSaved: string | null
}

/** The section of a box within a job: what there is stands with the place. */
export const sectionOfBox = (box: string): FactsOf | null =>
  planLabel(box) !== null ? 'plan' : boxOf(box)?.key === 'arrangement' ? 'site' : sectionOf(box)

const addressOf = (id: string, section: FactsOf): string => `/jobs/${id}/facts?at=${section}`

/**
 * The verdict and the chain of a job as it would be judged today, each link leading to its facts in the job, and what is next.
 * A stop at the bench is its verdict, and its cause is all that is next.
 */
export function jobAnswer(id: string, job: Job, form: CheckForm | null) {
  const { check } = job
  const answered = answerCheck(check)
  const [stop] = openStops(job)
  return {
    answer: stop ? say`Stopped at the bench. ${stop.title}` : answered.answer,
    result: {
      verdict: { outcome: stop ? 'stop' : verdictWords[answered.verdict].outcome } as { outcome: Outcome },
      chain: powerChain(check, answered).map((link) => ({ ...link, address: addressOf(id, sectionAt(link.key)) })),
    },
    next: form && !stop ? nextView(answered, form, []) : (null as NextView | null),
    waiting: answered.waiting,
  }
}

/** The ways to the facts of each thing of a job. */
export const waysOf = (id: string, at: FactsOf | null): FactsPage['ways'] =>
  ([...sectionNames, 'plan'] as const).map((name) => ({
    words: name === 'plan' ? 'First power-up' : factSection(name, readCheckForm({}).state, false).legend,
    href: addressOf(id, name),
    current: name === at,
  }))

const fieldsOf = ({ plate, ahead, folds }: FactSection): FactField[] => [
  ...(plate ? [plate] : []),
  ...ahead,
  ...folds.flatMap(({ rows, fields }) => [...rows.flatMap((row) => row.fields), ...fields]),
]

/** No box offers the long list of countries. */
const withoutList = (field: FactField): FactField => {
  const { list: _, ...options } = field.options
  return { ...field, options }
}

/** Everything the page of a job's facts shows: the section asked for, and those that hold a fault. */
export function factsView({
  id,
  job,
  kept,
  typed,
  at,
  faults,
  meanwhile,
  notSaved,
}: {
  id: string
  job: Job
  /** what the boxes hold as kept */
  kept: Values
  /** the same with what was typed */
  typed: Pick<FirstPowerForm, 'state'>
  at: FactsOf
  faults: readonly FormFault[]
  /** boxes that someone else changed */
  meanwhile: readonly string[]
  notSaved: string | null
}): FactsPage {
  const { state } = typed
  const { label: supply } = job.check.supply
  const { label: machine } = job.check.device
  const confirmed = kept.confirmed?.split(/\s+/) ?? []
  const readings = {
    supply: supply ? readPlate(supply, 'supply') : null,
    device: machine ? readPlate(machine, 'device') : null,
  }
  const known = (of: 'supply' | 'device') => knownReading(readings[of], of, confirmed).known
  state.read = plateValues(known('supply'), known('device'))
  if (typeof state.shown.country === 'string') state.values.country = state.shown.country
  // errors of the job itself, not of a box
  for (const { name, message } of faults) state.errors[name] ??= message
  const open = sectionNames.filter((name) => name === at || faults.some((fault) => sectionOfBox(fault.name) === name))
  const sections = open.flatMap((name) => {
    const own = factSection(name, state, true)
    const section = { ...own, ahead: own.ahead.map(withoutList) }
    const reading = name === 'supply' || name === 'device' ? readings[name] : null
    const view = readingView(reading, name === 'device' ? 'device' : 'supply', confirmed)
    const whole = { section, reading: view && { ...view, doubts: [] } }
    return name === 'site' ? [{ section: factSection('arrangement', state, false), reading: null }, whole] : [whole]
  })
  const planned = at === 'plan' || faults.some((fault) => sectionOfBox(fault.name) === 'plan')
  const rows = lampRows.slice(0, shownRows('lamp', 2, state)).map((row) => ({ row, names: lampRow(row) }))
  const names = [
    ...sections.flatMap(({ section }) => fieldsOf(section).map(({ name }) => name)),
    ...(planned ? planNames.filter((name) => !/^lamp\d/.test(name)) : []),
    ...(planned ? rows.flatMap((row) => Object.values(row.names)) : []),
  ]
  const text = (name: string, value: string): string =>
    name === 'country' && value !== '' ? countryName(value) : value
  return {
    page: head(`The facts of ${job.name}`, 'jobs', [...faults]),
    id,
    name: job.name,
    ...jobAnswer(id, job, null),
    form: { ...state, filled: faults.length === 0 && meanwhile.length === 0 },
    at,
    seen: markOf(kept, names),
    sections,
    plan: planned ? { lamps: rows, inputs: machineInputs } : null,
    ways: waysOf(id, at),
    changed: meanwhile.map((name) => ({
      label: planLabel(name) ?? labelOf(name),
      kept: text(name, kept[name] ?? ''),
      typed: state.values[name] ?? '',
    })),
    notSaved,
  }
}
