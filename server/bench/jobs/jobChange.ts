import type { Outcome } from '../../chain/finding.js'
import { mainsTopics } from '../../chain/index.js'
import { isGiven } from '../../facts/given.js'
import { noResultYet } from '../../plan/gateResults.js'
import { namesTester } from '../../plan/namesTester.js'
import { Missing, Stale } from '../../store/errors.js'
import { tell } from '../../words/tell.js'
import { inUnit } from '../../words/unit.js'
import { saysCause } from './causeText.js'
import { fewestLetters } from './enoughSaid.js'
import type { Assessment, Cause, Job, Observations, Part, PartState, Reading, ReadingLimits, Tick } from './job.js'
import { limitsFor, stepName } from './laterLimits.js'
import { mayPower, openGates, readAgain, testedBy } from './openGates.js'
import { type Given, limitsText, readingFinding } from './readingFinding.js'
import { withEarlier } from './rejudge.js'
import { openStops, stillHeld } from './stops.js'
import { tickFinding } from './tickFinding.js'
import { lastAt, whenRead } from './when.js'

/** The most readings, parts and log entries of one job. */
export const mostEntries = 2000

/** What was sent cannot be added to this job: status 422, with the field that is wrong. */
export class Unfit extends Error {
  readonly status = 422
  readonly fields: { path: string; message: string }[]
  constructor(path: string, message: string) {
    super(message)
    this.fields = [{ path, message }]
  }
}

interface Mark {
  /** of the entry; one that the job has already is not added again, and the job is answered as it is */
  id: string
  /** milliseconds since 1970 */
  at: number
}

const holds = (entries: readonly { id: string }[], id: string): boolean => entries.some((entry) => entry.id === id)

const refuseFull = (entries: unknown[], what: string, path: string): void => {
  if (entries.length >= mostEntries)
    throw new Unfit(
      path,
      `This job has ${entries.length} ${what} already, which is the most that is kept; begin a new job.`,
    )
}

/** What was read last, until then, at the step that a reading may not exceed [limits' unit]; null where nothing was. */
function readBefore(readings: readonly Reading[], limits: ReadingLimits | null, until: number): number | null {
  if (limits?.notAbove == null || limits.unit === null) return null
  const last = lastAt(readings, limits.notAbove, until)
  return last?.value == null ? null : inUnit(last.value, last.unit, limits.unit)
}

/** Topics between the wall and the supply: while one of them stands, nothing is put on the mains. */
const onMainsSide: readonly string[] = mainsTopics.map(({ name }) => name)

/** Why the check keeps a step from power; null where it does not. */
function heldByCheck({ assessment, limits }: Job, key: string): string | null {
  const found = (outcome: Outcome, among?: readonly string[]) =>
    assessment.findings.find((one) => one.outcome === outcome && (among === undefined || among.includes(one.topic)))
  const stop = found('stop')
  if (assessment.verdict === 'do-not-connect') return `The check of this job says not to connect: ${stop?.title ?? ''}`
  const step = limitsFor({ limits }, key)
  const own = step !== null && !step.sent
  // what the plan gives a machine alone needs no mains, and what is measured at the socket tells of it
  if (key.startsWith('before.')) return null
  const offMains = own && step.power === 'low-voltage'
  const open = (offMains ? undefined : found('unknown', onMainsSide)) ?? (step === null ? found('unknown') : undefined)
  return open ? `Find out first: ${open.title}` : null
}

/**
 * Nothing that needs power is taken while the job is stopped, by what was found at the bench or by its check. A step
 * that says nothing of its power, and one that the plan does not have, may need it; what is named in a person's own words is
 * a measurement on the way to the cause. What is a stop itself is taken, and what was read before all of them; of what was
 * observed besides, nobody knows when.
 */
function refuseStopped(job: Job, key: string, entry: Pick<Reading, 'finding' | 'at' | 'typedAt'>, path: string): void {
  if (entry.finding.outcome === 'stop' || !mayPower(job, key)) return
  const stop = openStops(job).find((one) => one.key === null || !(whenRead(entry) < one.at))
  if (stop)
    throw new Unfit(
      path,
      `This job is stopped: ${stop.title} ${stop.action} This step needs power, so nothing is kept of it before the cause of the stop is written down.`,
    )
  const held = heldByCheck(job, key)
  if (held)
    throw new Unfit(
      path,
      `${held} This step needs power, so nothing is kept of it before that is changed and the check judged again.`,
    )
}

interface TypedMark extends Mark {
  /** when it was typed, where that was before it arrived */
  typedAt?: number | undefined
  /** measured all the same, as a person said who was told what it waits for */
  despite?: boolean
}

const stamped = ({ at, typedAt }: TypedMark): { at: number; typedAt?: number } => ({
  at,
  ...(typedAt !== undefined && typedAt < at && { typedAt }),
})

/** Adds a reading with what it means. Throws {@link Unfit} where its unit measures something else than the step asks. */
export function addReading(job: Job, given: Given, mark: TypedMark): Job {
  const { id } = mark
  if (holds(job.readings, id)) return job
  refuseFull(job.readings, 'readings', 'key')
  const limits = limitsFor(job, given.key)
  if (limits?.unit && inUnit(given.value ?? 1, given.unit, limits.unit) === null)
    throw new Unfit(
      'unit',
      `unit must be one that the step “${given.key}” is read in, ${limits.unit} or a part or multiple of it; received “${given.unit}”.`,
    )
  const { key, value, unit } = given
  const stamps = stamped(mark)
  const finding = readingFinding(given, limits, readBefore(job.readings, limits, whenRead(stamps)))
  const reading: Reading = { id, key, value, unit, ...stamps, finding }
  refuseStopped(job, key, reading, 'value')
  if (finding.outcome !== 'stop') refuseWaiting(job, key, 'value', mark.despite)
  return { ...job, readings: [...job.readings, reading] }
}

/** What has limits is measured, not looked at; that it is wrong can be said without a number. */
function refuseUnread({ unit, low, high, notAbove }: ReadingLimits): void {
  if (unit === null || (low === null && high === null && notAbove == null)) return
  throw new Unfit(
    'as',
    `This step has limits, ${tell(limitsText({ unit, low, high, notAbove }))}: keep the reading, in ${unit}, rather than a tick.`,
  )
}

/**
 * What puts power on anything waits for its gates, and for what was a stop to be read again; that something is wrong can be said at
 * any time.
 */
function refuseWaiting(job: Job, key: string, path: string, despite = false): void {
  const again = readAgain(job, key)
  if (again.length > 0)
    throw new Unfit(
      path,
      `This step needs power: first read again, within limits, what was a stop: ${again.join(', ')}.`,
    )
  const open = despite ? [] : openGates(job, key)
  if (open.length > 0)
    throw new Unfit(path, `This step needs power and waits for its gates: ${open.join(', ')}: ${noResultYet}`)
}

/** A step without a number, done: as it should be or not. Throws {@link Unfit} where it should be a reading, or has to wait. */
export function addTick(job: Job, { key, as, words }: Pick<Tick, 'key' | 'as' | 'words'>, mark: TypedMark): Job {
  const { id } = mark
  const ticks = job.ticks ?? []
  if (holds(ticks, id)) return job
  refuseFull(ticks, 'steps', 'key')
  const limits = limitsFor(job, key)
  const tick: Tick = { id, key, as, words, ...stamped(mark), finding: tickFinding(job, { key, as, words }) }
  const harmless = tick.finding.outcome !== 'stop'
  if (harmless) {
    if (limits) refuseUnread(limits)
    if (key === testedBy && !namesTester(words))
      throw new Unfit('words', 'Write who tested, with which instrument, and on which day.')
  }
  refuseStopped(job, key, tick, 'words')
  if (harmless) refuseWaiting(job, key, 'as')
  return { ...job, ticks: [...ticks, tick], causes: job.causes ?? [] }
}

/** Writes the cause of a stop, in the log too: the job goes on from there. */
export function addCause(job: Job, { of, text }: Pick<Cause, 'of' | 'text'>, { id, at }: Mark): Job {
  const causes = job.causes ?? []
  if (holds(causes, id)) return job
  if (!saysCause(text))
    throw new Unfit(
      'text',
      `The cause takes two words, or ${fewestLetters} letters, that tell it: what was wrong, and what was done about it.`,
    )
  // a phone that wrote it down without the network knows the step, and not yet the id of its reading
  const stop = openStops(job).find((one) => one.of === of || one.key === of)
  if (!stop) throw new Unfit('of', 'This stop is not open any more: its cause was written, or it was taken back.')
  return addLog(
    { ...job, ticks: job.ticks ?? [], causes: [...causes, { id, at, of: stop.of, text }] },
    `Cause of the stop at “${stop.where}” (${stop.title}) ${text}`,
    { id, at },
  )
}

/**
 * Takes a reading or a step back, with the reason, which the log keeps; it stays where it stands and counts no more.
 *
 * @throws Unfit where the reason tells nothing
 * @throws Missing where there is none of this id
 */
export function withdraw(job: Job, entryId: string, why: string, { id, at }: Mark): Job {
  if (holds(job.log, id)) return job
  const entry = [...job.readings, ...(job.ticks ?? [])].find((one) => one.id === entryId)
  if (!entry) throw new Missing('There is no such reading in this job.')
  if (entry.withdrawn) return job
  const tells = entry.finding.outcome === 'stop' ? saysCause(why) : isGiven(why)
  if (!tells) throw new Unfit('why', 'Say in two words or more why it is taken back.')
  const back = <Of extends { id: string }>(entries: readonly Of[]): Of[] =>
    entries.map((one) => (one.id === entryId ? { ...one, withdrawn: { at, why } } : one))
  const step = stepName(job, entry.key)
  const taken = { ...job, readings: back(job.readings), ...(job.ticks && { ticks: back(job.ticks) }) }
  return addLog(taken, `Taken back at “${step}” (${entry.finding.title}) ${why}`, { id, at })
}

/**
 * Holds every reading against the limits as they are now, after another plan. What holds the job stays the stop it was:
 * other limits are no cause.
 */
export function withReadingsJudged(job: Job, before: Job): Job {
  const holding = new Set(openStops(before).map(({ of }) => of))
  const judged = (reading: Reading): Reading => {
    const limits = limitsFor(job, reading.key)
    const comparable = !limits?.unit || inUnit(reading.value ?? 1, reading.unit, limits.unit) !== null
    const earlier = readBefore(job.readings, limits, whenRead(reading))
    return { ...reading, finding: readingFinding(reading, comparable ? limits : null, earlier) }
  }
  const seen = (tick: Tick): Tick => (holding.has(tick.id) ? tick : { ...tick, finding: tickFinding(job, tick) })
  const again = {
    ...job,
    readings: job.readings.map((reading) => (holding.has(reading.id) ? reading : judged(reading))),
    ...(job.ticks && { ticks: job.ticks.map(seen) }),
  }
  return stillHeld(again, before)
}

interface PartGiven {
  name: string
  state: PartState
  note?: string | null | undefined
  /** null takes the day away */
  expected?: string | null | undefined
}

export function addPart(job: Job, { name, state, note, expected }: PartGiven, mark: Mark & { version: number }): Job {
  if (holds(job.parts, mark.id)) return job
  refuseFull(job.parts, 'parts', 'name')
  const part: Part = {
    id: mark.id,
    version: mark.version,
    name,
    state,
    note: note ?? null,
    since: mark.at,
    ...(expected != null && { expected }),
  }
  return { ...job, parts: [...job.parts, part] }
}

/** Changes a part; a part that was changed after `version` is refused, whatever else of the job changed. */
export function changePart(
  job: Job,
  partId: string,
  patch: Partial<PartGiven> & { version?: number | undefined },
  { at, version }: { at: number; version: number },
): Job {
  const part = job.parts.find(({ id }) => id === partId)
  if (!part) throw new Missing('There is no such part in this job; it may have been deleted.')
  if (patch.version !== undefined && part.version > patch.version) throw new Stale(part)
  const state = patch.state ?? part.state
  const { expected: kept, ...rest } = part
  const expected = patch.expected === undefined ? kept : patch.expected
  const changed: Part = {
    ...rest,
    version,
    name: patch.name ?? part.name,
    state,
    note: patch.note === undefined ? part.note : patch.note,
    since: state === part.state ? part.since : at,
    ...(expected != null && { expected }),
  }
  return { ...job, parts: job.parts.map((other) => (other.id === partId ? changed : other)) }
}

export function removePart(job: Job, partId: string): Job {
  if (!job.parts.some(({ id }) => id === partId)) throw new Missing('There is no such part in this job.')
  return { ...job, parts: job.parts.filter(({ id }) => id !== partId) }
}

export function addLog(job: Job, text: string, { id, at }: Mark): Job {
  if (holds(job.log, id)) return job
  refuseFull(job.log, 'log entries', 'text')
  return { ...job, log: [...job.log, { id, at, text }] }
}

/**
 * Changes the name and those observations that are given; null takes one away. What was a stop and is written over stays one, and in the log.
 */
export function patchJob(
  job: Job,
  {
    name,
    observations,
  }: {
    name?: string | undefined
    observations?: { [Key in keyof Observations]?: Observations[Key] | undefined } | undefined
  },
  mark: Mark,
): Job {
  const given = Object.entries(observations ?? {}).filter(([, value]) => value !== undefined)
  const changed = {
    ...job,
    name: name ?? job.name,
    observations: { ...job.observations, ...Object.fromEntries(given) },
  }
  const still = new Set(openStops(changed).map(({ of }) => of))
  const [gone] = openStops(job).filter(({ of }) => !still.has(of))
  const held = stillHeld(changed, job)
  return gone ? addLog(held, `“${gone.where}” was changed; what it said holds the job: ${gone.title}`, mark) : held
}

/** Takes another judgement and keeps the one it replaces. */
export const judgeAgain = (job: Job, assessment: Assessment): Job => ({
  ...job,
  assessment,
  earlier: withEarlier(job.earlier, job.assessment),
})
