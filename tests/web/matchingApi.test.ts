import request from 'supertest'
import { beforeAll, describe, expect, it, vi } from 'vitest'
import type { Device, Supply } from '../../server/chain/case/request.js'
import { matching, reversed } from './exampleChecks.js'
import { type TestApp, testApp } from './testApp.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

const { supply } = matching
const supplies: [string, Supply][] = [
  ['right', supply],
  [
    'too weak',
    {
      ...supply,
      label: undefined,
      outputs: [{ kind: 'dc', voltageV: 12, currentA: 0.5 }],
      input: { voltages: [{ min: 100, max: 240 }], frequenciesHz: [50, 60] },
      protectionClass: 'II',
    },
  ],
  ['for 120 V', { ...supply, input: { voltages: [{ min: 120, max: 120 }] } }],
  ['19 V', { ...supply, outputs: [{ kind: 'dc', voltageV: 19, currentA: 3 }] }],
  ['plug not known', { ...supply, plug: null }],
]
const devices: [string, Device][] = [
  ['recorder', matching.device],
  ['reversed recorder', reversed.device],
]

let test: TestApp
const ids = new Map<string, string>()
const get = async (path: string) => (await request(test.app).get(path)).body

beforeAll(async () => {
  test = testApp()
  for (const [name, facts] of supplies)
    ids.set(name, (await request(test.app).post('/api/shelf/supplies').send({ name, supply: facts })).body.id)
  for (const [name, facts] of devices)
    ids.set(name, (await request(test.app).post('/api/shelf/devices').send({ name, device: facts })).body.id)
})

describe('matching over the shelf', () => {
  it('puts the supply without a conflict first, and gives the one reason against each other', async () => {
    const { matches } = await get(`/api/shelf/devices/${ids.get('recorder')}/matches?country=DE`)
    expect(matches[0]).toEqual({ id: ids.get('right'), name: 'right', verdict: 'no-conflict-found', against: null })
    expect(matches[1]).toMatchObject({
      name: 'plug not known',
      verdict: 'find-out-first',
      against: { outcome: 'unknown' },
    })
    const reasons = Object.fromEntries(
      matches
        .slice(2)
        .map(({ name, verdict, against }: { name: string; verdict: string; against: { topic: string } }) => [
          name,
          `${verdict} ${against.topic}`,
        ]),
    )
    expect(reasons).toEqual({
      'too weak': 'do-not-connect output-current',
      'for 120 V': 'do-not-connect mains-voltage',
      '19 V': 'do-not-connect output-voltage',
    })
  })

  it('gives for each pair the finding that a check of that pair gives', async () => {
    const { matches } = await get(`/api/shelf/devices/${ids.get('reversed recorder')}/matches?country=DE`)
    expect(matches).toHaveLength(supplies.length)
    for (const { name, against } of matches) {
      const facts = supplies.find(([other]) => other === name)?.[1]
      const check = { site: { country: 'DE' }, supply: facts, device: reversed.device }
      const { body } = await request(test.app).post('/api/check').send(check)
      // the cord is not the shelf's: where it is open, the check lets nothing be put under power
      if (!against) continue
      const { action: _action, actions: _actions, ...said } = against
      expect(body.findings).toContainEqual(expect.objectContaining(said))
    }
  })

  it('lists for a supply its machines', async () => {
    const { matches } = await get(`/api/shelf/supplies/${ids.get('right')}/matches?country=DE`)
    expect(matches.map(({ name, verdict }: { name: string; verdict: string }) => [name, verdict])).toEqual([
      ['recorder', 'no-conflict-found'],
      ['reversed recorder', 'do-not-connect'],
    ])
    expect(matches[1].against.topic).toBe('polarity')
  })

  it('finds no match without conflict where the site is not known, and still names a stop', async () => {
    const { matches } = await get(`/api/shelf/devices/${ids.get('recorder')}/matches`)
    expect(matches[0]).toMatchObject({ verdict: 'find-out-first', against: { topic: 'mains-voltage' } })
    expect(matches.some(({ verdict }: { verdict: string }) => verdict === 'no-conflict-found')).toBe(false)
    expect(matches.at(-1).verdict).toBe('do-not-connect')
  })

  it('answers the whole matrix with the same outcomes', { timeout: 60_000 }, async () => {
    const words: Record<string, string> = {
      stop: 'do-not-connect',
      unknown: 'find-out-first',
      caution: 'take-care',
      clear: 'no-conflict-found',
    }
    const { cells, devices: across, supplies: down, total } = await get('/api/shelf/matrix?country=DE')
    expect(total).toEqual({ supplies: supplies.length, devices: devices.length })
    expect([down.length, across.length]).toEqual([supplies.length, devices.length])
    for (const [column, { id }] of across.entries()) {
      const { matches } = await get(`/api/shelf/devices/${id}/matches?country=DE`)
      for (const [row, edge] of down.entries())
        expect(words[cells[row][column]]).toBe(matches.find((match: { id: string }) => match.id === edge.id).verdict)
    }
  })

  it('answers the shopping specification, and 404 and 422 with words', async () => {
    const { wanted } = await get(`/api/shelf/devices/${ids.get('recorder')}/wanted?country=DE`)
    expect(wanted).toMatchObject([{ kind: 'dc', voltageV: 12, leastA: 1.2 }])
    for (const path of ['devices/none/matches', 'supplies/none/matches', 'devices/none/wanted'])
      expect((await request(test.app).get(`/api/shelf/${path}`)).status).toBe(404)
    expect((await request(test.app).get(`/api/shelf/matrix?country=Germany`)).status).toBe(422)
  })
})
