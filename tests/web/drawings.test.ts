import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { facts } from '../../server/facts/boxes.js'
import { inletFaces, plugFaces } from '../../server/tables/contactFaces.js'
import { inletPairs } from '../../server/tables/inletPairs.js'
import { plugTypes } from '../../server/tables/plugTypes.js'
import { drawings } from '../../server/web/drawings/index.js'
import { testApp } from './testApp.js'

const circles = (key: string) =>
  [...(drawings.get(key) ?? '').matchAll(/<circle cx="(-?[\d.]+)" cy="(-?[\d.]+)" r="([\d.]+)"/g)].map(
    ([, x, y, r]) => ({ x: Number(x), y: Number(y), r: Number(r) }),
  )

describe('drawings to choose from', () => {
  it('are of plugs and inlets that the tables know, drawn with an earth where the table says that there is one', () => {
    for (const { name, parts } of plugFaces)
      expect(
        parts.some(({ earth }) => earth),
        name,
      ).toBe(plugTypes.find((plug) => plug.name === name)?.earthed)
    for (const { name, parts } of inletFaces)
      expect(
        parts.some(({ earth }) => earth),
        name,
      ).toBe(inletPairs.find(({ inlet }) => inlet === name)?.earthed)
  })

  it('stand for every choice that people tell by its shape, as far as its shape is known', () => {
    const drawn = (key: string) =>
      facts
        .filter((one) => one.key === key)
        .flatMap(({ fact }) => ('choices' in fact ? (fact.choices ?? []) : []))
        .filter(({ drawing }) => drawing !== undefined && drawings.has(drawing)).length
    // letters H and K are described in words only
    expect(drawn('site.socket')).toBe(13)
    expect(drawn('cord.plug')).toBe(plugFaces.length)
    expect(drawn('supply.inlet')).toBe(inletFaces.length)
    expect(drawn('supply.plug.polarity')).toBe(2)
    expect(drawn('supply.protectionClass')).toBe(3)
  })

  it('show a plug as its pins point at one: the other way round than the socket', () => {
    // NEMA WD 6 has the wider blade, of the neutral, left of the other in a socket that one looks at
    const widths = (key: string) =>
      [...(drawings.get(key) ?? '').matchAll(/<rect x="(-?[\d.]+)"[^>]*height="([\d.]+)"/g)].map(
        ([, x, high]) => [Number(x), Number(high)] as const,
      )
    const tallest = (key: string) => widths(key).toSorted(([, one], [, other]) => other - one)[0]?.[0] ?? 0
    expect(tallest('socket-a')).toBeLessThan(0)
    expect(tallest('plug-nema-1-15p')).toBeGreaterThan(0)
  })

  it('keep the distances of the standards: 19 mm between the pins of CEE 7, 4.8 mm thick', () => {
    const pins = circles('plug-cee-7-4')
    expect(pins).toHaveLength(2)
    expect(Math.abs((pins[0]?.x ?? 0) - (pins[1]?.x ?? 0))).toBeCloseTo(19, 5)
    expect(pins[0]?.r).toBeCloseTo(2.4, 5)
  })

  it('are files of their own, and what is not there is not found', async () => {
    const { app } = testApp()
    for (const key of ['socket-f', 'centre-negative', 'connector-c13', 'dc-5.5-x-2.1']) {
      const { status, headers } = await request(app).get(`/drawings/${key}.svg`)
      expect(status, key).toBe(200)
      expect(headers['content-type']).toContain('image/svg+xml')
    }
    expect((await request(app).get('/drawings/socket-z.svg')).status).toBe(404)
  })
})
