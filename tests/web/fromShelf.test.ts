import request from 'supertest'
import { beforeAll, describe, expect, it } from 'vitest'
import { atHandDraft, atHandId, nothingAtHand } from '../../server/bench/atHand/atHand.js'
import type { Supply } from '../../server/chain/case/request.js'
import { checkAddress } from '../../server/web/pages/check/checkAddress.js'
import { matching } from './exampleChecks.js'
import { testApp } from './testApp.js'

const { supply, device } = matching
const supplies: [name: string, place: string, Supply][] = [
  ['nineteen volts', 'box 1', { ...supply, outputs: [{ kind: 'dc', voltageV: 19, currentA: 3 }] }],
  ['plug unseen', 'box 2', { ...supply, plug: null }],
  ['grey brick', 'box 3', supply],
  ['from overseas', 'box 4', { ...supply, input: { voltages: [{ min: 120, max: 120 }] } }],
]
const shelf = testApp()
const empty = testApp()

beforeAll(async () => {
  for (const [name, place, facts] of supplies)
    await request(shelf.app).post('/api/shelf/supplies').send({ name, place, supply: facts }).expect(201)
}, 60_000)

const site = { country: 'DE' }
const offered = async (body: object, { app } = shelf) => (await request(app).post('/api/shelf/offered').send(body)).body
const page = async (check: Parameters<typeof checkAddress>[0], { app } = shelf): Promise<string> => {
  const { text } = await request(app).get(checkAddress(check)).expect(200)
  const section = /<section class="from-shelf"[\s\S]*?<\/section>/.exec(text)?.[0] ?? ''
  return section.replace(/&quot;/g, '"').replace(/\u00a0/g, ' ')
}
const namesIn = (html: string) => supplies.map(([name]) => name).filter((name) => html.includes(`>${name}<`))

describe('a machine that has no supply, against what is kept on the shelf', () => {
  it('is offered what no stop stands against, best first, with where it lies', async () => {
    const { says, offered: found } = await offered({ site, device })
    expect(found).toMatchObject([
      { name: 'grey brick', place: 'box 3', verdict: 'no-conflict-found', against: null },
      { name: 'plug unseen', place: 'box 2', verdict: 'find-out-first', against: { outcome: 'unknown' } },
    ])
    expect(says).toMatch(/^2 of 4 supplies on the shelf, best first/)
  })

  it('is judged as the matches of a machine of the shelf are', async () => {
    const { body: kept } = await request(shelf.app).post('/api/shelf/devices').send({ name: 'recorder', device })
    const { body } = await request(shelf.app).get(`/api/shelf/devices/${kept.id}/matches?country=DE`)
    const going = body.matches.filter(({ verdict }: { verdict: string }) => verdict !== 'do-not-connect')
    const { offered: found } = await offered({ site, device })
    expect(found.map(({ place: _, ...match }: { place: string }) => match)).toEqual(going)
  })

  it('is offered the 120 V supply where the mains is 120 V', async () => {
    const { offered: found } = await offered({ site: { country: 'US' }, device })
    expect(found.map(({ name }: { name: string }) => name)).toContain('from overseas')
  })

  it('is offered nothing as without a conflict where the place is not known', async () => {
    const { offered: found } = await offered({ site: {}, device })
    expect(found.length).toBeGreaterThan(0)
    for (const { verdict } of found) expect(verdict).toBe('find-out-first')
  })

  it.each([
    ['the shelf is empty', { site, device }, empty, /^The shelf holds no supply\.$/],
    ['its voltage is not known', { site, device: {} }, shelf, /before it is known what the machine takes/],
    ['its plate names the mains', { site, device: { label: '230V~ 50Hz 40W' } }, shelf, /takes the mains/],
    [
      'what it takes is dangerous to touch',
      { site, device: { inputs: [{ kind: 'dc', voltageV: 150, currentA: 1 }] } },
      shelf,
      /dangerous to touch/,
    ],
    [
      'a stop stands against each',
      { site, device: { ...device, inputs: [{ kind: 'dc', voltageV: 5, currentA: 1 }] } },
      shelf,
      /^None of the 4 supplies on the shelf is offered/,
    ],
  ])('is offered nothing, in one line, where %s', async (_, body, where, words) => {
    const answer = await offered(body, where)
    expect(answer.offered).toEqual([])
    expect(answer.says).toMatch(words)
  })
})

describe('the page of a check without a supply', () => {
  it.each([['machine-only'], ['separate'], [undefined]] as const)(
    'lists them, each with its whole check: %s',
    async (arrangement) => {
      const html = await page({ arrangement, site, supply: {}, device })
      expect(namesIn(html)).toEqual(['plug unseen', 'grey brick'])
      expect(html.indexOf('>grey brick<')).toBeLessThan(html.indexOf('>plug unseen<'))
      const [, address = ''] = /href="(\/\?[^"]+)">grey brick</.exec(html) ?? []
      const { text } = await request(shelf.app).get(address.replaceAll('&amp;', '&')).expect(200)
      expect(text).not.toContain('class="from-shelf"')
      expect(text).toContain('SWITCHING POWER SUPPLY')
    },
  )

  it('says in one line that the shelf is empty', async () => {
    const html = await page({ arrangement: 'machine-only', site, supply: {}, device }, empty)
    expect(html).toContain('The shelf holds no supply.')
    expect(html).not.toContain('<li>')
  })

  it('judges at the place of what is at hand where the check names none, and says so', async () => {
    const there = testApp()
    await request(there.app).post('/api/shelf/supplies').send({ name: 'grey brick', supply }).expect(201)
    await there.store.add('at-hand', atHandDraft({ ...nothingAtHand, country: 'DE' }), atHandId)
    const check = { arrangement: 'machine-only', site: {}, supply: {}, device } as const
    const html = await page(check, there)
    expect(html).toContain('Judged for Germany')
    expect(html).toContain('No conflict found')
    // JSON never reads what is at hand
    expect((await offered({ site: {}, device }, there)).offered).toMatchObject([{ verdict: 'find-out-first' }])
  })

  it('leads to the list, and judges nothing of the shelf, while one types', async () => {
    const address = checkAddress({ arrangement: 'machine-only', site, supply: {}, device })
    const { text } = await request(shelf.app).get(address).set('HX-Request', 'true').expect(200)
    expect(text).toContain(
      `<a href="${address.replaceAll('&', '&amp;')}">Judge the supplies of the shelf for this machine</a>`,
    )
    expect(namesIn(text)).toEqual([])
  })

  it('lists none for a check that has a supply', async () => {
    expect(await page({ site, supply, device })).toBe('')
    expect(await page({ arrangement: 'supply-only', site, supply, device: {} })).toBe('')
  })
})
