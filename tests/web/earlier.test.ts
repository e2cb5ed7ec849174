import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import request from 'supertest'
import { afterEach, describe, expect, it } from 'vitest'
import { testApp } from './testApp.js'

/** Kept by version 0.1.0 before facts were rows and words were phrases: two jobs with readings, a part and a log, and a shelf. */
const earlier = join(import.meta.dirname, 'earlier')
const dataDir = mkdtempSync(join(tmpdir(), 'lampline-earlier-'))

afterEach(() => rmSync(dataDir, { recursive: true, force: true }))

interface KeptJob {
  id: string
  name: string
  readings: { value: number; finding: { outcome: string } }[]
  parts: { name: string }[]
  standing: { state: string }
}

async function holdsAll(app: Parameters<typeof request>[0]): Promise<void> {
  const { body } = await request(app).get('/api/jobs').expect(200)
  const jobs: KeptJob[] = body.jobs ?? body
  const named = (name: string): KeptJob => {
    const found = jobs.find((job) => job.name === name)
    if (!found) throw new Error(`no job ${name}`)
    return found
  }
  const stopped = named('Label printer from overseas')
  const recorder: KeptJob = (
    await request(app)
      .get(`/api/jobs/${named('Portable recorder 3').id}`)
      .expect(200)
  ).body
  expect(recorder.readings.map(({ value, finding }) => [value, finding.outcome])).toEqual([
    [230, 'clear'],
    [379.5, 'stop'],
  ])
  expect(recorder.parts.map(({ name }) => name)).toEqual(['Reservoir capacitor 470 µF 35 V'])
  expect(recorder.standing.state).toBe('out-of-limits')
  for (const { id } of [stopped, recorder]) {
    const page = await request(app).get(`/jobs/${id}`).expect(200)
    expect(page.text).toContain(id === stopped.id ? 'Label printer from overseas' : 'Belt gone sticky')
    await request(app).get(`/jobs/${id}/checklist`).expect(200)
    await request(app).get(`/api/jobs/${id}/checklist`).expect(200)
  }
  const shelf = await request(app).get('/shelf').expect(200)
  expect(shelf.text).toContain('Grey brick')
  expect(shelf.text).toContain('Data terminal')
}

describe('what an earlier version kept', () => {
  it('opens as it was: jobs with their readings, parts and log, and the shelf', async () => {
    cpSync(join(earlier, 'lampline.sqlite'), join(dataDir, 'lampline.sqlite'))
    const { app, store } = testApp(dataDir)
    await holdsAll(app)
    const { body } = await request(app).get('/api/jobs').expect(200)
    for (const { id } of body.jobs) {
      // kept before there were gates: those of its own check hold it, and its paper has each with limits
      const { plan, limits } = (await request(app).get(`/api/jobs/${id}`)).body
      const keys = limits.map(({ key }: { key: string }) => key)
      expect(plan.gates.length).toBeGreaterThan(4)
      expect(keys).toEqual(
        expect.arrayContaining([...plan.gates.map(({ key }: { key: string }) => key), 'gate.tested-by']),
      )
    }
    await store.close()
  })

  it('comes in from its file of everything, with what would change said first', async () => {
    const { app } = testApp()
    const text = readFileSync(join(earlier, 'export.json'), 'utf8')
    const bring = (address: string) => request(app).post(address).type('json').send(text)
    await bring('/api/import').expect(200)
    expect((await request(app).get('/api/jobs')).text).not.toContain('Portable recorder 3')
    await bring('/api/import?apply=1').expect(200)
    await holdsAll(app)
  })
})
