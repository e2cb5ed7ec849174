import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { fuseFields } from '../../server/web/pages/fuse/form.js'
import { testApp } from './testApp.js'

const { app } = testApp()

const get = (query: Record<string, string> = {}, headers: Record<string, string> = {}) =>
  request(app).get('/fuse').query(query).set(headers)

const good = { marking: 'T2AL250V', prescribed: 'F1.6AL250V', position: 'mains', volts: '230', watts: '60' }

/** Text without tags, blanks gathered. */
const words = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replace(/&nbsp;|\u00a0/g, ' ')
    .replace(/\s+/g, ' ')

describe('the fuse page', { timeout: 30_000 }, () => {
  it('asks first, with an example to look at', async () => {
    const { status, text } = await get()
    expect(status).toBe(200)
    expect(text).toContain('<h1>Review a fuse</h1>')
    expect(text).not.toContain('id="result"')
    const [, example = ''] = /href="(\/fuse\?[^"]+)"/.exec(text) ?? []
    const shown = await request(app).get(example.replaceAll('&amp;', '&'))
    expect(shown.status).toBe(200)
    expect(shown.text).toContain('id="result"')
  })

  it('says what to do next in ordinary words, with the findings worst first', async () => {
    const { status, text } = await get(good)
    expect(status).toBe(200)
    const page = words(text)
    expect(page).toContain('Replace the link by F 1.6 A L 250 V: 2 A is fitted where 1.6 A is prescribed')
    expect(page).toContain('Fit F 1.6 A L 250 V, in every detail as prescribed.')
    expect(page).toMatch(/licensed electrician or other qualified person/)
    expect(page.indexOf('slower (T) than prescribed (F)')).toBeLessThan(page.indexOf('The link is rated 250 V'))
    expect(page).not.toMatch(/\bsafe\b/i)
  })

  it('draws the gates on axes with units, and repeats every point in a table', async () => {
    const { text } = await get(good)
    const page = words(text)
    expect(text).toMatch(/<svg class="fuse-curve"[^>]*role="img" aria-label="Melting time against current/)
    for (const title of ['Current (A)', 'Melting time (s)', 'Times the rated current']) expect(page).toContain(title)
    // IEC 60127-2 sheet 3 for 2 A: 2.1 times, 4.2 A, 2 min
    expect(page).toMatch(/2\.1 4\.2 A no limit 2 min/)
  })

  it('says that behind a series lamp the lamp is the limit', async () => {
    const { text } = await get({ ...good, lamp: '0.43' })
    expect(words(text)).toContain('the fuse will not clear a fault: the lamp is the limit')
    expect(text).toMatch(/class="mark lamp"/)
  })

  it('sets up to three links side by side, with a range only where two data sheets give one', async () => {
    const { text } = await get({ ...good, prescribed: 'T2AH250V', a: 'T1AH250V', b: 'T1AL250V', c: 'T5AH250V' })
    const page = words(text)
    expect(page).toMatch(/A T 1 A H 250 V 1\.1 to 1\.7 A²s over 4 data sheets/)
    expect(page).toMatch(/B T 1 A L 250 V fewer than two data sheets give it/)
    expect(page).toMatch(/not permitted: higher rating/)
  })

  it('shows what UL and IEC links of one number do', async () => {
    const page = words((await get(good)).text)
    for (const at of ['135 %', '150 %', '200 %', '210 %']) expect(page).toContain(at)
  })

  it.each([
    [{ ...good, volts: '' }, 'volts', 'Enter the voltage in use.'],
    [{ ...good, position: '' }, 'position', 'Enter where the fuse is.'],
    [{ ...good, amps: '0' }, 'amps', 'Operating current must be a number more than 0 A'],
    [{ ...good, amps: '1000000000' }, 'amps', 'and at most 1000 A'],
    [{ ...good, volts: 'abc' }, 'volts', 'Voltage in use must be a number'],
    [{ ...good, volts: '1,500' }, 'volts', 'can be read two ways'],
    [{ ...good, peak: '20' }, 'pulse', 'Enter the inrush, time, or leave out the peak current.'],
    [{ ...good, pf: '1.2' }, 'pf', 'Power factor must be a number'],
    [{ ...good, position: 'roof' }, 'position', 'Where the fuse is must be one of the choices listed'],
    [{ ...good, blown: 'perhaps' }, 'blown', 'The link was found open must be one of the choices listed'],
  ])('%j: the same form with status 422, a summary and the sentence at %s', async (query, name, sentence) => {
    const sparse = Object.fromEntries(Object.entries(query).filter(([, value]) => value !== ''))
    const { status, text } = await get(sparse)
    expect(status).toBe(422)
    expect(text).toContain('<title>Error: Review a fuse')
    expect(words(text)).toContain(sentence)
    expect(text).toContain(`href="#${name}"`)
    expect(text).toContain('value="T2AL250V"')
    if (name !== 'position' && name !== 'blown')
      expect(text).toMatch(new RegExp(`id="${name}"[^>]*aria-invalid="true"`))
  })

  it('names a parameter it does not know', async () => {
    const { status, text } = await get({ ...good, amp: '5' })
    expect(status).toBe(422)
    expect(words(text)).toContain('“amp”, which is no part of a fuse review')
  })

  it('drops the empty fields a browser sends, so that the address stays short', async () => {
    const { status, headers } = await get({ ...good, amps: '', a: ' ' })
    expect(status).toBe(303)
    expect(headers.location).toBe('/fuse?marking=T2AL250V&prescribed=F1.6AL250V&position=mains&volts=230&watts=60')
  })

  it('answers htmx with the result alone, and the address to show', async () => {
    const { status, text, headers } = await get({ ...good, amps: '' }, { 'HX-Request': 'true' })
    expect(status).toBe(200)
    expect(text).not.toContain('<html')
    expect(text).toContain('id="result"')
    expect(headers['hx-replace-url']).toBe(
      '/fuse?marking=T2AL250V&prescribed=F1.6AL250V&position=mains&volts=230&watts=60',
    )
    const wrong = await get({ ...good, volts: 'x' }, { 'HX-Request': 'true' })
    expect(wrong.status).toBe(422)
    expect(words(wrong.text)).toContain('Not reviewed yet')
  })

  it('shows markup in a marking as text', async () => {
    const { text } = await get({ ...good, marking: '<script>alert(1)</script>' })
    expect(text).not.toContain('<script>alert')
  })

  it('documents every parameter of its address, and none that does not exist', async () => {
    const { readFileSync } = await import('node:fs')
    const page = readFileSync(new URL('../../docs/method-fuse.md', import.meta.url), 'utf8')
    const table = page.slice(page.indexOf('## The address'))
    const documented = [...table.matchAll(/^\| `(\w+)`/gm)].map(([, name]) => name)
    expect(documented).toEqual(fuseFields)
  })
})
