import { factValues } from '../../facts/address.js'
import type { CheckRequest } from '../../facts/check.js'
import type { ChangedFact, FactChange, Job, Told } from './job.js'
import { judgeAgain, mostEntries, Unfit, withReadingsJudged } from './jobChange.js'
import { findingChanges } from './rejudge.js'

/** The most findings that a change names. */
const mostTurned = 20

/** The facts in which two checks differ, by the names of their boxes. */
export const changedFacts = (before: CheckRequest, after: CheckRequest): ChangedFact[] =>
  changedValues(factValues(before), factValues(after))

/** The boxes that hold something else. */
export function changedValues(was: Record<string, string>, is: Record<string, string>): ChangedFact[] {
  return [...new Set([...Object.keys(was), ...Object.keys(is)])]
    .map((fact) => ({ fact, before: was[fact] ?? '', after: is[fact] ?? '' }))
    .filter((one) => one.before !== one.after)
}

const inShort = (finding: Told | null): Told | null =>
  finding && { outcome: finding.outcome, title: finding.title.slice(0, 2000) }

/**
 * A job with other facts: judged and planned by them, with what was changed and what that did written down. Readings are
 * held against the new limits, and what held the job holds it still.
 *
 * @param judged  the check as it is now, its judgement, plan and limits
 * @param undoes  the change that is taken back
 * @param planned what differs of what the plan is worked out with besides the check
 * @returns the job itself where no fact differs, or the change is known already
 */
export function changeFacts(
  job: Job,
  judged: Pick<Job, 'check' | 'plan' | 'limits' | 'assessment'>,
  {
    id,
    at,
    undoes,
    planned = [],
  }: { id: string; at: number; undoes?: string | undefined; planned?: readonly ChangedFact[] },
): Job {
  const changes = job.changes ?? []
  const facts = [...changedFacts(job.check, judged.check), ...planned]
  if (facts.length === 0 || changes.some((one) => one.id === id)) return job
  if (changes.length >= mostEntries)
    throw new Unfit('at', `The facts of this job were changed ${changes.length} times, which is the most that is kept.`)
  const { assessment, ...rest } = judged
  const change: FactChange = {
    id,
    at,
    facts,
    verdict: { before: job.assessment.verdict, after: assessment.verdict },
    turned: findingChanges(job.assessment.findings, assessment.findings)
      .slice(0, mostTurned)
      .map(({ topic, before, after }) => ({ topic, before: inShort(before), after: inShort(after) })),
    ...(undoes !== undefined && { undoes }),
  }
  return { ...judgeAgain(withReadingsJudged({ ...job, ...rest }, job), assessment), changes: [...changes, change] }
}

/** Whether a change can be taken back: nothing that it changed was changed again. */
export const canUndo = (changes: readonly FactChange[], { id, facts }: FactChange): boolean => {
  const later = changes.slice(changes.findIndex((one) => one.id === id) + 1)
  return !later.some((one) => one.facts.some(({ fact }) => facts.some((own) => own.fact === fact)))
}
