import { type ExpressionBuilder, type Kysely, type Selectable, sql, type Transaction } from 'kysely'
import { Full, Missing, Stale } from './errors.js'
import type { Engine } from './migrations.js'
import { columnsOf, fromJson, keptOf, photoOf, photoRow, stampOf } from './rows.js'
import {
  type Change,
  type Draft,
  type Kept,
  type Kind,
  type Page,
  type Query,
  type Row,
  type Store,
  undoDays,
  undoMs,
} from './store.js'
import type { RecordTable, Tables } from './tables.js'

interface Parts {
  db: Kysely<Tables>
  engine: Engine
  /** the current time [ms since 1970] */
  now: () => number
  /** a name that cannot be guessed */
  newId: () => string
}

/** Rows in one statement: far below the number of values that either database takes. */
const batch = 200

const chunks = <Entry>(entries: Entry[], size: number): Entry[][] =>
  Array.from({ length: Math.ceil(entries.length / size) }, (_, index) =>
    entries.slice(index * size, (index + 1) * size),
  )

/** A search word as a pattern in which `%`, `_` and `\` mean themselves. */
const pattern = (word: string): string => `%${word.toLowerCase().replace(/[\\%_]/g, '\\$&')}%`

/** The condition of a list: kind, not deleted, the states asked for and every word of the search. */
const matching =
  (kind: Kind, { search, states }: Query) =>
  (where: ExpressionBuilder<Tables, 'record'>) =>
    where.and([
      where('kind', '=', kind),
      where('deleted_at', 'is', null),
      ...(states ? [where('state', 'in', states)] : []),
      ...(search ?? '')
        .split(/\s+/)
        .filter(Boolean)
        .map((word) => sql<boolean>`search like ${pattern(word)} escape '\\'`),
    ])

/** The store over SQL; the same statements on both databases. */
export function sqlStore({ db, engine, now, newId }: Parts): Store {
  const inTransaction = <Result>(work: (transaction: Transaction<Tables>) => Promise<Result>): Promise<Result> =>
    db.transaction().execute(work)

  /** a record as it is, held against changes by others until the transaction ends */
  const held = async (transaction: Transaction<Tables>, kind: Kind, id: string, deleted: boolean) => {
    const query = transaction
      .selectFrom('record')
      .selectAll()
      .where('id', '=', id)
      .where('kind', '=', kind)
      .where('deleted_at', deleted ? 'is not' : 'is', null)
    const row = await (engine === 'postgres' ? query.forUpdate() : query).executeTakeFirst()
    if (!row) throw new Missing()
    return row
  }

  const write = async (
    transaction: Transaction<Tables>,
    row: Selectable<RecordTable>,
    columns: Partial<RecordTable>,
  ): Promise<Selectable<RecordTable>> =>
    transaction
      .updateTable('record')
      .set({ ...columns, version: row.version + 1, updated_at: now() })
      .where('id', '=', row.id)
      .returningAll()
      .executeTakeFirstOrThrow()

  const refuseStale = (row: Selectable<RecordTable>, version: number | null): void => {
    if (version !== null && row.version !== version) throw new Stale(keptOf(row))
  }

  const newRow = (kind: Kind, draft: Draft, id = newId()): RecordTable => {
    const at = now()
    return { id, kind, version: 1, created_at: at, updated_at: at, deleted_at: null, ...columnsOf(draft) }
  }

  const count = async (kind: Kind, query: Query): Promise<number> => {
    const { total } = await db
      .selectFrom('record')
      .select((select) => select.fn.countAll<number>().as('total'))
      .where(matching(kind, query))
      .executeTakeFirstOrThrow()
    return total
  }

  const ordered = (kind: Kind, query: Query) => {
    const rows = db.selectFrom('record').where(matching(kind, query))
    return (
      query.order === 'latest' ? rows.orderBy('updated_at', 'desc') : rows.orderBy('search').orderBy('created_at')
    )
      .orderBy('id')
      .limit(query.limit)
      .offset(query.offset ?? 0)
  }

  const putRows = async (
    transaction: Transaction<Tables>,
    changes: Extract<Change, { do: 'put' }>[],
  ): Promise<void> => {
    const here = new Map(
      (
        await transaction
          .selectFrom('record')
          .select(['id', 'kind', 'version'])
          .where(
            'id',
            'in',
            changes.map(({ stamp }) => stamp.id),
          )
          .execute()
      ).map((row) => [row.id, row]),
    )
    for (const { stamp, kind, expects } of changes) {
      const row = here.get(stamp.id)
      if ((row?.version ?? null) !== expects || (row && row.kind !== kind))
        throw new Stale({ id: stamp.id, version: row?.version ?? 0 })
    }
    await transaction
      .insertInto('record')
      .values(
        changes.map(({ kind, stamp, draft }) => ({
          id: stamp.id,
          kind,
          version: stamp.version,
          created_at: stamp.createdAt,
          updated_at: stamp.updatedAt,
          deleted_at: null,
          ...columnsOf(draft),
        })),
      )
      .onConflict((conflict) =>
        conflict.column('id').doUpdateSet((row) => ({
          version: row.ref('excluded.version'),
          created_at: row.ref('excluded.created_at'),
          updated_at: row.ref('excluded.updated_at'),
          deleted_at: row.ref('excluded.deleted_at'),
          name: row.ref('excluded.name'),
          search: row.ref('excluded.search'),
          state: row.ref('excluded.state'),
          summary: row.ref('excluded.summary'),
          body: row.ref('excluded.body'),
        })),
      )
      .execute()
  }

  /** holding the owner's row makes those who add photos to it wait for each other */
  const holdOwner = async (transaction: Transaction<Tables>, owner: string): Promise<void> => {
    const query = transaction.selectFrom('record').select('id').where('id', '=', owner).where('deleted_at', 'is', null)
    const row = await (engine === 'postgres' ? query.forUpdate() : query).executeTakeFirst()
    if (!row) throw new Missing()
  }

  /** the photos of an owner that is held must not outgrow their number */
  const refuseFull = async (transaction: Transaction<Tables>, owner: string, most: number): Promise<void> => {
    const { total } = await transaction
      .selectFrom('photo')
      .select((select) => select.fn.countAll<number>().as('total'))
      .where('owner', '=', owner)
      .where('deleted_at', 'is', null)
      .executeTakeFirstOrThrow()
    if (total >= most) throw new Full(`There are ${total} photos already, and ${most} can be kept; delete one first.`)
  }

  /**
   * Counts today, and answers the beginning of the day that so many counted days, today with them, have begun since
   * [ms since 1970]; the beginning of time where fewer were counted. Days after today were counted by a clock that was
   * put back since: they count no longer.
   */
  const daysAgo = async (transaction: Transaction<Tables>, count: number): Promise<number> => {
    const day = new Date(now()).toISOString().slice(0, 10)
    await transaction
      .insertInto('day')
      .values({ day })
      .onConflict((conflict) => conflict.column('day').doNothing())
      .execute()
    const days = await transaction
      .selectFrom('day')
      .selectAll()
      .where('day', '<=', day)
      .orderBy('day', 'desc')
      .execute()
    const first = days[count - 1]?.day
    await transaction
      .deleteFrom('day')
      .where((where) => where.or([where('day', '>', day), ...(first ? [where('day', '<', first)] : [])]))
      .execute()
    return first === undefined ? Number.MIN_SAFE_INTEGER : Date.parse(first)
  }

  return {
    async ready() {},

    async add<Body>(kind: Kind, draft: Draft<Body>, id?: string) {
      const row = newRow(kind, draft, id)
      const added = await db
        .insertInto('record')
        .values(row)
        .onConflict((conflict) => conflict.column('id').doNothing())
        .returningAll()
        .executeTakeFirst()
      if (added) return keptOf<Body>(added)
      const known = db.selectFrom('record').selectAll().where('id', '=', row.id).where('kind', '=', kind)
      return keptOf<Body>(await known.executeTakeFirstOrThrow())
    },

    async get<Body>(kind: Kind, id: string) {
      const row = await db
        .selectFrom('record')
        .selectAll()
        .where('id', '=', id)
        .where('kind', '=', kind)
        .where('deleted_at', 'is', null)
        .executeTakeFirst()
      if (!row) throw new Missing()
      return keptOf<Body>(row)
    },

    async list<Summary>(kind: Kind, query: Query): Promise<Page<Row<Summary>>> {
      const rows = await ordered(kind, query)
        .select(['id', 'kind', 'version', 'created_at', 'updated_at', 'name', 'state', 'summary'])
        .execute()
      return {
        rows: rows.map((row) => ({
          ...stampOf(row),
          kind: row.kind,
          name: row.name,
          state: row.state,
          summary: fromJson<Summary>(row.summary),
        })),
        total: await count(kind, query),
      }
    },

    async listWhole<Body>(kind: Kind, query: Query): Promise<Page<Kept<Body>>> {
      const rows = await ordered(kind, query).selectAll().execute()
      return { rows: rows.map((row) => keptOf<Body>(row)), total: await count(kind, query) }
    },

    async countStates(kind) {
      const rows = await db
        .selectFrom('record')
        .select((select) => ['state', select.fn.countAll<number>().as('total')])
        .where('kind', '=', kind)
        .where('deleted_at', 'is', null)
        .where('state', 'is not', null)
        .groupBy('state')
        .execute()
      return Object.fromEntries(rows.map(({ state, total }) => [state, total]))
    },

    change<Body>(kind: Kind, id: string, version: number | null, draftOf: (kept: Kept<Body>) => Draft<Body> | null) {
      return inTransaction(async (transaction) => {
        const row = await held(transaction, kind, id, false)
        refuseStale(row, version)
        const draft = draftOf(keptOf<Body>(row))
        return keptOf<Body>(draft ? await write(transaction, row, columnsOf(draft)) : row)
      })
    },

    apply(changes) {
      return inTransaction(async (transaction) => {
        const adds = changes.filter((change) => change.do === 'add')
        for (const some of chunks(adds, batch))
          await transaction
            .insertInto('record')
            .values(some.map(({ kind, draft }) => newRow(kind, draft)))
            .execute()
        const puts = changes.filter((change) => change.do === 'put')
        for (const some of chunks(puts, batch)) await putRows(transaction, some)
        for (const change of changes) {
          if (change.do !== 'replace') continue
          const row = await held(transaction, change.kind, change.id, false)
          refuseStale(row, change.version)
          await write(transaction, row, columnsOf(change.draft))
        }
      })
    },

    async held(ids) {
      const found = []
      for (const some of chunks([...new Set(ids)], batch))
        found.push(
          ...(await db
            .selectFrom('record')
            .select(['id', 'kind', 'version', 'deleted_at', 'body'])
            .where('id', 'in', some)
            .execute()),
        )
      return found.map(({ deleted_at, body, ...row }) => ({
        ...row,
        deleted: deleted_at !== null,
        body: fromJson<unknown>(body),
      }))
    },

    remove(kind, id, version) {
      return inTransaction(async (transaction) => {
        const row = await held(transaction, kind, id, false)
        refuseStale(row, version)
        await write(transaction, row, { deleted_at: now() })
      })
    },

    restore<Body>(kind: Kind, id: string) {
      return inTransaction(async (transaction) => {
        const row = await held(transaction, kind, id, true)
        if (now() - (row.deleted_at ?? 0) > undoMs) throw new Missing()
        return keptOf<Body>(await write(transaction, row, { deleted_at: null }))
      })
    },

    addPhoto(photo, most) {
      return inTransaction(async (transaction) => {
        await holdOwner(transaction, photo.owner)
        const known = await transaction.selectFrom('photo').selectAll().where('id', '=', photo.id).executeTakeFirst()
        if (known) return photoOf(known)
        await refuseFull(transaction, photo.owner, most)
        await transaction.insertInto('photo').values(photoRow(photo)).execute()
        return photo
      })
    },

    async photos(owner) {
      const rows = await db
        .selectFrom('photo')
        .selectAll()
        .where('owner', '=', owner)
        .where('deleted_at', 'is', null)
        .orderBy('created_at')
        .orderBy('id')
        .execute()
      return rows.map(photoOf)
    },

    async everyPhoto() {
      const rows = await db
        .selectFrom('photo')
        .innerJoin('record', 'record.id', 'photo.owner')
        .selectAll('photo')
        .where('photo.deleted_at', 'is', null)
        .where('record.deleted_at', 'is', null)
        .orderBy('photo.owner')
        .orderBy('photo.created_at')
        .orderBy('photo.id')
        .execute()
      return rows.map(photoOf)
    },

    async photo(id) {
      const row = await db
        .selectFrom('photo')
        .innerJoin('record', 'record.id', 'photo.owner')
        .selectAll('photo')
        .where('photo.id', '=', id)
        .where('photo.deleted_at', 'is', null)
        .where('record.deleted_at', 'is', null)
        .executeTakeFirst()
      if (!row) throw new Missing('There is no such photo; it may have been deleted.')
      return photoOf(row)
    },

    async removePhoto(id) {
      const row = await db
        .updateTable('photo')
        .set({ deleted_at: now() })
        .where('id', '=', id)
        .where('deleted_at', 'is', null)
        .returning('id')
        .executeTakeFirst()
      if (!row) throw new Missing('There is no such photo; it may have been deleted.')
    },

    restorePhoto(id, most) {
      return inTransaction(async (transaction) => {
        const row = await transaction
          .selectFrom('photo')
          .selectAll()
          .where('id', '=', id)
          .where('deleted_at', '>=', now() - undoMs)
          .executeTakeFirst()
        if (!row) throw new Missing('There is no such photo; it may have been deleted.')
        await holdOwner(transaction, row.owner)
        await refuseFull(transaction, row.owner, most)
        await transaction.updateTable('photo').set({ deleted_at: null }).where('id', '=', id).execute()
        return photoOf(row)
      })
    },

    purge() {
      return inTransaction(async (transaction) => {
        const before = Math.min(now() - undoMs, await daysAgo(transaction, undoDays))
        await transaction.deleteFrom('record').where('deleted_at', '<', before).execute()
        const gone = await transaction
          .deleteFrom('photo')
          .where((where) =>
            where.or([
              where('deleted_at', '<', before),
              where('owner', 'not in', where.selectFrom('record').select('id')),
            ]),
          )
          .returningAll()
          .execute()
        return gone.map(photoOf)
      })
    },

    close: () => db.destroy(),
  }
}
