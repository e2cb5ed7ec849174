import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { testApp } from './testApp.js'

const check = 'country=DE&have=built-in&owntype=switch-mode'
const plain = (html: string): string => html.replaceAll('\u00a0', ' ')

describe('the page of what to examine', () => {
  it('asks what was seen, with every observation, where nothing was said', async () => {
    const { text, status } = await request(testApp().app).get('/examine')
    expect(status).toBe(200)
    expect(text).toContain('The lamp stays at full brightness')
    expect(text).not.toContain('id="next"')
  })

  it('puts several ticks into one address', async () => {
    const { status, headers } = await request(testApp().app).get(
      `/examine?${check}&seen=&seen=lamp-bright&seen=bang-smoke`,
    )
    expect(status).toBe(303)
    expect(decodeURIComponent(headers.location ?? '')).toContain('seen=lamp-bright,bang-smoke')
  })

  it('shows one examination on top, with a link for each finding', async () => {
    const { text } = await request(testApp().app).get(`/examine?${check}&seen=lamp-bright`)
    expect(plain(text)).toContain('diode test on the mains rectifier bridge')
    expect(text).toContain('seen=lamp-bright&amp;yes=bridge-shorted')
    expect(text).toContain('seen=lamp-bright&amp;no=bridge-shorted')
    expect(plain(text)).toContain('√2 · 230 V = 325 V')
  })

  it('asks who made a test that is for a qualified person, and lifts the hold only by a name', async () => {
    // of the causes of a trip warm, all need insulation tests or the like
    const address = `/examine?${check}&seen=trips-switched-on`
    const { text } = await request(testApp().app).get(address)
    expect(text).toMatch(/<form method="get"[^>]*>(?:<input type="hidden"[^>]*>)*<label class="tester">/)
    const named = await request(testApp().app).get(`${address}&no=y-leaky&by=An+electrician`)
    expect(named.text).toMatch(/<input type="text" name="by" value="An electrician"/)
    expect(named.text).toMatch(/href="[^"]*no=y-leaky[^"]*by=An\+electrician/)
  })

  it('adds a reading to the address, and says beside the box what cannot be read', async () => {
    const good = await request(testApp().app).get(`/examine?${check}&seen=lamp-half&what=lamp:V&value=215`)
    expect(good.status).toBe(303)
    expect(decodeURIComponent(good.headers.location ?? '')).toContain('read=lamp:215:V')
    const bad = await request(testApp().app).get(`/examine?${check}&seen=lamp-half&what=lamp:V&value=much`)
    expect(bad.status).toBe(422)
    expect(bad.text).toContain('id="value-error"')
  })

  it.each([
    ['4k7', 'read=input:4700:Ω'],
    ['0.35 kΩ', 'read=input:350:Ω'],
    ['OL', 'read=input:OL:Ω'],
  ])('reads the meter as every page does: %s', async (typed, address) => {
    const { status, headers } = await request(testApp().app).get(
      `/examine?${check}&seen=current-none&what=${encodeURIComponent('input:Ω')}&value=${encodeURIComponent(typed)}`,
    )
    expect(status).toBe(303)
    expect(decodeURIComponent(headers.location ?? '')).toContain(address)
    expect((await request(testApp().app).get(headers.location ?? '')).status).toBe(200)
  })

  it('asks of which unit a bare number of ohms is', async () => {
    const { status, text } = await request(testApp().app).get(
      `/examine?${check}&seen=current-none&what=${encodeURIComponent('input:Ω')}&value=5`,
    )
    expect(status).toBe(422)
    expect(text).toContain('of which unit')
  })

  it('goes on in a job with all that was seen, read and found', async () => {
    const { app } = testApp()
    const { text } = await request(app).get(
      `/examine?${check}&seen=bang-smoke&no=bridge-shorted&yes=x-cracked&read=lamp:215:V`,
    )
    const form = /<form class="no-paper" method="post" action="\/jobs">(.*?)<\/form>/.exec(text)?.[1] ?? ''
    const sent = [...form.matchAll(/name="([^"]*)" value="([^"]*)"/g)].map(([, name = '', value = '']) => [
      name,
      value.replaceAll('&amp;', '&'),
    ])
    const kept = await request(app).post('/jobs').type('form').send(Object.fromEntries(sent))
    expect(kept.status).toBe(303)
    expect(kept.headers.location).toMatch(/^\/jobs\/[\w-]+\/examine$/)
    const { body } = await request(app).get(`/api${kept.headers.location?.replace('/examine', '')}`)
    expect(body.examined).toMatchObject({
      seen: ['bang-smoke'],
      readings: [{ key: 'lamp', value: 215, unit: 'V' }],
      found: [
        { cause: 'bridge-shorted', result: 'excluded' },
        { cause: 'x-cracked', result: 'confirmed' },
      ],
    })
    expect(body.parts).toHaveLength(1)
    expect(body.log.map(({ text }: { text: string }) => plain(text))).toEqual([
      expect.stringMatching(/^Seen: /),
      'Examined: Across the lamp: 215 V.',
      expect.stringMatching(/^Examined, excluded: /),
      expect.stringMatching(/^Examined, confirmed: /),
    ])
    // the same form sent again is the same job
    const again = await request(app).post('/jobs').type('form').send(Object.fromEntries(sent))
    expect(again.headers.location).toBe(kept.headers.location)
  })

  it('names the part with its rating, once its cause is confirmed', async () => {
    const { text } = await request(testApp().app).get(`/examine?${check}&seen=bang-smoke&yes=x-cracked`)
    expect(plain(text)).toContain('class X2, for 230 V AC or more')
    expect(text).toContain('id="parts"')
  })

  it('says what of an address is not known', async () => {
    const { status, text } = await request(testApp().app).get('/examine?seen=sparkles')
    expect(status).toBe(422)
    expect(text).toContain('sparkles')
  })
})

/** Known well enough to be put under power. */
const knownCheck = {
  arrangement: 'built-in',
  site: { country: 'DE' },
  supply: { isolated: true },
  device: {
    mains: {
      technology: 'switch-mode',
      protectionClass: 'II',
      inlet: 'C8',
      input: { voltages: [{ min: 220, max: 240 }], frequenciesHz: [50, 60], currentA: 0.1 },
    },
  },
  cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, plugFitted: 'moulded' },
}

/** Across the lamp, at the machine, all the same, though the gates are open. */
const measured = (app: ReturnType<typeof testApp>['app'], job: string, lampV: number) =>
  request(app)
    .post(`${job}/bench?step=inside-whole.lamp-volts`)
    .type('form')
    .send({ once: crypto.randomUUID(), value: String(lampV), unit: 'V', despite: 'yes' })

describe('examining in a job', () => {
  const begun = async () => {
    const { app } = testApp()
    const plan = await request(app)
      .post('/api/first-power')
      .send({ check: knownCheck, lampsOnHand: [{ ratedV: 230, ratedW: 60, count: 1 }] })
    const { body } = await request(app).post('/api/jobs').send({
      name: 'Label printer',
      check: knownCheck,
      plan: plan.body,
    })
    const send = (fields: Record<string, string>) =>
      request(app)
        .post(`/jobs/${body.id}/examine`)
        .type('form')
        .send({ once: crypto.randomUUID(), ...fields })
    const job = async () => (await request(app).get(`/api/jobs/${body.id}`)).body
    return { app, id: body.id as string, send, job }
  }

  it('keeps what was seen and found, in the log too', async () => {
    const { send, job } = await begun()
    expect((await send({ seen: 'lamp-bright' })).status).toBe(303)
    await send({ no: 'bridge-shorted' })
    const { examined, log } = await job()
    expect(examined).toMatchObject({
      seen: ['lamp-bright'],
      found: [{ cause: 'bridge-shorted', result: 'excluded', at: expect.any(String) }],
    })
    expect(log.map(({ text }: { text: string }) => text)).toEqual([
      'Seen: The lamp stays at full brightness.',
      'Examined, excluded: a mains rectifier diode is shorted.',
    ])
  })

  it('puts a part that was found bad on the list once, and leaves it there when the result is taken back', async () => {
    const { send, job } = await begun()
    await send({ seen: 'bang-smoke' })
    await send({ yes: 'x-cracked' })
    await send({ back: 'x-cracked' })
    await send({ yes: 'x-cracked' })
    const { parts, examined } = await job()
    expect(parts.map(({ name, state }: { name: string; state: string }) => [name, state])).toEqual([
      ['X capacitor', 'wanted'],
    ])
    expect(plain(parts[0].note)).toContain('class X2, for 230 V AC or more')
    expect(examined.found).toHaveLength(1)
  })

  it('does once what is sent twice', async () => {
    const { send, job } = await begun()
    const once = { once: '0123456789abcdef', seen: 'tingle' }
    await send(once)
    await send({ seen: 'lamp-dark' })
    await send(once)
    expect((await job()).examined.seen).toEqual(['lamp-dark'])
  })

  it('takes the readings at its steps as seen', async () => {
    const { app, id } = await begun()
    await measured(app, `/jobs/${id}`, 222)
    const { text } = await request(app).get(`/jobs/${id}/examine`)
    expect(plain(text)).toContain('222 V across the lamp of 230 V')
    expect(plain(text)).toContain('diode test on the mains rectifier bridge')
  })

  it('tells the current of the one lamp of its plan', async () => {
    const { app, id } = await begun()
    await measured(app, `/jobs/${id}`, 215)
    const { text } = await request(app).get(`/jobs/${id}/examine`)
    const [passes] = /the lamp passes [^;<]*/.exec(plain(text)) ?? ['no current told']
    expect(passes).toMatch(/^the lamp passes 2[3-7]\d mA/)
  })

  it('goes out and in again with what was examined', async () => {
    const { app, send, id } = await begun()
    await send({ seen: 'lamp-bright' })
    await send({ yes: 'chopper-shorted' })
    const { body: file } = await request(app).get('/api/export')
    const other = testApp().app
    const answer = await request(other).post('/api/import?apply=1').send(file)
    expect(answer.status, JSON.stringify(answer.body)).toBe(200)
    const { body } = await request(other).get(`/api/jobs/${id}`)
    expect(body.examined.found).toMatchObject([{ cause: 'chopper-shorted', result: 'confirmed' }])
  })

  it('holds the job from a confirmed cause until it is mended', async () => {
    const { app, send, job, id } = await begun()
    const read = () => measured(app, `/jobs/${id}`, 20)
    await send({ seen: 'lamp-bright' })
    await send({ yes: 'bridge-shorted' })
    const held = await job()
    expect(held.stops).toMatchObject([{ title: 'Confirmed: a mains rectifier diode is shorted.' }])
    expect(held.stops[0].action).toContain('inrush thermistor')
    expect(held.standing.canGoOn).toBe(false)
    expect((await read()).status).toBe(422)
    await send({ done: 'bridge-shorted' })
    expect((await job()).stops).toEqual([])
    expect((await read()).status).toBe(303)
  })

  it('proposes nothing with power in a job that is held', async () => {
    const { app, id, send } = await begun()
    await send({ seen: 'output-low' })
    await measured(app, `/jobs/${id}`, 222)
    const { text } = await request(app).get(`/jobs/${id}/examine`)
    expect(text).not.toContain('Under mains power.')
    expect(text).not.toContain('On low voltage.')
  })

  it('does not hold it for what is no fault', async () => {
    const { send, job } = await begun()
    await send({ seen: 'lamp-flash' })
    await send({ yes: 'normal-charge' })
    expect((await job()).stops).toEqual([])
  })

  it('refuses a cause that nobody listed', async () => {
    const { send } = await begun()
    expect((await send({ yes: 'gremlin' })).status).toBe(422)
  })
})
