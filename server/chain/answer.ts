import { type Phrase, say, type Words, within } from '../words/phrase.js'
import { assessCase } from './assess.js'
import { type Case, prepareCase } from './case/case.js'
import type { CheckRequest } from './case/request.js'
import { byWorst, type CheckResponse, type Finding } from './finding.js'
import { type LineLink, lineOf } from './line.js'
import { type Next, nextOf } from './next/next.js'
import { stakes } from './next/stakes.js'

/** A check with its answer in front: what POST /api/check gives. */
export interface AnsweredCheck extends CheckResponse {
  /** one sentence: the verdict and what decides it */
  answer: Phrase
  /** the things of the chain, in their order */
  links: LineLink[]
  /** what to do, in order */
  next: Next[]
  /** findings not known that need not be settled while a stop stands */
  waiting: number
}

/** Judges a case, and says what decides it, how each thing stands and what to do next. */
export function answerCase(of: Case): AnsweredCheck {
  const assessed = assessCase(of)
  const { findings } = assessed
  const { next, waiting } = nextOf(of, findings)
  return { answer: answerOf(findings), ...assessed, links: lineOf(of, findings), next, waiting }
}

/** The same of a check that nothing else is done with. */
export const answerCheck = (request: CheckRequest): AnsweredCheck => answerCase(prepareCase(request))

function answerOf(findings: readonly Finding[]): Phrase {
  const [worst] = findings.toSorted((one, other) => byWorst(one, other) || stakes([one.topic]) - stakes([other.topic]))
  if (!worst) return say`Find out first: nothing was entered that could be judged.`
  const alike = findings.filter(({ outcome }) => outcome === worst.outcome).length - 1
  const title = within(worst.lead ?? worst.title)
  switch (worst.outcome) {
    case 'stop':
      return say`Do not connect it: ${title}${more(alike, say`stop`, say`stops`)}.`
    case 'unknown':
      return say`Find out first: ${title}${more(alike, say`thing is not known`, say`things are not known`)}.`
    case 'caution':
      return say`Take care: ${title}${more(alike, say`caution`, say`cautions`)}.`
    case 'clear':
      return say`No conflict found in what was entered: ${title}.`
  }
}

const more = (count: number, one: Words, several: Words): Phrase =>
  count === 0 ? say`` : say`; ${count} more ${count === 1 ? one : several}`
