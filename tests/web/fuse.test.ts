import fc from 'fast-check'
import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { testApp } from './testApp.js'

const { app } = testApp()

const post = (path: string, body: object) => request(app).post(path).send(body)

const good = {
  marking: 'T2AL250V',
  prescribed: 'T2AL250V',
  position: 'mains',
  circuit: { voltageV: 230, currentA: 0.5 },
}

describe('POST /api/fuse', { timeout: 30_000 }, () => {
  it('answers with outcome, fitted, required, findings and curve', async () => {
    const { status, body } = await post('/api/fuse', good)
    expect(status).toBe(200)
    expect(body).toMatchObject({
      outcome: 'keep',
      fitted: { ratedA: 2, ratedV: 250, characteristic: 'T', breaking: 'L', breakingCapacityA: 35, scheme: 'IEC' },
      required: { currentA: 0.5, recommendedRatedA: 2, scheme: 'IEC', inrushI2t: null, minimumMeltingI2t: null },
    })
    // IEC 60127-2 sheet 3 at 210 %
    expect(body.curve).toContainEqual({ multiple: 2.1, currentA: 4.2, minTimeS: null, maxTimeS: 120 })
  })

  it('takes null wherever a field is optional', async () => {
    const { status } = await post('/api/fuse', {
      ...good,
      fuse: null,
      formerVoltageV: null,
      circuit: { ...good.circuit, powerW: null, inrushShape: null },
    })
    expect(status).toBe(200)
  })

  it.each([
    ['circuit.currentA', { circuit: { voltageV: 230, currentA: 0 } }, /more than 0; received 0/],
    ['circuit.currentA', { circuit: { voltageV: 230, currentA: 1e9 } }, /1000 or less; received 1000000000/],
    ['circuit.voltageV', { circuit: {} }, /must be a number/],
    ['circuit.voltageV', { circuit: { voltageV: '230' } }, /must be a number; received "230"/],
    ['position', { position: 'roof' }, /"mains", "plug", "low-voltage"/],
    ['fuse.characteristic', { fuse: { characteristic: 'Q' } }, /"FF", "F", "M", "T", "TT"/],
    ['fuse.ratedA', { fuse: { ratedA: 0 } }, /more than 0/],
    ['', { markings: 'T2A' }, /"markings"/],
    ['circuit.powerFactor', { circuit: { voltageV: 230, powerFactor: 1.2 } }, /1 or less/],
  ])('refuses %s with a sentence: %j', async (path, change, words) => {
    const { status, body } = await post('/api/fuse', { ...good, ...change })
    expect(status).toBe(422)
    const field = body.error.fields.find((one: { path: string }) => one.path === path)
    expect(field.message).toMatch(words)
  })

  it('gives clear words to a 5 A link where 0.5 A is prescribed', async () => {
    const { body } = await post('/api/fuse', { ...good, marking: 'T5AL250V', prescribed: 'T0.5AL250V' })
    expect(body.outcome).toBe('replace')
    expect(body.findings[0].title).toMatch(/10 times as much/)
  })

  it('never fails, whatever is sent', async () => {
    await fc.assert(
      fc.asyncProperty(fc.jsonValue(), async (value) => {
        const { status } = await post('/api/fuse', {
          ...good,
          fuse: value,
          circuit: { voltageV: 230, currentA: value },
        })
        expect([200, 422]).toContain(status)
      }),
      { numRuns: 40 },
    )
  })
})

describe('POST /api/fuse/marking', { timeout: 30_000 }, () => {
  it('answers with what was read, the size and what found no place', async () => {
    const { status, body } = await post('/api/fuse/marking', { text: 'bel T 500mA L 250V 5x20' })
    expect(status).toBe(200)
    expect(body).toMatchObject({
      ratedA: 0.5,
      ratedV: 250,
      characteristic: 'T',
      breaking: 'L',
      breakingCapacityA: 35,
      scheme: 'IEC',
      sizeMm: '5x20',
      unread: ['bel'],
    })
  })

  it('gives nulls to an empty text', async () => {
    const { status, body } = await post('/api/fuse/marking', { text: '' })
    expect(status).toBe(200)
    expect(body).toMatchObject({ ratedA: null, ratedV: null, characteristic: null, sizeMm: null, unread: [] })
  })

  it.each([{}, { text: 5 }, { text: 'T2A', more: 1 }])('refuses %j', async (body) => {
    expect((await post('/api/fuse/marking', body)).status).toBe(422)
  })

  it('reads 100 kB of noise in less than 5 s', async () => {
    const start = performance.now()
    const { status } = await post('/api/fuse/marking', { text: 'T2 A/ 1-1/4 x 250V red-'.repeat(4400) })
    expect(status).toBe(200)
    expect(performance.now() - start).toBeLessThan(5000)
  })
})
