import type { Case } from '../case/case.js'
import { type Outcome, outcomes, type TopicName } from '../finding.js'
import { topics } from '../index.js'
import { placeOf } from './place.js'
import { stakes } from './stakes.js'
import { type Answers, trialOf, type Worst } from './trial.js'
import { triesOf } from './tries.js'

/** A fact worth asking for. */
export interface Question {
  /** its key, as GET /api/facts has it */
  fact: string
  /** the open topics that stay open without it */
  settles: readonly TopicName[]
  /** what those topics could come to by its answers, worst first; null where that was not tried */
  couldTurn: readonly Outcome[] | null
}

/** The most answers that are tried. */
const mostTries = 40

/** A figure that a damaged plate leaves in doubt may settle any topic. */
const ofAnyTopic = 'readings.confirmed'

/**
 * The facts that would settle what is not known, the one whose answer could change most first: found by trying answers.
 *
 * First every fact that an open topic may lack is answered in agreement with what is known. Then one after the other is taken away again, the
 * last first, and stays away where no topic opens by it: what is left is what has to be asked. Of each of these the other answers are tried.
 * One that could lead to a stop comes before one that could not, then by what is at stake, then the one that settles more. One step deep; at
 * most 40 answers are tried, and what is left over by then is asked last.
 *
 * @param open  the topics on which the case is not known
 */
export function questionsOf(of: Case, open: readonly TopicName[]): Question[] {
  const lacking = lackingFacts(of, open)
  if (lacking.size === 0) return []
  const trial = trialOf(of)
  const needed = neededOf(lacking, open, trial)
  let tries = 0
  const questions = [...needed.settles].map(([fact, settles]): Question => {
    const answers = lacking.get(fact) ?? []
    if (tries + answers.length > mostTries) return { fact, settles, couldTurn: null }
    tries += answers.length
    const come = answers.map((answer) =>
      worstAmong(trial(new Map([...needed.answers, [fact, answer]]), settles), settles),
    )
    return { fact, settles, couldTurn: outcomes.filter((outcome) => come.includes(outcome)) }
  })
  return questions.toSorted(byWeight)
}

/** The facts without which some topic stays open, with the topics, and an answer to each that agrees with what is known. */
function neededOf(
  lacking: ReadonlyMap<string, readonly unknown[]>,
  open: readonly TopicName[],
  trial: ReturnType<typeof trialOf>,
): { answers: Answers; settles: ReadonlyMap<string, readonly TopicName[]> } {
  const answers = new Map([...lacking].map(([fact, [answer]]) => [fact, answer]))
  const agreed = trial(answers, open)
  const settled = open.filter((topic) => !isOpen(agreed, topic))
  const settles = new Map<string, readonly TopicName[]>()
  for (const fact of [...lacking.keys()].reverse()) {
    const asking = settled.filter((topic) => asks(topic, fact))
    const without = trial(new Map([...answers].filter(([other]) => other !== fact)), asking)
    const opens = asking.filter((topic) => isOpen(without, topic))
    if (opens.length === 0) answers.delete(fact)
    else settles.set(fact, opens)
  }
  return { answers, settles: new Map([...settles].reverse()) }
}

const byWeight = (one: Question, other: Question): number =>
  Number(mayStop(other)) - Number(mayStop(one)) ||
  stakes(one.settles) - stakes(other.settles) ||
  other.settles.length - one.settles.length

const mayStop = ({ couldTurn }: Question): boolean => couldTurn?.includes('stop') ?? false

const isOpen = (worst: Worst, topic: TopicName): boolean => worst.get(topic) === 'unknown'

const asked = new Map<TopicName, readonly string[]>(topics.map(({ name, asks }) => [name, [ofAnyTopic, ...asks]]))

const asks = (topic: TopicName, fact: string): boolean => asked.get(topic)?.includes(fact) ?? false

/** The facts that open topics may lack, each with answers to try, in the order of the chain. */
function lackingFacts(of: Case, open: readonly TopicName[]): Map<string, readonly unknown[]> {
  const lacking = new Map<string, readonly unknown[]>()
  for (const fact of new Set(topics.flatMap(({ name }) => (open.includes(name) ? (asked.get(name) ?? []) : [])))) {
    if (placeOf(fact, of.arrangement) === null) continue
    const answers = triesOf(fact, of)
    if (answers.length > 0) lacking.set(fact, answers)
  }
  return lacking
}

const worstAmong = (worst: Worst, among: readonly TopicName[]): Outcome =>
  outcomes.find((outcome) => among.some((topic) => worst.get(topic) === outcome)) ?? 'clear'
