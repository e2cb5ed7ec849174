import { pino } from 'pino'
import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import type { Context } from '../../server/web/context.js'

const app = (environment: Record<string, string>) =>
  createApp({ config: readConfig(environment), logger: pino({ level: 'silent' }), now: Date.now } as Context)

const shared = { HOST: '0.0.0.0', PASSPHRASE: 'three dry lamps' }

describe('a server reached over a network', () => {
  it('does not start without a passphrase', () => {
    expect(() => readConfig({ HOST: '0.0.0.0' })).toThrow(/PASSPHRASE/)
    expect(readConfig({ HOST: '127.0.0.1' }).passphrase).toBeUndefined()
  })

  it('sends a browser without the cookie to the page that asks, and keeps where it wanted to go', async () => {
    const answer = await request(app(shared)).get('/jobs?x=1')
    expect(answer.status).toBe(303)
    expect(answer.headers.location).toBe('/enter?to=%2Fjobs%3Fx%3D1')
  })

  it('answers a script without the header 401 in JSON, and with it lets it through', async () => {
    const without = await request(app(shared)).get('/api/nothing')
    expect(without.status).toBe(401)
    expect(without.body.error.message).toMatch(/Authorization: Bearer/)
    const withIt = await request(app(shared)).get('/api/nothing').set('Authorization', 'Bearer three dry lamps')
    expect(withIt.status).toBe(404)
  })

  it('gives the cookie for the right passphrase, which then opens the pages', async () => {
    const entered = await request(app(shared))
      .post('/enter')
      .type('form')
      .send({ passphrase: 'three dry lamps', to: '/jobs' })
    expect(entered.status).toBe(303)
    expect(entered.headers.location).toBe('/jobs')
    const cookie = entered.headers['set-cookie']?.[0] ?? ''
    expect(cookie).toMatch(/HttpOnly; SameSite=Lax/)
    const inside = await request(app(shared))
      .get('/api/nothing')
      .set('Cookie', cookie.split(';')[0] ?? '')
    expect(inside.status).toBe(404)
  })

  it('refuses a wrong passphrase and a forged cookie', async () => {
    const wrong = await request(app(shared)).post('/enter').type('form').send({ passphrase: 'three wet lamps' })
    expect(wrong.status).toBe(422)
    expect(wrong.text).toContain('does not match')
    const forged = await request(app(shared)).get('/api/nothing').set('Cookie', 'lampline-access=x')
    expect(forged.status).toBe(401)
  })

  it.each(['//elsewhere.example', '/\\elsewhere.example', 'https://elsewhere.example', 'javascript:alert(1)'])(
    'never sends on to %s after entering',
    async (to) => {
      const entered = await request(app(shared)).post('/enter').type('form').send({ passphrase: 'three dry lamps', to })
      expect(entered.headers.location).toBe('/')
    },
  )

  it('answers the health check without asking', async () => {
    expect((await request(app(shared)).get('/healthz')).body).toEqual({ status: 'ok' })
  })
})
