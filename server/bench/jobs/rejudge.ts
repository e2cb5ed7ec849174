import { byWorst, type ToldFinding } from '../../chain/finding.js'
import type { Assessment } from './job.js'

/** One finding that another judgement of the same check has, lacks or words differently. */
export interface FindingChange {
  topic: ToldFinding['topic']
  before: ToldFinding | null
  after: ToldFinding | null
}

const alike = (one: ToldFinding, other: ToldFinding): boolean =>
  one.outcome === other.outcome && one.title === other.title

/**
 * What another judgement changes: per topic, the findings that are not in both, paired in their order. Findings with
 * the same outcome and the same title count as the same, whatever their working.
 */
export function findingChanges(before: readonly ToldFinding[], after: readonly ToldFinding[]): FindingChange[] {
  const topicsSeen = [...new Set([...before, ...after].map(({ topic }) => topic))]
  return topicsSeen.flatMap((topic) => {
    const had = before.filter((finding) => finding.topic === topic && !after.some((other) => alike(finding, other)))
    const has = after.filter((finding) => finding.topic === topic && !before.some((other) => alike(finding, other)))
    return Array.from({ length: Math.max(had.length, has.length) }, (_, index) => ({
      topic,
      before: had[index] ?? null,
      after: has[index] ?? null,
    }))
  })
}

/** Which way a change goes: towards stop is worse. A finding that came or went is neither. */
export function direction({ before, after }: FindingChange): 'worse' | 'better' | 'other' {
  if (!before || !after) return 'other'
  const difference = byWorst(after, before)
  return difference === 0 ? 'other' : difference < 0 ? 'worse' : 'better'
}

/** The most earlier judgements kept; a check judged more often forgets the oldest. */
export const mostEarlier = 20

export const withEarlier = (earlier: readonly Assessment[], replaced: Assessment): Assessment[] =>
  [...earlier, replaced].slice(-mostEarlier)
