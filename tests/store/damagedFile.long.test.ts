import { spawnSync } from 'node:child_process'
import { chmodSync, cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import request from 'supertest'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { copiesIn, copyDaily, mostDaily } from '../../server/store/copies.js'
import { databaseFile } from '../../server/store/openStore.js'
import { startServer } from '../bench/serverProcess.js'
import { testApp } from '../web/testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 90_000, hookTimeout: 90_000 })

let dataDir: string
let file: string

beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'lampline-damaged-'))
  file = join(dataDir, databaseFile)
})

afterEach(() => {
  chmodSync(dataDir, 0o700)
  rmSync(dataDir, { recursive: true, force: true })
})

const records = 60
const dayMs = 24 * 3600 * 1000

let template: string

beforeAll(async () => {
  template = mkdtempSync(join(tmpdir(), 'lampline-whole-'))
  const { app, store } = testApp(template)
  for (let count = 0; count < records; count += 1) {
    const sent = { name: `Brick ${count}`, note: 'n'.repeat(3000), supply: {} }
    expect((await request(app).post('/api/shelf/supplies').send(sent)).status).toBe(201)
  }
  expect(await copyDaily(template, databaseFile, Date.now())).toMatch(/^day-/)
  await store.close()
  const database = new Database(join(template, databaseFile))
  database.pragma('wal_checkpoint(TRUNCATE)')
  database.close()
})

afterAll(() => rmSync(template, { recursive: true, force: true }))

/** A folder as a server leaves it: records, a copy of the day, everything in the one file. */
function used(): void {
  for (const part of [databaseFile, 'backups']) cpSync(join(template, part), join(dataDir, part), { recursive: true })
}

const damage: [string, (bytes: Buffer) => Buffer][] = [
  ['whose beginning is overwritten', (bytes) => Buffer.concat([Buffer.alloc(100, 7), bytes.subarray(100)])],
  ['cut off in the middle', (bytes) => bytes.subarray(0, Math.floor(bytes.length / 2))],
  ['cut off within a page', (bytes) => bytes.subarray(0, bytes.length - 100)],
  ['emptied', () => Buffer.alloc(0)],
  [
    'with a page overwritten in its middle',
    (bytes) => {
      const copy = Buffer.from(bytes)
      const middle = Math.floor(bytes.length / 8192) * 4096
      copy.fill(0xaa, middle, middle + 4096)
      return copy
    },
  ],
  [
    'of another program',
    () => {
      const other = join(dataDir, 'other.sqlite')
      const database = new Database(other)
      database.exec('create table minutes (text text)')
      database.close()
      return readFileSync(other)
    },
  ],
]

describe('a database file', () => {
  beforeEach(used)

  it.each(damage)('%s is told on each page of records, and left as it is', async (_what, spoil) => {
    const spoilt = spoil(readFileSync(file))
    writeFileSync(file, spoilt)
    const { app, store } = testApp(dataDir)
    const page = await request(app).get('/shelf')
    expect(page.status).toBe(503)
    expect(page.text).toMatch(/lampline\.sqlite.+damaged or is not one of ours.+docs\/records\.md/s)
    const call = await request(app).post('/api/shelf/supplies').send({ name: 'One more', supply: {} })
    expect(call.status).toBe(503)
    expect(call.body.error.message).toContain('backups/day-')
    expect((await request(app).get('/?mains=230&supply=OUTPUT+12V')).status).toBe(200)
    await store.close()
    expect(readFileSync(file).equals(spoilt)).toBe(true)
  })

  it('that is damaged is told at the start, with its folder and the latest copy', async () => {
    writeFileSync(file, readFileSync(file).subarray(0, 9000))
    const server = await startServer(dataDir)
    expect(server.said()).toContain('Lampline starts without its records')
    expect(server.said()).toContain(`DATA_DIR is ${dataDir}`)
    expect(server.said()).toMatch(/backups\/day-\d{4}-\d{2}-\d{2}\.sqlite/)
    expect((await fetch(`${server.address}/api/jobs`)).status).toBe(503)
    expect((await fetch(`${server.address}/`)).status).toBe(200)
    expect(await server.stop()).toBe(0)
  })

  it('is put back from its copy by the steps of docs/records.md', async () => {
    writeFileSync(file, Buffer.alloc(5000, 1))
    const steps = /## When the file is damaged[\s\S]+?```sh\n([\s\S]+?)```/.exec(
      readFileSync(join(import.meta.dirname, '../../docs/records.md'), 'utf8'),
    )?.[1]
    expect(steps).toMatch(/mv .+\ncp /)
    const [copy] = await copiesIn(dataDir)
    const script = (steps ?? '').replace('backups/day-2026-01-05.sqlite', copy ?? '')
    const done = spawnSync('/bin/sh', ['-ec', script], { env: { ...process.env, DATA_DIR: dataDir }, encoding: 'utf8' })
    expect([done.status, done.stderr]).toEqual([0, ''])
    const { app, store } = testApp(dataDir)
    expect((await request(app).get('/api/shelf/supplies')).body.total).toBe(records)
    await store.close()
    // the damaged file is still there, for whoever wants to get more out of it
    const aside = readdirSync(dataDir).find((name) => name.startsWith('damaged'))
    expect(readdirSync(join(dataDir, aside ?? ''))).toContain(databaseFile)
  })

  it('is used again as soon as it is whole, without a new start', async () => {
    const whole = readFileSync(file)
    writeFileSync(file, whole.subarray(0, 9000))
    const { app, store } = testApp(dataDir)
    expect((await request(app).get('/api/jobs')).status).toBe(503)
    writeFileSync(file, whole)
    expect((await request(app).get('/api/jobs')).status).toBe(200)
    await store.close()
  })

  it('keeps what it holds when what lies in its write-ahead log is rubbish', async () => {
    writeFileSync(`${file}-wal`, Buffer.alloc(50_000, 3))
    const { app, store } = testApp(dataDir)
    expect((await request(app).get('/api/shelf/supplies?limit=1')).body.total).toBe(records)
    await store.close()
  })
})

describe('a record whose text is no JSON any more', () => {
  it('is answered 503 with words, and the others are shown', async () => {
    used()
    const database = new Database(file)
    const { id } = database.prepare('select id from record limit 1').get([]) as { id: string }
    database.prepare("update record set body = 'x' || body where id = ?").run([id])
    database.close()
    const { app, store } = testApp(dataDir)
    const answer = await request(app).get(`/api/shelf/supplies/${id}`)
    expect([answer.status, answer.text]).toEqual([503, expect.stringContaining('damaged')])
    expect((await request(app).get('/shelf')).status).toBe(200)
    await store.close()
  })
})

describe('copies', () => {
  it('are made once a day, whole, while records are kept, and the last seven stay', async () => {
    used()
    rmSync(join(dataDir, 'backups'), { recursive: true })
    const start = Date.UTC(2026, 0, 5, 9)
    for (let day = 0; day < mostDaily + 3; day += 1) {
      expect(await copyDaily(dataDir, databaseFile, start + day * dayMs)).not.toBeNull()
      expect(await copyDaily(dataDir, databaseFile, start + day * dayMs)).toBeNull()
    }
    const copies = await copiesIn(dataDir)
    expect(copies.length).toBe(mostDaily)
    const database = new Database(join(dataDir, copies[0] ?? ''))
    expect(database.prepare('select count(*) as total from record').get([])).toMatchObject({ total: records })
    database.close()
  })

  it('are not made of a damaged file, and no part of one is left', async () => {
    used()
    rmSync(join(dataDir, 'backups'), { recursive: true })
    writeFileSync(file, readFileSync(file).subarray(0, 40_000))
    await expect(copyDaily(dataDir, databaseFile, 0)).rejects.toThrow()
    expect(readdirSync(join(dataDir, 'backups'))).toEqual([])
  })
})

/** Nobody's account: what root may do does not tell what others may. */
const nobody = 65_534
const asNobody = process.getuid?.() === 0 ? { uid: nobody, gid: nobody } : {}
const nobodyReads =
  spawnSync(
    process.execPath,
    ['-e', `require('fs').readFileSync(${JSON.stringify(join(import.meta.dirname, '../../package.json'))})`],
    asNobody,
  ).status === 0

describe('a folder', () => {
  it.skipIf(!nobodyReads)('that may only be read is told in words, and checks work', async () => {
    mkdirSync(join(dataDir, 'photos'))
    chmodSync(dataDir, 0o555)
    const server = await startServer(dataDir, {}, asNobody)
    expect(server.said()).toMatch(/cannot be (written to|opened)/)
    expect((await fetch(`${server.address}/jobs`)).status).toBe(503)
    expect((await fetch(`${server.address}/`)).status).toBe(200)
    expect(await server.stop()).toBe(0)
  })

  it('that takes no more is told in words, loses nothing, and is used again once it does', async () => {
    used()
    // no file may grow beyond 700 kB: the file system then answers as it does when it is full
    const full = await startServer(dataDir, {}, { wrapper: "trap '' XFSZ; ulimit -f 700" })
    const add = (address: string) =>
      fetch(`${address}/api/shelf/devices`, {
        method: 'POST',
        headers: { 'Content-Type': 'application/json' },
        body: JSON.stringify({ name: 'Recorder', note: 'n'.repeat(4000), device: {} }),
      })
    let kept = 0
    let refused = ''
    for (let count = 0; count < 400 && refused === ''; count += 1) {
      const answer = await add(full.address)
      if (answer.status === 201) kept += 1
      else refused = `${answer.status} ${await answer.text()}`
    }
    expect(refused).toMatch(/^50[37] .*nothing was saved/)
    expect((await fetch(`${full.address}/api/shelf/supplies?limit=1`)).status).toBe(200)
    await full.stop()
    const { app, store } = testApp(dataDir)
    const { body } = await request(app).get('/api/shelf/devices?limit=1')
    expect(body.total).toBe(kept)
    expect((await request(app).post('/api/shelf/devices').send({ name: 'Recorder', device: {} })).status).toBe(201)
    await store.close()
  })
})
