import type { Kind, Photo } from './store.js'

/** One row a record. Times are milliseconds since 1970; `body` and `summary` are JSON. */
export interface RecordTable {
  id: string
  kind: Kind
  version: number
  created_at: number
  updated_at: number
  deleted_at: number | null
  name: string
  search: string
  state: string | null
  summary: string
  body: string
}

export interface PhotoTable {
  id: string
  owner: string
  caption: string
  type: Photo['type']
  bytes: number
  width_px: number
  height_px: number
  created_at: number
  deleted_at: number | null
}

/** A day on which what was deleted long ago was looked for, as 2026-01-05 in UTC. */
interface DayTable {
  day: string
}

export interface Tables {
  day: DayTable
  record: RecordTable
  photo: PhotoTable
}
