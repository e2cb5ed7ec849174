import request from 'supertest'
import { afterAll, afterEach, beforeAll, expect, it, vi } from 'vitest'

const reader = '../../server/plate/readPlate.js'
const read: string[] = []
let testApp: typeof import('./testApp.js').testApp

// modules are shared between files: the app is loaded anew with a reader that counts, and forgotten afterwards
beforeAll(async () => {
  vi.resetModules()
  vi.doMock(reader, async (original) => {
    const real = await original<typeof import('../../server/plate/readPlate.js')>()
    return {
      ...real,
      readPlate: (text: string, of: 'supply' | 'device') => {
        read.push(of)
        return real.readPlate(text, of)
      },
    }
  })
  testApp = (await import('./testApp.js')).testApp
})

afterAll(() => {
  vi.doUnmock(reader)
  vi.resetModules()
})

afterEach(() => {
  read.length = 0
})

const check = {
  site: { country: 'DE' },
  supply: { label: 'INPUT 230V~ 50Hz 20W OUTPUT 12V DC 1A', technology: 'transformer' },
  device: { label: '12V DC 0.8A' },
}

it.each([
  ['/api/check', check],
  ['/api/first-power', { check }],
  ['/api/jobs', { name: 'Recorder', check }],
])('POST %s reads each plate once, whatever it works out from it', async (path, body) => {
  const { status } = await request(testApp().app).post(path).send(body)
  expect(status).toBeLessThan(300)
  expect(read.toSorted()).toEqual(['device', 'supply'])
})

it('a page that judges reads each plate once', async () => {
  const query = new URLSearchParams({ country: 'DE', supply: check.supply.label, machine: check.device.label })
  for (const path of ['/', '/first-power', '/checklist']) {
    read.length = 0
    expect((await request(testApp().app).get(`${path}?${query}`)).status).toBe(200)
    expect(read.toSorted()).toEqual(['device', 'supply'])
  }
}, 30_000)
