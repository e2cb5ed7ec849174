import type {
  Assessment,
  Cause,
  FactChange,
  Job,
  JobExamined,
  LogEntry,
  Part,
  Reading,
  Tick,
} from '../../bench/jobs/job.js'
import type { JobSummary } from '../../bench/jobs/jobDraft.js'
import { goesOn, type StandingState, standing, type Wait } from '../../bench/jobs/standing.js'
import { openStops } from '../../bench/jobs/stops.js'
import type { Kept, Photo, Row } from '../../store/store.js'
import { isoTime, stampJson } from './stamp.js'

const waitJson = ({ since, ...wait }: Wait) => ({ ...wait, since: isoTime(since) })

const standingJson = (state: StandingState, waits: Wait[], since: number) => ({
  state,
  waitsFor: waits.map(({ text }) => text),
  canGoOn: goesOn(state),
  since: isoTime(since),
  waits: waits.map(waitJson),
})

export const assessmentJson = ({ judgedAt, ...rest }: Assessment) => ({ ...rest, judgedAt: isoTime(judgedAt) })

const entryJson = <Of extends Pick<Reading, 'at' | 'typedAt' | 'withdrawn'>>({
  at,
  typedAt,
  withdrawn,
  ...entry
}: Of) => ({
  ...entry,
  at: isoTime(at),
  ...(typedAt !== undefined && { typedAt: isoTime(typedAt) }),
  ...(withdrawn && { withdrawn: { ...withdrawn, at: isoTime(withdrawn.at) } }),
})

export const readingJson = (reading: Reading) => entryJson(reading)

export const tickJson = (tick: Tick) => entryJson(tick)

export const causeJson = ({ at, ...cause }: Cause) => ({ ...cause, at: isoTime(at) })

export const partJson = ({ since, ...part }: Part) => ({ ...part, since: isoTime(since) })

export const logJson = ({ at, ...entry }: LogEntry) => ({ ...entry, at: isoTime(at) })

const examinedJson = ({ found, ...rest }: JobExamined) => ({
  ...rest,
  found: found.map(({ at, ...one }) => ({ ...one, at: isoTime(at) })),
})

const changeJson = ({ at, ...change }: FactChange) => ({ ...change, at: isoTime(at) })

export const photoJson = ({ createdAt, owner, ...photo }: Photo) => ({
  ...photo,
  createdAt: isoTime(createdAt),
  large: `/photos/${photo.id}`,
  small: `/photos/${photo.id}/small`,
})

/** A job in JSON, with where it stands. */
export function jobRecord(kept: Kept<Job>, photos: readonly Photo[]) {
  const { body } = kept
  const { state, waits, since } = standing(body)
  return {
    ...stampJson(kept),
    name: body.name,
    check: body.check,
    plan: body.plan,
    limits: body.limits,
    assessment: assessmentJson(body.assessment),
    earlier: body.earlier.map(assessmentJson),
    readings: body.readings.map(readingJson),
    ticks: (body.ticks ?? []).map(tickJson),
    causes: (body.causes ?? []).map(causeJson),
    stops: openStops(body).map(({ at, ...stop }) => ({ ...stop, at: isoTime(at) })),
    observations: body.observations,
    parts: body.parts.map(partJson),
    log: body.log.map(logJson),
    changes: (body.changes ?? []).map(changeJson),
    ...(body.examined && { examined: examinedJson(body.examined) }),
    photos: photos.map(photoJson),
    standing: standingJson(state, waits, since),
  }
}

/** A job in a list. */
export const jobRow = (row: Row<JobSummary>) => ({
  ...stampJson(row),
  name: row.name,
  verdict: row.summary.verdict,
  standing: standingJson(row.state as StandingState, row.summary.waits, row.summary.since),
  parts: row.summary.parts,
  readings: row.summary.readings,
})
