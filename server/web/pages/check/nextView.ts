import type { AnsweredCheck } from '../../../chain/answer.js'
import type { Outcome } from '../../../chain/finding.js'
import type { Next } from '../../../chain/next/next.js'
import { boxes } from '../../../facts/boxes.js'
import { openPhrases } from '../../../plate/openPhrases.js'
import { listed, or, say, type Words } from '../../../words/phrase.js'
import { type FactField, factFields, socketsAt } from '../../parts/factFields.js'
import { type CheckForm, carried } from './form.js'
import { type ReadingView, readingView } from './readingView.js'
import { type SectionName, sectionOf } from './sections.js'

interface Step {
  do: Words
  qualified: boolean
  /** what its answer could change, as a sentence */
  turns: Words | null
  /** the box that takes the answer; null where there is none, or it stands open among the facts */
  field: FactField | null
}

/** What to do next, as the page shows it. */
export interface NextView {
  steps: Step[]
  /** what comes after these */
  later: Step[]
  /** what was entered, that goes with an answer */
  kept: { name: string; value: string }[]
  /** phrases of the plates that were not read: each may be said away once */
  unread: string[]
  /** figures that damaged words may mean */
  doubts: ReadingView['doubts']
}

/** The most steps that are shown at once. */
const most = 3

/** @param open  the things whose facts stand open on the page */
export function nextView(
  { next, readings }: AnsweredCheck,
  { state, query }: CheckForm,
  open: readonly SectionName[],
): NextView {
  const confirmed = state.values.confirmed?.split(/\s+/) ?? []
  const dismissed = state.values.dismissed?.split(/\s*[\r\n]+\s*/) ?? []
  const doubts = [
    ...(readingView(readings.supply, 'supply', confirmed)?.doubts ?? []),
    ...(readingView(readings.device, 'device', confirmed)?.doubts ?? []),
  ].filter((doubt) => !doubt.confirmed)
  const steps = next.filter(({ fact }) => fact !== 'readings.confirmed').map((one) => stepOf(one, state.values, open))
  const first = steps.slice(0, most)
  const asked = new Set(first.flatMap(({ field }) => field?.name ?? []))
  return {
    steps: first,
    later: steps.slice(most).map((step) => ({ ...step, field: null })),
    kept: carried(query).filter(({ name }) => !asked.has(name)),
    unread: [
      ...openPhrases(readings.supply, dismissed, state.values.class || undefined),
      ...openPhrases(readings.device, dismissed),
    ],
    doubts,
  }
}

function stepOf(
  { do: words, who, fact, couldTurn }: Next,
  values: Record<string, string>,
  open: readonly SectionName[],
): Step {
  const box = boxes.find(({ key, name }) => key === fact && (values[name] ?? '').trim() === '')
  const section = box && sectionOf(box.name)
  const isOpen = section != null && open.includes(section)
  const [field = null] = box && !isOpen ? factFields([box.name], socketsAt(values)) : []
  return {
    do: words,
    qualified: who === 'qualified',
    turns: couldTurn ? turning(couldTurn) : null,
    field,
  }
}

const outcomesInWords: Record<Outcome, string> = {
  stop: 'forbid it',
  unknown: 'leave more to find out',
  caution: 'ask for care',
  clear: 'clear this',
}

const turning = (outcomes: readonly Outcome[]): Words =>
  say`Its answer could ${listed(
    outcomes.map((outcome) => outcomesInWords[outcome]),
    or,
  )}.`
