import { pino } from 'pino'
import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import type { Context } from '../../server/web/context.js'

const app = createApp({ config: readConfig({}), logger: pino({ level: 'silent' }), now: Date.now } as Context)

describe('the mains calls', () => {
  it('list every country', async () => {
    const { status, body } = await request(app).get('/api/mains')
    expect(status).toBe(200)
    expect(body.length).toBeGreaterThan(200)
    for (const row of body) {
      expect(row).toMatchObject({ country: expect.any(String), name: expect.any(String) })
      expect(row.systems.length).toBeGreaterThan(0)
      expect(row.sockets.length).toBeGreaterThan(0)
      expect(row.sources.length).toBeGreaterThan(0)
    }
  })

  it.each(['GB', 'gb'])('give one country for %s', async (code) => {
    const { status, body } = await request(app).get(`/api/mains/${code}`)
    expect(status).toBe(200)
    expect(body).toMatchObject({
      country: 'GB',
      name: 'United Kingdom',
      systems: [{ voltageV: 230, frequencyHz: 50, minV: 216.2, maxV: 253 }],
      sockets: ['G'],
    })
  })

  it.each(['ZZ', 'GBR', '%00', '__proto__', '%F0%9F%92%A1', '1'])('answer 404 in words for %s', async (code) => {
    const { status, body } = await request(app).get(`/api/mains/${code}`)
    expect(status).toBe(404)
    expect(body.error.message).toMatch(/two letters of ISO 3166-1/)
  })

  it('answer 4xx for an address that cannot be read', async () => {
    const { status } = await request(app).get('/api/mains/%ff')
    expect(status).toBe(400)
  })
})
