import type { PartState } from '../../../bench/jobs/job.js'
import type { StandingState } from '../../../bench/jobs/standing.js'
import type { Outcome } from '../../../chain/finding.js'

export interface StandingWords {
  /** the shape that stands for it; null for one that is neither */
  outcome: Outcome | null
  title: string
  /** what the group in the list means */
  text: string
}

/** Where a job stands, as a person reads it. */
export const standingWords: Record<StandingState, StandingWords> = {
  'under-way': {
    outcome: 'clear',
    title: 'Under way',
    text: 'Readings were taken, and nothing is waited for: it can go on now.',
  },
  ready: {
    outcome: 'clear',
    title: 'Can begin',
    text: 'No conflict was found in what was entered, and no part is waited for: it can begin now.',
  },
  'find-out': { outcome: 'unknown', title: 'Find out first', text: 'A fact that decides is not known yet.' },
  'waits-for-parts': { outcome: 'caution', title: 'Waits for parts', text: 'A part is wanted or ordered.' },
  'out-of-limits': {
    outcome: 'stop',
    title: 'Stopped at the bench',
    text: 'Something read or seen forbids going on; its cause comes first.',
  },
  'must-change': {
    outcome: 'stop',
    title: 'Must change first',
    text: 'The check found something that must not be connected.',
  },
  finished: { outcome: null, title: 'Finished', text: 'Seen to do its work, with every part fitted.' },
}

export const partWords: Record<PartState, string> = {
  wanted: 'Wanted',
  ordered: 'Ordered',
  arrived: 'Arrived',
  fitted: 'Fitted',
}
