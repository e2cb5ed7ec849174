import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { matching } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
let id: string
const call = () => request(test.app)
const post = (path: string, body: object = {}) => call().post(`/api/jobs/${id}/${path}`).send(body)
const job = async () => (await call().get(`/api/jobs/${id}`)).body
const page = (path = '') => call().get(`/jobs/${id}${path}`)
const form = (path: string, fields: Record<string, string>) =>
  call().post(`/jobs/${id}/${path}`).type('form').send(fields)
/** At the machine, all the same, though its gates are open. */
const measured = (key: string, value: string) => form(`bench?step=${key}`, { value, unit: 'V', despite: 'yes' })
const plainly = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/\u00a0/g, ' ')
    .replace(/\s+/g, ' ')

beforeEach(async () => {
  test = testApp()
  id = (await call().post('/api/jobs').send({ name: 'Tape recorder', check: matching })).body.id
})

describe('what someone could be hurt by', () => {
  it.each([
    ['325 V on the capacitors before reaching inside', 'look.discharge', 325, 'V', /Touch nothing inside/],
    ['the same, leads the wrong way round', 'look.discharge', -325, 'V', /Touch nothing inside/],
    ['140 V after the bench supply', 'bench-supply.off', 140, 'V', /Touch nothing inside/],
    ['a few ohms between live and neutral', 'gate.live-neutral', 2, 'Ω', /Leave the plug out/],
    ['14.9 V of a 12 V output', 'supply-alone.off-load-1', 14.9, 'V', /Switch off, unplug/],
    ['5 A where the machine draws 1.2 A', 'together.drawn', 5, 'A', /Switch off, unplug/],
  ])('is a stop, with what to do first: %s', async (_name, key, value, unit, action) => {
    const { body } = await post('readings', { key, value, unit })
    expect(body.finding).toMatchObject({ outcome: 'stop', action: expect.stringMatching(action) })
    expect((await job()).standing).toMatchObject({ state: 'out-of-limits', canGoOn: false })
  })

  it('is a polarity that is not the one the machine wants', async () => {
    // centre positive on plate and jack: a minus sign is the other way round
    const { body } = await post('readings', { key: 'supply-alone.polarity', value: -12, unit: 'V' })
    expect(body.finding.outcome).toBe('stop')
  })

  it.each(['centre negative', 'tip is minus', 'plus on the sleeve'])('is “%s” written beside a tick', async (words) => {
    const { body } = await post('ticks', { key: 'before.polarity', as: 'as-expected', words })
    expect(body.finding).toMatchObject({ outcome: 'stop', topic: 'polarity' })
  })

  it('is not “centre positive” where that is wanted', async () => {
    const { body } = await post('ticks', { key: 'before.polarity', as: 'as-expected', words: 'centre positive, both' })
    expect(body.finding.outcome).toBe('clear')
  })

  it('is a supply that stands at its current limit', async () => {
    const row = (await job()).limits.find(({ key }: { key: string }) => key === 'bench-supply.step-1')
    const at = (await post('readings', { key: row.key, value: row.high, unit: 'A' })).body
    expect(at.finding.outcome).toBe('stop')
  })

  it('is a lamp that takes more than a minute before', async () => {
    await measured('supply-alone.lamp-volts', '0.3 V')
    const { finding } = (await post('readings', { key: 'supply-alone.hold', value: 1.9, unit: 'V' })).body
    expect(finding).toMatchObject({ outcome: 'stop', title: expect.stringContaining('no more than before') })
    expect(finding.working.join(' ')).toMatch(/1\.9\u00a0V > 0\.3\u00a0V|1\.9\u00a0V > 300\u00a0mV/)
  })

  it.each([
    ['a smell', { observations: { smells: 'burnt, smoke' } }],
    ['a leaked cell', { observations: { note: 'one cell has leaked' } }],
    ['5 A drawn', { observations: { drawnA: 5 } }],
  ])('is %s seen at first power, however well the machine works', async (_name, patch) => {
    const { version } = await job()
    const seen = { version, observations: { works: 'yes', ...patch.observations } }
    await call().patch(`/api/jobs/${id}`).send(seen)
    const after = await job()
    expect(after.standing.state).toBe('out-of-limits')
    const [{ of }] = after.stops
    await post('causes', { of, text: 'Found and mended.' })
    expect((await job()).standing.state).toBe('finished')
  })

  it('is a step that was not as it should be, or whose words say so', async () => {
    expect((await post('ticks', { key: 'look.case', as: 'as-expected' })).body.finding.outcome).toBe('clear')
    expect(
      (await post('ticks', { key: 'look.cord', as: 'wrong', words: 'strain relief loose' })).body.finding,
    ).toMatchObject({
      outcome: 'stop',
      action: expect.stringContaining('Leave the plug out'),
    })
    expect(
      (await post('ticks', { key: 'look.inside', as: 'as-expected', words: 'one leaked' })).body.finding.outcome,
    ).toBe('stop')
    expect((await job()).stops).toHaveLength(2)
  })
})

describe('a stopped job', () => {
  beforeEach(async () => {
    await post('readings', { key: 'supply-alone.off-load-1', value: 14.9, unit: 'V' })
  })

  it('takes nothing that needs power before a cause is written, and keeps what was typed', async () => {
    const refused = await measured('together.lamp-volts', '12.3 V')
    expect(refused.status).toBe(422)
    expect(plainly(refused.text)).toContain('This job is stopped')
    expect(refused.text).toContain('value="12.3 V"')
    expect((await post('ticks', { key: 'supply-alone.switch-on', as: 'as-expected' })).status).toBe(422)
    // without power work goes on
    expect((await post('ticks', { key: 'look.case', as: 'as-expected' })).status).toBe(201)
    expect((await post('readings', { key: 'look.discharge', value: 3, unit: 'V' })).status).toBe(201)
    const [{ of }] = (await job()).stops
    await form('causes', { of, text: 'The lead stood on another output.' })
    // what was a stop is read again before anything later has power
    expect(plainly((await measured('together.lamp-volts', '12.3 V')).text)).toContain('first read again')
    expect((await measured('supply-alone.off-load-1', '12.1 V')).status).toBe(303)
    expect((await measured('together.lamp-volts', '12.3 V')).status).toBe(303)
  })

  it('is the verdict of its page, which proposes nothing else to do', async () => {
    const { text } = await page()
    expect(text).toMatch(/<header class="verdict stop">/)
    expect(plainly(text)).toContain('Stopped at the bench. Read 14.9 V')
    expect(text).not.toContain('What to do next')
    const { id } = (await call().post('/api/jobs').send({ name: 'Label printer', check: matching })).body
    expect((await call().get(`/jobs/${id}`)).text).toMatch(/<header class="verdict clear">/)
  })

  it('says so first on its page, in an alert with what to do, and on its sheet in place of the verdict', async () => {
    const { text } = await page()
    expect(text.indexOf('role="alert"')).toBeLessThan(text.indexOf('<h1'))
    const words = plainly(text)
    expect(words.indexOf('Read 14.9 V, outside the expected 11.4 V to 12.6 V.')).toBeGreaterThan(0)
    expect(words).toContain('Switch off, unplug, let it discharge')
    const paper = plainly((await page('/checklist')).text)
    expect(paper).toContain('Stopped')
    expect(paper).toMatch(/At (\d+\.\d+), “Read the output.*Read so far: .*\1: 14\.9 V STOP\./)
    expect(paper).not.toContain('No conflict found')
  })

  it('can have its reading taken back, or corrected, which the log keeps', async () => {
    const [{ of }] = (await job()).stops
    expect((await form(`entries/${of}/withdraw`, { why: '', value: '' })).status).toBe(422)
    await form(`entries/${of}/withdraw`, { why: 'meter on the wrong range', value: '12.1 V' })
    const after = await job()
    expect(after.stops).toEqual([])
    expect(after.readings.map(({ value }: { value: number }) => value)).toEqual([14.9, 12.1])
    expect(after.readings[0].withdrawn.why).toBe('meter on the wrong range')
    expect(after.log.at(-1).text).toMatch(/14\.9\u00a0V.*meter on the wrong range/)
    expect(plainly((await page()).text)).toContain('Taken back: meter on the wrong range')
  })

  it('keeps in its log what it was stopped by, where that was written over', async () => {
    const [{ of }] = (await job()).stops
    await post('causes', { of, text: 'known of old' })
    await call()
      .patch(`/api/jobs/${id}`)
      .send({ version: (await job()).version, observations: { smells: 'burnt' } })
    await call()
      .patch(`/api/jobs/${id}`)
      .send({ version: (await job()).version, observations: { smells: 'dust' } })
    expect((await job()).log.at(-1).text).toContain('“burnt”')
  })
})

describe('the time of a reading', () => {
  const reading = { key: 'look.discharge', value: 3, unit: 'V' }

  it('is when it was typed; when it arrived is kept beside it', async () => {
    const { body } = await post('readings', { ...reading, typedAt: '2026-01-05T08:57:02.000Z' })
    expect(body).toMatchObject({ at: '2026-01-05T09:00:00.000Z', typedAt: '2026-01-05T08:57:02.000Z' })
    // a form says how long ago it was filled in, which needs no clock that is right
    await form('bench?step=look.discharge', { value: '4', unit: 'V', age: '59000' })
    expect((await job()).readings[1].typedAt).toBe('2026-01-05T08:59:01.000Z')
  })

  it.each(['2026-01-05T09:30:00.000Z', '2019-01-05T09:00:00.000Z', 'yesterday'])(
    'is refused where it cannot be: %s',
    async (typedAt) => {
      expect((await post('readings', { ...reading, typedAt })).status).toBe(422)
      expect((await job()).readings).toEqual([])
    },
  )
})
