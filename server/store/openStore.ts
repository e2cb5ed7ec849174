import { randomBytes } from 'node:crypto'
import { existsSync, mkdirSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { Kysely, Migrator } from 'kysely'
import { type Engine, migrations } from './migrations.js'
import { openPostgres } from './postgres.js'
import { openSqlite } from './sqlite.js'
import { sqlStore } from './sqlStore.js'
import { storageFault } from './storageFault.js'
import type { Store } from './store.js'
import type { Tables } from './tables.js'

export interface StoreSettings {
  /** the folder of the embedded database; null keeps everything in memory, for tests */
  dataDir: string | null
  /** `postgres://…`, for a shared database instead of the embedded one */
  databaseUrl: string | undefined
  /** the current time [ms since 1970] */
  now: () => number
}

export const databaseFile = 'lampline.sqlite'

/** 128 bits from the system's generator, in 22 characters that need no escaping in an address. */
export const newId = (): string => randomBytes(16).toString('base64url')

/** Runs every migration that is still to come, with a copy made before each where there is something to copy. */
async function migrate(db: Kysely<Tables>, engine: Engine, copy: (before: string) => void): Promise<void> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => migrations(engine) } })
  const holdsRecords = (await migrator.getMigrations()).some(({ executedAt }) => executedAt !== undefined)
  for (;;) {
    const next = (await migrator.getMigrations()).find(({ executedAt }) => executedAt === undefined)
    if (next && holdsRecords) copy(next.name)
    const { error, results } = await migrator.migrateUp()
    if (error !== undefined) throw error
    if (results?.length === 0) return
  }
}

/** Makes the folder; Node never returns from making one with its parents where the system says there can be none. */
function makeFolder(path: string): void {
  if (existsSync(path) && statSync(path).isDirectory()) return
  mkdirSync(path, { recursive: !existsSync(dirname(path)) })
}

async function openSqliteStore(dataDir: string | null, now: () => number): Promise<Store> {
  if (dataDir !== null) makeFolder(dataDir)
  const { database, dialect } = openSqlite(dataDir === null ? ':memory:' : join(dataDir, databaseFile))
  const db = new Kysely<Tables>({ dialect })
  try {
    await migrate(db, 'sqlite', (before) => {
      if (dataDir === null) return
      const folder = join(dataDir, 'backups')
      mkdirSync(folder, { recursive: true })
      const name = (count: number): string => join(folder, `before-${before}${count ? `-${count}` : ''}.sqlite`)
      let count = 0
      while (existsSync(name(count))) count += 1
      database.prepare('vacuum into ?').run([name(count)])
    })
  } catch (error) {
    database.close()
    throw error
  }
  return sqlStore({ db, engine: 'sqlite', now, newId })
}

async function openPostgresStore(url: string, now: () => number): Promise<Store> {
  const db = new Kysely<Tables>({ dialect: openPostgres(url).dialect })
  try {
    // PostgreSQL undoes a failed migration by itself; copies are made by its own tools
    await migrate(db, 'postgres', () => undefined)
  } catch (error) {
    await db.destroy()
    throw error
  }
  return sqlStore({ db, engine: 'postgres', now, newId })
}

/**
 * The store for these settings. Nothing is opened until the first call; a call that cannot open it throws StorageFault
 * with words, and the next one tries again, so that a full disk or a stopped database server needs no restart here.
 */
export function openStore({ dataDir, databaseUrl, now }: StoreSettings): Store {
  let opening: Promise<Store> | null = null
  const opened = (): Promise<Store> => {
    opening ??= (databaseUrl ? openPostgresStore(databaseUrl, now) : openSqliteStore(dataDir, now)).catch((error) => {
      opening = null
      throw error
    })
    return opening
  }
  const call =
    <Name extends keyof Store>(name: Name) =>
    async (...given: unknown[]): Promise<unknown> => {
      try {
        const store = await opened()
        return await (store[name] as (...given: unknown[]) => Promise<unknown>)(...given)
      } catch (error) {
        throw storageFault(error) ?? error
      }
    }
  return {
    ...(Object.fromEntries(names.map((name) => [name, call(name)])) as unknown as Store),
    async close() {
      if (opening) await (await opening.catch(() => null))?.close()
    },
  }
}

const names = [
  'ready',
  'add',
  'get',
  'list',
  'listWhole',
  'countStates',
  'fingerprint',
  'change',
  'apply',
  'held',
  'remove',
  'restore',
  'addPhoto',
  'photos',
  'photo',
  'removePhoto',
  'restorePhoto',
  'purge',
] as const satisfies Exclude<keyof Store, 'close'>[]
