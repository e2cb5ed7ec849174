import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { untilDay } from '../../server/web/parts/dates.js'
import { matching, open } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
const made = async (name: string, check = matching): Promise<string> =>
  (await request(test.app).post('/api/jobs').send({ name, check })).body.id
const form = (path: string, fields: Record<string, string>) => request(test.app).post(path).type('form').send(fields)
const read = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/\u00a0/g, ' ')
    .replace(/\s+/g, ' ')
const words = async (path: string): Promise<string> => read((await request(test.app).get(path)).text)

beforeEach(() => {
  // its clock stands at 2026-01-05
  test = testApp()
})

describe('a day against today', () => {
  // counted by hand on a calendar
  it.each([
    ['2026-01-05', 'today', false, true],
    ['2026-01-04', '1 day late', true, true],
    ['2025-12-30', '6 days late', true, true],
    ['2026-01-06', 'in 1 day', false, false],
    ['2026-03-01', 'in 55 days', false, false],
  ])('%s is %s', (day, text, late, due) => {
    expect(untilDay(day, Date.UTC(2026, 0, 5, 23, 59))).toEqual({ text, late, due })
  })
})

describe('the list of jobs', () => {
  it('begins with what waits on the reader: parts that should be here, what can go on, what is stopped', async () => {
    const late = await made('Printer')
    await form(`/jobs/${late}/parts`, { part: 'Belt', state: 'ordered', partexpected: '2026-01-03' })
    await form(`/jobs/${late}/parts`, { part: 'Lamp', state: 'ordered', partexpected: '2026-01-09' })
    const stopped = await made('Terminal')
    await request(test.app)
      .post(`/api/jobs/${stopped}/readings`)
      .send({ key: 'supply-alone.off-load-1', value: 14.9, unit: 'V' })
    const arrived = await made('Recorder')
    await form(`/jobs/${arrived}/parts`, { part: 'Drive wheel', state: 'arrived' })
    await made('Radio', open)
    const page = await words('/jobs')
    const at = [
      'Today',
      'Parts that should be here',
      'Belt: expected 2026-01-03, 2 days late',
      'Can begin',
      'Drive wheel arrived: fit it',
      'Stopped at the bench',
      'Find out first',
      'Waits for parts',
    ].map((part) => page.indexOf(part))
    expect(at.every((place, index) => place > (at[index - 1] ?? 0))).toBe(true)
    expect(page).not.toContain('Lamp: expected')
    expect(page).toContain('Lamp (ordered, expected 2026-01-09)')
    // from there one goes on at the machine
    expect((await request(test.app).get('/jobs')).text).toContain(`href="/jobs/${arrived}/bench"`)
  })

  it('forgets a part that came', async () => {
    const id = await made('Printer')
    await form(`/jobs/${id}/parts`, { part: 'Belt', state: 'ordered', partexpected: '2026-01-03' })
    const [part] = (await request(test.app).get(`/api/jobs/${id}`)).body.parts
    expect(part.expected).toBe('2026-01-03')
    expect(await words(`/jobs/${id}`)).toContain('expected 2026-01-03, 2 days late')
    await form(`/jobs/${id}/parts/${part.id}`, { version: String(part.version), state: 'arrived' })
    expect(await words('/jobs')).not.toContain('should be here')
    const [came] = (await request(test.app).get(`/api/jobs/${id}`)).body.parts
    expect(came.expected).toBe('2026-01-03')
  })

  it('refuses a day that is none, in the form and as JSON', async () => {
    const id = await made('Printer')
    const refused = await form(`/jobs/${id}/parts`, { part: 'Belt', state: 'ordered', partexpected: '2026-02-30' })
    expect(refused.status).toBe(422)
    expect(read(refused.text)).toContain('must be a day such as 2026-01-05')
    const part = { name: 'Belt', state: 'ordered', expected: 'soon' }
    expect((await request(test.app).post(`/api/jobs/${id}/parts`).send(part)).status).toBe(422)
  })
})

describe('the name of a job', () => {
  it.each<[string, Record<string, string>, string]>([
    ['the machine', { machine: 'LABEL PRINTER DC 9V', supply: 'BLUE BRICK 9V' }, 'Label printer'],
    [
      'the supply, where only its plate names a thing',
      { machine: 'DC 9V 300mA', supply: 'BLUE BRICK 9V' },
      'Blue brick',
    ],
    ['what is printed first', { machine: 'DC IN 9V 300mA' }, 'Machine “DC IN 9V 300mA”'],
    ['what is printed on its supply', { supply: '120V 60Hz\n9V' }, 'Machine with the supply “120V 60Hz”'],
    ['a supply alone', { have: 'supply-only', supply: '120V 60Hz' }, 'Supply “120V 60Hz”'],
    ['nothing', {}, 'Machine without a plate'],
  ])('comes from %s', async (_what, fields, name) => {
    const answer = await form('/jobs', { country: 'DE', ...fields })
    const id = answer.headers.location?.replace('/jobs/', '')
    expect((await request(test.app).get(`/api/jobs/${id}`)).body.name).toBe(name)
  })
})
