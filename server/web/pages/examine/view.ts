import type { CheckRequest } from '../../../chain/case/request.js'
import type { CauseTold, Examined, NextExamined } from '../../../examine/examine.js'
import { mendedOf } from '../../../examine/examineRequest.js'
import { causeOf } from '../../../examine/suspects.js'
import { placesSeen, whatWasSeen } from '../../../tables/whatWasSeen.js'
import { capital, say, type Words } from '../../../words/phrase.js'
import { prose } from '../../../words/prose.js'
import { head, type PageHead } from '../../page.js'
import type { FormFault, FormState } from '../../parts/formState.js'
import { readingChoices } from './readingChoices.js'
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
  /** why the job does not hold what was typed; null where it does */
  notSaved: string | null
  sentence: Words
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

export function examineView({
  request,
  state,
  examined,
  deeds,
  reading,
  faults,
  by,
  notSaved = null,
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
  /** who tested, as typed just now */
  by?: string | undefined
  notSaved?: string | null
}): ExaminePage {
  const next = examined?.next[0]?.do
  return {
    ...rest,
    page: head(
      rest.name === null ? say`What to examine` : say`What to examine: ${rest.name}`,
      rest.inJob ? 'jobs' : null,
      faults,
    ),
    notSaved,
    form: deeds.form,
    state: rest.inJob ? [] : stateQuery(state).map(([name, value]) => ({ name, value })),
    groups: placesSeen.map((place) => {
      const choices = whatWasSeen
        .filter((row) => row.place === place)
        .map(({ key, words }) => ({ key, words: prose(words), chosen: state.seen.includes(key) }))
      return { title: placeTitles[place], open: choices.some(({ chosen }) => chosen), choices }
    }),
    reading: {
      state: reading,
      choices: readingChoices(request).map(({ value, label, unit }) => ({ value, label: say`${label} (${unit})` })),
    },
    result: examined && resultOf(examined, state, deeds),
    testedBy: by ?? state.found.findLast((one) => one.by)?.by ?? '',
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
  const last = [...new Map(found.map((one) => [one.cause, one])).values()]
  return last
    .filter(({ cause }) => mendedOf(cause) === null)
    .map(({ cause, result }) => {
      const told = result === 'confirmed' ? say`Confirmed` : say`Excluded`
      return { words: say`${told}: ${prose(causeOf(cause).cause)}`, back: deeds.found({ back: cause }) }
    })
}
