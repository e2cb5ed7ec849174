import { createHash } from 'node:crypto'
import { alarmIn } from '../../plan/alarm.js'
import { say } from '../../words/phrase.js'
import { amperes } from '../../words/quantity.js'
import { tell } from '../../words/tell.js'
import { examinedStops } from './examinedStops.js'
import { type Job, observationLabels, type Stop } from './job.js'
import { limitsOfJob, stepName } from './laterLimits.js'
import { inTime } from './when.js'

type Held = Pick<Job, 'limits' | 'readings' | 'ticks' | 'causes' | 'observations' | 'assessment' | 'held' | 'examined'>

/** Observations in words, of which some tell of a fault. */
const inWords = ['lamps', 'display', 'sounds', 'smells', 'moved', 'note'] as const

/** A mark of what was observed, so that other words, or another figure, are another stop. */
const markOf = (box: string, seen: string): string =>
  `seen-${createHash('sha256').update(`${box} ${seen}`).digest('base64url').slice(0, 22)}`

const switchOff = 'Switch off, unplug, let it discharge, and find the cause before anything else is tried.'

/** What the machine may draw [A]: the highest limit of a current under power, of the last stage that has one; null where none has. */
function mostDrawnA(job: Pick<Job, 'limits'>): number | null {
  const currents = limitsOfJob(job).flatMap(({ key, unit, power, high, sent }) =>
    !sent && unit === 'A' && high !== null && (power === 'mains' || power === 'low-voltage')
      ? [{ stage: key.split('.', 1)[0], high }]
      : [],
  )
  const last = currents.at(-1)?.stage
  return last === undefined ? null : Math.max(...currents.filter(({ stage }) => stage === last).map(({ high }) => high))
}

/** Stops among what was observed: words that tell of a fault, and a current above what the machine may draw. */
function observedStops(job: Held): Stop[] {
  const { observations, assessment } = job
  const stop = (box: string, seen: string, title: string): Stop => ({
    of: markOf(box, seen),
    key: null,
    where: box,
    at: assessment.judgedAt,
    title,
    action: switchOff,
  })
  const words = inWords.flatMap((field) => {
    const seen = observations[field]
    return seen !== null && alarmIn(seen) !== null
      ? [stop(observationLabels[field], seen, `Written down: “${seen}”.`)]
      : []
  })
  const { drawnA } = observations
  const mostA = mostDrawnA(job)
  if (drawnA === null || mostA === null || drawnA <= mostA) return words
  const title = tell(say`${amperes(drawnA)} drawn, more than the ${amperes(mostA)} it may draw.`)
  return [...words, stop(observationLabels.drawnA, String(drawnA), title)]
}

/** Every stop of a job, the oldest first, explained or not. */
function allStops(job: Held): Stop[] {
  const entries = inTime([...job.readings, ...(job.ticks ?? [])])
    .filter(({ finding, withdrawn }) => finding.outcome === 'stop' && !withdrawn)
    .map(
      ({ id, key, at, typedAt, finding }): Stop => ({
        of: id,
        key,
        where: stepName(job, key),
        at: typedAt ?? at,
        title: finding.title,
        action: finding.action ?? switchOff,
      }),
    )
  const told = [...entries, ...observedStops(job), ...examinedStops(job)]
  const held = (job.held ?? []).filter(({ of }) => !told.some((one) => one.of === of))
  return [...told, ...held].toSorted((one, other) => one.at - other.at)
}

/** The stops that hold a job: those without a cause. A good reading after one changes nothing. */
export function openStops(job: Held): Stop[] {
  const explained = new Set((job.causes ?? []).map(({ of }) => of))
  return allStops(job).filter(({ of }) => !explained.has(of))
}

/**
 * A job after a change, with the stops that held it before: no change of facts, limits or words ends one, only its cause
 * does. Other words of the same box that are a stop themselves stand in its place, and none that was held already does.
 */
export function stillHeld(job: Job, before: Held): Job {
  const held = new Set((job.held ?? []).map(({ of }) => of))
  const open = openStops(job)
  const replaces = ({ of, key, where }: Stop, stop: Stop): boolean =>
    key === null && stop.key === null && where === stop.where && !held.has(of)
  const stands = (stop: Stop): boolean => open.some((one) => one.of === stop.of || replaces(one, stop))
  const lost = openStops(before).filter((stop) => !stands(stop))
  return lost.length === 0 ? job : { ...job, held: [...(job.held ?? []), ...lost] }
}
