import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Kysely, Migrator } from 'kysely'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { StorageFault } from '../../server/store/errors.js'
import { migrations } from '../../server/store/migrations.js'
import { databaseFile, openStore } from '../../server/store/openStore.js'
import { openSqlite } from '../../server/store/sqlite.js'

const steps = migrations('sqlite')
const names = Object.keys(steps)

/** Columns of the table of records that every schema had. */
const first = {
  id: 'kept-long-ago-0000000001',
  kind: 'supply',
  version: 3,
  created_at: 1000,
  updated_at: 2000,
  deleted_at: null,
  name: 'Brick',
  search: 'brick',
  summary: '{}',
  body: '{"name":"Brick","supply":{}}',
}

let dataDir: string

beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'lampline-migrate-'))
})

afterEach(() => {
  rmSync(dataDir, { recursive: true })
})

/** A database as an earlier release left it, with one record in it. */
async function leftBy(release: number): Promise<void> {
  const { dialect } = openSqlite(join(dataDir, databaseFile))
  const db = new Kysely<{ record: typeof first }>({ dialect })
  const provider = { getMigrations: async () => Object.fromEntries(Object.entries(steps).slice(0, release)) }
  const { error } = await new Migrator({ db, provider }).migrateToLatest()
  expect(error).toBeUndefined()
  await db.insertInto('record').values(first).execute()
  await db.destroy()
}

const reopened = () => openStore({ dataDir, databaseUrl: undefined, now: () => 5000 })

describe('a database of an earlier release', () => {
  it('is numbered in order, without a gap', () => {
    expect(names.map((name) => Number(name.slice(0, 3)))).toEqual(names.map((_, index) => index + 1))
  })

  it.each(names.map((name, index) => [name, index + 1] as const))(
    'left after %s opens with its records',
    async (_name, release) => {
      await leftBy(release)
      const store = reopened()
      expect(await store.get('supply', first.id)).toMatchObject({
        version: 3,
        name: 'Brick',
        state: null,
        createdAt: 1000,
      })
      expect(await store.photos(first.id)).toEqual([])
      const { id } = await store.add('job', { name: 'J', search: 'j', state: 'ready', summary: null, body: 1 })
      expect(await store.countStates('job')).toEqual({ ready: 1 })
      expect((await store.get('job', id)).body).toBe(1)
      await store.close()
    },
  )

  it('is copied before each step, and the copy opens as it was', async () => {
    await leftBy(1)
    const store = reopened()
    await store.ready()
    await store.close()
    const copies = readdirSync(join(dataDir, 'backups')).sort()
    expect(copies).toEqual(names.slice(1).map((name) => `before-${name}.sqlite`))
    const { dialect } = openSqlite(join(dataDir, 'backups', copies[0] ?? ''))
    const copy = new Kysely<{ record: typeof first }>({ dialect })
    expect(await copy.selectFrom('record').selectAll().execute()).toEqual([first])
    await copy.destroy()
  })

  it('that is new gets no copies, and one that is up to date none more', async () => {
    for (let time = 0; time < 2; time += 1) {
      const store = reopened()
      await store.ready()
      await store.close()
    }
    expect(readdirSync(dataDir).filter((name) => name === 'backups')).toEqual([])
  })
})

it('refuses a database of a newer release, with words, and leaves it as it is', async () => {
  await leftBy(names.length)
  const { database } = openSqlite(join(dataDir, databaseFile))
  database.exec(`insert into kysely_migration values ('999-later', '2030-01-01')`)
  database.close()
  const store = reopened()
  const fault = await store.ready().catch((error: unknown) => error)
  expect(fault).toBeInstanceOf(StorageFault)
  expect((fault as StorageFault).message).toMatch(/newer Lampline/)
  await store.close()
})
