import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Express } from 'express'
import { pino } from 'pino'
import request from 'supertest'
import { beforeAll, describe, expect, it, vi } from 'vitest'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import { accessSalt, accessSaltFile } from '../../server/store/accessSalt.js'
import type { Context } from '../../server/web/context.js'
import { mostTries, mostTriesOfAll } from '../../server/web/guards/access.js'
import { newSession, sessionHolds, sessionS } from '../../server/web/guards/session.js'

// a key is stretched for each app, and the machine may be busy with others
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 })

const passphrase = 'three dry lamps'
const shared = { HOST: '0.0.0.0', PASSPHRASE: passphrase }
const startMs = Date.UTC(2026, 0, 5, 9)
const monthMs = 30 * 24 * 3600 * 1000

interface Server {
  app: Express
  /** wall clock and time that only goes forward [ms] */
  time: { wall: number; elapsed: number }
}

function server(environment: Record<string, string> = {}, salt = Buffer.alloc(32, 7)): Server {
  const time = { wall: startMs, elapsed: 0 }
  const config = readConfig({ ...shared, ...environment })
  const logger = pino({ level: 'silent' })
  const clocks = { now: () => time.wall, elapsed: () => time.elapsed }
  return { app: createApp({ config, logger, salt, ...clocks } as Context), time }
}

const enter = (app: Express, given: string, to = '/jobs') =>
  request(app).post('/enter').type('form').send({ passphrase: given, to })
const cookieFrom = (answer: { headers: Record<string, unknown> }): string =>
  ((answer.headers['set-cookie'] as string[] | undefined)?.[0] ?? '').split(';')[0] ?? ''
/** 404 for whoever is let in, 401 for others. */
const askWith = (app: Express, header: Record<string, string>) => request(app).get('/api/nothing').set(header)

let app: Express
beforeAll(() => {
  app = server().app
})

describe('a server reached over a network', () => {
  it('does not start without a passphrase', () => {
    expect(() => readConfig({ HOST: '0.0.0.0' })).toThrow(/PASSPHRASE/)
    expect(() => readConfig({ HOST: '192.168.1.20', PASSPHRASE: 'short' })).toThrow(/at least 8/)
    expect(readConfig({}).host).toBe('127.0.0.1')
    expect(readConfig({ HOST: '127.0.0.1' }).passphrase).toBeUndefined()
  })

  it('sends a browser without the cookie to the page that asks, and keeps where it wanted to go', async () => {
    const answer = await request(app).get('/jobs?x=1')
    expect(answer.status).toBe(303)
    expect(answer.headers.location).toBe('/enter?to=%2Fjobs%3Fx%3D1')
  })

  it('answers a script without the header 401 in JSON, and with it lets it through', async () => {
    const without = await askWith(app, {})
    expect(without.status).toBe(401)
    expect(without.body.error.message).toMatch(/Authorization: Bearer/)
    expect((await askWith(app, { Authorization: `Bearer ${passphrase}` })).status).toBe(404)
  })

  it('gives the cookie for the right passphrase, which then opens the pages', async () => {
    const entered = await enter(app, passphrase)
    expect(entered.status).toBe(303)
    expect(entered.headers.location).toBe('/jobs')
    expect(entered.headers['set-cookie']?.[0]).toMatch(/; Path=\/; Max-Age=2592000; HttpOnly; SameSite=Lax$/)
    expect((await askWith(app, { Cookie: cookieFrom(entered) })).status).toBe(404)
  })

  it('refuses a wrong passphrase', async () => {
    const wrong = await enter(app, 'three wet lamps')
    expect(wrong.status).toBe(422)
    expect(wrong.text).toContain('does not match')
    expect(wrong.headers['set-cookie']).toBeUndefined()
  })

  it.each(['//elsewhere.example', '/\\elsewhere.example', 'https://elsewhere.example', 'javascript:alert(1)'])(
    'never sends on to %s after entering',
    async (to) => {
      expect((await enter(app, passphrase, to)).headers.location).toBe('/')
    },
  )

  it('answers the health check without asking', async () => {
    expect((await request(app).get('/healthz')).body).toEqual({ status: 'ok' })
  })

  it('lets nothing but the two health addresses and the page that asks be had by any spelling of them', async () => {
    for (const path of [
      '/healthz/../jobs',
      '/enter/../jobs',
      '/enter%2f..%2fjobs',
      '//enter',
      '/ENTER/x',
      '/static/%2e%2e/jobs',
    ])
      expect([path, [303, 403, 404]]).toEqual([path, expect.arrayContaining([(await request(app).get(path)).status])])
  })
})

describe('a remembered browser', () => {
  const key = Buffer.alloc(32, 1)
  const nowS = startMs / 1000

  it('is remembered for 30 days and not a second longer', () => {
    const session = newSession(key, nowS)
    expect(sessionS).toBe(30 * 24 * 3600)
    expect(sessionHolds(key, session, nowS)).toBe(true)
    expect(sessionHolds(key, session, nowS + sessionS - 1)).toBe(true)
    expect(sessionHolds(key, session, nowS + sessionS)).toBe(false)
  })

  it('stays remembered when the clock is set back a little, and is asked again when it jumps far back', () => {
    const session = newSession(key, nowS)
    expect(sessionHolds(key, session, nowS - 3600)).toBe(true)
    expect(sessionHolds(key, session, nowS - 3 * 24 * 3600)).toBe(false)
  })

  it('cannot write itself a longer stay, nor one under another key', () => {
    const [issued, expires, proof] = newSession(key, nowS).split('.') as [string, string, string]
    expect(sessionHolds(key, `${issued}.${Number(expires) + 1}.${proof}`, nowS)).toBe(false)
    expect(sessionHolds(key, `${Number(issued) - 1}.${expires}.${proof}`, nowS)).toBe(false)
    expect(sessionHolds(key, `${issued}.${expires}.${proof.slice(0, -2)}AA`, nowS)).toBe(false)
    expect(sessionHolds(Buffer.alloc(32, 2), `${issued}.${expires}.${proof}`, nowS)).toBe(false)
    for (const forged of ['', 'x', '..', `${issued}.${expires}.`, `${issued}.${expires}.${'A'.repeat(43)}`, '1.9e99.x'])
      expect(sessionHolds(key, forged, nowS)).toBe(false)
  })

  it('is asked again when 30 days are over', async () => {
    const { app, time } = server()
    const cookie = cookieFrom(await enter(app, passphrase))
    time.wall += monthMs - 1000
    expect((await askWith(app, { Cookie: cookie })).status).toBe(404)
    time.wall += 2000
    expect((await askWith(app, { Cookie: cookie })).status).toBe(401)
  })

  it('is still remembered after a restart, and forgotten under a new passphrase or a new salt', async () => {
    const cookie = cookieFrom(await enter(app, passphrase))
    expect((await askWith(server().app, { Cookie: cookie })).status).toBe(404)
    expect((await askWith(server({ PASSPHRASE: 'four dry lamps' }).app, { Cookie: cookie })).status).toBe(401)
    expect((await askWith(server({}, Buffer.alloc(32, 8)).app, { Cookie: cookie })).status).toBe(401)
  })

  it('is answered with pages that no proxy keeps for others', async () => {
    const cookie = cookieFrom(await enter(app, passphrase))
    for (const [path, headers] of [
      ['/api/mains', { Cookie: cookie }],
      ['/enter', { Cookie: cookie }],
      ['/jobs', {}],
    ] as const)
      expect((await request(app).get(path).set(headers)).headers['cache-control']).toBe('private, no-cache')
  })

  it('is forgotten by the button on the page that asked', async () => {
    const cookie = cookieFrom(await enter(app, passphrase))
    const page = await request(app).get('/enter').set('Cookie', cookie)
    expect(page.text).toContain('Forget this browser')
    expect((await request(app).get('/enter')).text).not.toContain('Forget this browser')
    const left = await request(app).post('/leave').set('Cookie', cookie)
    expect(left.status).toBe(303)
    expect(left.headers['set-cookie']?.[0]).toMatch(/^lampline-access=; Path=\/; Max-Age=0;/)
  })

  it('gets a cookie for https only where a trusted proxy says that it came by https', async () => {
    const forwarded = async (environment: Record<string, string>) =>
      (await enter(server(environment).app, passphrase).set({ 'X-Forwarded-Proto': 'https', Host: '192.168.1.20' }))
        .headers['set-cookie']?.[0]
    expect(await forwarded({ TRUST_PROXY: '1' })).toMatch(/; Secure$/)
    expect(await forwarded({})).not.toMatch(/Secure/)
  })

  it('carries neither the passphrase nor a digest that a fast guess could be tried on', async () => {
    const cookie = cookieFrom(await enter(app, passphrase))
    expect(cookie).not.toContain('lamps')
    const [issued, , proof] = (cookie.split('=')[1] ?? '').split('.')
    expect(issued).toBe(String(startMs / 1000))
    // the key is not the passphrase itself: a session signed with it is not taken
    const forged = newSession(Buffer.from(passphrase), startMs / 1000)
    expect(forged.split('.')[2]).not.toBe(proof)
    expect((await askWith(app, { Cookie: `lampline-access=${forged}` })).status).toBe(401)
  })
})

describe('guessing the passphrase', () => {
  it('ends after ten wrong tries of one address, on the page and by header together, for a quarter of an hour', async () => {
    const { app, time } = server()
    for (let count = 0; count < mostTries / 2; count += 1) {
      expect((await enter(app, `wrong ${count}`)).status).toBe(422)
      expect((await askWith(app, { Authorization: `Bearer wrong ${count}` })).status).toBe(401)
    }
    const refused = await enter(app, passphrase)
    expect(refused.status).toBe(429)
    expect(refused.headers['retry-after']).toBe('900')
    expect(refused.text).toMatch(/wrong too often\. Wait 15 minutes/)
    const script = await askWith(app, { Authorization: `Bearer ${passphrase}` })
    expect([script.status, script.headers['retry-after']]).toEqual([429, '900'])
    // setting the clock opens nothing
    time.wall += 365 * 24 * 3600 * 1000
    expect((await enter(app, passphrase)).status).toBe(429)
    time.elapsed += 15 * 60_000
    expect((await enter(app, passphrase)).status).toBe(303)
  })

  it('leaves browsers that are remembered alone', async () => {
    const { app } = server()
    const cookie = cookieFrom(await enter(app, passphrase))
    for (let count = 0; count <= mostTries; count += 1) await askWith(app, { Authorization: 'Bearer wrong' })
    expect((await askWith(app, { Authorization: 'Bearer wrong' })).status).toBe(429)
    expect((await askWith(app, { Cookie: cookie })).status).toBe(404)
  })

  it('ends after a hundred wrong tries of all addresses together, but not for who was right before', async () => {
    const { app, time } = server({ TRUST_PROXY: '1' })
    const bearer = (address: string, given: string) =>
      askWith(app, { Authorization: `Bearer ${given}`, 'X-Forwarded-For': address })
    expect((await bearer('10.9.9.9', passphrase)).status).toBe(404)
    for (let count = 0; count < mostTriesOfAll; count += 1)
      expect((await bearer(`10.0.${count}.1`, 'wrong')).status).toBe(401)
    expect((await bearer('10.1.0.1', passphrase)).status).toBe(429)
    expect((await bearer('10.9.9.9', passphrase)).status).toBe(404)
    time.elapsed += 60 * 60_000
    expect((await bearer('10.1.0.1', passphrase)).status).toBe(404)
  })

  it('cannot be spread by naming other addresses where no proxy is trusted', async () => {
    const { app } = server()
    const statuses: number[] = []
    for (let count = 0; count <= mostTries; count += 1)
      statuses.push(
        (await askWith(app, { Authorization: 'Bearer wrong', 'X-Forwarded-For': `10.0.0.${count}` })).status,
      )
    expect(statuses.at(-2)).toBe(401)
    expect(statuses.at(-1)).toBe(429)
  })

  it('does not get more tries by sending many at the same time', async () => {
    const { app } = server()
    const answers = await Promise.all(
      Array.from({ length: 40 }, (_, count) => askWith(app, { Authorization: `Bearer ${count}` })),
    )
    expect(answers.filter(({ status }) => status === 401)).toHaveLength(mostTries)
  })
})

describe('the salt in the data folder', () => {
  it('is made once, of 32 bytes, readable by its owner only, and made anew where it was cut short', async () => {
    const dataDir = mkdtempSync(join(tmpdir(), 'lampline-salt-'))
    try {
      const folder = join(dataDir, 'new')
      const first = await accessSalt(folder)
      expect(first).toHaveLength(32)
      expect(await accessSalt(folder)).toEqual(first)
      const path = join(folder, accessSaltFile)
      expect(statSync(path).mode & 0o777).toBe(0o600)
      writeFileSync(path, first.subarray(0, 5))
      const second = await accessSalt(folder)
      expect(second).toHaveLength(32)
      expect(second).not.toEqual(first)
      expect(readFileSync(path)).toEqual(second)
    } finally {
      rmSync(dataDir, { recursive: true })
    }
  })
})
