import { pino } from 'pino'
import request from 'supertest'
import { describe, expect, it, vi } from 'vitest'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import { storageFault } from '../../server/store/storageFault.js'
import type { Store } from '../../server/store/store.js'
import { testApp } from './testApp.js'

vi.setConfig({ testTimeout: 60_000 })

const app = (list: (() => Promise<never>) | null, { stopping = false, environment = {} } = {}) => {
  const store = { ...testApp().store, ...(list ? { list } : {}) } as Store
  const given = { config: readConfig(environment), logger: pino({ level: 'silent' }), store, now: Date.now }
  return createApp({ ...given, lan: () => null, stopping: () => stopping })
}

describe('/healthz', () => {
  it('says that the process runs, whatever the records do', async () => {
    const answer = await request(app(() => Promise.reject(new Error('gone')))).get('/healthz')
    expect([answer.status, answer.body]).toEqual([200, { status: 'ok' }])
  })
})

describe('/readyz', () => {
  it('says that records can be kept', async () => {
    const answer = await request(app(null)).get('/readyz')
    expect([answer.status, answer.body]).toEqual([200, { status: 'ok' }])
    expect(answer.headers['cache-control']).toBe('no-store')
  })

  it('says in words why they cannot: a database server that refuses', async () => {
    const refused = storageFault(Object.assign(new Error('connect'), { code: 'ECONNREFUSED' }))
    const answer = await request(app(() => Promise.reject(refused))).get('/readyz')
    expect(answer.status).toBe(503)
    expect(answer.body).toEqual({ status: 'no records', message: expect.stringContaining('does not answer') })
  })

  it('waits two seconds for a database that says nothing, and no longer', async () => {
    const began = performance.now()
    const answer = await request(app(() => new Promise(() => undefined))).get('/readyz')
    expect(answer.status).toBe(503)
    expect(answer.body.message).toBe('The place where records are kept does not answer.')
    expect(performance.now() - began).toBeGreaterThan(1900)
  })

  it('tells nothing of a fault that has no words of its own', async () => {
    const answer = await request(app(() => Promise.reject(new Error('secret cause')))).get('/readyz')
    expect(answer.status).toBe(503)
    expect(JSON.stringify(answer.body)).not.toContain('secret')
  })

  it('says so when the process is about to stop', async () => {
    const answer = await request(app(null, { stopping: true })).get('/readyz')
    expect([answer.status, answer.body.status]).toEqual([503, 'stopping'])
    expect((await request(app(null, { stopping: true })).get('/healthz')).status).toBe(200)
  })

  it('is answered without the passphrase', async () => {
    const environment = { HOST: '0.0.0.0', PASSPHRASE: 'three dry lamps' }
    expect((await request(app(null, { environment })).get('/readyz')).status).toBe(200)
  })
})
