import request from 'supertest'
import { afterEach, expect, it, vi } from 'vitest'
import { testApp } from './testApp.js'

const read = vi.hoisted((): string[] => [])

vi.mock('../../server/plate/readPlate.js', async (original) => {
  const real = await original<typeof import('../../server/plate/readPlate.js')>()
  return {
    ...real,
    readPlate: (text: string, of: 'supply' | 'device') => {
      read.push(of)
      return real.readPlate(text, of)
    },
  }
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
