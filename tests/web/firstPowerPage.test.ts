import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { firstPowerQuery, readFirstPowerForm } from '../../server/web/pages/firstPower/form.js'
import { firstPowerView } from '../../server/web/pages/firstPower/view.js'
import { examples } from '../../server/web/parts/examples.js'
import { testApp } from './testApp.js'

const { app } = testApp()

/** With plain spaces and entities read, as the tests are typed. */
const flat = (html: string): string =>
  html
    .replaceAll('\u00a0', ' ')
    .replace(/&#(\d+);/g, (_, code) => String.fromCharCode(Number(code)))
    .replaceAll('&quot;', '"')

const page = async (query: Record<string, string>, htmx = false) => {
  const asked = request(app).get(`/first-power?${new URLSearchParams(query)}`)
  const answer = await (htmx ? asked.set('HX-Request', 'true') : asked)
  return { status: answer.status, location: answer.headers.location as string | undefined, html: flat(answer.text) }
}

const matching = {
  country: 'DE',
  socket: 'F',
  supply: 'SWITCHING POWER SUPPLY INPUT: 100-240V~ 50/60Hz 0.8A OUTPUT: 12V DC 2.0A',
  type: 'switch-mode',
  regulated: 'yes',
  class: 'II',
  inlet: 'C8',
  plugpol: 'centre-positive',
  machine: 'TAPE RECORDER 12V DC 1.2A',
  jackpol: 'centre-positive',
  cordplug: 'CEE 7/16',
  cordend: 'C7',
  cordv: '250',
  corda: '2.5',
}
const lamps = { lamp1v: '230', lamp1w: '60', lamp1n: '2' }
const capacitor = { years: '20', bulk: '47', bulkv: '450' }

describe('the page of the first power-up', () => {
  it('opens on its own, with a form and no plan', async () => {
    const { status, html } = await page({})
    expect(status).toBe(200)
    expect(html).toContain('<form')
    expect(html).not.toContain('id="result"')
  })

  it('asks what there is, and keeps what was answered', async () => {
    expect((await page({})).html).toMatch(/<select[^>]*name="have"/)
    expect((await page({ ...matching, have: 'supply-only' })).html).toMatch(/<option value="supply-only" selected/)
  })

  it('plans all four stages from the address of a check, with lamps and a capacitor added', async () => {
    const { status, html } = await page({ ...matching, ...lamps, ...capacitor })
    expect(status).toBe(200)
    for (const title of [
      '3. The supply alone',
      // as on paper, where two stages come before: what is looked at unplugged, and the gates
      '4. The supply into a dummy load',
      '5. The machine alone',
      '6. Supply and machine together',
    ])
      expect(html).toContain(title)
    expect(html).not.toContain('Left out as things stand')
    // by head: 12 V / (0.1 × 2 A) = 60 Ω, next E12 value up 68 Ω
    expect(html).toContain('68 Ω')
    // worked example of 47 µF 450 V: five steps behind 100 kΩ, 634.5 µA accepted by 0.03 CV
    expect(html).toContain('634.5 µA')
    expect(html).toContain('100 kΩ')
  })

  it('draws circuit, load line, switch-on and reforming, each with a text alternative and its figures as a table', async () => {
    const { html } = await page({ ...matching, ...lamps, ...capacitor })
    for (const id of ['circuit-alone', 'load-line-alone', 'transient-alone', 'load-line-together', 'reforming']) {
      const drawing = new RegExp(`<svg [^>]*aria-labelledby="${id}-title ${id}-desc"`)
      expect(html).toMatch(drawing)
      expect(html).toMatch(new RegExp(`<desc id="${id}-desc">[^<]{40,}`))
    }
    expect(html.match(/The figures of this drawing/g)?.length).toBe(html.match(/<figure/g)?.length)
    // both meetings of a constant-power load with the lamp are named
    expect(html).toContain('operating point')
    expect(html).toContain('unstable point')
  })

  it('draws the circuit of a machine with its supply inside for the conductors that its source has', async () => {
    const inside = {
      ...{ have: 'built-in', country: 'DE', socket: 'F', machine: '230V~ 50Hz 40W FUSE T315mAL250V' },
      ...{ owntype: 'transformer', ownmotor: 'none', owninlet: 'C8', ownclass: 'II', ownfuse: 'T315mAL250V' },
      ...{
        cordplug: 'CEE 7/16',
        cordend: 'C7',
        cordv: '250',
        corda: '2.5',
        cordearth: 'no',
        cordplugfitted: 'moulded',
      },
    }
    const onWall = await page({ ...inside, ...lamps })
    expect(onWall.html).toMatch(/<desc id="circuit-inside-desc">From the mains the line conductor/)
    const onTwo = await page({ ...inside, ...lamps, source: 'two-live' })
    expect(onTwo.html).toMatch(/<desc id="circuit-inside-desc">From two live conductors each conductor/)
  })

  it('puts each warning before the step it concerns', async () => {
    const { html } = await page({ ...matching, ...lamps })
    const at = (text: string): number => html.indexOf(text)
    expect(at('The lamp does not isolate: everything')).toBeGreaterThan(0)
    expect(at('The lamp does not isolate: everything')).toBeLessThan(at('Plug in, switch on, hands off'))
    expect(at('earth led through the lamp')).toBeLessThan(at('Have the lamp circuit ready'))
    expect(at('A lamp is no converter')).toBeLessThan(at('Read the input voltage on the plate once more'))
  })

  it('leaves the mains stages out for a supply of another voltage, says what must change, and plans the machine', async () => {
    const { html } = await page({
      ...matching,
      ...lamps,
      supply: 'INPUT: 120V~ 60Hz 20VA OUTPUT: 12V DC 1A',
      type: 'transformer',
    })
    expect(html.match(/Left out as things stand\./g)?.length).toBe(3)
    expect(html).toContain('Set 12 V, limit 1.2 A')
    expect(html).not.toContain('Plug in, switch on')
  })

  it('asks for lamps that were not entered and gives no lamp volts', async () => {
    const { html } = await page(matching)
    expect(html).toContain('Still missing')
    expect(html).toContain('Rated voltage and wattage of the lamps at hand')
    expect(html).toContain('Lamp to look for')
    expect(html).not.toContain('id="load-line-alone')
  })

  it('holds readings of earth and insulation against a scheme, and says for whom such tests are', async () => {
    const { html } = await page({ ...matching, scheme: 'en-2020', insulation: '1.5' })
    expect(html).toContain('Insulation 1.5 MΩ is below the 2 MΩ of EN 50678')
    expect(html).toContain('for competent persons')
    expect(html).toMatch(/500 V of an insulation test can itself destroy/)
  })

  it.each([
    ['lamp1w', '60', 'lamp1v', 'Enter the lamp 1, rated voltage'],
    ['lamp1w', '9000', 'lamp1w', 'Lamp 1, power must be'],
    ['bulk', '1,500', 'bulk', 'can be read two ways'],
    ['years', '-1', 'years', 'Years without power must be'],
    ['earthohm', '0.1', 'scheme', 'Enter which limits'],
    ['in', 'many', 'in', 'Input voltage must be'],
    ['nosuch', '1', 'first-power-form', 'no part of a first power-up'],
  ])('refuses %s=%s with a sentence at %s, keeping what was typed', async (name, value, field, sentence) => {
    const { status, html } = await page({ ...matching, [name]: value })
    expect(status).toBe(422)
    expect(html).toContain('<title>Error: ')
    expect(html).toContain(`href="#${field}"`)
    expect(html).toContain(`id="${field}"`)
    expect(html).toContain(sentence)
    expect(html).toContain('TAPE RECORDER')
  })

  it('answers htmx with the plan alone and the page with the same plan around', async () => {
    const whole = await page({ ...matching, ...lamps })
    const part = await page({ ...matching, ...lamps }, true)
    expect(part.html).not.toContain('<html')
    expect(part.html).toContain('id="live"')
    const plan = (html: string): string =>
      html
        .slice(html.indexOf('id="result"'), html.indexOf('Supply and machine together, behind the lamp</h2>'))
        .replace(/name="once" value="[^"]+"/, '')
    expect(plan(part.html)).toBe(plan(whole.html))
  })

  it('takes empty fields out of the address', async () => {
    const { status, location } = await page({ ...matching, lamp1v: '', years: '' })
    expect(status).toBe(303)
    expect(location).toContain('/first-power?country=DE')
    expect(location).not.toContain('years=')
  })

  it('carries every parameter of the check along', () => {
    const query = firstPowerQuery(readFirstPowerForm({ ...matching, ...lamps }).state.values)
    expect(Object.fromEntries(new URLSearchParams(query))).toEqual({ ...matching, ...lamps })
    const { carried } = firstPowerView(readFirstPowerForm({ ...matching, ...lamps }))
    expect(carried.map(({ name }) => name).sort()).toEqual(['corda', 'cordend', 'cordplug', 'cordv', 'socket'])
  })

  it.each(examples.map(({ title, address }) => [title, address]))(
    'plans the example “%s” without a fault and without the word safe',
    async (_, address) => {
      const { status, html } = await page({
        ...Object.fromEntries(new URLSearchParams(address.slice(2))),
        ...lamps,
        ...capacitor,
      })
      expect(status).toBe(200)
      expect(html).toContain('id="result"')
      expect(html).not.toMatch(/\bsafe\b|NaN|undefined|\[object/i)
    },
  )

  it('takes the wattage of an LED lamp, and uses it for nothing', async () => {
    const check = { site: { country: 'DE' }, supply: { label: matching.supply }, device: { label: matching.machine } }
    const { status, body } = await request(app)
      .post('/api/first-power')
      .send({ check, lampsOnHand: [{ ratedV: 230, ratedW: 9, count: 1 }] })
    expect(status).toBe(200)
    expect(body.lamps).toEqual([])
    expect(body.missing.join(' ')).toMatch(/lamp of 9\s?W 230\s?V is: .*LED/)
  })

  it('has the same plan as the call over JSON', async () => {
    const check = {
      site: { country: 'DE' },
      supply: { label: matching.supply, technology: 'switch-mode', protectionClass: 'II' },
      device: { label: matching.machine },
    }
    const { status, body } = await request(app)
      .post('/api/first-power')
      .send({ check, lampsOnHand: [{ ratedV: 230, ratedW: 60, count: 2 }] })
    expect(status).toBe(200)
    const { html } = await page({
      country: 'DE',
      supply: matching.supply,
      type: 'switch-mode',
      class: 'II',
      machine: matching.machine,
      ...lamps,
    })
    for (const { figures } of body.stages) for (const { value } of figures) expect(html).toContain(flat(value))
  })
})
