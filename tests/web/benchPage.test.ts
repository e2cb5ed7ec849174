import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { judgeScript } from '../../server/web/pages/bench/judgeScript.js'
import { madeOnce } from '../../server/web/parts/madeOnce.js'
import { matching } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
let id: string
const call = () => request(test.app)
const job = async () => (await call().get(`/api/jobs/${id}`)).body
const bench = (step?: string) => call().get(`/jobs/${id}/bench${step ? `?step=${step}` : ''}`)
const send = (step: string, fields: Record<string, string>) =>
  call().post(`/jobs/${id}/bench?step=${step}`).type('form').send(fields)
const unescaped = (words = ''): string =>
  words
    .replace(/&quot;/g, '"')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;/g, '&')
/** The step in sight: its article, without those that are hidden. */
const inSight = (html: string): string =>
  (html.match(/<article class="step"[^>]*>.*?<\/article>/gs) ?? [])
    .filter((part) => !/^<article[^>]*\shidden/.test(part))
    .join('\n')
const plainly = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/\u00a0/g, ' ')
    .replace(/\s+/g, ' ')

beforeEach(async () => {
  test = testApp()
  id = (await call().post('/api/jobs').send({ name: 'Tape recorder', check: matching })).body.id
})

describe('one step a screen', () => {
  it('begins at the first line of the paper, with its number, and goes on as lines are done', async () => {
    const first = inSight((await bench()).text)
    expect(plainly(first)).toContain('1.1 of')
    expect(first).toContain('value="as-expected"')
    const answer = await send('before.unplugged', { as: 'as-expected' })
    expect(answer.headers.location).toMatch(new RegExp(`^/jobs/${id}/bench\\?step=before\\.`))
    expect(plainly(inSight((await call().get(answer.headers.location ?? '')).text))).toContain('1.2 of')
    // who began further down goes on from there
    const later = await send('look.case', { as: 'as-expected' })
    expect(later.headers.location).toContain('step=look.discharge')
    expect((await job()).ticks).toMatchObject([{ key: 'before.unplugged', as: 'as-expected' }, { key: 'look.case' }])
  })

  it('opens no step behind a stop, and again once its cause is written', async () => {
    await send('look.discharge', { value: '325', unit: 'V' })
    expect(inSight((await bench()).text)).toBe('')
    const { stops } = await job()
    await call()
      .post(`/jobs/${id}/causes`)
      .type('form')
      .send({ of: stops[0].of, text: 'Bleeder open; let down through a resistor.' })
    expect(plainly(inSight((await bench()).text))).toContain('1.1 of')
  })

  it('has the lines of the paper, all of them and in its order, with the same numbers and words', async () => {
    const { text } = await bench()
    const { stages } = (await call().get(`/api/jobs/${id}/checklist`)).body
    const paper = stages.flatMap(({ lines }: { lines: { key: string; number: string; text: string }[] }) => lines)
    const phone = [...text.matchAll(/<article class="step" id="step-([^"]+)".*?<\/article>/gs)].map(([step, key]) => ({
      key,
      number: step.match(/<strong>([\d.]+)<\/strong>/)?.[1],
      head: unescaped(step.match(/<h2 class="do">(.*?)<\/h2>/s)?.[1]),
      rest: unescaped(step.match(/<p class="rest">(.*?)<\/p>/s)?.[1]),
    }))
    expect(phone.map(({ key, number }) => [key, number])).toEqual(
      paper.map(({ key, number }: (typeof paper)[number]) => [key, number]),
    )
    for (const [at, { head, rest }] of phone.entries()) {
      const begins = head.replace(/…$/, '')
      const words = paper[at]?.text ?? ''
      expect(words.startsWith(begins)).toBe(true)
      expect(words.slice(begins.length).replace(/^[,:;]?\s*/, '')).toBe(rest)
      expect(head.split(/\s+/).length, head).toBeLessThanOrEqual(20)
    }
    expect(paper.length).toBeGreaterThan(40)
    const sheet = (await call().get(`/jobs/${id}/checklist`)).text
    expect([...sheet.matchAll(/<span class="line-number">([\d.]+)</g)].map(([, number]) => number)).toEqual(
      paper.map(({ number }: { number: string }) => number),
    )
  })

  it('names expected and stop rule apart, and the units as what is pressed', async () => {
    const step = inSight((await bench('supply-alone.off-load-1')).text)
    expect(plainly(step)).toMatch(/Expected 11\.4 V to 12\.6 V Stop if it lies outside/)
    expect(step).toMatch(/<button type="submit" name="unit" value="mV">mV<\/button>/)
  })

  it.each([
    ['look.discharge', { value: '900', unit: 'mV' }, 0.9],
    ['look.discharge', { value: '12,5 V' }, 12.5],
    ['gate.live-neutral', { value: '220k' }, 220_000],
    ['gate.live-neutral', { value: 'OL', unit: 'MΩ' }, null],
  ])('takes at %s what was typed and pressed: %o', async (key, fields, value) => {
    expect((await send(key, fields as unknown as Record<string, string>)).status).toBe(303)
    expect((await job()).readings).toMatchObject([{ key, value, finding: { outcome: 'clear' } }])
  })

  it('asks for the unit of a bare number of ohms, and keeps what was typed', async () => {
    const answer = await send('gate.live-neutral', { value: '220' })
    expect(answer.status).toBe(422)
    expect(plainly(inSight(answer.text))).toMatch(/of which unit\?/)
    expect(inSight(answer.text)).toContain('value="220"')
    const typed = inSight(answer.text).match(/<input type="text" id="([^"]+)" name="value"/)?.[1] ?? 'no box'
    expect(inSight(answer.text)).toContain(`<label for="${typed}">`)
    expect((await job()).readings).toEqual([])
  })

  it('shows a stop in place of the steps, until its cause is written there', async () => {
    await send('look.discharge', { value: '325', unit: 'V' })
    const { text } = await bench()
    expect(text).toContain('data-stopped="yes"')
    expect(plainly(text)).toContain('Touch nothing inside')
    const refused = await send('supply-alone.lamp-volts', { value: '1', unit: 'V' })
    expect(refused.status).toBe(422)
    expect(plainly(refused.text)).toContain('This job is stopped')
    // by its step, as a phone names it that has not heard the id of the reading
    const cause = { of: 'look.discharge', text: 'Bleeder open; let down through 10 kΩ.', back: 'bench' }
    const written = await call().post(`/jobs/${id}/causes`).type('form').send(cause)
    expect(written.headers.location).toBe(`/jobs/${id}/bench`)
    expect((await job()).stops).toEqual([])
  })

  it('knows no step that the paper does not have', async () => {
    expect((await send('none', { value: '1' })).status).toBe(422)
  })
})

describe('the page of the steps', () => {
  // at the machine it is loaded after each reading
  it('stays under 100 kB with eighty steps done, as each holds only what is its own', async () => {
    const fresh = (await bench()).text
    const keys = [...fresh.matchAll(/<article [^>]*data-key="([^"]+)"/g)].map(([, key]) => key ?? '')
    expect(keys.length).toBeGreaterThan(70)
    let done = 0
    for (const key of keys.slice(0, 8)) done += Number((await send(key, { as: 'as-expected' })).status === 303)
    expect(done).toBeGreaterThan(4)
    const ofOneDone = ((await bench()).text.length - fresh.length) / done
    expect(fresh.length + ofOneDone * keys.length).toBeLessThan(100_000)
  })

  it('keeps the words of a plan that was sent out of its script', async () => {
    const step = { key: 'own.step', unit: 'V', low: 0, high: 5, power: 'none', stopIf: '</script><b>it ends</b>' }
    const plan = { stages: [{ leftOut: null, steps: [step] }] }
    id = (await call().post('/api/jobs').send({ name: 'Radio', check: matching, plan })).body.id
    const { text } = await bench()
    const limits = JSON.parse(text.match(/<script id="limits"[^>]*>(.*?)<\/script>/s)?.[1] ?? '')
    expect(Object.keys(limits).length).toBeGreaterThan(40)
    expect(text).not.toContain('<b>it ends')
  })
})

describe('what the phone judges by', () => {
  it('is put together again where that failed', async () => {
    const tries = [() => Promise.reject(new Error('out of memory')), () => Promise.resolve('made')]
    const script = madeOnce(() => tries.shift()?.() ?? Promise.reject(new Error('made twice')))
    await expect(script()).rejects.toThrow('out of memory')
    expect(await script()).toBe('made')
    expect(await script()).toBe('made')
  })

  it('is put together for browsers from the functions of the server, and needs nothing of node', async () => {
    const script = await judgeScript()
    // a third of it are the words of harm, so that a phone without the network knows them too
    expect(script.length).toBeLessThan(60_000)
    const judge = new Function(`${script}; return judge`)()
    const limits = {
      key: 'look.discharge',
      text: '',
      unit: 'V',
      low: -34,
      high: 34,
      strict: true,
      stopIf: 'it does not fall',
    }
    const { value } = judge.readMeter('325', 'V', null)
    expect(judge.readingFinding({ key: limits.key, value, unit: 'V' }, limits, null).outcome).toBe('stop')
    expect(judge.readMeter('4k7', 'Ω', null)).toEqual({ value: 4700 })
  })

  it('is served without a passphrase, as style and scripts are', async () => {
    const answer = await call().get('/static/judge.js')
    expect(answer.status).toBe(200)
    expect(answer.headers['content-type']).toMatch(/javascript/)
    expect((await call().get('/static/offline.js')).headers['service-worker-allowed']).toBe('/jobs/')
  })
})
