import { type Kysely, type Migration, sql } from 'kysely'

export type Engine = 'sqlite' | 'postgres'

/**
 * The numbered steps from an empty database to the present one. A step that was released is never edited: a new one is
 * added. `collate "C"` makes PostgreSQL order text as SQLite does.
 */
export function migrations(engine: Engine): Record<string, Migration> {
  const ordered = engine === 'postgres' ? sql`text collate "C"` : sql`text`
  return {
    '001-record': {
      async up(db: Kysely<unknown>) {
        await db.schema
          .createTable('record')
          .addColumn('id', 'text', (column) => column.primaryKey())
          .addColumn('kind', 'text', (column) => column.notNull())
          .addColumn('version', 'integer', (column) => column.notNull())
          .addColumn('created_at', 'bigint', (column) => column.notNull())
          .addColumn('updated_at', 'bigint', (column) => column.notNull())
          .addColumn('deleted_at', 'bigint')
          .addColumn('name', 'text', (column) => column.notNull())
          .addColumn('search', ordered, (column) => column.notNull())
          .addColumn('summary', 'text', (column) => column.notNull())
          .addColumn('body', 'text', (column) => column.notNull())
          .execute()
        await db.schema
          .createIndex('record_by_name')
          .on('record')
          .columns(['kind', 'deleted_at', 'search', 'id'])
          .execute()
      },
    },
    '002-state': {
      async up(db: Kysely<unknown>) {
        await db.schema.alterTable('record').addColumn('state', 'text').execute()
        await db.schema
          .createIndex('record_by_state')
          .on('record')
          .columns(['kind', 'deleted_at', 'state', 'updated_at'])
          .execute()
      },
    },
    '003-photo': {
      async up(db: Kysely<unknown>) {
        await db.schema
          .createTable('photo')
          .addColumn('id', 'text', (column) => column.primaryKey())
          .addColumn('owner', 'text', (column) => column.notNull())
          .addColumn('caption', 'text', (column) => column.notNull())
          .addColumn('type', 'text', (column) => column.notNull())
          .addColumn('bytes', 'integer', (column) => column.notNull())
          .addColumn('width_px', 'integer', (column) => column.notNull())
          .addColumn('height_px', 'integer', (column) => column.notNull())
          .addColumn('created_at', 'bigint', (column) => column.notNull())
          .addColumn('deleted_at', 'bigint')
          .execute()
        await db.schema.createIndex('photo_by_owner').on('photo').columns(['owner', 'deleted_at']).execute()
      },
    },
    '004-day': {
      async up(db: Kysely<unknown>) {
        await db.schema
          .createTable('day')
          .addColumn('day', 'text', (column) => column.primaryKey())
          .execute()
      },
    },
  }
}
