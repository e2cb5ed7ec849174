import type { Source } from './source.js'

/** What every row of a table carries. */
export interface Sourced {
  readonly sources: readonly Source[]
  /** set where the sources disagree, or the figure rests on one list or on memory: says which */
  readonly doubt?: string
}
