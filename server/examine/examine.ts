import type { Hands, Power } from '../chain/action.js'
import type { Case } from '../chain/case/case.js'
import type { Finding } from '../chain/finding.js'
import type { Next } from '../chain/next/next.js'
import { qualifiedHands } from '../chain/words.js'
import type { Likelihood } from '../tables/causesSeen.js'
import type { Examination, PlaceDone } from '../tables/examinations.js'
import { neverDone } from '../tables/neverDone.js'
import type { Source } from '../tables/source.js'
import { capital, listed, type Phrase, say, type Words, within } from '../words/phrase.js'
import { prose } from '../words/prose.js'
import { unique } from '../words/unique.js'
import { readingText } from '../words/unit.js'
import { type Around, aroundOf, type LampCurrent } from './around.js'
import { type ExamineRequest, type Found, mendedKey, type ReadingSeen } from './examineRequest.js'
import { figureFor, partRating } from './figures.js'
import { behind, handsFor, placeOf, powerAt } from './hands.js'
import { type Allowance, holdOf, leastOf } from './holds.js'
import { examinationOf, inOrder, type Proposal } from './order.js'
import { type Proof, proofOf, proofStates } from './proof.js'
import { type Read, readingSeen } from './readingSeen.js'
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
  /** what stands before power by the reader; empty where nothing does */
  waitsFor: readonly Words[]
  proof: Proof
}

/** What the check, or the job, says against power. */
export type Stop = Pick<Finding, 'title'> & Partial<Pick<Finding, 'topic' | 'outcome'>>

/**
 * From what was seen to what to examine, in order. What was found excludes and confirms: what is excluded never comes back, and a
 * confirmed cause opens what it may have taken with it. Nothing that needs power is proposed to the reader while anything stands before it.
 *
 * @param stops         what of the check, or of the job, says that nothing is put under power
 * @param lampCurrentA  what the series lamp passes, where the lamp is known
 */
export function examine(
  of: Case,
  asked: ExamineRequest,
  stops: readonly Stop[],
  lampCurrentA: LampCurrent | null = null,
): Examined {
  const live = stops.some(({ topic, outcome }) => topic === 'isolation' && outcome === 'stop')
  const around = aroundOf(of, lampCurrentA, live)
  const reads = readsOf(asked.readings, around)
  const seen = [...new Set([...asked.observations, ...reads.flatMap(({ seen }) => seen ?? [])])]
  const results = new Map(asked.found.map((found) => [found.cause, found]))
  const all = suspectsOf(seen, reads, around)
  const suspects = all.filter(({ cause }) => results.get(cause.key)?.result !== 'excluded')
  const confirmed = suspects.filter(({ cause }) => results.get(cause.key)?.result === 'confirmed')
  const open = suspects.filter((suspect) => !confirmed.includes(suspect))
  const toMend = confirmed.filter(
    (suspect) => isWork(suspect) && results.get(mendedKey(suspect.cause.key))?.result !== 'confirmed',
  )
  const holds = seen
    .map(seenOf)
    .filter(({ holds }) => holds)
    .map((row) => holdOf(row, all, results, around))
  const stands: Words[] = [
    ...stops.map(({ title }) => title),
    ...reads.flatMap(({ holds, because }) => (holds ? [because] : [])),
    ...toMend.map(
      ({ cause }) =>
        say`${capital(prose(cause.cause))}: to be mended, and what it may have taken with it looked at, power off`,
    ),
  ]
  const waitsFor = [...stands, ...holds.flatMap(({ waits }) => waits ?? [])]
  const allows = stands.length > 0 ? 'nothing' : leastOf(holds.map(({ allows }) => allows))
  const proof = proofOf(asked.readings, around, allows === 'all')
  return {
    seen: seen.map((key) => ({
      key,
      words: prose(seenOf(key).words),
      because: reads.findLast((read) => read.seen === key)?.because ?? null,
    })),
    atOnce: unique(seen.map((key) => prose(seenOf(key).atOnce))),
    never: neverDone
      .filter((row) => row.seen.length === 0 || row.seen.some((key) => seen.includes(key)))
      .map(({ never }) => prose(never)),
    causes: [...confirmed, ...open].map((suspect) => told(suspect, around, toMend, results.get(suspect.cause.key))),
    next: nextOf({
      around,
      held: seen.length > 0 || waitsFor.length > 0,
      settle: stops.length > 0,
      proposals: inOrder(open),
      confirmed,
      toMend,
      allows,
      proof,
    }),
    waitsFor,
    proof,
  }
}

/** What the readings come to: the last of each counts, and every one that amounts to something that holds power. */
function readsOf(readings: readonly ReadingSeen[], around: Around): Read[] {
  const last = new Map(readings.map((reading) => [`${reading.key} ${reading.state ?? ''}`, reading]))
  return readings.flatMap((reading) => {
    const read = readingSeen(reading, around)
    if (read === null) return []
    const lasts = read.seen !== null && seenOf(read.seen).holds
    return lasts || [...last.values()].includes(reading) ? [read] : []
  })
}

/** Whether a confirmed cause leaves something to renew or to look at. */
const isWork = ({ cause }: Suspect): boolean => cause.part !== null || cause.mayHaveTaken.length > 0

interface Stand {
  around: Around
  /** whether anything was seen, or stands before power */
  held: boolean
  /** whether the check, or the job, has something to settle first */
  settle: boolean
  proposals: readonly Proposal[]
  confirmed: readonly Suspect[]
  toMend: readonly Suspect[]
  allows: Allowance
  proof: Proof
}

/** Places where the lamp, or the limit of a bench supply, holds the current. */
const limited: readonly PlaceDone[] = ['behind the lamp', 'bench supply']

function mayBeDone({ examination }: Proposal, allows: Allowance, around: Around): boolean {
  if (powerAt(examination) === 'none' || allows === 'all') return true
  if (allows === 'nothing') return false
  if (handsFor(examination, around) === 'qualified') return true
  return allows === 'behind the lamp' && limited.includes(examination.done)
}

/** What to do, in order: what a confirmed cause asks for, the examinations, the three readings; and where nothing is left, to hand it on. */
function nextOf({ around, held, settle, proposals, confirmed, toMend, allows, proof }: Stand): NextExamined[] {
  const mends = toMend.map((suspect) => mending(suspect, around))
  const examinations = proposals
    .filter((proposal) => mayBeDone(proposal, allows, around))
    .map((proposal) => proposed(proposal, around))
  const proving = confirmed.length > 0 && allows === 'all' && !proof.proved ? proofSteps(proof, around) : []
  const mine = [...mends, ...examinations].some(({ who }) => who === 'you')
  const hand =
    held && !mine && proving.length === 0 && !proof.proved
      ? [plainNext(settle ? settleFirst : examinations.length > 0 ? forQualified : handOn, around)]
      : []
  // with its cause mended, the readings come before what else might have been
  return [...mends, ...proving, ...hand, ...examinations]
}

/** One thing to do for a confirmed cause: to look at what it took and to renew it, by the hands that it was examined by. */
function mending({ cause }: Suspect, around: Around): NextExamined {
  const examination = examinationOf(cause)
  const opened = {
    done: examination.done.startsWith('qualified') ? examination.done : 'unplugged',
    trouble: 2,
  } as const
  const who = handsFor(opened, around)
  const taken = cause.mayHaveTaken.map(prose)
  const rated = partRating(cause, around)
  const look = taken.length > 0 ? say` look at what it may have taken with it: ${listed(taken)}. Then:` : say``
  return {
    ...plainNext(
      say`${placeOf({ ...opened, done: who === 'qualified' ? 'qualified, unplugged' : 'unplugged' }, around)}:${look} ${prose(cause.remedy)}${rated ? say` (${rated})` : say``}.${behind(who)}`,
      around,
    ),
    who,
    tells: [{ cause: mendedKey(cause.key), words: say`mended, and what it may have taken looked at`, ifSo: say`` }],
  }
}

const plainNext = (what: Phrase, around: Around): NextExamined => ({
  do: what,
  who: 'you',
  power: 'none',
  link: linkOf(around),
  expect: null,
  otherwise: null,
  tells: [],
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

const handOn = say`Stop here and hand it on: nothing that is known here is left to examine with the power off, and it is not proved. Tell whoever takes it what was seen and what was excluded.`
const forQualified = say`Stop here and hand it on: what is left to examine is for a qualified person. ${qualifiedHands}`
const settleFirst = say`Stop here, power off: what stands against power is settled first. Or hand it on, and tell whoever takes it what was seen and what was excluded.`

function proposed({ examination, tells }: Proposal, around: Around): NextExamined {
  return {
    do: doing(examination, around),
    who: handsFor(examination, around),
    power: powerAt(examination),
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
  toMend: readonly Suspect[],
  found: Found | undefined,
): CauseTold {
  const examination = examinationOf(cause)
  const figure = figureFor(examination.figure, around)
  const isConfirmed = found?.result === 'confirmed'
  const read = found?.value == null || !found.unit ? [] : [say`examined: ${readingText(found.value, found.unit)}`]
  return {
    key: cause.key,
    cause: capital(prose(cause.cause)),
    likelihood,
    because: [...read, ...because],
    confirmBy: {
      do: doing(examination, around),
      power: powerAt(examination),
      who: handsFor(examination, around),
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

/** What an examination is done with. */
const doing = (examination: Examination, around: Around): Phrase =>
  say`${placeOf(examination, around)}: ${within(prose(examination.does))}.${behind(handsFor(examination, around))}`
