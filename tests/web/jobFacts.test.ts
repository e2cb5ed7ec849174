import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { checkAddress } from '../../server/web/pages/check/checkAddress.js'
import { matching, open, reversed } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
let id: string

const get = (path: string) => request(test.app).get(path)
const post = (path: string, fields: Record<string, string | string[]>) =>
  request(test.app).post(`/jobs/${id}/${path}`).type('form').send(fields)
const made = async (check = matching): Promise<string> =>
  (
    await request(test.app)
      .post('/jobs')
      .type('form')
      .send({ check: checkAddress(check).slice(2) })
  ).headers.location?.replace('/jobs/', '') ?? ''
const job = async () => (await get(`/api/jobs/${id}`)).body
const read = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/\u00a0/g, ' ')
    .replace(/\s+/g, ' ')
const words = async (path = ''): Promise<string> => read((await get(`/jobs/${id}${path}`)).text)
/** What a form of the page would send, untouched: each box with its value. */
const formOf = async (at: string): Promise<Record<string, string>> => {
  const { text } = await get(`/jobs/${id}/facts?at=${at}`)
  const form = text.slice(text.indexOf('<form id="facts"'))
  const value = (tag: string) => (/ value="([^"]*)"/.exec(tag)?.[1] ?? '').replace(/&#13;|&#10;/g, '\n')
  const name = (tag: string) => / name="([^"]+)"/.exec(tag)?.[1] ?? ''
  const inputs = [...form.matchAll(/<input[^>]*>/g)].map(([tag]) => tag)
  const texts = inputs.filter((tag) => !/type="(radio|checkbox)"/.test(tag) || / checked/.test(tag))
  const areas = [...form.matchAll(/<textarea[^>]* name="([^"]+)"[^>]*>([^<]*)</g)].map(([, of, held]) => [of, held])
  const lists = [...form.matchAll(/<select[^>]* name="([^"]+)"[^>]*>(.*?)<\/select>/gs)].map(([, of, held = '']) => [
    of,
    / value="([^"]*)"[^>]* selected/.exec(held)?.[1] ?? '',
  ])
  return Object.fromEntries([...texts.map((tag) => [name(tag), value(tag)]), ...areas, ...lists])
}

beforeEach(async () => {
  test = testApp()
  id = await made(open)
})

describe('the facts of a job', () => {
  it.each(['site', 'converter', 'cord', 'supply', 'device', 'plan'])(
    'open by section, as they are kept, and saved untouched change nothing: %s',
    async (at) => {
      const form = await formOf(at)
      expect(form.seen).toMatch(/^[\w-]{22}$/)
      expect((await post('facts', form)).status).toBe(303)
      expect((await job()).changes).toEqual([])
    },
  )

  it('are changed in the job, with what changed, when and what it does, and one way back', async () => {
    await post('facts', { ...(await formOf('device')), jackpol: 'centre-negative' })
    expect((await get('/api/jobs')).body.total).toBe(1)
    const after = await job()
    expect(after.check.device.jack.polarity).toBe('centre-negative')
    expect(after.assessment.verdict).toBe('do-not-connect')
    const page = await words()
    expect(page).toContain('Changed 2026-01-05 09:00 UTC Jack polarity: not entered → Centre negative')
    expect(page).toContain('Find out first → Do not connect')
    expect((await post(`changes/${after.changes[0].id}/undo`, {})).status).toBe(303)
    const back = await job()
    expect(back.check.device.jack.polarity).toBeUndefined()
    expect(back.assessment.verdict).toBe('find-out-first')
    expect(await words()).toContain('Taken back 2026-01-05 09:00 UTC Jack polarity: Centre negative → not entered')
  })

  it('are answered in place until nothing is left to find out', async () => {
    expect(await words()).toContain('1 fact to find out')
    const answer = { jackpol: 'centre-positive', once: 'aaaaaaaaaaaaaaaa' }
    expect((await post('facts', answer)).headers.location).toBe(`/jobs/${id}#next`)
    expect((await job()).standing).toMatchObject({ state: 'ready', waits: [] })
    await post('facts', answer)
    expect((await job()).changes).toHaveLength(1)
    expect(await words()).not.toContain('to find out')
  })

  it('that cannot be used are given back as typed, with what is wrong, and nothing is changed', async () => {
    const answer = await post('facts', { ...(await formOf('cord')), cordv: '1,500' })
    expect(answer.status).toBe(422)
    expect(answer.text).toContain('value="1,500"')
    expect(read(answer.text)).toMatch(/can be read two ways/)
    expect((await job()).changes).toEqual([])
  })

  it('that someone else changed meanwhile are shown beside what is typed; other boxes get in nobody’s way', async () => {
    const [first, second, other] = [await formOf('device'), await formOf('device'), await formOf('cord')]
    await post('facts', { ...first, jackpol: 'centre-positive' })
    expect((await post('facts', { ...other, corda: '5' })).status).toBe(303)
    const refused = await post('facts', { ...second, jackpol: 'centre-negative' })
    expect(refused.status).toBe(409)
    expect(read(refused.text)).toContain('Jack polarity centre-positive centre-negative')
    expect((await job()).check.device.jack.polarity).toBe('centre-positive')
    const seen = /name="seen" value="([^"]+)"/.exec(refused.text)?.[1] ?? ''
    expect((await post('facts', { ...second, jackpol: 'centre-negative', seen })).status).toBe(303)
  })

  it('name the job by the plates as they are, unless a person named it', async () => {
    await post('facts', { ...(await formOf('device')), machine: 'TAPE RECORDER 12V DC' })
    expect((await job()).name).toBe('Tape recorder')
    await request(test.app)
      .patch(`/api/jobs/${id}`)
      .send({ version: (await job()).version, name: 'Grey one' })
    await post('facts', { ...(await formOf('device')), machine: 'LABEL PRINTER 12V DC' })
    expect((await job()).name).toBe('Grey one')
  })

  it('show a stop first where the job is held, and never end it', async () => {
    id = await made(matching)
    await request(test.app)
      .post(`/api/jobs/${id}/readings`)
      .send({ key: 'supply-alone.off-load-1', value: 14.9, unit: 'V' })
    const answer = await post('facts', { ...(await formOf('supply')), plugpol: 'centre-negative' })
    expect(answer.headers.location).toBe(`/jobs/${id}#stopped`)
    expect((await job()).stops).toHaveLength(1)
    const [{ id: change }] = (await job()).changes
    await request(test.app).post(`/api/jobs/${id}/changes/${change}/undo`)
    expect((await job()).stops).toHaveLength(1)
    expect((await request(test.app).post(`/api/jobs/${id}/changes/${change}/undo`)).status).toBe(422)
  })

  it('changed as JSON are written down as well, and go out and come in again', async () => {
    await request(test.app)
      .patch(`/api/jobs/${id}`)
      .send({ version: (await job()).version, check: reversed })
    expect((await job()).changes[0].facts).toEqual([{ fact: 'jackpol', before: '', after: 'centre-negative' }])
    const file = (await get('/api/export')).text
    const other = testApp()
    expect((await request(other.app).post('/api/import?apply=1').type('json').send(file)).body.adds).toBe(1)
    expect((await request(other.app).get('/api/export')).text).toBe(file)
  })

  it('are also what its first power-up is planned with: lamps, years, capacitors', async () => {
    id = await made(matching)
    expect(read((await get(`/jobs/${id}/facts?at=plan`)).text)).toContain('Years without power')
    const lampHigh = async () =>
      (await job()).limits.find(({ key }: { key: string }) => key === 'supply-alone.lamp-volts')?.high
    const before = await lampHigh()
    await request(test.app).post(`/api/jobs/${id}/readings`).send({ key: 'before.mains-volts', value: 231, unit: 'V' })
    const typed = { years: '30', bulk: '100', bulkv: '400', lamp1v: '230', lamp1w: '60' }
    expect((await post('facts', { ...(await formOf('plan')), ...typed })).status).toBe(303)
    const after = await job()
    expect(after.plan.given).toMatchObject({
      yearsUnused: 30,
      bulkF: 1e-4,
      bulkRatedV: 400,
      lampsOnHand: [{ ratedV: 230, ratedW: 60, count: 1 }],
    })
    expect(after.readings).toHaveLength(1)
    // without a lamp half of the mains; 60 W leave less on it
    expect(before).toBe(115)
    expect(await lampHigh()).toBeLessThan(115)
    expect(after.plan.gates.some(({ key }: { key: string }) => key.startsWith('gate.reform-'))).toBe(true)
    expect(await words()).toContain('Years without power: not entered → 30')
    // a change of the check leaves it as it is, and it is taken back like any other
    await post('facts', { ...(await formOf('cord')), corda: '5' })
    expect((await job()).plan.given.yearsUnused).toBe(30)
    await post(`changes/${after.changes[0].id}/undo`, {})
    const back = await job()
    expect(back.plan.given.yearsUnused ?? null).toBeNull()
    expect(await lampHigh()).toBe(before)
    expect(back.log.at(-1).text).toMatch(/^Taken back: .*Years without power/)
    const wrong = await post('facts', { ...(await formOf('plan')), bulk: '1,500' })
    expect(wrong.status).toBe(422)
    expect(wrong.text).toContain('value="1,500"')
  })

  it('of the plan are changed as JSON too, and a new check names the job anew unless a person named it', async () => {
    const patch = async (body: object) =>
      request(test.app)
        .patch(`/api/jobs/${id}`)
        .send({ version: (await job()).version, ...body })
    expect((await patch({ given: { yearsUnused: 12 } })).body.changes).toMatchObject([
      { facts: [{ fact: 'years', before: '', after: '12' }] },
    ])
    const named = (label: string) => ({ ...matching, device: { ...matching.device, label } })
    expect((await patch({ check: named('TAPE RECORDER 12V DC') })).body).toMatchObject({
      name: 'Tape recorder',
      plan: { given: { yearsUnused: 12 } },
    })
    expect((await patch({ name: 'Grey one' })).body.name).toBe('Grey one')
    expect((await patch({ check: named('LABEL PRINTER 12V DC') })).body.name).toBe('Grey one')
    expect((await patch({ check: matching, name: 'Both' })).body.name).toBe('Both')
    expect((await patch({ given: { yearsUnused: -1 } })).status).toBe(422)
  })

  it('that made a reading a stop and are taken back leave it one, which the log says', async () => {
    id = await made(matching)
    await request(test.app).post(`/api/jobs/${id}/readings`).send({ key: 'before.mains-volts', value: 231, unit: 'V' })
    const stops = async () => (await job()).stops
    expect(await stops()).toEqual([])
    await request(test.app)
      .patch(`/api/jobs/${id}`)
      .send({
        version: (await job()).version,
        check: {
          ...matching,
          site: { country: 'US', socket: 'A' },
          cord: { ...matching.cord, plug: 'NEMA 1-15', ratedV: 125 },
        },
      })
    expect(await stops()).toHaveLength(1)
    await post(`changes/${(await job()).changes[0].id}/undo`, {})
    expect(await stops()).toHaveLength(1)
    expect((await job()).log.at(-1).text).toMatch(/^Taken back: .*stopped still.*231/)
  })

  it('stand at the head of its paper: the place and the plates as they are now', async () => {
    await post('facts', { ...(await formOf('device')), machine: 'TAPE RECORDER\n12V DC' })
    const paper = await words('/checklist')
    expect(paper).toContain(
      'Place Germany Machine’s plate TAPE RECORDER · 12V DC Supply’s plate SWITCHING POWER SUPPLY · INPUT',
    )
  })
})
