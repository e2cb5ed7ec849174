import { facts } from '../../facts/boxes.js'
import type { Link } from '../../facts/fact.js'
import { joined, say, type Words } from '../../words/phrase.js'
import { unique } from '../../words/unique.js'
import type { Action, Hands, Power } from '../action.js'
import type { Arrangement } from '../case/arrangement.js'
import type { Case } from '../case/case.js'
import type { Finding, Outcome, TopicName } from '../finding.js'
import { topics } from '../index.js'
import { judging } from '../judging.js'
import { mainsSideOpen, waits } from '../silenced.js'
import { qualifiedHands } from '../words.js'
import { placeOf } from './place.js'
import { type Question, questionsOf } from './questions.js'
import { outcomesOf } from './trial.js'

/** One thing to do next. */
export interface Next {
  do: Words
  who: Hands
  power: Power
  link: Link
  /** key of the fact that it settles */
  fact?: string
  /** what the topics that lack it could come to by its answers, worst first */
  couldTurn?: readonly Outcome[]
}

/** A stop on one of these is mended with another part, and the supply itself may still serve. */
const mendable: readonly TopicName[] = [
  'converter',
  'earthing',
  'socket',
  'cord',
  'inlet',
  'fuse',
  'dc-plug',
  'lead-drop',
]

/**
 * What to do, in order: what the stops ask for; the questions, the one whose answer could change most first; what is left of the open
 * findings, then of the cautions; the checks without power; and only behind them what needs power, of which there is nothing while a stop or
 * an open question on the mains side stands. While a stop says that this supply is not for this mains or this machine, nothing else is asked.
 */
export function nextOf(of: Case, findings: readonly Finding[]): { next: Next[]; waiting: number } {
  const worst = outcomesOf(findings)
  const open = [...worst].flatMap(([topic, outcome]) => (outcome === 'unknown' ? [topic] : []))
  const stops = findings.filter(({ outcome }) => outcome === 'stop')
  const pointless = stops.some(({ topic }) => !mendable.includes(topic))
  const questions = pointless ? [] : questionsOf(of, open)
  const asked = new Set(questions.flatMap(({ settles }) => settles))
  const actions = (outcome: Outcome): Next[] =>
    findings
      .filter((finding) => finding.outcome === outcome)
      .flatMap((finding) => actionsOf(finding, asked, of.arrangement))
  const all = [
    ...actions('stop'),
    ...questions.map((question) => questionNext(question, of.arrangement)),
    ...(pointless ? [] : [...actions('unknown'), ...actions('caution'), ...actions('clear')]),
  ]
  return {
    next: gated(once(all), mainsSideOpen(findings), stops.length > 0 || open.length > 0),
    waiting: stops.length === 0 ? 0 : findings.filter(({ outcome }) => outcome === 'unknown').length,
  }
}

/** Without power first; with power only behind the checks that need none, and not at all while the mains side is open. */
function gated(all: readonly Next[], mainsOpen: boolean, held: boolean): Next[] {
  const without = all.filter(({ power }) => power === 'none')
  if (mainsOpen) return without
  const powered = [
    ...all.filter(({ power }) => power === 'low-voltage'),
    ...all.filter(({ power }) => power === 'mains'),
    ...(held ? [] : [firstPower]),
  ]
  return powered.length === 0 ? without : [...without, gates, ...powered]
}

const gates: Next = {
  do: say`Before anything is switched on, do the checks of the first power-up that need no power: look and smell, batteries out, cold resistance, insulation, earth.`,
  who: 'you',
  power: 'none',
  link: 'supply',
}

const firstPower: Next = {
  do: say`Then bring it up by the plan for the first power-up, with the current limited.`,
  who: 'you',
  power: 'mains',
  link: 'supply',
}

/** What a finding asks for, save what a question asks already. */
function actionsOf(
  { topic, outcome, actions }: Finding,
  asked: ReadonlySet<TopicName>,
  arrangement: Arrangement,
): Next[] {
  const link = linkOf(topic, arrangement)
  const kept = actions.filter((action) => {
    if (action === waits) return false
    // what is without conflict asks for nothing but a test by qualified hands
    if (outcome === 'clear') return action.who === 'qualified'
    return !(outcome === 'unknown' && asked.has(topic) && isReading(action))
  })
  return kept.map((action) => ({ do: doing(action), who: action.who, power: action.power, link }))
}

/** The reader's own looking and entering, which a question about the fact says shorter. */
const isReading = ({ who, power, buys }: Action): boolean => who === 'you' && power === 'none' && !buys

const doing = (action: Action): Words => (action.wiring ? joined([action.do, qualifiedHands]) : action.do)

/** The first thing that a topic is about; of an arrangement without it, the machine, or the supply where there is none. */
function linkOf(topic: TopicName, arrangement: Arrangement): Link {
  const { links } = judging[arrangement]
  const own = topics.find(({ name }) => name === topic)?.links[0] ?? 'supply'
  return links.includes(own) ? own : links.includes('machine') ? 'machine' : 'supply'
}

const placed = new Map(facts.map((one) => [one.key, one.fact]))

function questionNext({ fact: asked, couldTurn }: Question, arrangement: Arrangement): Next {
  const key = placeOf(asked, arrangement) ?? asked
  const fact = placed.get(key)
  if (!fact) throw new RangeError(`no fact is called ${key}`)
  const [way] = fact.findOut
  return {
    do: say`${fact.question} ${way?.how ?? ''}`,
    who: 'you',
    power: way?.power ?? 'none',
    link: fact.link,
    fact: key,
    ...(couldTurn && { couldTurn }),
  }
}

/** What is asked for twice stands once, where it comes first. */
function once(all: readonly Next[]): Next[] {
  const kept = unique(all.map((one) => one.do))
  return kept.flatMap((words) => all.find((one) => one.do === words) ?? [])
}
