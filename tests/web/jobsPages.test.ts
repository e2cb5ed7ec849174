import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import request from 'supertest'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { Job } from '../../server/bench/jobs/job.js'
import { jobDraft } from '../../server/bench/jobs/jobDraft.js'
import { checkAddress } from '../../server/web/pages/check/checkAddress.js'
import { matching, open, reversed } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
let dataDir: string

const get = (path: string) => request(test.app).get(path)
const post = (path: string, fields: Record<string, string> = {}) =>
  request(test.app).post(path).type('form').send(fields)

/** A job as the page of a check makes it: from the check's address in one field. */
const made = async (check = matching): Promise<string> => {
  const answer = await post('/jobs', { check: checkAddress(check).slice(2) })
  expect(answer.status).toBe(303)
  return (answer.headers.location ?? '').replace('/jobs/', '')
}

/** What a person reads: without tags, with the usual entities. */
const read = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/&quot;/g, '"')
    .replace(/&gt;/g, '>')
    .replace(/&lt;/g, '<')
    .replace(/&amp;/g, '&')
    .replace(/\u00a0/g, ' ')
    .replace(/\s+/g, ' ')
/** What a hidden field of the page holds. */
const fieldOf = (html: string, name: string): string =>
  new RegExp(`name="${name}" value="([^"]+)"`).exec(html)?.[1] ?? ''
const seenOf = async (id: string): Promise<string> => fieldOf((await get(`/jobs/${id}`)).text, 'seen')
const words = async (path: string): Promise<string> => read((await get(path)).text)

beforeEach(() => {
  dataDir = mkdtempSync(join(tmpdir(), 'lampline-pages-'))
  test = testApp(dataDir)
})

afterEach(async () => {
  await test.store.close()
  rmSync(dataDir, { recursive: true })
})

describe('a job from a check', () => {
  it('is named after the plate and shows where it stands, with the check one can open again', async () => {
    const id = await made()
    const page = await words(`/jobs/${id}`)
    expect(page).toContain('Switching power supply')
    expect(page).toContain('Can begin')
    expect(page).toContain('No conflict found in what you entered')
    expect((await get(`/jobs/${id}`)).text.includes('href="/?country=DE&amp;socket=F&amp;supply=')).toBe(true)
  })

  it('can be made from the fields of a check, too', async () => {
    const fields = Object.fromEntries(new URLSearchParams(checkAddress(reversed).slice(2)))
    const answer = await post('/jobs', fields)
    expect(answer.status).toBe(303)
    expect(await words(answer.headers.location ?? '')).toContain('Must change first')
  })

  it('made from a first power-up keeps its lamps: in its plan, its checklist and the way back to them', async () => {
    const query = `${checkAddress(matching).slice(2)}&lamp1v=230&lamp1w=60&lamp1n=2&years=20&bulk=68&bulkv=400`
    const plan = await get(`/first-power?${query}`)
    expect(read(plan.text)).toContain('Keep as a job')
    const answer = await post('/jobs', { plan: fieldOf(plan.text, 'plan').replaceAll('&amp;', '&') })
    expect(answer.status).toBe(303)
    const { text } = await get(answer.headers.location ?? '')
    const back = /href="(\/first-power\?[^"]+)"/.exec(text)?.[1]?.replaceAll('&amp;', '&') ?? ''
    expect(Object.fromEntries(new URLSearchParams(back.split('?')[1]))).toMatchObject({
      lamp1v: '230',
      lamp1w: '60',
      lamp1n: '2',
      years: '20',
      bulk: '68',
      bulkv: '400',
    })
    expect(await words(`${answer.headers.location}/checklist`)).toContain('60 W 230 V')
  })

  it('is refused when nothing was entered or an entry cannot be used', async () => {
    expect((await post('/jobs')).status).toBe(422)
    const wrong = await post('/jobs', { check: 'mains=loud' })
    expect(wrong.status).toBe(422)
    expect(read(wrong.text)).toContain('Mains voltage must be a number')
  })

  it('goes out and comes in again unchanged', async () => {
    await made(open)
    const file = (await get('/api/export')).text
    const other = testApp()
    await request(other.app).post('/api/import?apply=1').type('json').send(file)
    expect((await request(other.app).get('/api/export')).text).toBe(file)
  })
})

describe('the list of jobs', () => {
  it('says how to begin while there is none', async () => {
    expect(await words('/jobs')).toContain('A job begins with a check')
  })

  it('says which can go on now, and what the others wait for and since when', async () => {
    await made()
    const waiting = await made()
    await post(`/jobs/${waiting}/parts`, { part: 'Drive belt', state: 'ordered', partnote: '' })
    await made(open)
    test.clock.now += 3 * 24 * 3600 * 1000
    const page = await words('/jobs')
    expect(page).toContain('3 jobs, of which 1 can go on now.')
    expect(page).toContain('since 2026-01-05 (3 days) Drive belt (ordered)')
    // said once, where the job says it already
    expect(page).not.toContain('Drive belt (ordered) (since')
    expect(page).toContain('(3 days)')
    expect(page.indexOf('Can begin')).toBeLessThan(page.indexOf('Find out first'))
    expect(page.indexOf('Find out first')).toBeLessThan(page.indexOf('Waits for parts'))
  })

  it('finds a job by the words of a part', async () => {
    const id = await made()
    await made(open)
    await post(`/jobs/${id}/parts`, { part: 'Drive belt', state: 'arrived' })
    const { text } = await get('/jobs?search=belt')
    expect(text.match(/href="\/jobs\/[\w-]{22}"/g)).toEqual([`href="/jobs/${id}"`])
  })

  it('writes what people typed as text, never as markup', async () => {
    const id = await made()
    await post(`/jobs/${id}`, { seen: await seenOf(id), name: '<img src=x onerror=alert(1)>' })
    for (const path of ['/jobs', `/jobs/${id}`]) {
      expect((await get(path)).text).not.toContain('<img src=x')
      expect(await words(path)).toContain('<img src=x onerror=alert(1)>')
    }
  })
})

describe('the page of a job', () => {
  it('takes a reading and shows at once what it means', async () => {
    const id = await made()
    const at = `/jobs/${id}/bench?step=before.mains-volts`
    const answer = await post(at, { value: '231,5 V' })
    expect(answer.status).toBe(303)
    const page = await words(`/jobs/${id}`)
    expect(page).toContain('Read 231.5 V, within the expected 207 V to 253 V.')
    await post(at, { value: '190', unit: 'V' })
    expect(await words(`/jobs/${id}`)).toContain('Stopped at the bench')
  })

  it('takes a reading of something that is no step', async () => {
    const id = await made()
    await post(`/jobs/${id}/readings`, { value: '41', what: 'Heat sink', unit: '°C' })
    expect(await words(`/jobs/${id}`)).toContain('Read 41 °C; this job’s plan has no step named “Heat sink”.')
  })

  it.each([
    ['readings', { what: 'noise', unit: 'V', value: '1,500' }, 'can be read two ways', 'value'],
    ['readings', { what: 'noise', unit: 'V', value: '' }, 'Enter the value read', 'value'],
    ['readings', { what: 'noise', unit: '', value: '1' }, 'Enter the unit', 'unit'],
    ['readings', { what: '', unit: 'V', value: '1' }, 'Enter what was read', 'what'],
    ['parts', { part: '', state: 'wanted' }, 'Enter the part.', 'part'],
    ['parts', { part: 'Belt', state: 'lost' }, 'State must be one of the choices listed', 'state'],
    ['log', { text: ' ' }, 'Enter what was done.', 'text'],
  ])('refuses in %s %o, keeps what was typed and says what is wrong', async (form, fields, message, name) => {
    const id = await made()
    const answer = await post(`/jobs/${id}/${form}`, fields as Record<string, string>)
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('<title>Error: ')
    expect(read(answer.text)).toContain(message)
    expect(answer.text).toContain(`href="#${name}"`)
    for (const value of Object.values(fields).filter((typed) => typed.trim() !== ''))
      expect(answer.text).toContain(value)
    expect((await get(`/api/jobs/${id}`)).body.version).toBe(1)
  })

  it('keeps the observations at first power', async () => {
    const id = await made()
    await post(`/jobs/${id}`, {
      seen: await seenOf(id),
      name: 'Recorder',
      lamps: 'lit',
      drawn: '350 mA',
      works: 'partly',
    })
    expect((await get(`/api/jobs/${id}`)).body).toMatchObject({
      name: 'Recorder',
      observations: { lamps: 'lit', drawnA: 0.35, works: 'partly', smells: null },
    })
  })

  it('tells the second of two tabs what changed and keeps what it typed', async () => {
    const id = await made()
    const before = await seenOf(id)
    await post(`/jobs/${id}`, { seen: before, name: 'Recorder', sounds: 'hum' })
    const second = await post(`/jobs/${id}`, { seen: before, name: 'Recorder', sounds: 'none', smells: 'dust' })
    expect(second.status).toBe(409)
    const page = read(second.text)
    expect(page).toContain('This was changed meanwhile')
    expect(page).toContain('Sounds hum none')
    expect(page).toContain('Smells (empty) dust')
    expect(second.text).toMatch(/name="sounds"[^>]*value="none"|value="none"[^>]*name="sounds"/)
    expect((await get(`/api/jobs/${id}`)).body.observations.sounds).toBe('hum')
    const seen = fieldOf(second.text, 'seen')
    await post(`/jobs/${id}`, { seen, name: 'Recorder', sounds: 'none', smells: 'dust' })
    expect((await get(`/api/jobs/${id}`)).body.observations).toMatchObject({ sounds: 'none', smells: 'dust' })
  })

  it('takes what was seen while readings come in from elsewhere, and takes it again without a conflict', async () => {
    const id = await made()
    const seen = await seenOf(id)
    await post(`/jobs/${id}/readings`, { what: 'noise', value: '2', unit: 'mV' })
    const save = () => post(`/jobs/${id}`, { seen, name: 'Recorder', sounds: 'hum' })
    expect((await save()).status).toBe(303)
    expect((await save()).status).toBe(303)
    expect((await get(`/api/jobs/${id}`)).body).toMatchObject({ version: 3, observations: { sounds: 'hum' } })
  })

  it('refuses what was seen when the form does not say what it changes', async () => {
    const id = await made()
    expect((await post(`/jobs/${id}`, { name: 'Recorder' })).status).toBe(409)
    expect((await get(`/api/jobs/${id}`)).body.version).toBe(1)
  })

  it('tells who changes a part that someone changed before', async () => {
    const id = await made()
    await post(`/jobs/${id}/parts`, { part: 'Belt', state: 'wanted' })
    const [part] = (await get(`/api/jobs/${id}`)).body.parts
    const save = (state: string) =>
      post(`/jobs/${id}/parts/${part.id}`, { version: `${part.version}`, state, note: 'flat' })
    expect((await save('ordered')).status).toBe(303)
    // the same form again, as after an answer that was lost
    expect((await save('ordered')).status).toBe(303)
    const second = await save('fitted')
    expect(second.status).toBe(409)
    expect(read(second.text)).toContain('State of Belt ordered fitted')
    expect((await get(`/api/jobs/${id}`)).body.parts[0].state).toBe('ordered')

    // what was typed stands in the form of that part, which can be saved again as it stands
    const form = second.text.slice(second.text.indexOf(`action="/jobs/${id}/parts/${part.id}#parts"`))
    expect(/<option value="(\w+)" selected/.exec(form)?.[1]).toBe('fitted')
    const version = /name="version" value="(\d+)"/.exec(form)?.[1] ?? ''
    expect((await post(`/jobs/${id}/parts/${part.id}`, { version, state: 'fitted', note: 'flat' })).status).toBe(303)
    expect((await get(`/api/jobs/${id}`)).body.parts[0].state).toBe('fitted')
  })

  it('keeps what was typed on a part whose note cannot be used, and tells it at that part', async () => {
    const id = await made()
    await post(`/jobs/${id}/parts`, { part: 'Belt', state: 'wanted' })
    const [part] = (await get(`/api/jobs/${id}`)).body.parts
    const note = 'x'.repeat(20_001)
    const answer = await post(`/jobs/${id}/parts/${part.id}`, { version: `${part.version}`, state: 'ordered', note })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain(`href="#note-${part.id}"`)
    expect(answer.text).toContain(`id="note-${part.id}-error"`)
    expect(answer.text).toContain(note)
  })

  it('writes a dated log', async () => {
    const id = await made()
    await post(`/jobs/${id}/log`, { text: 'Opened.\nTwo leaking cells out.' })
    expect(await words(`/jobs/${id}`)).toContain('2026-01-05 09:00 UTC Opened. Two leaking cells out.')
  })

  it('shows a photo of a plate beside the typed words of that plate', async () => {
    const id = await made()
    const bytes = await sharp({ create: { width: 30, height: 20, channels: 3, background: '#777' } })
      .jpeg()
      .toBuffer()
    const answer = await request(test.app)
      .post(`/jobs/${id}/photos`)
      .field('caption', 'supply plate')
      .attach('photo', bytes, 'a.jpg')
    expect(answer.status).toBe(303)
    const { text } = await get(`/jobs/${id}`)
    expect(text).toMatch(/<img src="\/photos\/[\w-]{22}\/small" alt="Photo: supply plate"/)
    expect(read(text)).toContain('Typed from this plate: SWITCHING POWER SUPPLY INPUT: 100-240V~')
    const empty = await request(test.app).post(`/jobs/${id}/photos`).field('caption', '')
    expect(empty.status).toBe(422)
    expect(read(empty.text)).toContain('Choose a photo.')
    const wrong = await request(test.app).post(`/jobs/${id}/photos`).attach('photo', Buffer.from('x'), 'a.jpg')
    expect(wrong.status).toBe(422)
    expect(read(wrong.text)).toContain('no whole JPEG, PNG or WebP picture')
  })

  it('keeps of a photo, and of a part, when it was sent off, not when it arrived', async () => {
    const id = await made()
    const bytes = await sharp({ create: { width: 30, height: 20, channels: 3, background: '#777' } })
      .jpeg()
      .toBuffer()
    // 09:00 by the clock of the server, ten minutes after it was taken
    const sent = { caption: '2.3 Case open', age: String(600_000) }
    await request(test.app).post(`/jobs/${id}/photos`).field(sent).attach('photo', bytes, 'a.jpg')
    await post(`/jobs/${id}/parts`, { part: 'Fuse-link', state: 'wanted', age: String(3 * 24 * 3600 * 1000) })
    const page = await words(`/jobs/${id}`)
    expect(page).toContain('2.3 Case open , 2026-01-05 08:50 UTC')
    expect(page).toContain('Wanted since 2026-01-02 (3 days)')
    const late = { caption: '', age: 'yesterday' }
    const refused = await request(test.app).post(`/jobs/${id}/photos`).field(late).attach('photo', bytes, 'b.jpg')
    expect(refused.status).toBe(422)
  })

  it('deletes with a way back', async () => {
    const id = await made()
    const gone = await post(`/jobs/${id}/delete`)
    expect(gone.headers.location).toBe(`/jobs?deleted=${id}`)
    expect((await get(`/jobs/${id}`)).status).toBe(404)
    expect((await get(gone.headers.location ?? '')).text).toContain(`action="/jobs/${id}/restore"`)
    expect((await post(`/jobs/${id}/restore`)).headers.location).toBe(`/jobs/${id}`)
    expect((await get(`/jobs/${id}`)).status).toBe(200)
  })

  it('shows what judging again changes, and keeps it when told to', async () => {
    const id = await made()
    await test.store.change<Job>('job', id, null, ({ body }) => {
      const [first, ...others] = body.assessment.findings
      const then = { ...first!, outcome: 'caution' as const, title: 'As it was judged then.' }
      return jobDraft({
        ...body,
        assessment: { ...body.assessment, dataVersion: 'older', findings: [then, ...others] },
      })
    })
    expect(await words(`/jobs/${id}`)).toContain('The tables or rules have changed since.')
    const page = await words(`/jobs/${id}/rejudge`)
    expect(page).toContain('1 finding differs.')
    expect(page).toContain('As it was judged then.')
    const late = await post(`/jobs/${id}/rejudge`, { version: '1' })
    expect(late.status).toBe(409)
    expect(read(late.text)).toContain('This job was changed meanwhile Nothing was kept yet.')
    expect(late.text).toContain('name="version" value="2"')
    expect((await post(`/jobs/${id}/rejudge`, { version: '2' })).status).toBe(303)
    expect(await words(`/jobs/${id}/rejudge`)).toContain('Nothing changed')
  })
})
