import { detailsMark } from '../../../bench/jobs/detailsMark.js'
import { canUndo } from '../../../bench/jobs/factChange.js'
import type { FactChange, Job, Reading, ReadingLimits } from '../../../bench/jobs/job.js'
import { partStates } from '../../../bench/jobs/job.js'
import { limitsOfJob, stepName } from '../../../bench/jobs/laterLimits.js'
import { limitsText, readText } from '../../../bench/jobs/readingFinding.js'
import { latestReadings, openParts, standing, type Wait } from '../../../bench/jobs/standing.js'
import { openStops } from '../../../bench/jobs/stops.js'
import type { Outcome, ToldFinding } from '../../../chain/finding.js'
import { topicTag } from '../../../chain/topicTag.js'
import { labelOf } from '../../../facts/boxes.js'
import { numbersOf } from '../../../plan/checklist.js'
import type { Kept, Photo } from '../../../store/store.js'
import type { Phrase, Words } from '../../../words/phrase.js'
import { jobChecklist } from '../../checklistOf.js'
import { valuesOf } from '../../jobFacts.js'
import { head, type PageHead } from '../../page.js'
import { day, lasting, type Moment, moment, untilDay } from '../../parts/dates.js'
import type { FormFault, FormState } from '../../parts/formState.js'
import { mostPhotos } from '../../parts/keepPhoto.js'
import { type PhotoView, photoViews } from '../../parts/photoViews.js'
import { givenOf } from '../../parts/planGiven.js'
import { type Qr, qr } from '../../parts/qr.js'
import { tally, verdictWords } from '../../parts/verdictWords.js'
import { checkAddress } from '../check/checkAddress.js'
import { readCheckForm } from '../check/form.js'
import type { NextView } from '../check/nextView.js'
import { firstPowerQuery, firstPowerValues, machineInputs, planLabel, readFirstPowerForm } from '../firstPower/form.js'
import { type FactsPage, jobAnswer, waysOf } from './factsView.js'
import { boxesOf, detailLabels, observedLines, worksChoices } from './observed.js'
import { partWords, standingWords } from './standingWords.js'

interface StepLine {
  key: string
  text: string
  expected: Phrase
  /** `word` stands in place of the outcome's own; null leaves it */
  last: { text: Phrase; at: Moment; outcome: Outcome; word: string | null } | null
}

interface PartLine {
  id: string
  version: number
  name: string
  stateText: string
  note: string
  /** the day it should come, of a part that is still to come */
  expected: { day: string; text: string; late: boolean } | null
  form: FormState
  since: Moment
  lasting: string
}

/** A change of facts, with what it did to the outcome. */
export interface ChangeLine {
  id: string
  at: Moment
  facts: { label: string; before: Words; after: Words }[]
  /** what the verdict became; null where it stayed */
  verdict: { before: string; after: string } | null
  turned: { topic: string; before: string | null; after: string | null; outcome: Outcome | null }[]
  /** it takes another change back */
  undoes: boolean
  /** it can be taken back */
  canUndo: boolean
}

/** What someone else kept meanwhile, beside what was typed here. */
export interface ChangedField {
  label: string
  kept: string
  typed: string
}

/** The forms of the page, by name; each holds what was typed where it was refused. */
export interface JobForms {
  details: FormState
  reading: FormState
  part: FormState
  log: FormState
  photo: FormState
  /** the cause of one stop: `of` says which */
  cause: FormState
  /** taking back one reading: `entry` says which */
  withdraw: FormState
}

export type JobFormName = keyof JobForms

export interface JobPage {
  page: PageHead
  id: string
  /** what the name and the observations were when the page was made */
  seen: string
  name: string
  /** where the server can be reached over a network: how a phone opens this job */
  phone: { address: string | null; code: Qr | null } | null
  standing: {
    outcome: Outcome | null
    title: string
    text: string
    waits: { for: Wait['for']; text: string; since: Moment; lasting: string }[]
  }
  /** what holds the job, first on its page */
  stops: { of: string; where: string; title: string; action: string; at: Moment; reading: boolean }[]
  verdict: { outcome: Outcome; title: string; text: string }
  /** as it would be judged today: the answer in a sentence, the chain, and what to do next, answered here */
  answer: Words
  result: FactsPage['result']
  /** null where the check has more rows than forms have */
  next: NextView | null
  waiting: number
  /** no box of a question was filled yet */
  form: FormState
  /** the ways to the facts of each thing; none where forms cannot hold them */
  ways: FactsPage['ways']
  /** the plates at the head, each with its photo */
  plates: { title: string; words: string; photo: PhotoView | null }[]
  /** the change of facts made last */
  changedLast: ChangeLine | null
  tally: Phrase
  findings: ToldFinding[]
  judged: {
    at: Moment
    dataVersion: string /** the tables or rules changed since */
    outdated: boolean
    earlier: number
  }
  /** the check, and the plan with its lamps, to be opened again */
  address: string
  firstPower: string
  choices: {
    parts: { value: string; label: string }[]
    works: typeof worksChoices
    captions: { value: string; label: string }[]
  }
  steps: StepLine[]
  readings: {
    id: string
    text: Phrase
    word: string | null
    key: string
    at: Moment
    /** why it was taken back; null where it counts */
    withdrawn: string | null
    finding: ToldFinding
  }[]
  parts: PartLine[]
  log: { text: string; at: Moment; change: ChangeLine | null }[]
  photos: PhotoView[]
  /** a photo that was just deleted and can be brought back */
  deletedPhoto: string | null
  roomForPhotos: boolean
  /** what was seen at first power, for paper, where the form is left out */
  /** how the boxes of name and observations are called */
  detailLabels: Readonly<Record<string, string>>
  observed: { label: string; value: Words }[]
  forms: JobForms
  changed: ChangedField[]
  /** a fault of the place where records are kept, or null */
  notSaved: string | null
}

const stageWords: Record<string, string> = {
  before: 'Before',
  look: 'Look',
  gate: 'Before any power',
  'supply-alone': 'Supply alone',
  'dummy-load': 'Dummy load',
  'bench-supply': 'Bench supply',
  together: 'Together',
  'inside-stripped': 'Machine stripped',
  'inside-whole': 'Machine behind the lamp',
  'inside-full': 'Full mains',
  full: 'Full mains',
}

/** A step with its number on paper and the stage its key begins with. */
function stepText({ key, text: words }: ReadingLimits, numbers: ReadonlyMap<string, string>): string {
  const stage = stageWords[key.split('.')[0] ?? '']
  return [numbers.get(key), stage === undefined ? words : `${stage}: ${words}`].filter(Boolean).join(' ')
}

/** What the outcome of a reading is called; null for the usual word. */
const readingWord = ({ finding }: Reading): string | null =>
  ({ clear: 'Within its limits', unknown: 'No limit known', caution: null, stop: null })[finding.outcome]

const emptyForm = (values: Record<string, string> = {}): FormState => ({ values, errors: {}, shown: {}, read: {} })

/** The form of name and observations as they are kept. */
export const detailsForm = ({ name, observations }: Job): FormState => ({
  ...emptyForm({ name, ...boxesOf(observations) }),
  filled: true,
})

export interface JobShown {
  kept: Kept<Job>
  photos: Photo[]
  deletedPhoto: string | null
  now: number
  dataVersion: string
  /** whether the server can be reached over a network */
  shared: boolean
  /** the address of the job for a phone on that network; null where none is known */
  phone: string | null
  /** forms with what was typed, where one was refused */
  forms?: Partial<JobForms>
  /** the form of one part with what was typed, where that was refused */
  typedPart?: { id: string; form: FormState } | null
  faults?: FormFault[]
  changed?: ChangedField[]
  notSaved?: string | null
}

function addressesOf(job: Job): { address: string; firstPower: string } {
  try {
    const address = checkAddress(job.check)
    const given = firstPowerQuery(firstPowerValues(givenOf(job)))
    return { address, firstPower: `/first-power${address.slice(1)}${given === '' ? '' : `&${given}`}` }
  } catch (error) {
    // a check sent as JSON may have more rails than the form has rows
    if (error instanceof RangeError) return { address: '/', firstPower: '/first-power' }
    throw error
  }
}

/** A value as its address carries it, as a person reads it. */
const readable = (fact: string, value: string): Words =>
  value === ''
    ? 'not entered'
    : (machineInputs.find((one) => fact === 'takes' && one.value === value)?.label ??
      readFirstPowerForm({ [fact]: value }).state.shown[fact] ??
      value)

function changeLine(changes: readonly FactChange[], change: FactChange): ChangeLine {
  const { before, after } = change.verdict
  return {
    id: change.id,
    at: moment(change.at),
    facts: change.facts.map(({ fact, ...value }) => ({
      label: planLabel(fact) ?? labelOf(fact),
      before: readable(fact, value.before),
      after: readable(fact, value.after),
    })),
    verdict: before === after ? null : { before: verdictWords[before].title, after: verdictWords[after].title },
    turned: change.turned.map((one) => ({
      topic: topicTag(one.topic),
      before: one.before?.title ?? null,
      after: one.after?.title ?? null,
      outcome: one.after?.outcome ?? null,
    })),
    undoes: change.undoes !== undefined,
    canUndo: canUndo(changes, change),
  }
}

/** What was written down and what was changed, the last first. */
function logOf({ log, changes = [] }: Job): JobPage['log'] {
  const written = log.map(({ at, text: words }) => ({ at, text: words, change: null }))
  const changed = changes.map((one) => ({ at: one.at, text: '', change: changeLine(changes, one) }))
  return [...written, ...changed]
    .toSorted((one, other) => other.at - one.at)
    .map((entry) => ({ ...entry, at: moment(entry.at) }))
}

/** The plates of a job, each with the photo that shows it; a machine with its supply inside has one. */
function platesOf({ check }: Job, photos: readonly PhotoView[]): JobPage['plates'] {
  const plate = (title: string, words: string | null | undefined, caption: string) => {
    const photo = photos.find((one) => one.caption === caption) ?? null
    return words?.trim() || photo ? [{ title, words: words?.trim() ?? '', photo }] : []
  }
  return [
    ...plate('The machine’s plate', check.device.label, 'machine plate'),
    ...plate('The supply’s plate', check.supply.label, 'supply plate'),
  ]
}

/** Everything the page of one job shows. */
export function jobView({ kept, photos, deletedPhoto, now, dataVersion, shared, phone, ...typed }: JobShown): JobPage {
  const job = kept.body
  const { state, waits } = standing(job)
  const last = new Map(latestReadings(job.readings).map((reading) => [reading.key, reading]))
  const numbers = numbersOf(jobChecklist(job))
  const values = valuesOf(job)
  const form = values && readCheckForm(values)
  const shown = photoViews(photos, { supply: job.check.supply.label, machine: job.check.device.label })
  const changes = job.changes ?? []
  const lastChange = changes.at(-1)
  const steps = limitsOfJob(job).filter(({ unit }) => unit !== null)
  const line = (reading: Reading | undefined): StepLine['last'] =>
    reading
      ? {
          text: readText(reading),
          at: moment(reading.typedAt ?? reading.at),
          outcome: reading.finding.outcome,
          word: readingWord(reading),
        }
      : null
  return {
    page: head(job.name, 'jobs', typed.faults ?? []),
    id: kept.id,
    seen: detailsMark(job),
    phone: shared ? { address: phone, code: phone === null ? null : qr(phone) } : null,
    name: job.name,
    standing: {
      ...standingWords[state],
      waits: waits.map((wait) => ({
        for: wait.for,
        text: wait.text,
        since: day(wait.since),
        lasting: lasting(wait.since, now),
      })),
    },
    stops: openStops(job).map(({ key, at, ...stop }) => ({
      ...stop,
      at: moment(at),
      // what was observed besides is changed where it was written
      reading: key !== null,
    })),
    detailLabels,
    observed: observedLines(job.observations),
    verdict: verdictWords[job.assessment.verdict],
    ...jobAnswer(kept.id, job, form),
    form: form?.state ?? emptyForm(),
    ways: values ? waysOf(kept.id, null) : [],
    plates: platesOf(job, shown),
    changedLast: lastChange ? changeLine(changes, lastChange) : null,
    tally: tally(job.assessment.findings),
    findings: job.assessment.findings,
    judged: {
      at: moment(job.assessment.judgedAt),
      dataVersion: job.assessment.dataVersion,
      outdated: job.assessment.dataVersion !== dataVersion,
      earlier: job.earlier.length,
    },
    ...addressesOf(job),
    choices: {
      parts: partStates.map((value) => ({ value, label: partWords[value] })),
      works: worksChoices,
      captions: [
        { value: 'supply plate', label: 'The supply’s plate' },
        { value: 'machine plate', label: 'The machine’s plate' },
        { value: 'inside', label: 'Inside' },
        { value: 'outside', label: 'Outside' },
      ],
    },
    steps: steps.map((step) => ({
      key: step.key,
      text: stepText(step, numbers),
      atBench: numbers.has(step.key),
      expected: limitsText(step),
      last: line(last.get(step.key)),
    })),
    readings: job.readings.toReversed().map((reading) => ({
      id: reading.id,
      withdrawn: reading.withdrawn?.why ?? null,
      text: readText(reading),
      word: readingWord(reading),
      key: stepName(job, reading.key),
      at: moment(reading.typedAt ?? reading.at),
      finding: reading.finding,
    })),
    parts: job.parts.map((part) => ({
      id: part.id,
      version: part.version,
      name: part.name,
      stateText: partWords[part.state],
      note: part.note ?? '',
      form:
        typed.typedPart?.id === part.id
          ? typed.typedPart.form
          : emptyForm({ state: part.state, note: part.note ?? '', expected: part.expected ?? '' }),
      expected:
        part.expected !== undefined && openParts([part]).length > 0
          ? { day: part.expected, ...untilDay(part.expected, now) }
          : null,
      since: day(part.since),
      lasting: lasting(part.since, now),
    })),
    log: logOf(job),
    photos: shown,
    deletedPhoto,
    roomForPhotos: photos.length < mostPhotos,
    forms: {
      details: typed.forms?.details ?? detailsForm(job),
      reading: typed.forms?.reading ?? emptyForm(),
      part: typed.forms?.part ?? emptyForm({ state: 'wanted' }),
      log: typed.forms?.log ?? emptyForm(),
      photo: typed.forms?.photo ?? emptyForm({ caption: 'supply plate' }),
      cause: typed.forms?.cause ?? emptyForm(),
      withdraw: typed.forms?.withdraw ?? emptyForm(),
    },
    changed: typed.changed ?? [],
    notSaved: typed.notSaved ?? null,
  }
}
