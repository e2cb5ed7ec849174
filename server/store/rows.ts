import type { Selectable } from 'kysely'
import { brokenFile } from './storageFault.js'
import type { Draft, Kept, Photo, Stamp } from './store.js'
import type { PhotoTable, RecordTable } from './tables.js'

/** What every record carries, from its row. */
export const stampOf = (row: Pick<RecordTable, 'id' | 'version' | 'created_at' | 'updated_at'>): Stamp => ({
  id: row.id,
  version: row.version,
  createdAt: row.created_at,
  updatedAt: row.updated_at,
})

/** What is kept as JSON; text that is none was not written here. */
export function fromJson<Value>(text: string): Value {
  try {
    return JSON.parse(text) as Value
  } catch {
    throw brokenFile('a record is no JSON')
  }
}

/** A record from its row. */
export const keptOf = <Body>(row: Selectable<RecordTable>): Kept<Body> => ({
  ...stampOf(row),
  kind: row.kind,
  name: row.name,
  state: row.state,
  body: fromJson<Body>(row.body),
})

/** The columns of what is to be kept. */
export const columnsOf = (draft: Draft) => ({
  name: draft.name,
  // PostgreSQL keeps no U+0000 in text
  search: draft.search.toLowerCase().replaceAll('\u0000', ' '),
  state: draft.state,
  summary: JSON.stringify(draft.summary),
  body: JSON.stringify(draft.body),
})

/** A photo from its row. */
export const photoOf = (row: Selectable<PhotoTable>): Photo => ({
  id: row.id,
  owner: row.owner,
  caption: row.caption,
  type: row.type,
  bytes: row.bytes,
  widthPx: row.width_px,
  heightPx: row.height_px,
  createdAt: row.created_at,
})

/** The row of a photo. */
export const photoRow = (photo: Photo): PhotoTable => ({
  id: photo.id,
  owner: photo.owner,
  caption: photo.caption,
  type: photo.type,
  bytes: photo.bytes,
  width_px: photo.widthPx,
  height_px: photo.heightPx,
  created_at: photo.createdAt,
  deleted_at: null,
})
