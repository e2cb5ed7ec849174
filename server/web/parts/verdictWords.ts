import { type Outcome, outcomes, type Verdict } from '../../chain/finding.js'
import { topics } from '../../chain/index.js'
import { joined, type Phrase, say, type Words } from '../../words/phrase.js'

interface VerdictWords {
  outcome: Outcome
  title: string
  text: string
}

/** The four verdicts as a person reads them. */
export const verdictWords: Record<Verdict, VerdictWords> = {
  'do-not-connect': {
    outcome: 'stop',
    title: 'Do not connect',
    text: 'At least one thing must change first. Each is named below, with what to do about it.',
  },
  'find-out-first': {
    outcome: 'unknown',
    title: 'Find out first',
    text: 'Nothing entered forbids it, but something that decides is not known yet. Each is named below, with how to find out.',
  },
  'take-care': {
    outcome: 'caution',
    title: 'Take care',
    text: 'No conflict that forbids it was found in what you entered. What needs care is named below.',
  },
  'no-conflict-found': {
    outcome: 'clear',
    title: 'No conflict found in what you entered',
    text: 'Every topic that applies was answered. This speaks of what you entered only: see what was not checked.',
  },
}

/** The four outcomes as a person reads them. */
export const outcomeWords: Record<Outcome, string> = {
  stop: 'Stop',
  unknown: 'Find out',
  caution: 'Take care',
  clear: 'No conflict',
}

const counted: Record<Outcome, [one: string, many: string]> = {
  stop: ['stop', 'stops'],
  unknown: ['thing to find out', 'things to find out'],
  caution: ['caution', 'cautions'],
  clear: ['without conflict', 'without conflict'],
}

/** "2 stops, 1 thing to find out, 5 without conflict". */
export const tally = (findings: readonly { outcome: Outcome }[]): Phrase =>
  joined(
    outcomes
      .map((outcome) => [outcome, findings.filter((finding) => finding.outcome === outcome).length] as const)
      .filter(([, count]) => count > 0)
      .map(([outcome, count]) => say`${count} ${counted[outcome][count === 1 ? 0 : 1]}`),
    ', ',
  )

/** The topics no finding speaks of, in chain order, in words. */
export const notJudged = (findings: readonly { topic: string }[]): Words[] =>
  topics.filter(({ name }) => !findings.some(({ topic }) => topic === name)).map(({ words }) => words)
