import request from 'supertest'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { Job } from '../../server/bench/jobs/job.js'
import { jobDraft } from '../../server/bench/jobs/jobDraft.js'
import { matching, open, reversed } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

let test: TestApp
const call = () => request(test.app)

/** A plan of one step, so that the limits are the test's own. */
const plan = {
  stages: [
    {
      name: 'supply-alone',
      title: 'Supply alone',
      leftOut: null,
      steps: [
        { key: 'alone.volts', text: 'Read the output.', unit: 'V', low: 11.4, high: 12.6, stopIf: 'it is outside' },
        { key: 'alone.amps', text: 'Read the current.', unit: 'A', low: 0, high: 0.5, stopIf: null, power: 'none' },
        { key: 'alone.look', text: 'Look.', unit: null, low: null, high: null, stopIf: null, power: 'none' },
      ],
    },
  ],
}

const made = async (check: object = matching) =>
  (await call().post('/api/jobs').send({ name: 'Tape recorder', check, plan })).body
const job = async (id: string) => (await call().get(`/api/jobs/${id}`)).body
const read = (id: string, key: string, value: unknown, unit: unknown) =>
  call().post(`/api/jobs/${id}/readings`).send({ key, value, unit })

beforeEach(() => {
  test = testApp()
})

describe('a new job', () => {
  it('keeps the check, its plan and the judgement with the version of the data that made it', async () => {
    const answer = await call().post('/api/jobs').send({ name: 'Tape recorder', check: matching, plan })
    expect(answer.status).toBe(201)
    const { body } = answer
    expect(answer.headers.location).toBe(`/api/jobs/${body.id}`)
    expect(body).toMatchObject({ name: 'Tape recorder', version: 1, readings: [], parts: [], log: [] })
    // what was sent stands beside the steps of the check's own plan
    expect(body.limits.filter(({ sent }: { sent?: true }) => sent).map(({ key }: { key: string }) => key)).toEqual([
      'alone.volts',
      'alone.amps',
      'alone.look',
    ])
    expect(body.check.supply).toMatchObject(matching.supply)
    const judged = (await call().post('/api/check').send(matching)).body
    expect(body.assessment.findings).toEqual(judged.findings)
    expect(body.assessment.verdict).toBe('no-conflict-found')
    expect(body.assessment.dataVersion).toMatch(/^[0-9a-f]{12}$/)
    expect(body.assessment.judgedAt).toBe('2026-01-05T09:00:00.000Z')
    expect(await job(body.id)).toEqual(body)
  })

  it('works a plan out where none is sent', async () => {
    const { body } = await call().post('/api/jobs').send({ name: 'A', check: matching })
    expect(body.plan.stages.map(({ name }: { name: string }) => name)).toEqual([
      'supply-alone',
      'dummy-load',
      'bench-supply',
      'together',
    ])
    expect(body.limits.some(({ low }: { low: number | null }) => low !== null)).toBe(true)
  })

  it.each([
    ['a field that is not known', { name: 'A', check: matching, stage: 1 }, ''],
    ['no check', { name: 'A' }, 'check'],
    ['a wrong voltage', { name: 'A', check: { ...matching, site: { voltageV: -230 } } }, 'check.site.voltageV'],
    [
      'a step without a key',
      { name: 'A', check: matching, plan: { stages: [{ steps: [{}] }] } },
      'plan.stages.0.steps.0.key',
    ],
  ])('is refused with %s, and the field is named', async (_what, body, path) => {
    const answer = await call().post('/api/jobs').send(body)
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields[0].path).toBe(path)
  })
})

describe('where a job stands', () => {
  it('can go on when nothing is in conflict and nothing is waited for', async () => {
    expect((await made()).standing).toMatchObject({ state: 'ready', waitsFor: [], canGoOn: true })
  })

  it('waits for what must change, and for what must be found out', async () => {
    const stopped = (await made(reversed)).standing
    expect(stopped).toMatchObject({ state: 'must-change', canGoOn: false, since: '2026-01-05T09:00:00.000Z' })
    expect(stopped.waitsFor[0]).toMatch(/polarity|centre/i)
    const asked = (await made(open)).standing
    expect(asked).toMatchObject({ state: 'find-out', canGoOn: false })
    expect(asked.waits[0].for).toBe('fact')
  })

  it('waits for a part from when it was wanted until it arrives', async () => {
    const { id } = await made()
    test.clock.now += 60_000
    const part = (await call().post(`/api/jobs/${id}/parts`).send({ name: 'Drive belt', state: 'wanted' })).body
    expect((await job(id)).standing).toMatchObject({
      state: 'waits-for-parts',
      canGoOn: false,
      since: '2026-01-05T09:01:00.000Z',
    })
    expect((await job(id)).standing.waitsFor).toEqual(['Drive belt (wanted)'])
    await call().patch(`/api/jobs/${id}/parts/${part.id}`).send({ state: 'ordered' })
    expect((await job(id)).standing.waitsFor).toEqual(['Drive belt (ordered)'])
    await call().patch(`/api/jobs/${id}/parts/${part.id}`).send({ state: 'arrived' })
    expect((await job(id)).standing).toMatchObject({ state: 'ready', waitsFor: [], canGoOn: true })
  })

  it('waits for the cause of a reading outside its limits: a later good one is not taken', async () => {
    const { id } = await made()
    await read(id, 'alone.volts', 15, 'V')
    expect((await job(id)).standing).toMatchObject({ state: 'out-of-limits', canGoOn: false })
    // a step that does not say it is without power is not powered again
    expect((await read(id, 'alone.volts', 12, 'V')).status).toBe(422)
    const stopped = await job(id)
    expect(stopped.standing).toMatchObject({ state: 'out-of-limits', canGoOn: false })
    const [stop] = stopped.stops
    expect(stop).toMatchObject({ key: 'alone.volts', where: 'Read the output', of: stopped.readings[0].id })
    const cause = { of: stop.of, text: 'A jumper stood for another output.' }
    expect(
      (
        await call()
          .post(`/api/jobs/${id}/causes`)
          .send({ ...cause, text: ' ' })
      ).status,
    ).toBe(422)
    expect((await call().post(`/api/jobs/${id}/causes`).send(cause)).status).toBe(201)
    const after = await job(id)
    expect(after).toMatchObject({ stops: [], standing: { state: 'under-way', canGoOn: true } })
    expect(after.log.at(-1).text).toContain('A jumper stood for another output.')
    expect((await call().post(`/api/jobs/${id}/causes`).send(cause)).status).toBe(422)
  })

  it('is finished when it was seen to work and every part is fitted', async () => {
    const { id } = await made()
    const part = (await call().post(`/api/jobs/${id}/parts`).send({ name: 'Belt', state: 'arrived' })).body
    const { version } = await job(id)
    await call()
      .patch(`/api/jobs/${id}`)
      .send({ version, observations: { works: 'yes' } })
    expect((await job(id)).standing).toMatchObject({ state: 'ready', canGoOn: true })
    await call().patch(`/api/jobs/${id}/parts/${part.id}`).send({ state: 'fitted' })
    expect((await job(id)).standing).toMatchObject({ state: 'finished', canGoOn: false, waitsFor: [] })
  })

  it('cannot be set by hand', async () => {
    const { id } = await made()
    const answer = await call()
      .patch(`/api/jobs/${id}`)
      .send({ version: 1, standing: { state: 'finished' } })
    expect(answer.status).toBe(422)
  })

  it('is told of all jobs in the list, with how many there are of each', async () => {
    await made()
    await made(reversed)
    const { body } = await call().get('/api/jobs')
    expect(body.total).toBe(2)
    expect(body.states).toMatchObject({ ready: 1, 'must-change': 1, finished: 0 })
    expect(body.jobs.map((row: { standing: { canGoOn: boolean } }) => row.standing.canGoOn).sort()).toEqual([
      false,
      true,
    ])
    expect((await call().get('/api/jobs?state=ready')).body.total).toBe(1)
    expect((await call().get('/api/jobs?state=asleep')).status).toBe(422)
  })
})

describe('a reading', () => {
  // limits of the plan above: 11.4 V to 12.6 V with a stop rule, 0 A to 0.5 A without one; what was sent never clears. Its own: below 34 V
  it.each([
    ['look.discharge', 12, 'V', 'clear'],
    ['look.discharge', 33.9, 'V', 'clear'],
    ['look.discharge', 34, 'V', 'stop'],
    ['alone.volts', 11.39, 'V', 'stop'],
    ['alone.volts', 12.61, 'V', 'stop'],
    ['alone.volts', -12, 'V', 'stop'],
    ['look.discharge', 12_000, 'mV', 'clear'],
    ['alone.amps', 350, 'mA', 'unknown'],
    ['alone.amps', 650, 'mA', 'caution'],
    ['alone.look', 3, 'V', 'unknown'],
    ['elsewhere', 3, 'V', 'unknown'],
  ])('%s of %d %s is answered with the finding %s', async (key, value, unit, outcome) => {
    const { id } = await made()
    const answer = await read(id, key, value, unit)
    expect(answer.status).toBe(201)
    expect(answer.body).toMatchObject({ key, value, unit, finding: { outcome } })
    expect((await job(id)).readings).toEqual([answer.body])
  })

  it('shows the limits and the number in its working', async () => {
    const { id } = await made()
    const { finding } = (await read(id, 'alone.volts', 15, 'V')).body
    expect(finding.title).toBe('Read 15\u00a0V, outside the expected 11.4\u00a0V to 12.6\u00a0V.')
    expect(finding.working.join('\n')).toContain('15\u00a0V > 12.6\u00a0V')
    expect(finding.action).toMatch(/Switch off/)
  })

  it.each([
    ['a unit that measures something else', 'alone.volts', 12, 'A', 'unit'],
    ['text for a number', 'alone.volts', '12', 'V', 'value'],
    ['no key', '', 12, 'V', 'key'],
    ['a number beyond all sense', 'alone.volts', 1e300, 'V', 'value'],
  ])('with %s is refused and not kept', async (_what, key, value, unit, path) => {
    const { id } = await made()
    const answer = await read(id, key, value, unit)
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields[0].path).toBe(path)
    expect((await job(id)).readings).toEqual([])
  })
})

describe('a change to a job', () => {
  it('keeps name and observations, and takes one observation away with null', async () => {
    const { id } = await made()
    const first = await call()
      .patch(`/api/jobs/${id}`)
      .send({ version: 1, name: 'Recorder', observations: { lamps: 'power lamp lit', drawnA: 0.8, works: 'partly' } })
    expect(first.status).toBe(200)
    const second = await call()
      .patch(`/api/jobs/${id}`)
      .send({ version: 2, observations: { lamps: null, smells: 'none' } })
    expect(second.body).toMatchObject({
      name: 'Recorder',
      version: 3,
      observations: { lamps: null, drawnA: 0.8, works: 'partly', smells: 'none' },
    })
  })

  it('of its check judges it again and keeps the judgement before', async () => {
    const { id, assessment } = await made(reversed)
    test.clock.now += 1000
    const { body } = await call().patch(`/api/jobs/${id}`).send({ version: 1, check: matching })
    expect(body.assessment.verdict).toBe('no-conflict-found')
    expect(body.standing.state).toBe('ready')
    expect(body.earlier).toEqual([assessment])
  })

  it('on an older version is refused with 409 and the job as it is', async () => {
    const { id } = await made()
    await call().post(`/api/jobs/${id}/log`).send({ text: 'Belt ordered by letter.' })
    const answer = await call().patch(`/api/jobs/${id}`).send({ version: 1, name: 'mine' })
    expect(answer.status).toBe(409)
    expect(answer.body.current).toEqual(await job(id))
    expect(answer.body.current.name).toBe('Tape recorder')
  })

  it('can be a dated line of the log', async () => {
    const { id } = await made()
    const answer = await call().post(`/api/jobs/${id}/log`).send({ text: 'Opened; two leaking cells taken out.' })
    expect(answer.status).toBe(201)
    expect(answer.body).toMatchObject({ text: 'Opened; two leaking cells taken out.', at: '2026-01-05T09:00:00.000Z' })
    expect((await job(id)).log).toEqual([answer.body])
    expect((await call().post(`/api/jobs/${id}/log`).send({ text: ' ' })).status).toBe(422)
  })

  it('of a part is refused only when that part was changed since', async () => {
    const { id } = await made()
    const part = (await call().post(`/api/jobs/${id}/parts`).send({ name: 'Belt', state: 'wanted', note: 'flat' })).body
    const at = `/api/jobs/${id}/parts/${part.id}`
    await call().post(`/api/jobs/${id}/log`).send({ text: 'something else' })
    const changed = await call().patch(at).send({ version: part.version, state: 'ordered' })
    expect(changed.status).toBe(200)
    expect(changed.body).toMatchObject({ id: part.id, name: 'Belt', state: 'ordered', note: 'flat' })
    const stale = await call().patch(at).send({ version: part.version, state: 'fitted' })
    expect(stale.status).toBe(409)
    expect(stale.body.current).toEqual(changed.body)
    expect((await call().patch(`/api/jobs/${id}/parts/none`).send({ state: 'fitted' })).status).toBe(404)
    expect((await call().patch(at).send({ state: 'lost' })).status).toBe(422)
  })

  it('can take a part away that is not needed after all, and the job waits no more', async () => {
    const { id } = await made()
    const part = (await call().post(`/api/jobs/${id}/parts`).send({ name: 'Belt', state: 'wanted' })).body
    expect((await call().delete(`/api/jobs/${id}/parts/${part.id}`)).status).toBe(204)
    expect(await job(id)).toMatchObject({ parts: [], standing: { canGoOn: true } })
    expect((await call().delete(`/api/jobs/${id}/parts/${part.id}`)).status).toBe(404)
  })

  it('by several at once loses nothing', async () => {
    const { id } = await made()
    await Promise.all(
      Array.from({ length: 10 }, (_, index) =>
        call()
          .post(`/api/jobs/${id}/log`)
          .send({ text: `${index}` }),
      ),
    )
    expect((await job(id)).log.map(({ text }: { text: string }) => text).sort()).toEqual([...'0123456789'])
  })
})

describe('judging a job again', () => {
  /** the job as an older Lampline left it: judged by other tables, with another outcome for the polarity */
  const aged = async () => {
    const { id } = await made()
    await test.store.change<Job>('job', id, null, ({ body }) => {
      const findings = body.assessment.findings.map((finding) =>
        finding.topic === 'polarity'
          ? { ...finding, outcome: 'caution' as const, title: 'As it was judged then.' }
          : finding,
      )
      return jobDraft({ ...body, assessment: { ...body.assessment, dataVersion: 'older', findings } })
    })
    return id
  }

  it('shows what changed without keeping it', async () => {
    const id = await aged()
    const { body } = await call().get(`/api/jobs/${id}/rejudge`)
    expect(body.before.dataVersion).toBe('older')
    expect(body.changes).toHaveLength(1)
    expect(body.changes[0]).toMatchObject({
      topic: 'polarity',
      direction: 'better',
      before: { outcome: 'caution' },
      after: { outcome: 'clear' },
    })
    expect((await job(id)).assessment.dataVersion).toBe('older')
  })

  it('keeps the new judgement and the old one when told to', async () => {
    const id = await aged()
    const { version } = await job(id)
    expect(
      (
        await call()
          .post(`/api/jobs/${id}/rejudge`)
          .send({ version: version - 1 })
      ).status,
    ).toBe(409)
    const { body } = await call().post(`/api/jobs/${id}/rejudge`).send({ version })
    expect(body.assessment.dataVersion).not.toBe('older')
    expect(body.earlier.at(-1).dataVersion).toBe('older')
    expect((await call().get(`/api/jobs/${id}/rejudge`)).body.changes).toEqual([])
  })
})

describe('a deleted job', () => {
  it('is gone with 204 and can be brought back whole', async () => {
    const { id } = await made()
    await read(id, 'alone.amps', 0.3, 'A')
    const before = await job(id)
    expect((await call().delete(`/api/jobs/${id}`)).status).toBe(204)
    expect((await call().get(`/api/jobs/${id}`)).status).toBe(404)
    expect((await call().get('/api/jobs')).body.total).toBe(0)
    const { body } = await call().post(`/api/jobs/${id}/restore`)
    expect(body).toEqual({ ...before, version: before.version + 2 })
  })
})

describe('a job on its way through a file', () => {
  it('comes back byte for byte with everything it holds', async () => {
    const { body } = await call()
      .post('/api/jobs')
      .send({ name: 'A', check: open, plan: { note: 'own field' } })
    const { id } = body
    await read(id, 'before.mains-volts', 231, 'V')
    await call().post(`/api/jobs/${id}/parts`).send({ name: 'Belt', state: 'wanted' })
    await call().post(`/api/jobs/${id}/log`).send({ text: 'Ω\u2028"' })
    const { version } = await job(id)
    await call()
      .patch(`/api/jobs/${id}`)
      .send({ version, check: matching, observations: { drawnA: 0.25 } })
    const file = (await call().get('/api/export')).text
    const whole = await job(id)
    test = testApp()
    expect((await call().post('/api/import?apply=1').type('json').send(file)).body).toMatchObject({ adds: 1 })
    expect((await call().get('/api/export')).text).toBe(file)
    expect(await job(id)).toEqual(whole)
  })

  it('is judged anew: what its file says is clear clears nothing, and an empty cause explains nothing', async () => {
    const { id } = await made()
    await read(id, 'look.discharge', 3, 'V')
    const file = JSON.parse((await call().get(`/api/jobs/${id}/export`)).text)
    const [job] = file.jobs
    job.readings[0].value = 325
    job.limits = []
    job.causes = [{ id: 'a'.repeat(16), at: job.readings[0].at, of: job.readings[0].id, text: 'x' }]
    job.check.device.jack.polarity = 'centre-negative'
    expect((await call().post('/api/import?apply=1').send(file)).status).toBe(200)
    const after = (await call().get(`/api/jobs/${id}`)).body
    expect(after.stops).toMatchObject([{ key: 'look.discharge' }])
    expect(after.assessment.verdict).toBe('do-not-connect')
  })

  it('takes no stop away with an older copy', async () => {
    const { id } = await made()
    const file = JSON.parse((await call().get(`/api/jobs/${id}/export`)).text)
    await read(id, 'look.discharge', 325, 'V')
    expect((await call().post('/api/import?apply=1').send(file)).body).toMatchObject({ changes: [{ older: true }] })
    expect((await job(id)).stops).toMatchObject([{ key: 'look.discharge' }])
  })

  it.each([
    ['a higher version', { version: 900 }],
    ['a later date', { version: 900, updatedAt: Date.UTC(2099, 0, 1) }],
  ])('takes no stop away with %s, and says first what stays', async (_what, stamp) => {
    const { id } = await made()
    const file = JSON.parse((await call().get(`/api/jobs/${id}/export`)).text)
    Object.assign(file.jobs[0], stamp)
    await read(id, 'look.discharge', 325, 'V')
    await call().post(`/api/jobs/${id}/log`).send({ text: 'Left it to the tester.' })
    const looked = await call().post('/api/import').send(file)
    expect(looked.body.changes[0]).toMatchObject({ older: false, stays: { entries: 2 } })
    expect(looked.body.changes[0].stays.stops[0]).toContain('325')
    await call().post('/api/import?apply=1').send(file)
    const after = await job(id)
    expect(after.stops).toMatchObject([{ key: 'look.discharge' }])
    expect(after.log.map(({ text }: { text: string }) => text)).toContain('Left it to the tester.')
    expect((await call().post('/api/import').send(file)).body).toMatchObject({ same: 1, changes: [] })
    // nor by way of a deletion
    await call().delete(`/api/jobs/${id}`)
    await call().post('/api/import?apply=1').send(file)
    expect((await job(id)).stops).toHaveLength(1)
  })

  it('is refused when a reading in it is no reading', async () => {
    const { id } = await made()
    await read(id, 'alone.amps', 0.3, 'A')
    const file = JSON.parse((await call().get(`/api/jobs/${id}/export`)).text)
    file.jobs[0].readings[0].finding.outcome = 'splendid'
    const answer = await call().post('/api/import?apply=1').send(file)
    expect(answer.status).toBe(422)
    expect(answer.body.error.fields[0].path).toBe('jobs.0.readings.0.finding.outcome')
  })
})
