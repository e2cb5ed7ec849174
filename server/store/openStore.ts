import { randomBytes } from 'node:crypto'
import { closeSync, existsSync, mkdirSync, openSync, readSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { Kysely, Migrator } from 'kysely'
import type Database from 'libsql'
import { copiesFolder, copiesIn } from './copies.js'
import { StorageFault } from './errors.js'
import { type Engine, migrations } from './migrations.js'
import { openPostgres } from './postgres.js'
import { openSqlite } from './sqlite.js'
import { sqlStore } from './sqlStore.js'
import { brokenFile, isBroken, storageFault } from './storageFault.js'
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

/** Refuses a file that is damaged, holds something else or was emptied, before anything is written to it. */
function refuseBroken(database: Database.Database): void {
  const [result] = database.prepare('pragma quick_check(1)').all([]) as { quick_check: string }[]
  if (result?.quick_check !== 'ok') throw brokenFile(String(result?.quick_check))
  const tables = (
    database.prepare("select name from sqlite_master where type = 'table'").all([]) as { name: string }[]
  ).map(({ name }) => name)
  if (tables.length > 0 && !tables.includes('kysely_migration'))
    throw brokenFile('it holds the tables of another program')
}

/**
 * Refuses a file that has fewer bytes than its pages take: what is missing reads as nothing, which SQLite does not notice
 * in the last page. With a write-ahead log beside it the missing pages may stand there.
 *
 * @source SQLite's file format, 1.3: page size at byte 16, number of pages at byte 28, valid where bytes 24 and 92 agree
 */
function refuseShort(file: string): void {
  if (!existsSync(file) || (existsSync(`${file}-wal`) && statSync(`${file}-wal`).size > 0)) return
  const header = Buffer.alloc(100)
  const opened = openSync(file, 'r')
  try {
    if (readSync(opened, header, 0, 100, 0) < 100) return
  } finally {
    closeSync(opened)
  }
  if (
    header.toString('latin1', 0, 16) !== 'SQLite format 3\u0000' ||
    header.readUInt32BE(24) !== header.readUInt32BE(92)
  )
    return
  const pageSize = header.readUInt16BE(16) === 1 ? 65_536 : header.readUInt16BE(16)
  const bytes = pageSize * header.readUInt32BE(28)
  const { size } = statSync(file)
  if (size < bytes) throw brokenFile(`it should have ${bytes} bytes and has ${size}`)
}

/** The same fault with what to do about it: which file it is, and which copy to go back to. */
async function withWayOn(dataDir: string, fault: StorageFault): Promise<StorageFault> {
  const [latest] = await copiesIn(dataDir)
  const way = latest
    ? `The latest copy is "${latest}" beside it; docs/records.md says how to go back to it.`
    : `There is no copy in "${copiesFolder}" beside it; docs/records.md says what can still be done.`
  return new StorageFault(
    fault.status,
    `The file that holds the records, "${databaseFile}" in the folder named by DATA_DIR, is damaged or is not one of ours, and was left as it is. ${way} Checks work without it.`,
    fault.cause,
  )
}

async function openSqliteStore(dataDir: string | null, now: () => number): Promise<Store> {
  if (dataDir !== null) {
    makeFolder(dataDir)
    const file = join(dataDir, databaseFile)
    // a new file is empty for a moment; one that has copies was not
    if (existsSync(file) && statSync(file).size === 0 && (await copiesIn(dataDir)).length > 0)
      throw brokenFile('it is empty, and there are copies of it that are not')
    refuseShort(file)
  }
  const { database, dialect } =
    dataDir === null ? openSqlite(':memory:') : openSqlite(join(dataDir, databaseFile), refuseBroken)
  const db = new Kysely<Tables>({ dialect })
  try {
    await migrate(db, 'sqlite', (before) => {
      if (dataDir === null) return
      const folder = join(dataDir, copiesFolder)
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
        const fault = storageFault(error)
        if (fault === null || databaseUrl || dataDir === null || !isBroken(fault)) throw fault ?? error
        // nothing more is written to a damaged file: the next call opens it anew, and is refused or finds it mended
        const damaged = opening
        opening = null
        await (await damaged?.catch(() => null))?.close().catch(() => undefined)
        throw await withWayOn(dataDir, fault)
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
  'change',
  'apply',
  'held',
  'remove',
  'restore',
  'addPhoto',
  'photos',
  'everyPhoto',
  'photo',
  'removePhoto',
  'restorePhoto',
  'purge',
] as const satisfies Exclude<keyof Store, 'close'>[]
