import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { matching } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
let id: string
let now: number
const call = () => request(test.app)
const post = (path: string, body: object = {}) => call().post(`/api/jobs/${id}/${path}`).send(body)
const read = (key: string, value: number | null, unit: string, secondsAgo?: number) =>
  post('readings', {
    key,
    value,
    unit,
    ...(secondsAgo !== undefined && { typedAt: new Date(now - secondsAgo * 1000).toISOString() }),
  })
const job = async () => (await call().get(`/api/jobs/${id}`)).body
const form = (path: string, fields: Record<string, string>) =>
  call().post(`/jobs/${id}/${path}`).type('form').send(fields)

/** At the machine, all the same, though its gates are open. */
const measured = (key: string, value: string, secondsAgo: number) =>
  form(`bench?step=${key}`, { value, unit: 'V', despite: 'yes', age: String(secondsAgo * 1000) })

beforeEach(async () => {
  test = testApp()
  const { body } = await call().post('/api/jobs').send({ name: 'Tape recorder', check: matching })
  id = body.id
  now = Date.parse(body.createdAt)
})

describe('what two devices read', () => {
  it('is compared in the order in which it was read, whatever arrives first', async () => {
    await measured('supply-alone.lamp-volts', '1.9', 30)
    // read a minute ago, before the reading above: 0.3 V is what it is held against
    await measured('supply-alone.lamp-volts', '0.3', 60)
    const { body } = await read('supply-alone.hold', 0.5, 'V', 45)
    expect(body.finding).toMatchObject({ outcome: 'stop', title: expect.stringContaining('no more than before') })
  })

  it('shows the one that was read last as the last', async () => {
    await read('look.discharge', 3, 'V', 10)
    await read('look.discharge', 20, 'V', 100)
    expect((await call().get(`/jobs/${id}/checklist`)).text).toMatch(/class="done">3\u00a0V/)
  })
})

describe('a stopped job', () => {
  beforeEach(async () => {
    await read('supply-alone.off-load-1', 14.9, 'V', 60)
  })

  it('takes what was read before the stop, on a device that was without the network', async () => {
    expect((await measured('supply-alone.lamp-volts', '0.9', 90)).status).toBe(303)
    expect((await measured('supply-alone.lamp-volts', '0.9', 30)).status).toBe(422)
  })

  it('takes what is a stop itself, as a reading or as words', async () => {
    expect((await read('supply-alone.lamp-volts', 229, 'V')).status).toBe(201)
    const smoke = { key: 'supply-alone.switch-on', as: 'wrong', words: 'smoke' }
    expect((await post('ticks', smoke)).status).toBe(201)
    expect((await job()).stops).toHaveLength(3)
  })
})

describe('a cause, a note and what is taken back', () => {
  it('carry the time at which they were written', async () => {
    const { body } = await read('look.discharge', 325, 'V', 600)
    const age = String(120_000)
    await form('causes', { of: body.id, text: 'Bleeder open.', age })
    await form('log', { text: 'Waited for it to fall.', age })
    const { causes, log } = await job()
    for (const { at } of [...causes, ...log]) expect(now - Date.parse(at)).toBe(120_000)
  })
})

describe('a meter over its range', () => {
  it.each([
    // −12 V of a machine that takes no more than that: over the range it may be any voltage
    ['a voltage with a lower bound alone', { unit: 'V', low: -13.2 }, 'stop'],
    ['a voltage with an upper bound alone', { unit: 'V', high: 13.2 }, 'stop'],
    ['a current with a lower bound alone', { unit: 'A', low: 0.1 }, 'stop'],
    // within its limit, of a plan that was sent: it stops nothing, and clears nothing
    ['ohms with a lower bound alone', { unit: 'Ω', low: 1e6 }, 'unknown'],
    ['ohms with an upper bound', { unit: 'Ω', low: 0, high: 0.3 }, 'stop'],
  ])('is outside, but for ohms that are to be many: %s', async (_what, limits, outcome) => {
    const step = { key: 'own.step', stopIf: 'it lies outside', power: 'none', ...limits }
    const plan = { stages: [{ leftOut: null, steps: [step] }] }
    id = (await call().post('/api/jobs').send({ name: 'Radio', check: matching, plan })).body.id
    expect((await read('own.step', null, limits.unit)).body.finding.outcome).toBe(outcome)
  })
})
