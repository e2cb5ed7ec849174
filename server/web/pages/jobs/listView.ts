import type { JobSummary } from '../../../bench/jobs/jobDraft.js'
import { goesOn, type StandingState, standingStates } from '../../../bench/jobs/standing.js'
import type { Row, Store } from '../../../store/store.js'
import { head, type PageHead } from '../../page.js'
import { day, lasting, type Moment, untilDay } from '../../parts/dates.js'
import { examples } from '../../parts/examples.js'
import { addressWith, type Pager, pager, perPage } from '../../parts/pager.js'
import { type StandingWords, standingWords } from './standingWords.js'

interface JobLine {
  address: string
  name: string
  since: Moment
  lasting: string
  /** `since` only where it is another day than the job's own */
  waits: { text: string; since: Moment | null }[]
  more: number
  /** parts that lie there to be fitted */
  arrived: readonly string[]
  /** the page at the machine, where work can go on */
  bench: string | null
}

/** A job that waits for a part which should be there. */
interface DueLine {
  address: string
  name: string
  parts: { text: string; late: boolean }[]
}

interface JobGroup extends StandingWords {
  state: StandingState
  /** it waits on the reader, now */
  today: boolean
  total: number
  lines: JobLine[]
  /** the list of this group alone; null where all of it is shown */
  all: string | null
}

export interface JobsPage {
  page: PageHead
  search: string
  /** the only group shown; null for all */
  only: string | null
  total: number
  goOn: number
  groups: JobGroup[]
  /** parts due today or late, the latest first; `more` jobs have such parts too */
  due: { lines: DueLine[]; more: number }
  pager: Pager | null
  /** a job that was just deleted and can be brought back */
  deleted: string | null
  /** the address of a worked example, to be kept as a first job */
  example: string
}

/** How many of a group are shown where all groups are. */
const shownOfGroup = 15

/** How many waits of one job are shown in the list. */
const shownWaits = 3

export interface JobsAsked {
  search: string
  state: StandingState | null
  number: number
  deleted: string | null
  now: number
}

/** States in which something waits on the reader, now. */
const todays: readonly StandingState[] = ['under-way', 'ready', 'out-of-limits']

/** States in which parts may be waited for. */
const waiting: readonly StandingState[] = ['waits-for-parts', 'out-of-limits', 'must-change']

const everything = 1_000_000

/** Jobs with a part that is due today, or late. */
async function dueOf(store: Store, search: string, now: number): Promise<JobsPage['due']> {
  const { rows } = await store.list<JobSummary>('job', { search, states: waiting, limit: everything })
  const due = rows
    .map(({ id, name, summary }) => ({
      address: `/jobs/${id}#parts`,
      name,
      parts: (summary.due ?? [])
        .map(({ part, expected }) => ({ part, expected, ...untilDay(expected, now) }))
        .filter((one) => one.due),
    }))
    .filter(({ parts }) => parts.length > 0)
    .toSorted((one, other) => ((one.parts[0]?.expected ?? '') < (other.parts[0]?.expected ?? '') ? -1 : 1))
    .map(({ parts, ...line }) => ({
      ...line,
      parts: parts.map(({ part, expected, text, late }) => ({ text: `${part}: expected ${expected}, ${text}`, late })),
    }))
  return { lines: due.slice(0, shownOfGroup), more: Math.max(0, due.length - shownOfGroup) }
}

const lineOf = (row: Row<JobSummary>, now: number): JobLine => ({
  address: `/jobs/${row.id}`,
  name: row.name,
  since: day(row.summary.since),
  lasting: lasting(row.summary.since, now),
  waits: row.summary.waits.slice(0, shownWaits).map((wait) => ({
    text: wait.text,
    since: day(wait.since).text === day(row.summary.since).text ? null : day(wait.since),
  })),
  more: Math.max(0, row.summary.waits.length - shownWaits),
  arrived: row.summary.arrived ?? [],
  bench: goesOn(row.state as StandingState) ? `/jobs/${row.id}/bench` : null,
})

/** The list of jobs: by where they stand, what can go on first. */
export async function jobsView(store: Store, { search, state, number, deleted, now }: JobsAsked): Promise<JobsPage> {
  const groups: JobGroup[] = []
  let pages: Pager | null = null
  for (const one of state === null ? standingStates : [state]) {
    const limit = state === null ? shownOfGroup : perPage
    const offset = state === null ? 0 : (number - 1) * perPage
    const { rows, total } = await store.list<JobSummary>('job', {
      search,
      states: [one],
      order: 'latest',
      limit,
      offset,
    })
    if (total === 0 && state === null) continue
    if (state !== null) pages = pager(number, total, (page) => addressWith('/jobs', { state, search, page }))
    groups.push({
      state: one,
      ...standingWords[one],
      today: state === null && todays.includes(one),
      total,
      lines: rows.map((row) => lineOf(row, now)),
      all: state === null && total > rows.length ? addressWith('/jobs', { state: one, search }) : null,
    })
  }
  const counts = await store.countStates('job')
  const total = Object.values(counts).reduce((sum, count) => sum + count, 0)
  const goOn = standingStates.filter(goesOn).reduce((sum, name) => sum + (counts[name] ?? 0), 0)
  return {
    page: head('Jobs', 'jobs'),
    search,
    only: state,
    total,
    goOn,
    groups,
    due: state === null ? await dueOf(store, search, now) : { lines: [], more: 0 },
    pager: pages,
    deleted,
    example: examples[0]?.address ?? '',
  }
}
