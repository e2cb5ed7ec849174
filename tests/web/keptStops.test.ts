import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { matching } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
let id: string
let stop: string
const call = () => request(test.app)
const post = (path: string, body: object) => call().post(`/api/jobs/${id}/${path}`).send(body)
const job = async () => (await call().get(`/api/jobs/${id}`)).body
/** A plan whose one step takes 11 V up to what is given; without a figure, none at all. */
const planTo = (high: number | null) => ({
  stages: [
    {
      leftOut: null,
      steps: high === null ? [] : [{ key: 'own.volts', unit: 'V', low: 11, high, stopIf: 'it is more', power: 'none' }],
    },
  ],
})
const patch = async (body: object) =>
  (
    await call()
      .patch(`/api/jobs/${id}`)
      .send({ version: (await job()).version, ...body })
  ).body

beforeEach(async () => {
  test = testApp()
  id = (
    await call()
      .post('/api/jobs')
      .send({ name: 'Radio', check: matching, plan: planTo(13) })
  ).body.id
  stop = (await post('readings', { key: 'own.volts', value: 15, unit: 'V' })).body.id
})

describe('a reading that is a stop', () => {
  it.each([
    ['wider limits', { plan: planTo(20) }],
    ['a plan without its step', { plan: planTo(null) }],
    ['another check', { check: { ...matching, site: { country: 'FR', socket: 'E' } } }],
  ])('stays one with %s, until its cause is written', async (_what, change) => {
    expect((await patch(change)).stops).toMatchObject([{ of: stop, key: 'own.volts' }])
    expect((await job()).standing).toMatchObject({ state: 'out-of-limits', canGoOn: false })
    expect((await post('causes', { of: stop, text: 'Wrong tap of the winding.' })).status).toBe(201)
    expect((await job()).stops).toEqual([])
  })

  it('is held against the limits as they are once its cause is written', async () => {
    await post('causes', { of: stop, text: 'Wrong tap of the winding.' })
    expect((await patch({ plan: planTo(20) })).readings[0].finding.outcome).toBe('unknown')
  })

  it('is gone once it is taken back, and does not come again', async () => {
    await post(`entries/${stop}/withdraw`, { why: 'meter on the wrong range' })
    expect((await patch({ plan: planTo(12) })).stops).toEqual([])
  })

  it.each([
    '?',
    'ok',
    '12 V',
    '- - -',
    'unknown',
    "don't know",
    'ignore',
    'no cause found',
    'aaaa',
    'не знаю',
    'keine Ahnung',
    'I have no idea at all',
    '不明',
  ])('is not explained by “%s”', async (text) => {
    const answer = await post('causes', { of: stop, text })
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields[0]).toMatchObject({ path: 'text', message: expect.stringContaining('8 letters') })
    expect((await job()).stops).toHaveLength(1)
  })
})

describe('a step that has limits', () => {
  it.each(['gate.insulation', 'gate.live-neutral', 'own.volts'])('takes its reading, not a tick: %s', async (key) => {
    const answer = await post('ticks', { key, as: 'as-expected' })
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields[0].message).toMatch(/^This step has limits, .*: keep the reading/)
    expect((await job()).ticks).toEqual([])
  })

  it('can be said to be wrong without a number, which is a stop', async () => {
    expect((await post('ticks', { key: 'gate.insulation', as: 'wrong' })).body.finding.outcome).toBe('stop')
  })
})
