import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { matching, reversed } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
const call = () => request(test.app)
const made = async (check: CheckRequest, plan?: object) =>
  (await call().post('/api/jobs').send({ name: 'Radio', check, plan })).body
const post = (id: string, path: string, body: object) => call().post(`/api/jobs/${id}/${path}`).send(body)
const read = (id: string, key: string, value: number, unit: string) => post(id, 'readings', { key, value, unit })
const done = (id: string, key: string) => post(id, 'ticks', { key, as: 'as-expected' })
const job = async (id: string) => (await call().get(`/api/jobs/${id}`)).body
const messageOf = ({ body }: { body: { error: { fields: { message: string }[] } } }) => body.error.fields[0]?.message

/** A machine with its supply inside, of 120 V only. */
const builtIn = (plate: string): CheckRequest => ({
  arrangement: 'built-in',
  site: { country: 'DE', socket: 'F' },
  supply: {},
  device: { label: plate },
})

/** A plan of a machine with its supply inside: the least current under power, and the one on full mains. */
const insidePlan = {
  stages: [
    {
      leftOut: null,
      steps: [
        { key: 'inside-whole.current', unit: 'A', low: 0, high: 9, power: 'mains' },
        { key: 'inside-full.look', unit: null, power: 'none' },
        { key: 'inside-full.on', unit: null, power: 'mains', stopIf: 'it hums' },
        { key: 'inside-full.current', unit: 'A', low: 0, high: 1.4, power: 'mains' },
        { key: 'inside-full.mains', unit: 'V', low: 220, high: 240, power: 'mains', stopIf: 'it lies outside' },
      ],
    },
  ],
}

beforeEach(() => {
  test = testApp()
})

describe('a job whose check says not to connect', () => {
  it.each([
    ['120 V on 230 V', builtIn('AC 120V 60Hz 40W')],
    ['polarity the other way round', reversed],
  ])('takes no step that needs power, and says which stop: %s', async (_what, check) => {
    const { id, standing } = await made(check, insidePlan)
    expect(standing).toMatchObject({ state: 'must-change', canGoOn: false })
    const [stop] = standing.waitsFor
    for (const answer of [await done(id, 'inside-full.on'), await read(id, 'inside-full.current', 0.3, 'A')]) {
      expect(answer.status).toBe(422)
      expect(messageOf(answer)).toContain(stop)
      expect(messageOf(answer)).toContain('This step needs power')
    }
    // without power work goes on
    expect((await done(id, 'inside-full.look')).status).toBe(201)
    expect((await done(id, 'look.case')).status).toBe(201)
    expect((await job(id)).readings).toEqual([])
  })

  it('keeps what was typed in its form', async () => {
    const { id } = await made(reversed, insidePlan)
    const answer = await call()
      .post(`/jobs/${id}/readings`)
      .type('form')
      .send({ what: 'inside-full.current', value: '0.3', unit: 'A' })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('value="0.3"')
  })

  it('takes a step of no plan for one that needs power', async () => {
    const { id } = await made(reversed)
    expect((await read(id, 'own.volts', 12, 'V')).status).toBe(422)
  })

  it('goes on once the check is changed', async () => {
    const { id } = await made(reversed, insidePlan)
    await call().patch(`/api/jobs/${id}`).send({ version: 1, check: matching, plan: insidePlan })
    // what is left to wait for is no stop
    expect(messageOf(await done(id, 'inside-full.on'))).toContain('waits for its gates')
  })
})

describe('a stopped job', () => {
  it('does not power the stopped step again, nor one that the plan does not have, before its cause is written', async () => {
    const { id } = await made(matching, insidePlan)
    const { body: stop } = await read(id, 'inside-full.mains', 260, 'V')
    expect(stop.finding.outcome).toBe('stop')
    expect((await read(id, 'inside-full.mains', 230, 'V')).status).toBe(422)
    expect((await done(id, 'own.plug-in')).status).toBe(422)
    expect((await post(id, 'causes', { of: stop.id, text: 'Selector stood wrong.' })).status).toBe(201)
    expect(messageOf(await read(id, 'inside-full.mains', 230, 'V'))).toContain('waits for its gates')
  })
})

describe('a current that was observed', () => {
  // the machine of this check draws 1.2 A at most; the 1.4 A and 9 A of a plan that was sent widen nothing
  it.each([
    [1.2, 'ready'],
    [1.4, 'out-of-limits'],
    [5, 'out-of-limits'],
  ])('of %d A is held against what its check says, whatever plan was sent: %s', async (drawnA, state) => {
    const { id } = await made(matching, insidePlan)
    await call().patch(`/api/jobs/${id}`).send({ version: 1, observations: { drawnA } })
    expect((await job(id)).standing.state).toBe(state)
  })
})
