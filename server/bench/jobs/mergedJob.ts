import { createHash } from 'node:crypto'
import { isGiven } from '../../facts/given.js'
import { saysCause } from './causeText.js'
import type { Job, Reading, Tick } from './job.js'
import { addLog, mostEntries, Unfit } from './jobChange.js'

interface Entry {
  id: string
}

/** What stands here, as it stands here, then what the file has besides. */
const both = <Of extends Entry>(kept: readonly Of[] = [], sent: readonly Of[] = []): Of[] => {
  const known = new Set(kept.map(({ id }) => id))
  return [...kept, ...sent.filter(({ id }) => !known.has(id))]
}

const digest = (of: unknown): string => createHash('sha256').update(JSON.stringify(of)).digest('base64url').slice(0, 22)

/** What was read or done, without what it was found to mean. */
const said = ({ finding: _finding, withdrawn: _withdrawn, ...rest }: Reading | Tick): string => digest(rest)

/**
 * The same of readings and steps: one of here that the file takes back is taken back where its reason would be taken here. One that has the
 * id of another of here is an entry of its own.
 */
function bothRead<Of extends Reading | Tick>(kept: readonly Of[] = [], sent: readonly Of[] = []): Of[] {
  const here = new Map(kept.map((one) => [one.id, said(one)]))
  const named = sent.map((one) => ((here.get(one.id) ?? said(one)) === said(one) ? one : { ...one, id: said(one) }))
  const there = new Map(named.map((one) => [one.id, one]))
  const own = kept.map((one) => {
    const withdrawn = there.get(one.id)?.withdrawn
    if (one.withdrawn || !withdrawn) return one
    const tells = one.finding.outcome === 'stop' ? saysCause(withdrawn.why) : isGiven(withdrawn.why)
    return tells ? { ...one, withdrawn } : one
  })
  return both(own, named)
}

/** What was examined here and there: of a cause the later result, of two that are as old that of here. */
function bothExamined({ examined: kept }: Job, { examined: sent }: Job): Job['examined'] {
  if (!kept || !sent) return sent ?? kept
  const read = new Set(sent.readings.map((one) => digest(one)))
  const later = new Map(kept.found.map((one) => [one.cause, one]))
  for (const one of sent.found) if (!(one.at <= (later.get(one.cause)?.at ?? -1))) later.set(one.cause, one)
  return {
    seen: sent.seen,
    found: [...later.values()],
    readings: [...sent.readings, ...kept.readings.filter((one) => !read.has(digest(one)))],
  }
}

/** The most readings of an examination that a file may have. */
export const mostExamined = 400

const lists = ['readings', 'ticks', 'causes', 'log', 'changes'] as const

const idsOf = (job: Job): string[] => lists.flatMap((list) => (job[list] ?? []).map(({ id }) => id))

/** How many entries of a job another does not have. */
export function entriesBeside(job: Job, other: Job): number {
  const there = new Set(idsOf(other))
  return idsOf(job).filter((id) => !there.has(id)).length
}

/**
 * A job of a file in the place of one that is kept: its facts, plan, parts and words are those of the file, and no entry of either is
 * lost. The log says so where the file lacks something.
 *
 * @param now  milliseconds since 1970
 * @throws Unfit where both together have more entries than a job keeps
 */
export function mergedJob(sent: Job, kept: Job, now: number): Job {
  const beside = entriesBeside(kept, sent)
  const changes = both(kept.changes, sent.changes)
  const held = [...(sent.held ?? []), ...(kept.held ?? []).filter(({ of }) => !sent.held?.some((one) => one.of === of))]
  const known = new Set(sent.limits.map(({ key }) => key))
  const ticks = bothRead(kept.ticks, sent.ticks)
  const causes = both(kept.causes, sent.causes)
  const examined = bothExamined(kept, sent)
  const merged: Job = {
    ...sent,
    limits: [...sent.limits, ...kept.limits.filter(({ key }) => !known.has(key))],
    readings: bothRead(kept.readings, sent.readings),
    log: both(kept.log, sent.log),
    ...((kept.ticks || sent.ticks) && { ticks }),
    ...((kept.causes || sent.causes) && { causes }),
    ...(changes.length > 0 && { changes }),
    ...(held.length > 0 && { held }),
    ...(examined && { examined }),
  }
  const full = lists.find((list) => (merged[list] ?? []).length > mostEntries - (list === 'log' ? 1 : 0))
  if (full || (examined?.readings.length ?? 0) > mostExamined)
    throw new Unfit(
      full ?? 'examined',
      `The job “${kept.name}” would have more ${full ?? 'readings of an examination'} than are kept: those of here and of the file are not the same. Leave it out of the file.`,
    )
  if (beside === 0) return merged
  const entries = `${beside} ${beside === 1 ? 'entry' : 'entries'}`
  return addLog(
    merged,
    `Brought in from a file in place of what was kept here; ${entries} that it does not have stayed.`,
    {
      id: digest(sent),
      at: now,
    },
  )
}
