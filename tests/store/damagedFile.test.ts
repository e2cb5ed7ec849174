import { mkdtempSync, readFileSync, rmSync, truncateSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import request from 'supertest'
import { expect, it } from 'vitest'
import { databaseFile } from '../../server/store/openStore.js'
import { testApp } from '../web/testApp.js'

it('a database file that was cut off is told on its pages, left as it is, and checks go on', async () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'lampline-damaged-'))
  const file = join(dataDir, databaseFile)
  const whole = testApp(dataDir)
  await request(whole.app)
    .post('/api/shelf/supplies')
    .send({ name: 'Brick', note: 'n'.repeat(9000), supply: {} })
  await whole.store.close()
  const database = new Database(file)
  database.pragma('wal_checkpoint(TRUNCATE)')
  database.close()
  truncateSync(file, 9000)
  const cut = readFileSync(file)
  const { app, store } = testApp(dataDir)
  const page = await request(app).get('/shelf')
  expect(page.status).toBe(503)
  expect(page.text).toMatch(/damaged or is not one of ours.+docs\/records\.md/s)
  expect((await request(app).post('/api/shelf/supplies').send({ name: 'More', supply: {} })).status).toBe(503)
  expect((await request(app).get('/?mains=230&supply=OUTPUT+12V')).status).toBe(200)
  await store.close()
  expect(readFileSync(file).equals(cut)).toBe(true)
  rmSync(dataDir, { recursive: true })
}, 60_000)
