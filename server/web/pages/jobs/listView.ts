import type { JobSummary } from '../../../bench/jobs/jobDraft.js'
import { goesOn, type StandingState, standingStates } from '../../../bench/jobs/standing.js'
import type { Row, Store } from '../../../store/store.js'
import { head, type PageHead } from '../../page.js'
import { day, lasting, type Moment } from '../../parts/dates.js'
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
}

interface JobGroup extends StandingWords {
  state: StandingState
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
    pager: pages,
    deleted,
    example: examples[0]?.address ?? '',
  }
}
