import type { CheckRequest } from '../../chain/case/request.js'
import type { ToldCheck, ToldFinding, Verdict } from '../../chain/finding.js'
import type { Found, ReadingSeen } from '../../examine/examineRequest.js'
import type { Step } from '../../plan/firstPowerPlan.js'
import type { Told as AsTold } from '../../words/tell.js'

/** One judgement of a check, with the version of the tables and rules that made it. */
export interface Assessment extends ToldCheck {
  dataVersion: string
  /** milliseconds since 1970, as all times here */
  judgedAt: number
}

/** What a reading is held against: a step of the plan, as far as readings need it. */
export type ReadingLimits = Pick<AsTold<Step>, 'key' | 'text' | 'unit' | 'low' | 'high' | 'stopIf'> &
  Partial<Pick<AsTold<Step>, 'strict' | 'notAbove' | 'power' | 'link'>> & {
    /** of a plan that was sent, and none that the job's own check asks for: it stops, and never clears */
    sent?: true
  }

/** Taken back by a person, who says why; it stays where it stands, and counts no more. */
export interface Withdrawn {
  at: number
  why: string
}

/** What every entry at a step has. */
interface Entry {
  id: string
  key: string
  /** when it reached the server */
  at: number
  /** when it was typed, where that was earlier */
  typedAt?: number
  finding: ToldFinding
  withdrawn?: Withdrawn
}

export interface Reading extends Entry {
  /** null: over the range of the meter, "OL" */
  value: number | null
  /** as it was given: a reading in mA stays one */
  unit: string
}

export const tickAnswers = ['as-expected', 'wrong'] as const

/** A step without a number, done: as it should be or not, with what was seen. */
export interface Tick extends Entry {
  as: (typeof tickAnswers)[number]
  words: string | null
}

/** Why something was a stop, written by a person: the job goes on from there. */
export interface Cause {
  id: string
  at: number
  /** the stop it explains: see `openStops` */
  of: string
  text: string
}

export const partStates = ['wanted', 'ordered', 'arrived', 'fitted'] as const

export type PartState = (typeof partStates)[number]

export interface Part {
  id: string
  /** the version of the job that changed this part last */
  version: number
  name: string
  state: PartState
  note: string | null
  /** when it came into this state */
  since: number
  /** the day it is expected, "2026-01-05" */
  expected?: string
}

/** One fact that was changed: the name of its box, and what the box held, '' where it was empty. */
export interface ChangedFact {
  fact: string
  before: string
  after: string
}

/** What was found on one topic, in short. */
export type Told = Pick<ToldFinding, 'outcome' | 'title'>

/** Facts that were changed in a job, at once, with what that did to the outcome. */
export interface FactChange {
  id: string
  at: number
  facts: ChangedFact[]
  verdict: { before: Verdict; after: Verdict }
  /** findings that came, went or changed; null where there was none */
  turned: { topic: ToldFinding['topic']; before: Told | null; after: Told | null }[]
  /** the change that this one takes back */
  undoes?: string
}

/** Something that holds the job until a person wrote its cause, or took it back. */
export interface Stop {
  /** what a cause names: the id of a reading or tick, or a mark of what was observed */
  of: string
  /** the step it was found at; null for what was observed besides */
  key: string | null
  /** the step in words, or the box it was written in */
  where: string
  at: number
  title: string
  /** what is done first */
  action: string
}

export interface LogEntry {
  id: string
  at: number
  text: string
}

/** What was seen when the machine first had power; every field is what a person wrote, or null. */
export interface Observations {
  lamps: string | null
  display: string | null
  sounds: string | null
  smells: string | null
  moved: string | null
  /** the current drawn [A] */
  drawnA: number | null
  /** whether it did its work */
  works: 'yes' | 'partly' | 'no' | null
  note: string | null
}

/** How each observation is called, in the order they are written down. */
export const observationLabels = {
  lamps: 'Lamps',
  display: 'Display',
  sounds: 'Sounds',
  smells: 'Smells',
  moved: 'What moved',
  drawnA: 'Current drawn',
  note: 'Anything else seen',
  works: 'Did it do its work?',
} as const satisfies Record<keyof Observations, string>

export const noObservations: Observations = {
  lamps: null,
  display: null,
  sounds: null,
  smells: null,
  moved: null,
  drawnA: null,
  works: null,
  note: null,
}

/** What was seen, read and found on the way to a cause. */
export interface JobExamined {
  /** keys of what was seen */
  seen: string[]
  /** the last result of each cause, and when it was told */
  found: (Found & { at: number })[]
  /** read while examining, beside what was read at the steps */
  readings: ReadingSeen[]
}

/** One machine on the bench: everything that is kept of it, photos aside. */
export interface Job {
  name: string
  check: CheckRequest
  /** the plan as it was sent or worked out when the check was judged */
  plan: unknown
  /** what readings are held against; from the plan */
  limits: ReadingLimits[]
  assessment: Assessment
  /** earlier judgements, the oldest first */
  earlier: Assessment[]
  readings: Reading[]
  /** absent in jobs that were kept before there were any */
  ticks?: Tick[]
  causes?: Cause[]
  observations: Observations
  parts: Part[]
  log: LogEntry[]
  /** facts changed since it began, the oldest first */
  changes?: FactChange[]
  /** stops that nothing in the job tells of any more, as after other words: they hold it like the others */
  held?: Stop[]
  /** absent where nothing was examined */
  examined?: JobExamined
}
