import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { matching } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

interface Gate {
  key: string
  unit: string | null
  low: number | null
}

interface Limit extends Gate {
  high: number | null
  power?: string
}

let test: TestApp
let id: string
let gates: Gate[]
const call = () => request(test.app)
const post = (path: string, body: object) => call().post(`/api/jobs/${id}/${path}`).send(body)
const switchOn = () => post('ticks', { key: 'supply-alone.switch-on', as: 'as-expected' })
const bench = (key: string, fields: Record<string, string>) =>
  call().post(`/jobs/${id}/bench?step=${key}`).type('form').send(fields)
const inSight = async (query: string): Promise<string> =>
  ((await call().get(`/jobs/${id}/bench?${query}`)).text.match(/<article class="step"[^>]*>.*?<\/article>/gs) ?? [])
    .filter((part) => !/^<article[^>]*\shidden/.test(part))
    .join('')
/** Gives a gate the result that its limits ask for. */
const pass = ({ key, unit, low }: Gate) =>
  unit === null
    ? post('ticks', { key, as: 'as-expected' })
    : post('readings', { key, unit, value: low === null || low < 0 ? 0 : low * 2 })
const signed = (words = 'R. Tester, insulation tester 3, today') =>
  post('ticks', { key: 'gate.tested-by', as: 'as-expected', words })

beforeEach(async () => {
  test = testApp()
  const { body } = await call().post('/api/jobs').send({ name: 'Tape recorder', check: matching })
  id = body.id
  gates = body.plan.gates
})

describe('a step that needs power', () => {
  it('waits for every gate of its stage, and for who tested', async () => {
    for (const gate of gates) {
      const waits = await switchOn()
      expect(waits.status).toBe(422)
      expect(waits.body.error.fields[0].message).toContain('waits for its gates')
      expect((await pass(gate)).status).toBe(201)
    }
    expect((await switchOn()).body.error.fields[0].message).toContain('gate.tested-by')
    expect((await post('ticks', { key: 'gate.tested-by', as: 'as-expected' })).status).toBe(422)
    expect((await signed()).status).toBe(201)
    expect((await switchOn()).status).toBe(201)
  })

  it('waits again once the reading of a gate is taken back, and after one outside its limits until it is passed', async () => {
    for (const gate of gates) await pass(gate)
    await signed()
    const isolation = { key: 'gate.isolation', unit: 'Ω' }
    const { body: bad } = await post('readings', { ...isolation, value: 1e5 })
    expect(bad.finding.outcome).toBe('stop')
    await post('causes', { of: bad.id, text: 'Lead of the filter on the case.' })
    expect((await switchOn()).status).toBe(422)
    // over the range of an insulation tester is more than any limit
    const { body: good } = await post('readings', { ...isolation, value: null })
    expect((await switchOn()).status).toBe(201)
    await post(`entries/${good.id}/withdraw`, { why: 'leads were not joined' })
    expect((await switchOn()).status).toBe(422)
  })

  it('is held for the machine alone by what is looked at in the machine', async () => {
    const onMachine = gates.filter(({ key }) => ['look.batteries', 'look.discharge', 'look.inside'].includes(key))
    const set = () => bench('bench-supply.set-1', { value: '12', unit: 'V' })
    expect((await set()).status).toBe(422)
    for (const gate of onMachine) await pass(gate)
    expect((await set()).status).toBe(303)
    expect((await switchOn()).status).toBe(422)
  })

  it('joins no machine to its supply before each line under power of the supply alone has its result', async () => {
    for (const gate of gates) await pass(gate)
    await signed()
    const { limits } = (await call().get(`/api/jobs/${id}`)).body
    const alone: Limit[] = limits.filter(
      ({ key, power }: Limit) => key.startsWith('supply-alone.') && power !== 'none' && key !== 'supply-alone.polarity',
    )
    const joins = () => post('ticks', { key: 'together.switch-on', as: 'as-expected' })
    for (const { key, unit, low, high } of alone) {
      expect((await joins()).body.error.fields[0].message).toContain(key)
      const result =
        unit === null
          ? await post('ticks', { key, as: 'as-expected' })
          : await post('readings', {
              key,
              unit,
              value: key.includes('off-load') ? ((low ?? 0) + (high ?? 0)) / 2 : 0.1,
            })
      expect(result.status, key).toBe(201)
    }
    expect((await joins()).body.error.fields[0].message).toContain('gates: supply-alone.polarity:')
    await post('readings', { key: 'supply-alone.polarity', unit: 'V', value: 12 })
    expect((await joins()).status).toBe(201)
  })

  it('names them on its page too', async () => {
    for (const gate of gates) await pass(gate)
    await signed()
    expect(await inSight('step=together.switch-on')).toMatch(/step=supply-alone\.switch-on/)
    const paper = (await call().get(`/api/jobs/${id}/checklist`)).body.stages
    expect(paper.find(({ title }: { title: string }) => title.startsWith('Supply and machine together')).pause).toMatch(
      /Every line of “The supply alone, behind the lamp” ticked/,
    )
  })

  it('can be said to be wrong at any time', async () => {
    expect((await bench('supply-alone.lamp-volts', { value: '', as: 'wrong' })).status).toBe(303)
    const { ticks, stops } = (await call().get(`/api/jobs/${id}`)).body
    expect(ticks).toMatchObject([{ key: 'supply-alone.lamp-volts', as: 'wrong', finding: { outcome: 'stop' } }])
    expect(stops).toHaveLength(1)
  })
})

describe('the page of a step that waits', () => {
  it('names the first gate with its number, and has no box to tick', async () => {
    const step = await inSight('step=supply-alone.switch-on')
    expect(step).toMatch(/<p class="waits">Waits for <a href="[^"]*step=look\.cord"[^>]*>2\.2<\/a>/)
    expect(step).toMatch(/<button[^>]* value="as-expected" hidden/)
    expect(step).toMatch(/<button[^>]* value="wrong">/)
  })

  it('takes what was measured all the same only where that is asked for', async () => {
    const key = 'supply-alone.lamp-volts'
    expect(await inSight(`step=${key}`)).toMatch(/<div class="gated" hidden/)
    const refused = await bench(key, { value: '1', unit: 'V' })
    expect(refused.status).toBe(422)
    expect(refused.text).toContain('Waits for 2.2 and 7 more')
    expect(refused.text).toContain('value="1"')
    const asked = await inSight(`step=${key}&despite=yes`)
    expect(asked).toContain('<div class="gated">')
    expect(asked).toContain('name="despite" value="yes"')
    expect((await bench(key, { value: '1', unit: 'V', despite: 'yes' })).status).toBe(303)
  })
})
