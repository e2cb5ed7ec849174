import type { LabelReading } from '../plate/labelReading.js'
import type { Source } from '../reference/source.js'

/** In the order of the power chain, from the wall to the machine. */
export const topics = [
  'mains-voltage',
  'mains-frequency',
  'converter',
  'earthing',
  'socket',
  'cord',
  'inlet',
  'fuse',
  'output-kind',
  'output-voltage',
  'output-current',
  'polarity',
  'dc-plug',
  'lead-drop',
] as const

export type TopicName = (typeof topics)[number]

/** Worst first. */
export const outcomes = ['stop', 'unknown', 'caution', 'clear'] as const

export type Outcome = (typeof outcomes)[number]

/** Orders by outcome, worst first; equal outcomes keep their order. */
export const byWorst = (a: { readonly outcome: Outcome }, b: { readonly outcome: Outcome }): number =>
  outcomes.indexOf(a.outcome) - outcomes.indexOf(b.outcome)

export type Verdict = 'do-not-connect' | 'find-out-first' | 'take-care' | 'no-conflict-found'

/** The unit of thought: one judged fact, the same object on the page, on paper, in JSON and in a job's record. */
export interface Finding {
  topic: TopicName
  outcome: Outcome
  /** one line, says the fact with its numbers */
  title: string
  /** what happens if it is ignored */
  why: string
  /** each calculation with its numbers and units, one per line */
  working: string[]
  /** what to do next; mains work says who may do it */
  action: string | null
  sources: Source[]
}

export interface CheckResponse {
  verdict: Verdict
  /** worst first, within one outcome in chain order */
  findings: Finding[]
  readings: { supply: LabelReading | null; device: LabelReading | null }
}

type Rest = Omit<Finding, 'topic' | 'outcome' | 'title'>

const finding =
  (outcome: Outcome) =>
  (topic: TopicName, title: string, rest: Rest): Finding => ({ topic, outcome, title, ...rest })

/** Must not be connected as it stands. */
export const stop = finding('stop')
/** Too little was entered to judge; `action` says how to find out. */
export const unknown = finding('unknown')
/** May go on with care. */
export const caution = finding('caution')
/** No conflict in what was entered. */
export const clear = finding('clear')
