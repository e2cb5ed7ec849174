import { prepareCase } from '../../../chain/case/case.js'
import type { CheckRequest } from '../../../chain/case/request.js'
import { aroundOf } from '../../../examine/around.js'
import type { CauseTold, Examined, NextExamined } from '../../../examine/examine.js'
import { mendedOf } from '../../../examine/request.js'
import { causes } from '../../../tables/causes.js'
import { placesSeen, whatWasSeen } from '../../../tables/whatWasSeen.js'
import { capital, type Phrase, say, type Words } from '../../../words/phrase.js'
import { prose } from '../../../words/prose.js'
import { volts } from '../../../words/quantity.js'
import { head, type PageHead } from '../../page.js'
import type { FormFault, FormState } from '../../parts/formState.js'
import { type ExamineState, stateQuery } from './state.js'

/** What a button does: a link that says it in the address, or what its form sends. */
export interface Deed {
  /** the address that says it; absent in a job, where a form keeps it */
  href?: string
  /** the same as fields of a form */
  send: { name: string; value: string }[]
}

/** How the page does things, in the address or in a job. */
export interface Deeds {
  /** with these results added, or taken back */
  found: (results: { yes?: string; no?: readonly string[]; done?: string; back?: string }) => Deed
  /** where a form of the page goes, and what goes with it */
  form: { method: 'get' | 'post'; action: string; hidden: { name: string; value: string }[] }
}

interface ChoiceView {
  words: Words
  ifSo: Words
  deed: Deed
}

interface NextView {
  do: Words
  hands: Words | null
  power: Words | null
  expect: Words | null
  choices: ChoiceView[]
  /** none of what it tells of, and what that reads as */
  none: { deed: Deed; ifSo: Words | null } | null
}

interface CauseView
  extends Pick<CauseTold, 'cause' | 'likelihood' | 'because' | 'mayHaveTaken' | 'remedy' | 'confirmed' | 'mended'> {
  by: Words
  expect: Words
  otherwise: Words
}

interface FoundView {
  words: Words
  back: Deed
}

interface ExamineResult {
  seen: Examined['seen']
  atOnce: readonly Words[]
  never: readonly Words[]
  waitsFor: readonly Words[]
  first: NextView | null
  later: NextView[]
  causes: CauseView[]
  found: FoundView[]
  parts: { name: Words; rated: Words | null }[]
  proof: Examined['proof']
}

export interface ExaminePage {
  page: PageHead
  name: string | null
  back: { href: string; text: string }
  form: Deeds['form']
  groups: { title: string; open: boolean; choices: { key: string; words: Words; chosen: boolean }[] }[]
  reading: { state: FormState; choices: { value: string; label: Words }[] }
  /** the state of the address, for its forms; empty beside a job */
  state: { name: string; value: string }[]
  /** who made the tests for a qualified person, as far as that was said */
  testedBy: string
  result: ExamineResult | null
  /** null beside a job, whose list holds them */
  keep: string | null
  inJob: boolean
  sentence: Words
}

/** What a reading may be of, with its unit, and how it was read. */
export interface ReadingChoice {
  value: string
  key: string
  unit: string
  state: 'open' | 'loaded' | 'warm' | null
  label: Words
}

const stateWords = { open: say`open`, loaded: say`loaded`, warm: say`warm` }

/** What can be read of a case: its lamp, its outputs in three states, their ripple, the machine. */
export function readingChoices(request: CheckRequest): ReadingChoice[] {
  const { rails } = aroundOf(prepareCase(request), null)
  const choice = (key: string, unit: string, label: Words, state: ReadingChoice['state'] = null): ReadingChoice => ({
    value: [key, unit, ...(state ? [state] : [])].join(':'),
    key,
    unit,
    state,
    label,
  })
  return [
    choice('lamp', 'V', say`Across the lamp (V)`),
    ...rails.flatMap((rail, index) => {
      const name = say`Output ${index + 1}, ${volts(rail.voltageV)}`
      return [
        ...(['open', 'loaded', 'warm'] as const).map((state) =>
          choice(`output-${index + 1}`, 'V', say`${name}, ${stateWords[state]} (V)`, state),
        ),
        choice(`ripple-${index + 1}`, 'V', say`${name}, ripple (V)`),
        choice(`output-${index + 1}`, 'Ω', say`${name}, to ground (Ω)`),
      ]
    }),
    choice('ripple-frequency', 'Hz', say`Frequency of the ripple (Hz)`),
    choice('input', 'Ω', say`At the machine’s input (Ω)`),
    choice('current', 'A', say`What the machine draws (A)`),
    choice('case', 'V', say`From the case to earth (V), by a qualified person`),
  ]
}

const placeTitles: Readonly<Record<(typeof placesSeen)[number], string>> = {
  lamp: 'The series lamp',
  protection: 'Fuse and residual-current device',
  smell: 'Bang, smoke, smell',
  sound: 'Hum, whine',
  output: 'Outputs',
  heat: 'Heat',
  touch: 'Tingle, phantom volts',
  bench: 'On the bench supply',
  machine: 'The machine',
  accident: 'What happened to it',
}

const causeWords = new Map(causes.map(({ key, cause }) => [key, cause]))

export function examineView({
  request,
  state,
  examined,
  deeds,
  reading,
  faults,
  ...rest
}: {
  request: CheckRequest
  state: ExamineState
  examined: Examined | null
  deeds: Deeds
  reading: FormState
  faults: FormFault[]
  name: string | null
  back: ExaminePage['back']
  keep: string | null
  inJob: boolean
}): ExaminePage {
  const next = examined?.next[0]?.do
  return {
    ...rest,
    page: head(
      rest.name === null ? say`What to examine` : say`What to examine: ${rest.name}`,
      rest.inJob ? 'jobs' : null,
      faults,
    ),
    form: deeds.form,
    state: rest.inJob ? [] : stateQuery(state).map(([name, value]) => ({ name, value })),
    groups: placesSeen.map((place) => {
      const choices = whatWasSeen
        .filter((row) => row.place === place)
        .map(({ key, words }) => ({ key, words: prose(words), chosen: state.seen.includes(key) }))
      return { title: placeTitles[place], open: choices.some(({ chosen }) => chosen), choices }
    }),
    reading: { state: reading, choices: readingChoices(request).map(({ value, label }) => ({ value, label })) },
    result: examined && resultOf(examined, state, deeds),
    testedBy: state.found.findLast(({ by }) => by)?.by ?? '',
    sentence: next ? say`Next: ${next}` : say`Say what was seen.`,
  }
}

function resultOf(examined: Examined, state: ExamineState, deeds: Deeds): ExamineResult {
  const [first = null, ...later] = examined.next.map((next) => nextView(next, deeds))
  return {
    seen: examined.seen,
    atOnce: examined.atOnce,
    never: examined.never,
    waitsFor: examined.waitsFor,
    first,
    later,
    causes: examined.causes.map(({ confirmBy, ...cause }) => ({
      ...cause,
      by: confirmBy.do,
      expect: confirmBy.expect,
      otherwise: confirmBy.otherwise,
    })),
    found: foundViews(state, deeds),
    parts: examined.causes.flatMap(({ confirmed, part }) => (confirmed && part ? [part] : [])),
    proof: examined.proof,
  }
}

function nextView(
  { do: what, who, power, expect, tells, otherwise, examination }: NextExamined,
  deeds: Deeds,
): NextView {
  const mending = examination === undefined
  return {
    do: what,
    hands: who === 'qualified' ? say`For a licensed electrician or other qualified person.` : null,
    power: power === 'none' ? say`Power off.` : power === 'mains' ? say`Under mains power.` : say`On low voltage.`,
    expect: expect && capital(expect),
    choices: tells.map(({ cause, words, ifSo }) => ({
      words: capital(words),
      ifSo: mending ? '' : capital(ifSo),
      deed: deeds.found(mending ? { done: mendedOf(cause) ?? cause } : { yes: cause }),
    })),
    none:
      mending || tells.length === 0
        ? null
        : { deed: deeds.found({ no: tells.map(({ cause }) => cause) }), ifSo: otherwise && capital(otherwise) },
  }
}

function foundViews({ found }: ExamineState, deeds: Deeds): FoundView[] {
  return [...new Map(found.map((one) => [one.cause, one])).values()].flatMap(({ cause, result }) => {
    const words = causeWords.get(cause)
    if (words === undefined) return []
    const told: Phrase = result === 'confirmed' ? say`Confirmed` : say`Excluded`
    return [{ words: say`${told}: ${prose(words)}`, back: deeds.found({ back: cause }) }]
  })
}
