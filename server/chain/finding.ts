import type { LabelReading } from '../plate/labelReading.js'
import type { Source } from '../tables/source.js'
import type { Words } from '../words/phrase.js'
import type { Told } from '../words/tell.js'
import type { Action } from './action.js'
import type { TopicName } from './index.js'

export type { TopicName }

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
  title: Words
  /** of a title that says several facts, the first */
  lead?: Words
  /** what happens if it is ignored */
  why: Words
  /** each calculation with its numbers and units, one per line */
  working: Words[]
  /** what to do next; mains work says who may do it */
  action: Words | null
  /** the same one by one */
  actions: Action[]
  sources: Source[]
}

export interface CheckResponse {
  verdict: Verdict
  /** worst first, within one outcome in chain order */
  findings: Finding[]
  readings: { supply: LabelReading | null; device: LabelReading | null }
}

/** A finding, and a whole check, once their words are text: what pages, JSON and kept records hold. */
export type ToldFinding = Told<Finding>
export type ToldCheck = Told<CheckResponse>
