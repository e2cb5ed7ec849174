import type { Link } from '../facts/fact.js'
import type { Words } from '../words/phrase.js'
import type { MainsSituation, PairSituation } from './case/situation.js'
import type { ExampleChanges } from './example.js'
import type { Outcome } from './finding.js'
import type { Judgement } from './judgement.js'

/** What makes a topic come to an outcome, with an example that does; or why it never does. */
export type OutcomeRule = { rule: Words; example: ExampleChanges } | { never: Words }

/** One topic of findings, with all that other places need to know of it. */
export interface Topic<Name extends string, Situation> {
  readonly name: Name
  /** its name within a sentence */
  readonly words: Words
  /** the things of the chain it is about; what is to be done about it is done at the first */
  readonly links: readonly [Link, ...Link[]]
  /** keys of the facts that it may lack, as GET /api/facts has them */
  readonly asks: readonly string[]
  readonly when: Readonly<Record<Outcome, OutcomeRule>>
  /** empty where it does not apply; several where there is one for each rail */
  judge(situation: Situation): readonly Judgement[]
}

/** A topic between the wall and the supply; one that looks at the machine as well is entered in `mainsOfPair`. */
export const mainsTopic = <const Name extends string>(topic: Topic<Name, MainsSituation>) => topic

/** A topic between the supply and the machine. */
export const pairTopic = <const Name extends string>(topic: Topic<Name, PairSituation>) => topic
