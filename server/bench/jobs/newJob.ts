import type { Power } from '../../chain/action.js'
import type { CheckRequest } from '../../chain/case/request.js'
import type { Link } from '../../facts/fact.js'
import type { ToldPlan } from '../../plan/firstPowerPlan.js'
import { type Assessment, type Job, noObservations, type ReadingLimits } from './job.js'

/** A plan as it was sent: whole or in part, so every field may be missing. */
export interface SentPlan {
  stages?:
    | {
        leftOut?: string | null | undefined
        steps?:
          | {
              key: string
              text?: string | null | undefined
              unit?: string | null | undefined
              low?: number | null | undefined
              high?: number | null | undefined
              stopIf?: string | null | undefined
              strict?: true | null | undefined
              notAbove?: string | null | undefined
              power?: Power | null | undefined
              link?: Link | null | undefined
            }[]
          | null
          | undefined
      }[]
    | null
    | undefined
}

/** What readings are held against: the steps of every stage that is not left out; of a key met twice, its first step. */
export function limitsOf(plan: SentPlan | ToldPlan | null): ReadingLimits[] {
  const steps = (plan?.stages ?? []).filter(({ leftOut }) => leftOut == null).flatMap((stage) => stage.steps ?? [])
  const limits = steps.map(({ key, text, unit, low, high, stopIf, strict, notAbove, power, link }) => ({
    key,
    text: text ?? key,
    unit: unit ?? null,
    low: low ?? null,
    high: high ?? null,
    stopIf: stopIf ?? null,
    ...(strict && { strict }),
    ...(notAbove != null && { notAbove }),
    ...(power != null && { power }),
    ...(link != null && { link }),
  }))
  return [...new Map(limits.toReversed().map((row) => [row.key, row])).values()].reverse()
}

/**
 * The limits of a job: those of its own plan and paper, which nothing that was sent changes, then the steps that a plan that was
 * sent has besides.
 */
export function withSent(own: readonly ReadingLimits[], sent: readonly ReadingLimits[]): ReadingLimits[] {
  const known = new Set(own.map(({ key }) => key))
  return [...own, ...sent.filter(({ key }) => !known.has(key)).map((row) => ({ ...row, sent: true as const }))]
}

export interface JobParts {
  name: string
  check: CheckRequest
  plan: SentPlan | ToldPlan | null
  limits: ReadingLimits[]
  assessment: Assessment
}

/** A job as it begins: judged, planned, nothing read yet. */
export const newJob = ({ name, check, plan, limits, assessment }: JobParts): Job => ({
  name,
  check,
  plan,
  limits,
  assessment,
  earlier: [],
  readings: [],
  observations: noObservations,
  parts: [],
  log: [],
})
