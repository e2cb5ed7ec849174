import request from 'supertest'
import { describe, expect, it } from 'vitest'
import type { z } from 'zod'
import { calls } from '../../server/web/calls/index.js'
import { testApp } from './testApp.js'

const mains = { voltageV: 230, frequencyHz: 50 }
const lamps = [{ ratedV: 230, ratedW: 60 }]
const supply = { label: 'INPUT 230V~ 50Hz 20W OUTPUT 12V DC 1A', technology: 'transformer' }
const check = { site: { country: 'DE' }, supply, device: { label: '12V DC 0.8A' } }

/** A request for every call that answers without a record. */
const samples: Record<string, object> = {
  '/api/label': { text: 'INPUT 230V~ 50Hz OUTPUT 9V DC 1A' },
  '/api/check': check,
  '/api/converter': { supply, site: { country: 'US' } },
  '/api/lead-drop': { lengthM: 1.5, awg: 22, currentA: 2.5, voltageV: 5 },
  '/api/fuse': {
    marking: 'T1AL250V',
    prescribed: 'T 1 A L 250 V',
    position: 'mains',
    circuit: { voltageV: 230, powerW: 40 },
  },
  '/api/fuse/marking': { text: 'T315L250V' },
  '/api/series-lamp': { mains, lamps, load: { kind: 'constant-power', powerW: 15, minimumV: 90 } },
  '/api/series-lamp/reading': { mains, lamps, lampV: 21 },
  '/api/series-lamp/choose': { mains, load: { idleW: 3, ratedW: 30 } },
  '/api/series-lamp/transient': { mains, lamps, load: { bulkF: 100e-6, loadOhm: 5000 }, durationS: 0.2 },
  '/api/inrush': { mains, seriesOhm: 5.5, bulkF: 220e-6, loadOhm: 1000 },
  '/api/first-power': { check, lampsOnHand: [{ ratedV: 230, ratedW: 60, count: 1 }] },
  '/api/examine': {
    check,
    observations: ['output-collapses'],
    readings: [{ key: 'output-1', value: 16, unit: 'V', state: 'open' }],
    found: [{ cause: 'brick-worn', result: 'confirmed' }],
    lamps,
  },
  '/api/bench-supply': { rails: [{ kind: 'dc', voltageV: 12, currentA: 1.5 }] },
  '/api/dummy-load': { voltageV: 5, currentA: 2 },
  '/api/discharge': { capacitanceF: 220e-6, voltageV: 325, resistanceOhm: 47000, limitV: 60 },
  '/api/reform': { capacitanceF: 47e-6, ratedV: 450, yearsUnused: 20 },
  '/api/off-load': { acV: 12, ratedVA: 10, rectifier: 'bridge', capacitanceF: 2200e-6, currentA: 0.5, frequencyHz: 50 },
  '/api/leakage': { capacitanceF: 2.2e-9, voltageV: 230, frequencyHz: 50, limitA: 0.00025 },
  '/api/insulation': { scheme: 'VDE 0701-0702', protectionClass: 'I', earthOhm: 0.2, insulationMOhm: 20 },
}

const posts = calls.filter(({ method, path }) => method === 'post' && path in samples)

describe('the answers hold what is described of them', () => {
  it('for every call that works something out', () => {
    expect(posts.map(({ path }) => path).sort()).toEqual(Object.keys(samples).sort())
    const untold = calls.filter(
      ({ method, path, group }) =>
        method === 'post' && ['Check', 'Fuse', 'First power', 'Examining'].includes(group) && !(path in samples),
    )
    expect(untold).toEqual([])
  })

  it.each(posts)('$path', async ({ path, answer }) => {
    const response = await request(testApp().app).post(path).send(samples[path])
    expect(response.status, JSON.stringify(response.body)).toBe(200)
    const parsed = (answer as z.ZodType).safeParse(response.body)
    expect(parsed.success ? [] : parsed.error.issues).toEqual([])
  })

  it('for kept records', async () => {
    const { app } = testApp()
    const of = (method: string, path: string): z.ZodType =>
      calls.find((operation) => operation.method === method && operation.path === path)?.answer as z.ZodType
    const faults = (schema: z.ZodType, body: unknown) => schema.safeParse(body).error?.issues ?? []
    const kept = await request(app).post('/api/shelf/supplies').send({ name: 'Brick from the blue box', supply })
    expect(kept.status).toBe(201)
    expect(faults(of('post', '/api/shelf/supplies'), kept.body)).toEqual([])
    const device = await request(app).post('/api/shelf/devices').send({ name: 'Label printer', device: check.device })
    expect(faults(of('post', '/api/shelf/devices'), device.body)).toEqual([])
    const matches = await request(app).get(`/api/shelf/devices/${device.body.id}/matches?country=DE`)
    expect(matches.body.matches).toHaveLength(1)
    expect(faults(of('get', '/api/shelf/devices/:id/matches'), matches.body)).toEqual([])
    const job = await request(app).post('/api/jobs').send({ name: 'Label printer', check })
    expect(job.status).toBe(201)
    expect(faults(of('post', '/api/jobs'), job.body)).toEqual([])
    const reading = await request(app)
      .post(`/api/jobs/${job.body.id}/readings`)
      .send({ key: 'before.mains-volts', value: 231, unit: 'V' })
    expect(reading.status).toBe(201)
    expect(faults(of('post', '/api/jobs/:id/readings'), reading.body)).toEqual([])
    const part = await request(app)
      .post(`/api/jobs/${job.body.id}/parts`)
      .send({ name: 'Back-up cell', state: 'wanted' })
    expect(faults(of('post', '/api/jobs/:id/parts'), part.body)).toEqual([])
    const list = await request(app).get(`/api/jobs/${job.body.id}/checklist`)
    expect(list.status).toBe(200)
    expect(faults(of('get', '/api/jobs/:id/checklist'), list.body)).toEqual([])
    const again = await request(app).get(`/api/jobs/${job.body.id}`)
    expect(faults(of('get', '/api/jobs/:id'), again.body)).toEqual([])
  })
})
