import type { Hands, Power } from '../chain/action.js'
import type { Case } from '../chain/case/case.js'
import type { Finding } from '../chain/finding.js'
import type { Next } from '../chain/next/next.js'
import { qualifiedHands } from '../chain/words.js'
import { plugPinLimit } from '../tables/capacitors.js'
import type { Likelihood } from '../tables/causesSeen.js'
import type { Examination, PlaceDone } from '../tables/examinations.js'
import { neverDone } from '../tables/neverDone.js'
import type { Source } from '../tables/source.js'
import { capital, listed, type Phrase, say, type Words, within } from '../words/phrase.js'
import { prose } from '../words/prose.js'
import { volts } from '../words/quantity.js'
import { unique } from '../words/unique.js'
import { type Around, aroundOf, type LampCurrent } from './around.js'
import { figureFor, partRating } from './figures.js'
import { examinationOf, inOrder, type Proposal } from './order.js'
import { type Proof, proofOf, proofStates } from './proof.js'
import { readingSeen } from './readings.js'
import { type ExamineRequest, type Found, mendedKey } from './request.js'
import { type Suspect, seenOf, suspectsOf } from './suspects.js'

/** A cause as it is told. */
export interface CauseTold {
  key: string
  cause: Phrase
  likelihood: Likelihood
  because: readonly Phrase[]
  confirmBy: { do: Phrase; power: Power; who: Hands; expect: Phrase; otherwise: Phrase }
  mayHaveTaken: readonly Phrase[]
  /** what to do once it is confirmed */
  remedy: Phrase
  /** the part to renew, with what it must be rated for here */
  part: { name: Phrase; rated: Phrase | null } | null
  confirmed: boolean
  /** true: renewed, and what it may have taken was looked at */
  mended: boolean
  sources: readonly Source[]
}

/** One thing to do, with what each finding of it would mean. */
export interface NextExamined extends Next {
  /** key of the examination; absent for what is none */
  examination?: string
  /** the figures to expect, worked out from the case */
  expect: Phrase | null
  /** keys of the causes that it tells of, with what each reads as */
  tells: readonly { cause: string; words: Phrase; ifSo: Phrase }[]
  /** what it reads as where it is none of them; null where each has its own */
  otherwise: Phrase | null
}

export interface Examined {
  /** all that was seen: what was said, and what the readings amount to */
  seen: readonly { key: string; words: Phrase; because: Phrase | null }[]
  atOnce: readonly Phrase[]
  never: readonly Phrase[]
  causes: readonly CauseTold[]
  next: readonly NextExamined[]
  /** what stands before any power; empty where nothing does */
  waitsFor: readonly Words[]
  proof: Proof
}

/**
 * From what was seen to what to examine, in order. What was found excludes and confirms: what is excluded never comes back, and a
 * confirmed cause opens what it may have taken with it. Nothing that needs power is proposed while anything stands before it.
 *
 * @param stops         findings of the check that say not to connect it
 * @param lampCurrentA  what the series lamp passes, where the lamp is known
 */
export function examine(
  of: Case,
  asked: ExamineRequest,
  stops: readonly Pick<Finding, 'title'>[],
  lampCurrentA: LampCurrent | null = null,
): Examined {
  const around = aroundOf(of, lampCurrentA)
  const reads = asked.readings.flatMap((reading) => readingSeen(reading, around) ?? [])
  const seen = [...new Set([...asked.observations, ...reads.flatMap(({ seen }) => seen ?? [])])]
  const results = lastOf(asked.found)
  const suspects = suspectsOf(seen, reads, around).filter(({ cause }) => results.get(cause.key) !== 'excluded')
  const confirmed = suspects.filter(({ cause }) => results.get(cause.key) === 'confirmed')
  const open = suspects.filter(({ cause }) => !confirmed.some((other) => other.cause === cause))
  const toMend = confirmed.filter(
    (suspect) => isWork(suspect) && results.get(mendedKey(suspect.cause.key)) !== 'confirmed',
  )
  const proposals = inOrder(open)
  const waitsFor = waiting(seen, stops, confirmed, toMend, proposals)
  const proof = proofOf(asked.readings, around)
  return {
    seen: seen.map((key) => ({
      key,
      words: prose(seenOf(key).words),
      because: reads.find((read) => read.seen === key)?.because ?? null,
    })),
    atOnce: unique(seen.map((key) => prose(seenOf(key).atOnce))),
    never: neverDone
      .filter((row) => row.seen.length === 0 || row.seen.some((key) => seen.includes(key)))
      .map(({ never }) => prose(never)),
    causes: [...confirmed, ...open].map((suspect) => told(suspect, around, confirmed, toMend)),
    next: nextOf({ around, seen, proposals, confirmed, toMend, waits: waitsFor.length > 0, proof }),
    waitsFor,
    proof,
  }
}

/** The last result for each key. */
const lastOf = (found: readonly Found[]): ReadonlyMap<string, Found['result']> =>
  new Map(found.map(({ cause, result }) => [cause, result]))

/** Whether a confirmed cause leaves something to renew or to look at. */
const isWork = ({ cause }: Suspect): boolean => cause.part !== null || cause.mayHaveTaken.length > 0

const isUnpowered = ({ examination }: Proposal): boolean => powerOf[examination.done] === 'none'

/** What stands before any power. */
function waiting(
  seen: readonly string[],
  stops: readonly Pick<Finding, 'title'>[],
  confirmed: readonly Suspect[],
  toMend: readonly Suspect[],
  proposals: readonly Proposal[],
): Words[] {
  const holding = seen.map(seenOf).filter(({ holds }) => holds)
  return [
    ...stops.map(({ title }) => title),
    ...toMend.map(
      ({ cause }) =>
        say`${capital(prose(cause.cause))}: to be mended, and what it may have taken with it looked at, power off`,
    ),
    ...(confirmed.length === 0 && proposals.some(isUnpowered)
      ? holding.map(({ words }) => say`${prose(words)}: what can be looked at without power comes first`)
      : []),
  ]
}

interface Stand {
  around: Around
  seen: readonly string[]
  proposals: readonly Proposal[]
  confirmed: readonly Suspect[]
  toMend: readonly Suspect[]
  waits: boolean
  proof: Proof
}

/** What to do, in order: what a confirmed cause asks for, the examinations, the three readings; and where nothing is left, to hand it on. */
function nextOf(stand: Stand): NextExamined[] {
  const { around, proposals, confirmed, toMend, waits, proof, seen } = stand
  const may = proposals.filter((proposal) => !waits || isUnpowered(proposal))
  const mends = toMend.flatMap((suspect) => mending(suspect, around))
  const examinations = may.map((proposal) => proposed(proposal, around))
  const proving = confirmed.length > 0 && !waits && !proof.proved ? proofSteps(proof, around) : []
  const mine = [...mends, ...examinations].some(({ who }) => who === 'you')
  const hand =
    seen.length > 0 && !mine && proving.length === 0 && !proof.proved ? [handOn(examinations.length > 0, around)] : []
  // with its cause mended, the readings come before what else might have been
  return [...mends, ...proving, ...hand, ...examinations]
}

function mending({ cause }: Suspect, around: Around): NextExamined[] {
  const taken = cause.mayHaveTaken.map(prose)
  const rated = partRating(cause, around)
  const renew = say`${prose(cause.remedy)}${rated ? say` (${rated})` : say``}.`
  return [
    ...(taken.length > 0
      ? [plainNext(say`Plug out: look at what it may have taken with it: ${listed(taken)}.`, around, cause.key)]
      : []),
    plainNext(renew, around, cause.key),
  ]
}

const plainNext = (what: Phrase, around: Around, mends?: string): NextExamined => ({
  do: what,
  who: 'you',
  power: 'none',
  link: linkOf(around),
  expect: null,
  otherwise: null,
  tells:
    mends === undefined
      ? []
      : [{ cause: mendedKey(mends), words: say`mended, and what it may have taken looked at`, ifSo: say`` }],
})

function proofSteps(proof: Proof, around: Around): NextExamined[] {
  return proofStates
    .filter((state) => proof[state] !== 'within')
    .map((state) => ({
      ...plainNext(proofWords[state], around),
      power: 'mains',
      expect: figureFor(state === 'open' ? 'rail' : 'load', around),
    }))
}

const proofWords: Readonly<Record<(typeof proofStates)[number], Phrase>> = {
  open: say`Behind the lamp, without the machine: read every output open. A right reading proves little yet.`,
  loaded: say`On the dummy load: read every output loaded.`,
  warm: say`After 30 min on the dummy load: read every output warm. Only then the machine.`,
}

const handOn = (qualifiedLeft: boolean, around: Around): NextExamined => ({
  ...plainNext(
    qualifiedLeft
      ? say`Stop here and hand it on: what is left to examine is for a qualified person. ${qualifiedHands}`
      : say`Stop here and hand it on: nothing that is known here is left to examine with the power off, and it is not proved. Tell whoever takes it what was seen and what was excluded.`,
    around,
  ),
})

function proposed({ examination, tells }: Proposal, around: Around): NextExamined {
  const does = doing(examination)
  return {
    do: does,
    who: whoOf[examination.done],
    power: powerOf[examination.done],
    link: linkOf(around),
    examination: examination.key,
    expect: figureFor(examination.figure, around),
    otherwise: tells.length === 1 ? often(tells[0]!.cause, prose(tells[0]!.cause.ifNot)) : null,
    tells: tells.map(({ cause }) => ({
      cause: cause.key,
      words: capital(prose(cause.cause)),
      ifSo: often(cause, prose(cause.ifSo)),
    })),
  }
}

const linkOf = ({ of }: Around): Next['link'] =>
  of.arrangement === 'built-in' || of.arrangement === 'machine-only' ? 'machine' : 'supply'

function told(
  { cause, likelihood, because, sources }: Suspect,
  around: Around,
  confirmed: readonly Suspect[],
  toMend: readonly Suspect[],
): CauseTold {
  const examination = examinationOf(cause)
  const figure = figureFor(examination.figure, around)
  const isConfirmed = confirmed.some((other) => other.cause === cause)
  return {
    key: cause.key,
    cause: capital(prose(cause.cause)),
    likelihood,
    because,
    confirmBy: {
      do: doing(examination),
      power: powerOf[examination.done],
      who: whoOf[examination.done],
      expect: say`${often(cause, prose(cause.ifSo))}${figure ? say` (${figure})` : say``}`,
      otherwise: prose(cause.ifNot),
    },
    mayHaveTaken: cause.mayHaveTaken.map(prose),
    remedy: say`${prose(cause.remedy)}.`,
    part: cause.part === null ? null : { name: capital(prose(cause.part)), rated: partRating(cause, around) },
    confirmed: isConfirmed,
    mended: isConfirmed && !toMend.some((other) => other.cause === cause),
    sources,
  }
}

/** Workshop figures are what is often found, and no limits. */
const often = ({ workshop }: Suspect['cause'], words: Phrase): Phrase => (workshop ? say`often ${words}` : words)

const unplugged = say`Plug out`
const discharged = say`Plug out, and what is stored measured under ${volts(plugPinLimit.limitV)}`

/** What an examination is done with. */
function doing({ does, done, trouble }: Examination): Phrase {
  const where: Readonly<Record<PlaceDone, Phrase>> = {
    unplugged: trouble > 1 ? discharged : unplugged,
    'bench supply': say`On the bench supply, its limit set`,
    'dummy load': say`With the supply on the mains, only low-voltage points probed`,
    'behind the lamp': say`Behind the series lamp, hands off`,
    mains: say`Covers on, hands off`,
    'qualified, unplugged': say`By a qualified person, plug out`,
    'qualified, mains': say`By a qualified person`,
  }
  const hands = whoOf[done] === 'qualified' ? say` ${qualifiedHands}` : say``
  return say`${where[done]}: ${within(prose(does))}.${hands}`
}

const powerOf: Readonly<Record<PlaceDone, Power>> = {
  unplugged: 'none',
  'bench supply': 'low-voltage',
  'dummy load': 'mains',
  'behind the lamp': 'mains',
  mains: 'mains',
  'qualified, unplugged': 'none',
  'qualified, mains': 'mains',
}

const whoOf: Readonly<Record<PlaceDone, Hands>> = {
  unplugged: 'you',
  'bench supply': 'you',
  'dummy load': 'you',
  'behind the lamp': 'you',
  mains: 'you',
  'qualified, unplugged': 'qualified',
  'qualified, mains': 'qualified',
}
