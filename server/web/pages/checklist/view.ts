import type { Job } from '../../../bench/jobs/job.js'
import { readText } from '../../../bench/jobs/readingFinding.js'
import { openStops } from '../../../bench/jobs/stops.js'
import { inTime } from '../../../bench/jobs/when.js'
import type { CheckRequest } from '../../../chain/case/request.js'
import type { Outcome } from '../../../chain/finding.js'
import { type Checklist, type NumberedLine, type NumberedStage, numbersOf } from '../../../plan/checklist.js'
import { joined, say, type Words } from '../../../words/phrase.js'
import { head, type PageHead } from '../../page.js'
import { countryName } from '../../parts/countryNames.js'
import { type Moment, moment } from '../../parts/dates.js'
import { verdictWords } from '../../parts/verdictWords.js'

/** The place and the plates, for the head of the paper: what is checked there is what is in one's hands. */
function aboutOf({ site, supply, device }: CheckRequest): ChecklistPage['about'] {
  const line = (title: string, words: string | null | undefined) =>
    words?.trim() ? [{ title, words: words.trim().replace(/\s*[\r\n]+\s*/g, ' · ') }] : []
  return [
    ...line('Place', site.country && countryName(site.country)),
    ...line('Machine’s plate', device.label),
    ...line('Supply’s plate', supply.label),
  ]
}

/** What was read or seen at a line last. */
export interface Done {
  /** of the reading or the step that was done */
  id: string
  text: Words
  at: Moment
  /** a stop is said again at its line */
  stop: boolean
}

interface SheetLine extends NumberedLine {
  done: Done | null
}

export interface ChecklistPage {
  page: PageHead
  /** null: a line to write it on */
  caseName: string | null
  /** the day it was printed, "2026-11-25" */
  date: string
  dataVersion: string
  /** the place and the plates of the case, as entered */
  about: { title: string; words: string }[]
  /** what the check says; of a stopped job, that it is stopped */
  verdict: Words
  /** what holds the job, across the head of the sheet */
  stops: { number: string | null; where: string; title: string; action: string; at: Moment }[]
  /** of a stopped job, what was measured so far, in the order of the lines: each with its number */
  read: Words
  stages: (Omit<NumberedStage, 'lines'> & { lines: readonly SheetLine[] })[]
  /** where the page leads back to */
  back: { href: string; text: string }
}

const isStop = (outcome: Outcome): boolean => outcome === 'stop'

/** The last of each line of a job, readings and steps that were done. */
export function doneOf({ readings, ticks = [] }: Pick<Job, 'readings' | 'ticks'>): ReadonlyMap<string, Done> {
  const entries = [
    ...readings.map((reading) => ({ ...reading, text: readText(reading) })),
    ...ticks.map((tick) => ({
      ...tick,
      text:
        tick.as === 'wrong'
          ? say`not as it should be${tick.words === null ? '' : say`: ${tick.words}`}`
          : (tick.words ?? say`done`),
    })),
  ]
  return new Map(
    inTime(entries)
      .filter(({ withdrawn }) => !withdrawn)
      .map(({ id, key, text, at, typedAt, finding }) => [
        key,
        { id, text, at: moment(typedAt ?? at), stop: isStop(finding.outcome) },
      ]),
  )
}

export function checklistView(
  checklist: Checklist,
  {
    caseName,
    dataVersion,
    now,
    back,
    check,
    job,
  }: Pick<ChecklistPage, 'caseName' | 'dataVersion' | 'back'> & { now: number; check: CheckRequest; job?: Job },
): ChecklistPage {
  const done = job ? doneOf(job) : new Map<string, Done>()
  const numbers = numbersOf(checklist)
  const stops = job
    ? openStops(job).map(({ key, where, title, action, at }) => ({
        number: (key !== null && numbers.get(key)) || null,
        where,
        title,
        action,
        at: moment(at),
      }))
    : []
  const read = checklist.stages
    .flatMap(({ lines }) => lines)
    .flatMap(({ key, number, unit }) => {
      const last = unit === null ? undefined : done.get(key)
      return last ? [say`${number}: ${last.text}${last.stop ? say` STOP` : say``}`] : []
    })
  return {
    page: head(caseName === null ? 'Bench checklist' : `Bench checklist: ${caseName}`, null),
    caseName,
    date: new Date(now).toISOString().slice(0, 10),
    dataVersion,
    about: aboutOf(check),
    verdict:
      stops.length > 0 ? say`Stopped at the bench: its cause comes first` : verdictWords[checklist.verdict].title,
    stops,
    read: stops.length > 0 ? joined(read, say`; `) : '',
    stages: checklist.stages.map((stage) => ({
      ...stage,
      lines: stage.lines.map((line) => ({ ...line, done: done.get(line.key) ?? null })),
    })),
    back,
  }
}
