import type { Source } from '../tables/source.js'
import { joined, say, type Words } from '../words/phrase.js'
import { unique } from '../words/unique.js'
import { actionsOf, actionText, type Doing } from './action.js'
import { byWorst, type Finding, type Outcome, outcomes, type TopicName } from './finding.js'

/** The words of a finding. */
export interface Text {
  /** one line, says the fact with its numbers */
  title: Words
  /** of a title that says several facts, the first */
  lead?: Words
  /** what happens if it is ignored */
  why: Words
  /** each calculation with its numbers and units, one per line */
  working: Words[]
  /** what to do next; mains work says who may do it; null only where nothing is in conflict */
  action: Doing | readonly Doing[] | null
  sources: Source[]
}

/** A decided outcome whose words are made only when someone reads them: a shelf decides a million and shows a few. */
export interface Judgement {
  readonly outcome: Outcome
  readonly say: () => Text
}

/** A judgement with the topic it is on. */
export interface Judged extends Judgement {
  readonly topic: TopicName
}

/** Must not be connected as it stands. */
export const stop = (say: () => Text): Judgement => ({ outcome: 'stop', say })
/** Too little was entered to judge; the action says how to find out. */
export const unknown = (say: () => Text): Judgement => ({ outcome: 'unknown', say })
/** May go on with care. */
export const caution = (say: () => Text): Judgement => ({ outcome: 'caution', say })
/** No conflict in what was entered. */
export const clear = (say: () => Text): Judgement => ({ outcome: 'clear', say })

export function toFinding(topic: TopicName, { outcome, say }: Judgement): Finding {
  const { action, ...text } = say()
  const actions = actionsOf(action)
  return { topic, outcome, ...text, action: actionText(actions), actions }
}

/** The worst of some outcomes; undefined of none. */
export const worstOf = (judged: readonly { outcome: Outcome }[]): Outcome | undefined =>
  outcomes.find((outcome) => judged.some((one) => one.outcome === outcome))

/** The same judgements, worst first; equal ones keep their order. */
export const worstFirst = <Judged extends { readonly outcome: Outcome }>(judged: readonly Judged[]): Judged[] =>
  judged.toSorted(byWorst)

/**
 * Several judgements on one topic as one: the worst leads, the rest of its rank add their words,
 * and the better ones stand in the working.
 */
export function together(judged: readonly Judgement[]): Judgement[] {
  if (judged.length < 2) return [...judged]
  const worst = worstOf(judged)
  const leading = judged.filter(({ outcome }) => outcome === worst)
  const first = leading[0]
  if (!first) return []
  return [
    {
      outcome: first.outcome,
      say: () => {
        const lead = leading.map(({ say }) => say())
        const rest = judged.filter(({ outcome }) => outcome !== worst).map(({ say }) => say())
        const titles = unique(lead.map(({ title }) => title))
        return {
          title: joined(titles, say`. `),
          ...(titles.length > 1 && { lead: titles[0]! }),
          why: joined(unique(lead.map(({ why }) => why))),
          working: unique([
            ...lead.flatMap(({ working }) => working),
            ...rest.flatMap(({ title, working }) => [...working, title]),
          ]),
          action: [...lead, ...rest].flatMap(({ action }) => actionsOf(action)),
          sources: uniqueSources([...lead, ...rest].flatMap(({ sources }) => sources)),
        }
      },
    },
  ]
}

export function uniqueSources(sources: readonly Source[]): Source[] {
  const found: Source[] = []
  for (const source of sources)
    if (!found.includes(source) && !found.some((other) => isSame(source, other))) found.push(source)
  return found
}

const isSame = (one: Source, other: Source): boolean =>
  one.title === other.title && one.detail === other.detail && one.kind === other.kind
