import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { examples } from '../../server/web/parts/examples.js'
import { testApp } from './testApp.js'

const workshop = {
  country: 'GB',
  socket: 'G',
  lamps: [{ ratedV: 230, ratedW: 60, count: 2 }],
  resistors: [{ ohm: 10, ratedW: 25, count: 4 }],
  benchSupply: { voltageV: 30, currentA: 3, outputs: 2 },
  transformers: [{ kind: 'isolating', ratedVA: 500 }],
  meters: [{ category: 'CAT III', ratedV: 600 }],
  insulationTesterV: 500,
  residualCurrentA: 0.03,
}

const nothing = {
  country: null,
  socket: null,
  lamps: [],
  resistors: [],
  benchSupply: null,
  transformers: [],
  meters: [],
  insulationTesterV: null,
  residualCurrentA: null,
}

describe('what is at hand', () => {
  it('is nothing until it is said, and then what was said, also after it is said anew', async () => {
    const { app } = testApp()
    expect((await request(app).get('/api/at-hand')).body).toEqual(nothing)
    expect((await request(app).put('/api/at-hand').send(workshop)).body).toEqual(workshop)
    expect((await request(app).get('/api/at-hand')).body).toEqual(workshop)
    await request(app).put('/api/at-hand').send({ country: 'SE' })
    expect((await request(app).get('/api/at-hand')).body).toEqual({ ...nothing, country: 'SE' })
  })

  it('offers the rating of its residual-current device where the facts of the place stand open, and never enters it by itself', async () => {
    const { app } = testApp()
    await request(app).put('/api/at-hand').send(workshop)
    const box = async (address: string) =>
      /<input[^>]*name="rcd"[^>]*>/.exec((await request(app).get(address)).text)?.[0]
    expect(await box('/?country=GB&supply=12V&at=site')).toContain('value="0.03"')
    expect(await box('/?country=GB&supply=12V&rcd=0.1&at=site')).toContain('value="0.1"')
    expect(await box('/?country=GB&supply=12V')).toBeUndefined()
  })

  it('refuses a lamp without its voltage and a field that it does not know, naming both', async () => {
    const { app } = testApp()
    const { status, body } = await request(app)
      .put('/api/at-hand')
      .send({ lamps: [{ ratedW: 60, count: 1 }], kettle: true })
    expect(status).toBe(422)
    expect(body.error.fields.map(({ path }: { path: string }) => path)).toContain('lamps.0.ratedV')
    expect(JSON.stringify(body)).toContain('kettle')
  })

  it('goes through the form and back into its boxes', async () => {
    const { app } = testApp()
    const sent = {
      country: 'United Kingdom',
      socket: 'G',
      lamp1v: '230',
      lamp1w: '60',
      lamp1n: '2',
      load1ohm: '10',
      load1w: '25',
      load1n: '4',
      benchv: '30',
      bencha: '3',
      benchn: '2',
      transformer1kind: 'isolating',
      transformer1va: '500',
      meter1cat: 'CAT III',
      meter1v: '600',
      tester: '500',
      residual: '30',
    }
    expect((await request(app).post('/at-hand').type('form').send(sent)).status).toBe(303)
    expect((await request(app).get('/api/at-hand')).body).toEqual(workshop)
    const { text } = await request(app).get('/at-hand')
    expect(text).toMatch(/name="residual" value="30"/)
    expect(text).toMatch(/<input type="radio" name="socket" value="G" checked/)
  })

  it('keeps what was typed where a part of a row is missing, and keeps nothing of it', async () => {
    const { app } = testApp()
    const { status, text } = await request(app).post('/at-hand').type('form').send({ lamp1w: '60', meter1v: '600' })
    expect(status).toBe(422)
    expect(text).toMatch(/name="lamp1w" value="60"/)
    expect(text).toMatch(/filament lamps 1, rated voltage/i)
    expect(text).toMatch(/Choose for “Meters 1, category”/)
    expect((await request(app).get('/api/at-hand')).body).toEqual(nothing)
  })

  it('is planned with where the address names no lamps, and not where it does', async () => {
    const { app } = testApp()
    await request(app)
      .put('/api/at-hand')
      .send({ lamps: [{ ratedV: 230, ratedW: 60, count: 2 }] })
    const check = 'country=DE&supply=INPUT+230V~+50Hz+0.2A+OUTPUT+12V+DC+2A&machine=12V+DC+1A'
    const without = await request(app).get(`/first-power?${check}`)
    expect(without.text).toMatch(/name="lamp1w" value="60"/)
    const other = await request(app).get(`/first-power?${check}&lamp1v=230&lamp1w=40`)
    expect(other.text).toMatch(/name="lamp1w" value="40"/)
    const empty = await request(app).get('/first-power')
    expect(empty.text).toMatch(/name="lamp1w" value=""/)
  }, 20_000)

  it('is planned with where a check is kept as a job or printed, without the first power-up between', async () => {
    const { app } = testApp()
    await request(app)
      .put('/api/at-hand')
      .send({ lamps: [{ ratedV: 230, ratedW: 60, count: 2 }] })
    const check = 'country=DE&supply=INPUT+230V~+50Hz+0.2A+OUTPUT+12V+DC+2A&machine=12V+DC+1A'
    const [match] = examples
    const printed = await request(app).get(`/checklist${match!.address.slice(1)}`)
    expect(printed.text).toMatch(/behind[^.]* 60.W/)
    const kept = await request(app).post('/jobs').type('form').send({ check })
    const job = await request(app).get(`/api${kept.headers.location}`)
    expect(job.body.plan.given.lampsOnHand).toEqual([{ ratedV: 230, ratedW: 60, count: 2 }])
    const other = await request(app)
      .post('/jobs')
      .type('form')
      .send({ plan: `${check}&lamp1v=230&lamp1w=40` })
    expect((await request(app).get(`/api${other.headers.location}`)).body.plan.given.lampsOnHand).toEqual([
      { ratedV: 230, ratedW: 40, count: 1 },
    ])
  }, 20_000)

  // 20 kinds of up to 100 lamps: every list at hand holds as many
  it('shows and plans with every lamp that it takes, none left out and no number cut', async () => {
    const { app } = testApp()
    const lamps = Array.from({ length: 20 }, (_, index) => ({ ratedV: 230, ratedW: 10 + index, count: 100 - index }))
    expect((await request(app).put('/api/at-hand').send({ lamps })).status).toBe(200)
    const check = 'country=DE&supply=INPUT+230V~+50Hz+0.2A+OUTPUT+12V+DC+2A&machine=12V+DC+1A'
    for (const address of ['/at-hand', `/first-power?${check}`]) {
      const { text } = await request(app).get(address)
      for (const [index, { ratedW, count }] of lamps.entries()) {
        expect(text).toContain(`name="lamp${index + 1}w" value="${ratedW}"`)
        expect(text).toContain(`name="lamp${index + 1}n" value="${count}"`)
      }
    }
    const kept = await request(app).post('/jobs').type('form').send({ check })
    expect((await request(app).get(`/api${kept.headers.location}`)).body.plan.given.lampsOnHand).toEqual(lamps)
    const more = await request(app)
      .put('/api/at-hand')
      .send({ lamps: [...lamps, lamps[0]] })
    expect(more.status).toBe(422)
  }, 20_000)

  it('offers its country where a check is begun', async () => {
    const { app } = testApp()
    await request(app).put('/api/at-hand').send({ country: 'SE' })
    expect((await request(app).get('/')).text).toMatch(/name="country" value="(?:SE|Sweden)"/)
  }, 20_000)

  it('tells the shelf where things are used, unless the address does', async () => {
    const { app } = testApp()
    await request(app).put('/api/at-hand').send({ country: 'SE' })
    await request(app)
      .post('/api/shelf/supplies')
      .send({ name: 'Brick', supply: { label: '12V DC 2A' } })
    await request(app)
      .post('/api/shelf/devices')
      .send({ name: 'Printer', device: { label: '12V DC 1A' } })
    expect((await request(app).get('/shelf')).text).toMatch(/<option value="SE" selected/)
    expect((await request(app).get('/shelf?country=DE')).text).not.toMatch(/<option value="SE" selected/)
  }, 20_000)
})
