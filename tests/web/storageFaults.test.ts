import { spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import { pino } from 'pino'
import request from 'supertest'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import { databaseFile } from '../../server/store/openStore.js'
import { storageFault } from '../../server/store/storageFault.js'
import { compiled } from '../support/compiled.js'
import { matching } from './exampleChecks.js'
import { testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let dataDir: string

beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'lampline-fault-'))
})

afterEach(() => {
  rmSync(dataDir, { recursive: true, force: true })
})

/** The fault of a database that may not grow any more: what SQLite says when the disk is full. */
function diskFull(): unknown {
  const database = new Database(join(dataDir, 'full.sqlite'))
  database.exec('create table filled (text text)')
  database.pragma('max_page_count = 4')
  try {
    for (;;) database.prepare('insert into filled values (?)').run(['x'.repeat(4000)])
  } catch (error) {
    return error
  } finally {
    database.close()
  }
}

/** The real app over a store that can be read but takes no change. */
async function appOnFullDisk() {
  const { app: kept, store } = testApp()
  const job = await request(kept).post('/api/jobs').send({ name: 'Terminal', check: matching })
  await request(kept).post(`/jobs/${job.body.id}/examine`).type('form').send({ seen: 'trips-switched-on' })
  const fault = storageFault(diskFull())
  const failing = async (): Promise<never> => {
    throw fault
  }
  const device = await store.add('device', {
    name: 'Recorder',
    search: 'recorder',
    state: null,
    summary: { place: null, note: null, label: null },
    body: { name: 'Recorder', place: null, note: null, device: {} },
  })
  const full = { ...store, add: failing, change: failing, apply: failing, remove: failing }
  const app = createApp({
    config: readConfig({}),
    logger: pino({ level: 'silent' }),
    store: full,
    now: Date.now,
    lan: () => null,
  })
  return { app, id: device.id, job: String(job.body.id) }
}

describe('a full disk', () => {
  it('is answered 507 with words, in JSON', async () => {
    const { app } = await appOnFullDisk()
    const answer = await request(app).post('/api/shelf/supplies').send({ name: 'Brick', supply: {} })
    expect(answer.status).toBe(507)
    expect(answer.body.error.message).toMatch(/disk is full, so nothing was saved/)
    expect((await request(app).post('/api/jobs').send({ name: 'J', check: matching })).status).toBe(507)
  })

  it('gives back what was typed, ticked and named while examining', async () => {
    const { app, job } = await appOnFullDisk()
    const send = (body: object) => request(app).post(`/jobs/${job}/examine`).type('form').send(body)
    const ticked = await send({ seen: ['', 'lamp-bright'] })
    expect(ticked.status).toBe(507)
    expect(ticked.text).toContain('Not saved')
    expect(ticked.text).toMatch(/id="seen-lamp-bright"[^>]* checked/)
    expect((await send({ what: 'lamp:V', value: '215 V' })).text).toMatch(/name="value" value="215 V"/)
    expect((await send({ no: 'y-leaky', by: 'An electrician' })).status).toBe(507)
  })

  it('gives the form back with everything that was typed', async () => {
    const { app, id } = await appOnFullDisk()
    for (const path of ['/shelf/devices', `/shelf/devices/${id}`]) {
      const answer = await request(app)
        .post(path)
        .type('form')
        .send({ version: '1', name: 'Terminal', place: 'box 9', machine: 'DC 5V 2A' })
      expect(answer.status).toBe(507)
      expect(answer.text).toContain('The disk is full')
      for (const typed of ['value="Terminal"', 'value="box 9"', 'DC 5V 2A']) expect(answer.text).toContain(typed)
    }
  })

  it('leaves checks and pages that only read as they are', async () => {
    const { app, id } = await appOnFullDisk()
    expect((await request(app).get(`/shelf/devices/${id}`)).status).toBe(200)
    expect((await request(app).post('/api/check').send(matching)).status).toBe(200)
  })
})

describe('a place that cannot be written to', () => {
  it.each([
    ['a folder of the system', '/proc/lampline'],
    ['a file where the folder should be', () => join(dataDir, 'taken')],
  ])('(%s) is answered 503 with words and the form kept, and never ends the process', async (_what, where) => {
    writeFileSync(join(dataDir, 'taken'), '')
    const { app } = testApp(typeof where === 'string' ? where : where())
    const json = await request(app).post('/api/shelf/supplies').send({ name: 'Brick', supply: {} })
    expect(json.status).toBe(503)
    expect(json.body.error.message).toMatch(/records are kept cannot be/)
    const form = await request(app).post('/shelf/supplies').type('form').send({ name: 'Brick', place: 'box 9' })
    expect(form.status).toBe(503)
    expect(form.text).toContain('value="box 9"')
    expect((await request(app).get('/jobs')).status).toBe(503)
    expect((await request(app).get('/')).status).toBe(200)
  })

  it('is used as soon as it can be, without a new start', async () => {
    const taken = join(dataDir, 'taken')
    writeFileSync(taken, '')
    const { app, store } = testApp(taken)
    const send = () => request(app).post('/api/shelf/supplies').send({ name: 'Brick', supply: {} })
    expect((await send()).status).toBe(503)
    rmSync(taken)
    mkdirSync(taken)
    expect((await send()).status).toBe(201)
    await store.close()
  })
})

describe('a file that is no database of ours', () => {
  it('is left as it is and answered 503 with words', async () => {
    writeFileSync(join(dataDir, databaseFile), 'these are the minutes of a meeting, '.repeat(100))
    const { app } = testApp(dataDir)
    const answer = await request(app).get('/api/jobs')
    expect(answer.status).toBe(503)
    expect(answer.body.error.message).toMatch(/not one of ours, and was left as it is/)
  })
})

describe('the server itself', () => {
  it('starts without its records, says why, and still answers', async () => {
    const child = spawn(process.execPath, [compiled()], {
      env: { ...process.env, PORT: '0', DATA_DIR: '/proc/lampline', LOG_LEVEL: 'silent' },
    })
    let said = ''
    const address = await new Promise<string>((resolve) => {
      child.stderr.on('data', (chunk) => {
        said += chunk
      })
      child.stdout.on('data', (chunk) => {
        const found = /listening on (http:\S+)/.exec(String(chunk))
        if (found?.[1]) resolve(found[1])
      })
    })
    expect((await fetch(`${address}/healthz`)).status).toBe(200)
    expect((await fetch(`${address}/api/jobs`)).status).toBe(503)
    const ended = new Promise((resolve) => child.on('exit', resolve))
    child.kill('SIGTERM')
    expect(await ended).toBe(0)
    expect(said).toContain('Lampline starts without its records')
  })
})
