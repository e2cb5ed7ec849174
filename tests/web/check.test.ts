import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { matching } from '../chain/cases.js'
import { testApp } from './testApp.js'

const { app } = testApp()
const post = (path: string, body: unknown) =>
  request(app)
    .post(path)
    .set('Content-Type', 'application/json')
    .send(typeof body === 'string' ? body : JSON.stringify(body))

const check = (body: unknown) => post('/api/check', body)
const nothing = { site: {}, supply: {}, device: {} }

describe('POST /api/check', () => {
  it('answers a matching case with no conflict, and null readings where no label was sent', async () => {
    const { status, body } = await check(matching)
    expect(status).toBe(200)
    expect(body.verdict).toBe('no-conflict-found')
    expect(body.readings).toEqual({ supply: null, device: null })
    for (const finding of body.findings)
      expect(
        Object.keys(finding)
          .filter((key) => key !== 'lead')
          .toSorted(),
      ).toEqual(['action', 'actions', 'outcome', 'sources', 'title', 'topic', 'why', 'working'])
  })

  it('answers nothing entered with find-out-first', async () => {
    const { status, body } = await check(nothing)
    expect(status).toBe(200)
    expect(body.verdict).toBe('find-out-first')
  })

  it('takes null wherever a fact may be left out', async () => {
    const { status } = await check({
      site: { country: null, voltageV: null, frequencyHz: null, socket: null },
      supply: { label: null, input: null, outputs: null, plug: null, measured: null, lead: null },
      device: { label: null, inputs: null, jack: null },
      cord: null,
      converter: null,
    })
    expect(status).toBe(200)
  })

  it('reads both plates, the supply’s as a supply’s and the machine’s as a machine’s', async () => {
    const { body } = await check({
      ...nothing,
      supply: { label: 'INPUT 100-240V~ 50/60Hz 0.5A\nOUTPUT 12V ⎓ 2A' },
      device: { label: '12V ⎓ 1A' },
    })
    expect(body.readings.supply.outputs[0].voltageV).toBe(12)
    expect(body.readings.device.takes[0].voltageV).toBe(12)
    const of = (topic: string) => body.findings.find((finding: { topic: string }) => finding.topic === topic).outcome
    expect([of('output-kind'), of('output-voltage'), of('output-current')]).toEqual(['clear', 'clear', 'clear'])
  })

  it('takes a label of right-to-left and odd characters as text', async () => {
    const { status, body } = await check({ ...nothing, supply: { label: 'كهرباء \u202e230V~ 50Hz\t0.2A\r\n⧈' } })
    expect(status).toBe(200)
    expect(body.readings.supply).not.toBeNull()
  })

  const bad: { name: string; body: unknown; path: string; says: RegExp }[] = [
    { name: 'an unknown country', body: { ...nothing, site: { country: 'XX' } }, path: 'site.country', says: /"XX"/ },
    {
      name: 'a country in words',
      body: { ...nothing, site: { country: 'Germany' } },
      path: 'site.country',
      says: /ISO 3166-1/,
    },
    {
      name: 'a socket that is no letter',
      body: { ...nothing, site: { socket: 'Z' } },
      path: 'site.socket',
      says: /A to O/,
    },
    {
      name: 'negative amperes',
      body: { ...nothing, supply: { input: { currentA: -1 } } },
      path: 'supply.input.currentA',
      says: /-1/,
    },
    {
      name: 'no volts at all',
      body: { ...nothing, device: { inputs: [{ kind: 'dc', voltageV: 0 }] } },
      path: 'device.inputs.0.voltageV',
      says: /0 V/,
    },
    {
      name: 'a window upside down',
      body: { ...nothing, supply: { input: { voltages: [{ min: 240, max: 100 }] } } },
      path: 'supply.input.voltages.0.max',
      says: /240.*100/,
    },
    {
      name: 'an empty list of windows',
      body: { ...nothing, supply: { input: { voltages: [] } } },
      path: 'supply.input.voltages',
      says: /at least 1/,
    },
    {
      name: 'an empty list of outputs',
      body: { ...nothing, supply: { outputs: [] } },
      path: 'supply.outputs',
      says: /at least 1/,
    },
    {
      name: 'an empty list of inputs',
      body: { ...nothing, device: { inputs: [] } },
      path: 'device.inputs',
      says: /at least 1/,
    },
    {
      name: 'a number as text',
      body: { ...nothing, site: { voltageV: '1,500' } },
      path: 'site.voltageV',
      says: /number.*"1,500"/,
    },
    { name: 'a mistyped field', body: { ...nothing, supply: { inputs: {} } }, path: 'supply', says: /"inputs"/ },
    { name: 'a missing part', body: { site: {}, supply: {} }, path: 'device', says: /device/ },
    { name: 'a list for a body', body: [], path: '', says: /object/ },
    {
      name: 'a technology that is none',
      body: { ...nothing, supply: { technology: 'linear' } },
      path: 'supply.technology',
      says: /"switch-mode", "transformer", "unknown"/,
    },
    {
      name: 'a control character in a marking',
      body: { ...nothing, supply: { fuse: 'T1A\u0000' } },
      path: 'supply.fuse',
      says: /control/,
    },
    {
      name: 'a control character in a label',
      body: { ...nothing, supply: { label: '230V\u0007' } },
      path: 'supply.label',
      says: /control/,
    },
    {
      name: 'a label without end',
      body: { ...nothing, supply: { label: 'A'.repeat(10_001) } },
      path: 'supply.label',
      says: /at most 10000/,
    },
    {
      name: 'a tolerance over 50 %',
      body: { ...nothing, device: { inputs: [{ kind: 'dc', voltageV: 5, tolerancePercent: 51 }] } },
      path: 'device.inputs.0.tolerancePercent',
      says: /50/,
    },
  ]
  it.each(bad)('refuses $name, saying which field and why', async ({ body, path, says }) => {
    const { status, body: answer } = await check(body)
    expect(status).toBe(422)
    expect(answer.error.fields.map((field: { path: string }) => field.path)).toContain(path)
    expect(JSON.stringify(answer.error.fields).replaceAll('\\"', '"')).toMatch(says)
  })

  it.each([
    { name: 'what is not JSON', body: '{"site":', status: 400 },
    {
      name: 'a name that touches prototypes',
      body: '{"site":{},"supply":{"__proto__":{"label":"x"}},"device":{}}',
      status: 422,
    },
    { name: 'a number JSON does not have', body: '{"site":{"voltageV":NaN},"supply":{},"device":{}}', status: 400 },
    { name: 'a number beyond range', body: '{"site":{"voltageV":1e999},"supply":{},"device":{}}', status: 422 },
    { name: '10 MB', body: JSON.stringify({ ...nothing, supply: { label: 'A'.repeat(10_000_000) } }), status: 413 },
  ])('refuses $name with $status', async ({ body, status }) => {
    const answer = await check(body)
    expect(answer.status).toBe(status)
    expect(answer.body.error.message).toMatch(/\w{4}/)
  })

  it('refuses a body of another type', async () => {
    const { status } = await request(app).post('/api/check').set('Content-Type', 'text/plain').send('230 V')
    expect([415, 422]).toContain(status)
  })
})

describe('POST /api/converter', () => {
  it('answers size, voltage, flux and kinds', async () => {
    const { status, body } = await post('/api/converter', {
      site: { country: 'DE' },
      supply: {
        technology: 'transformer',
        input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60], currentA: 0.5 },
      },
    })
    expect(status).toBe(200)
    // 120 V × 0.5 A × 1.25; (120 / 50) / (120 / 60)
    expect(body).toMatchObject({ neededVA: 75, standardVA: 75, outputV: 120, fluxRatio: expect.closeTo(1.2, 9) })
    expect(body.kinds.map(({ kind }: { kind: string }) => kind)).toEqual(['autotransformer', 'isolating', 'electronic'])
    for (const list of [body.working, body.cautions, body.sources]) expect(list.length).toBeGreaterThan(0)
  })

  it('answers null for what is not known', async () => {
    const { status, body } = await post('/api/converter', { site: {}, supply: {} })
    expect(status).toBe(200)
    expect(body).toMatchObject({ neededVA: null, standardVA: null, outputV: null, fluxRatio: null })
  })

  it('refuses what it cannot use', async () => {
    expect((await post('/api/converter', { site: { country: 'QQ' }, supply: {} })).status).toBe(422)
    expect((await post('/api/converter', { supply: {} })).status).toBe(422)
  })
})

describe('POST /api/lead-drop', () => {
  it('answers resistance, drop and loss: 1.5 m of AWG 22 at 2.5 A', async () => {
    const { status, body } = await post('/api/lead-drop', { lengthM: 1.5, awg: 22, currentA: 2.5, voltageV: 5 })
    expect(status).toBe(200)
    // worked example: 0.3972 V, 7.944 %
    expect(body).toMatchObject({
      resistanceOhm: expect.closeTo(0.1589, 4),
      dropV: expect.closeTo(0.3972, 4),
      dropPercent: expect.closeTo(7.944, 2),
      lostW: expect.closeTo(0.993, 3),
    })
    for (const list of [body.working, body.cautions, body.sources]) expect(list.length).toBeGreaterThan(0)
  })

  it.each([
    { name: 'no size', body: { lengthM: 1, currentA: 1, voltageV: 5 } },
    { name: 'two sizes', body: { lengthM: 1, currentA: 1, voltageV: 5, awg: 18, areaMm2: 1 } },
    { name: 'no length', body: { currentA: 1, voltageV: 5, awg: 18 } },
    { name: 'a length of nothing', body: { lengthM: 0, currentA: 1, voltageV: 5, awg: 18 } },
    { name: 'no voltage', body: { lengthM: 1, currentA: 1, voltageV: 0, awg: 18 } },
    { name: 'a gauge there is none of', body: { lengthM: 1, currentA: 1, voltageV: 5, awg: 60 } },
  ])('refuses $name', async ({ body }) => {
    const answer = await post('/api/lead-drop', body)
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields.length).toBeGreaterThan(0)
  })
})
