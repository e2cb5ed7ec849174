import fc from 'fast-check'
import request from 'supertest'
import { beforeAll, describe, expect, it } from 'vitest'
import { checkNames } from '../../server/web/pages/check/form.js'
import { examples } from '../../server/web/parts/examples.js'
import { testApp } from './testApp.js'

const { app } = testApp()

const open = (address: string) => request(app).get(address)
const part = (address: string) => request(app).get(address).set('HX-Request', 'true')
const [match, wrongVoltage, lostEarth, sixtyHertz] = examples.map(({ address }) => address)

// the first page of each kind compiles its view
beforeAll(async () => {
  await open('/')
  await part('/')
}, 60_000)

/** What a person reads: without tags, with the usual entities. */
const read = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&')
    .replace(/&gt;/g, '>')
    .replace(/\u00a0/g, ' ')
    .replace(/\s+/g, ' ')

describe('the page of a check', () => {
  it('tells a beginner how to begin and offers worked examples, one for each arrangement at least', async () => {
    const { status, text } = await open('/')
    expect(status).toBe(200)
    expect(read(text)).toContain('Leave everything unplugged.')
    for (const { title } of examples) expect(text).toContain(title)
    expect(examples).toHaveLength(8)
    expect(text).not.toContain('id="result"')
  })

  it('says on every page who may do mains wiring', async () => {
    for (const address of ['/', match ?? '', '/nowhere'])
      expect((await open(address)).text).toContain(
        'Mains wiring is for a licensed electrician or other qualified person, under local codes.',
      )
  })

  it.each([
    { name: 'a clean match', address: match, verdict: 'No conflict found in what was entered' },
    { name: 'a supply for the wrong voltage', address: wrongVoltage, verdict: 'Do not connect' },
    { name: 'an earth lost on the way', address: lostEarth, verdict: 'Do not connect' },
    { name: 'a 60 Hz transformer on 50 Hz', address: sixtyHertz, verdict: 'Do not connect' },
  ])('judges $name: $verdict', async ({ address = '', verdict }) => {
    const { status, text } = await open(address)
    expect(status).toBe(200)
    expect(text).toMatch(new RegExp(`<h2>${verdict}[^<]*: [^<]*\\d[^<]*\\.</h2>`))
    expect(read(text)).toContain('What was not checked')
  })

  it.each([
    { name: 'voltage', address: wrongVoltage, topic: 'mains voltage' },
    { name: 'earth', address: lostEarth, topic: 'earthing' },
    { name: 'frequency', address: sixtyHertz, topic: 'mains frequency' },
  ])('puts the stop of the $name example among the first findings', async ({ address = '', topic }) => {
    const { text } = await open(address)
    const stops = [...text.matchAll(/<article class="finding stop">.*?<span class="topic">([^<]*)</gs)].map(
      ([, name]) => name,
    )
    expect(stops).toContain(topic)
  })

  it('shows findings worst first, each with its working and sources', async () => {
    const { text } = await open(lostEarth ?? '')
    const order = [...text.matchAll(/<article class="finding (?:folded )?(\w+)"/g)].map(([, outcome]) => outcome ?? '')
    const ranks = order.map((outcome) => ['stop', 'unknown', 'caution', 'clear'].indexOf(outcome))
    expect(ranks.length).toBeGreaterThan(5)
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    expect(text.match(/>Sources</g)).toHaveLength(order.length)
  })

  it('draws every link of the chain with its outcome in words', async () => {
    const { text } = await open(match ?? '')
    const chain = /<ol class="chain".*?<\/ol>/s.exec(text)?.[0] ?? ''
    for (const name of ['Site mains', 'Socket', 'Cord', 'Inlet', 'Fuse', 'Supply', 'Lead', 'Plug', 'Jack', 'Machine'])
      expect(chain).toContain(`<strong>${name}</strong>`)
    expect(chain).toContain('No conflict')
  })

  it('shows what was read and what was not', async () => {
    const { text } = await open('/?supply=INPUT+100-240V+50%2F60Hz+0.8A+OUTPUT+12V+DC+2A+qqzz')
    expect(read(text)).toContain('100 V to 240 V')
    expect(read(text)).toMatch(/Not read: .*qqzz/)
  })

  it('gives the same result as a part of the page when htmx asks', async () => {
    const whole = await open(lostEarth ?? '')
    const fragment = await part(lostEarth ?? '')
    expect(fragment.status).toBe(200)
    expect(fragment.text).not.toContain('<html')
    for (const shown of [/<header class="verdict.*?<\/nav>/s, /<h3[^>]*>What to do next.*?What was not checked/s]) {
      expect(shown.exec(fragment.text)?.[0]).toBeDefined()
      expect(shown.exec(fragment.text)?.[0]).toBe(shown.exec(whole.text)?.[0])
    }
    expect(fragment.text).toContain('<p id="live" role="status" hx-swap-oob="innerHTML">Do not connect.')
    expect(fragment.headers['hx-replace-url']).toBe(lostEarth)
    expect(fragment.headers.vary).toContain('HX-Request')
  })

  it('asks at first for the place and two plates, and has the rest at one press each', async () => {
    const { text } = await open('/')
    const boxes = [...text.matchAll(/<(?:input type="text"|textarea|select)[^>]* name="(\w+)"/g)].map(
      ([, name]) => name,
    )
    expect(boxes).toEqual(['country', 'have', 'supply', 'machine'])
    for (const name of ['site', 'converter', 'cord', 'supply', 'device'])
      expect(text).toMatch(new RegExp(`<button [^>]*name="at" value="${name}"`))
  })

  it('lays open the facts of the thing that is asked for, and carries the rest along', async () => {
    const { text } = await open('/?country=DE&inlet=C14&cordv=250&at=cord')
    expect(text).toMatch(/<input[^>]* name="cordv"[^>]* value="250"/)
    expect(text).toMatch(/<input type="hidden" name="inlet" value="C14"\/?>/)
    expect(text).not.toMatch(/<select[^>]* name="inlet"[^>]*id="inlet"/)
    expect((await open('/?country=DE&cordv=&at=cord')).headers.location).toBe('/?country=DE&at=cord')
    // the section that was open stands before the button that was pressed
    expect((await open('/?country=DE&at=cord&at=supply')).text).toContain('<legend>The supply</legend>')
  })

  it('leads each link of the chain to its facts', async () => {
    const { text } = await open('/?country=DE&supply=INPUT+230V')
    expect(text).toMatch(
      /<a href="\/\?country=DE&amp;supply=INPUT\+230V&amp;at=device#facts">.*?<strong>Jack<\/strong>/s,
    )
  })

  it('has a question answered where it stands, with all else carried along', async () => {
    const { text } = await open('/?country=DE&supply=INPUT+115/230V&inlet=C8')
    const ask = /<form class="ask".*?<\/form>/s.exec(text)?.[0] ?? ''
    expect(ask).toMatch(/<input type="hidden" name="inlet" value="C8"\/?>/)
    expect(ask).toMatch(/<input[^>]* name="selector"/)
    expect(read(ask)).toContain('Its answer could forbid it')
  })

  it('asks once about a phrase that was not read, and no more when it was said away', async () => {
    const plate = 'supply=INPUT+230V+50Hz+NICHT+MIT+FREMDEN+GERATEN'
    const { text } = await open(`/?country=DE&${plate}`)
    expect(text).toMatch(
      /<form class="ask".*<input type="checkbox" name="dismissed" value="NICHT MIT FREMDEN GERATEN"\/?>/s,
    )
    const after = await open(`/?country=DE&${plate}&dismissed=NICHT+MIT+FREMDEN+GERATEN`)
    expect(/<form class="ask".*?<\/form>/s.exec(after.text)?.[0]).not.toContain('type="checkbox" name="dismissed"')
    // it can be taken back
    expect(after.text).toMatch(/<input type="checkbox" name="dismissed" value="NICHT MIT FREMDEN GERATEN" checked/)
    expect((await open('/?country=DE&dismissed=ONE+PIECE&dismissed=AN+OTHER')).status).toBe(200)
  })

  it('asks whether damaged words were read right before all else', async () => {
    const { text } = await open('/?country=DE&supply=INPUT+l00-240V+50Hz')
    const [first] = /<form class="ask".*?<li>(.*?)<\/li>/s.exec(text) ?? []
    expect(first).toMatch(/type="checkbox" name="confirmed" value="supply\.input\.voltages=100-240"/)
  })

  it('shows beside a box which words of the plate say so', async () => {
    const { text } = await open('/?supply=INPUT+100-240V+50%2F60Hz&at=supply')
    expect(/id="in-read">([^<]*)</.exec(text)?.[1]).toMatch(/^Plate: 100\u00a0V to 240\u00a0V, from “.*100-240V.*”$/)
  })

  it('remembers the place for the next check', async () => {
    expect((await open(`/?country=${encodeURIComponent('日本')}`)).headers.location).toBe('/?country=JP')
    const answer = await open('/?country=JP')
    const cookie = String(answer.headers['set-cookie'])
    expect(cookie).toMatch(/^lampline-place=JP; Path=\/; Max-Age=\d+; HttpOnly; SameSite=Lax$/)
    const next = await request(app).get('/').set('Cookie', 'lampline-place=JP')
    expect(next.text).toMatch(/<input[^>]* name="country" value="Japan"/)
    const other = await request(app).get('/').set('Cookie', 'lampline-place=ZZ')
    expect(other.text).toMatch(/<input[^>]* name="country" value=""/)
  })

  it.each(examples)('of “$title” begins with the answer, in few words and bytes', async ({ address }) => {
    const { text } = await open(address)
    expect(Buffer.byteLength(text)).toBeLessThan(45_000)
    // what stands folded is not read before it is opened
    const shown = read(
      text.replace(/<head>.*?<\/head>/s, '').replace(/<details(?![^>]* open).*?<\/summary>.*?(?=<\/details>)/gs, ' '),
    )
    expect(shown.split(' ').length).toBeLessThan(600)
    const main = read(text.replace(/^.*<main[^>]*>/s, ''))
    const answer = /<h2>([^<]*)<\/h2>/.exec(text)?.[1] ?? '?'
    expect(main.split(' ').slice(0, 60).join(' ')).toContain(read(answer))
  })

  it('drops empty fields from the address by a redirect', async () => {
    const answer = await open('/?country=DE&mains=&supply=&in=230&socket=')
    expect(answer.status).toBe(303)
    expect(answer.headers.location).toBe('/?country=DE&in=230')
    expect((await open('/?country=&supply=')).headers.location).toBe('/')
  })

  it.each([
    ['a field given twice', '/?country=DE&mains=&mains=230&supply=', /href="#mains"/],
    ['a name that is no field', '/?country=DE&supply=&nosuch=1', /holds “nosuch”/],
  ])('tells %s on the page, as the shorter address would hide it', async (_what, address, says) => {
    const answer = await open(address)
    expect(answer.status).toBe(422)
    expect(says.test(answer.text)).toBe(true)
  })

  it('never calls anything safe', async () => {
    for (const { address } of examples) expect(read((await open(address)).text)).not.toMatch(/\bsafe(ly)?\b/i)
  })
})

describe('something typed wrong', () => {
  const sent = '/?supply=INPUT+230V&mains=1%2C500&ina=-2&machine=%D7%93%D7%92%D7%9D'

  it('answers 422 with the same form, the title marked, one link a fault, and the sentence beside the field', async () => {
    const { status, text } = await open(sent)
    expect(status).toBe(422)
    expect(text).toContain('<title>Error: ')
    expect(text).toContain('2 entries cannot be used')
    expect(text).toContain('<a href="#mains">Mains voltage “1,500” can be read two ways: write 1500 or 1.5.</a>')
    expect(text).toMatch(
      /<input[^>]*id="mains"[^>]*value="1,500"[^>]*aria-invalid="true" aria-describedby="[^"]*mains-error/,
    )
    expect(text).toContain('id="mains-error"')
  })

  it('judges what can be used, and is no better than find out first', async () => {
    const { text } = await open(`${match}&ina=-2`)
    expect(text).toContain('<h2>Find out first: one entry could not be used')
    const { text: stopped } = await open(`${wrongVoltage}&ina=-2`)
    expect(stopped).toMatch(/<h2>Do not connect it: /)
  })

  it('keeps everything that was typed', async () => {
    const { text } = await open(sent)
    expect(text).toContain('INPUT 230V</textarea>')
    expect(text).toContain('דגם</textarea>')
    expect(text).toContain('value="-2"')
  })

  it('opens the folded group that holds the fault', async () => {
    const { text } = await open(sent)
    expect(text).toMatch(/<details open(?:="open")?><summary>Correct or add: mains side/)
  })

  it('says the same in a part of the page, without taking the focus', async () => {
    const { status, text } = await part(sent)
    expect(status).toBe(422)
    expect(text).toContain('can be read two ways')
    expect(text).not.toContain('autofocus')
  })

  it('does not let markup in what was typed become markup', async () => {
    const { text } = await open('/?supply=%3Cscript%3Ealert(1)%3C/script%3E&inlet=%22%3E%3Cb%3E&country=%3Cimg%3E')
    expect(text).not.toMatch(/<script>alert|<b>|<img>/)
  })

  it('answers any address with a page, and keeps whatever was typed into a field', async () => {
    const text = fc.oneof(
      fc.string({ maxLength: 60, unit: 'binary' }),
      fc.constantFrom(
        '12.5',
        '1e3',
        '1,500',
        '-1',
        '230 V',
        'Infinity',
        '<b>',
        '"',
        '&amp;',
        '100-240',
        'yes',
        'C13',
        '12V DC 1A',
      ),
    )
    const typed = fc.dictionary(fc.constantFrom(...checkNames), text, { maxKeys: 8 })
    await fc.assert(
      fc.asyncProperty(typed, async (values) => {
        const { status, text: html } = await open(`/?${new URLSearchParams(values)}`)
        expect([200, 303, 422]).toContain(status)
        const plain = values.plugname
        if (status !== 303 && plain !== undefined && /^[\w .]+$/.test(plain)) expect(html).toContain(`value="${plain}"`)
      }),
      { numRuns: 60 },
    )
  }, 60_000)

  it.each([
    [
      'an unknown country',
      '/?country=Atlantis',
      'Country must be a country’s name or its two-letter code; “Atlantis” is none',
    ],
    ['negative amperes', '/?ina=-1', 'Input current must be a number more than'],
    ['a field given twice', '/?mains=230&mains=120', 'Mains voltage must be given once; it came 2 times.'],
    ['a prototype name', '/?__proto__=1', 'The address holds “__proto__”'],
    ['another prototype name', '/?constructor=1&mains=230', 'The address holds “constructor”'],
    ['a control character', '/?supply=a%00b', 'take out the hidden character U+0000'],
    ['a mark that turns text around', '/?fuse=%E2%80%AET2A', 'take out the hidden character U+202E'],
    ['text that is too long', `/?supply=${'x'.repeat(1501)}`, 'must be at most 1500 characters long'],
    ['a broken percent sign', '/?mains=%ZZ', 'Mains voltage must be a number'],
  ])('answers %s with clear words', async (_what, address, words) => {
    const { status, text } = await open(address)
    expect(status).toBe(422)
    expect(read(text)).toContain(words)
    expect(text).toContain('id="check-form"')
  })
})

describe('shapes to choose from', () => {
  /** what stands ahead of the fold, in the list of a box */
  const ahead = (html: string, name: string): string[] => {
    const list = new RegExp(`<legend id="${name}">.*?</fieldset>`, 's').exec(html)?.[0] ?? ''
    return [...(list.split('<details')[0] ?? '').matchAll(/ value="([^"]*)"/g)].map(([, value]) => value ?? '')
  }

  it('are those of the place, the others folded behind them', async () => {
    const { text } = await open('/?country=GB&at=cord')
    expect(ahead(text, 'cordplug')).toEqual(['', 'BS 1363'])
    expect(text).toContain('value="CEE 7/16"')
  })

  it('are those of the socket where one is chosen, and whatever was chosen', async () => {
    const { text } = await open('/?country=DE&socket=C&cordplug=BS+1363&at=cord')
    expect(ahead(text, 'cordplug')).toContain('BS 1363')
    expect(ahead(text, 'cordplug')).toContain('CEE 7/16')
    expect(ahead(text, 'cordplug')).not.toContain('NEMA 1-15P')
  })

  it('are all there is where the place is not known', async () => {
    const { text } = await open('/?mains=230&at=cord')
    expect(ahead(text, 'cordplug')).toContain('NEMA 1-15P')
  })

  it('are not asked a second time where they stand open', async () => {
    const asked = (match ?? '').replace(/&cordplug=[^&]*/, '')
    expect((await open(asked)).text).toContain('id="ask-cordplug"')
    expect((await open(`${asked}&at=cord`)).text).not.toContain('id="ask-cordplug"')
  })
})

describe('a page that is not there', () => {
  it('is answered 404 in plain words, with ways on', async () => {
    const { status, text } = await open('/nowhere')
    expect(status).toBe(404)
    expect(text).toContain('There is nothing at this address.')
    expect(text).toContain('<a href="/">Start a new check</a>')
  })

  it('is answered as a part of a page when htmx asks', async () => {
    const { status, text } = await part('/nowhere')
    expect(status).toBe(404)
    expect(text).not.toContain('<html')
    expect(text).toContain('There is nothing at this address.')
  })
})
