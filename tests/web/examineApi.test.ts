import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { testApp } from './testApp.js'

const check = {
  arrangement: 'built-in',
  site: { country: 'DE' },
  supply: {},
  device: { mains: { technology: 'switch-mode' } },
}

const ask = (body: object) => request(testApp().app).post('/api/examine').send(body)

describe('GET /api/observations', () => {
  it('lists what can be seen with what it applies to', async () => {
    const { body } = await request(testApp().app).get('/api/observations')
    expect(body.length).toBeGreaterThan(40)
    expect(body).toContainEqual(
      expect.objectContaining({
        key: 'lamp-bright',
        words: 'The lamp stays at full brightness',
        appliesTo: expect.any(Array),
      }),
    )
  })
})

describe('POST /api/examine', () => {
  it('answers with causes, what to examine next and what never to do', async () => {
    const { body, status } = await ask({ check, observations: ['lamp-bright'] })
    expect(status).toBe(200)
    expect(body.causes[0]).toMatchObject({
      key: 'bridge-shorted',
      likelihood: 'common',
      confirmBy: { power: 'none', who: 'you' },
    })
    expect(body.next[0]).toMatchObject({ examination: 'bridge-test', power: 'none' })
    expect(body.never.join(' ')).toContain('more amperes')
  })

  it('tells from the volts across a lamp what stands behind it', async () => {
    const readings = [{ key: 'lamp', value: 215, unit: 'V' }]
    const { body } = await ask({ check, observations: [], readings, lamps: [{ ratedV: 230, ratedW: 60 }] })
    expect(body.seen[0]).toMatchObject({ key: 'lamp-bright' })
    // a 60 W lamp passes about 0.25 A there: 15 V / 0.25 A = 60 Ω
    expect(body.seen[0].because).toMatch(/takes it as (5\d|6\d)\sΩ would/)
  })

  it('tells no current of a lamp that melts on this mains', async () => {
    const readings = [{ key: 'lamp', value: 215, unit: 'V' }]
    const { body, status } = await ask({ check, observations: [], readings, lamps: [{ ratedV: 12, ratedW: 21 }] })
    expect(status).toBe(200)
    expect(body.seen[0]).toMatchObject({ key: 'lamp-bright' })
    expect(body.seen[0].because).not.toContain('passes')
  })

  it('proposes nothing with power where the check says stop', async () => {
    const wrong = {
      ...check,
      site: { country: 'US' },
      device: { label: '230V 50Hz', mains: { technology: 'transformer' } },
    }
    const { body } = await ask({ check: wrong, observations: ['output-low'] })
    expect(body.waitsFor.length).toBeGreaterThan(0)
    expect(body.next.filter(({ power }: { power: string }) => power !== 'none')).toEqual([])
  })

  it('says of a cause what was read when it was confirmed', async () => {
    const found = [{ cause: 'bridge-shorted', result: 'confirmed', value: 350, unit: 'mΩ' }]
    const { body } = await ask({ check, observations: ['lamp-bright'], found })
    expect(body.causes[0].key).toBe('bridge-shorted')
    expect(body.causes[0].because[0]).toMatch(/^examined: 350\smΩ$/)
  })

  it.each([
    [{ observations: [], found: [{ cause: 'bridge-shorted', result: 'confirmed', value: 0.3 }] }, 'go together'],
    [{ observations: ['lamp-purple'] }, 'observations'],
    [{ observations: [], found: [{ cause: 'gremlin', result: 'confirmed' }] }, 'found'],
    [{ observations: [], readings: [{ key: 'mood', value: 1, unit: 'V' }] }, 'readings'],
    [{ observations: [], readings: [{ key: 'lamp', value: 1, unit: 'parsec' }] }, 'readings'],
  ])('refuses %j and names the field', async (body, field) => {
    const answer = await ask({ check, ...body })
    expect(answer.status).toBe(422)
    expect(JSON.stringify(answer.body)).toContain(field)
  })
})
