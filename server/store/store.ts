/** What kinds of record are kept. */
export const kinds = ['supply', 'device', 'job', 'at-hand'] as const

export type Kind = (typeof kinds)[number]

/** What the owner of a record hands over to be kept; the store reads none of `body` and `summary`. */
export interface Draft<Body = unknown> {
  name: string
  /** the text that a search looks through; it begins with the name, so it also orders lists */
  search: string
  /** a word that lists are grouped by; null where there is none */
  state: string | null
  /** what a list shows of the record, so that lists need not read whole bodies */
  summary: unknown
  body: Body
}

/** What every record has. Times are milliseconds since 1970. */
export interface Stamp {
  /** 128 random bits: cannot be guessed */
  id: string
  /** counts up from 1 with every change */
  version: number
  createdAt: number
  updatedAt: number
}

export interface Kept<Body = unknown> extends Stamp {
  kind: Kind
  name: string
  state: string | null
  body: Body
}

/** A record in a list. */
export interface Row<Summary = unknown> extends Stamp {
  kind: Kind
  name: string
  state: string | null
  summary: Summary
}

export interface Query {
  /** words that must all occur, upper and lower case alike */
  search?: string | undefined
  states?: readonly string[] | undefined
  /** by name, or what was changed last first; by name where absent */
  order?: 'name' | 'latest' | undefined
  limit: number
  offset?: number | undefined
}

export interface Page<Entry> {
  rows: Entry[]
  /** how many there are in all */
  total: number
}

/** One of several changes made together. */
export type Change =
  | { do: 'add'; kind: Kind; draft: Draft }
  | { do: 'replace'; kind: Kind; id: string; version: number; draft: Draft }
  /** a whole record as it was kept elsewhere; `expects` is the version that must be here now, null for none */
  | { do: 'put'; kind: Kind; stamp: Stamp; expects: number | null; draft: Draft }

/** What is known of a record whether it is deleted or not. */
export interface Held {
  id: string
  kind: Kind
  version: number
  deleted: boolean
  body: unknown
}

/** What is kept of a photo; the pictures themselves are files. */
export interface Photo {
  id: string
  /** the record it belongs to */
  owner: string
  caption: string
  type: 'image/jpeg' | 'image/png' | 'image/webp'
  bytes: number
  widthPx: number
  heightPx: number
  /** when it was taken, as far as a device says so; else when it was kept [ms since 1970] */
  createdAt: number
}

/** How long a deleted record can be brought back: days, and the same in ms. */
export const undoDays = 30
export const undoMs = undoDays * 24 * 3600 * 1000

/**
 * Where records are kept. A promise that is kept means that the change is on the disk.
 * Every call may throw StorageFault; those on one record throw Missing, those with a version Stale.
 */
export interface Store {
  /** opens what is not open yet; throws StorageFault with words where that cannot be done */
  ready(): Promise<void>
  /**
   * keeps a record once: one whose id is known already is not added again, and the answer is the one that is kept, also
   * where it was deleted since; a new id where none is given
   */
  add<Body>(kind: Kind, draft: Draft<Body>, id?: string): Promise<Kept<Body>>
  get<Body>(kind: Kind, id: string): Promise<Kept<Body>>
  list<Summary>(kind: Kind, query: Query): Promise<Page<Row<Summary>>>
  /** like `list`, with whole records */
  listWhole<Body>(kind: Kind, query: Query): Promise<Page<Kept<Body>>>
  /** how many records there are of each state */
  countStates(kind: Kind): Promise<Record<string, number>>
  /**
   * one change made from the record as it is, with nobody between; `version` refuses a stale base, and a draft of null
   * leaves the record as it is
   */
  change<Body>(
    kind: Kind,
    id: string,
    version: number | null,
    draftOf: (kept: Kept<Body>) => Draft<Body> | null,
  ): Promise<Kept<Body>>
  /** all of them or none */
  apply(changes: Change[]): Promise<void>
  held(ids: string[]): Promise<Held[]>
  remove(kind: Kind, id: string, version: number | null): Promise<void>
  restore<Body>(kind: Kind, id: string): Promise<Kept<Body>>
  /** keeps a photo once: one whose id is known already is not added again, and the answer is the one that is kept */
  addPhoto(photo: Photo, most: number): Promise<Photo>
  photos(owner: string): Promise<Photo[]>
  /** of all records that are not deleted, by owner */
  everyPhoto(): Promise<Photo[]>
  photo(id: string): Promise<Photo>
  removePhoto(id: string): Promise<void>
  restorePhoto(id: string, most: number): Promise<Photo>
  /**
   * forgets for good what was deleted longer ago than it can be brought back, by the clock and by as many days on which
   * this was called since, so that a clock that is wrong for a while forgets nothing; answers the photos that are gone
   */
  purge(): Promise<Photo[]>
  close(): Promise<void>
}
