import type { BrowserContext, Page, Route } from 'playwright-core'
import sharp from 'sharp'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { inLongRun } from '../support/long.js'
import { matching } from '../web/exampleChecks.js'
import { violations } from './axe.js'
import { withoutBrowser } from './browser.js'
import { opened } from './opened.js'

interface JobJson {
  id: string
  readings: { value: number }[]
  observations: { lamps: string | null; sounds: string | null; works: string | null }
}

const passphrase = 'three dry lamps'

describe.skipIf(withoutBrowser)('what is typed on a phone', { timeout: 60_000 }, () => {
  const at = opened({ HOST: '0.0.0.0', PASSPHRASE: passphrase })
  let phone: BrowserContext
  let page: Page
  let id: string
  const bearer = { Authorization: `Bearer ${passphrase}`, 'Content-Type': 'application/json' }

  const api = async (path: string, body?: object): Promise<JobJson> =>
    (
      await fetch(at.origin + path, {
        headers: bearer,
        ...(body ? { method: 'POST', body: JSON.stringify(body) } : {}),
      })
    ).json() as Promise<JobJson>
  const job = () => api(`/api/jobs/${id}`)
  const open = async (): Promise<Page> => {
    const opened = await phone.newPage()
    await opened.goto(`${at.origin}/jobs/${id}`)
    return opened
  }
  const reading = async (value: string): Promise<void> => {
    await page.fill('[name=what]', 'noise')
    await page.fill('[name=value]', value)
    await page.fill('[name=unit]', 'mV')
  }
  const keepReading = () => page.click('button:has-text("Keep the reading")')
  const waits = (text: string) => page.waitForSelector(`#waiting h2:has-text("${text}")`)
  const nothingWaits = () => page.waitForSelector('#waiting', { state: 'hidden' })
  const everythingSent = () => expect.poll(() => page.evaluate('localStorage.length'), { timeout: 20_000 }).toBe(0)
  const values = async () => (await job()).readings.map(({ value }) => value)
  const enter = async (): Promise<void> => {
    await page.fill('[name=passphrase]', passphrase)
    await page.click('main button')
    await page.waitForSelector('h1:has-text("Tape recorder")')
  }

  beforeEach(async () => {
    id = (await api('/api/jobs', { name: 'Tape recorder', check: matching })).id
    phone = await at.browser.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true })
    page = await open()
    await enter()
  }, 60_000)
  afterEach(() => phone.close())

  inLongRun('is kept by the server at once where there is a connection, and the page shows it', async () => {
    await reading('2')
    await keepReading()
    await page.waitForSelector('summary:has-text("All readings, the last first (1)")')
    expect(await page.textContent('#live')).toBe('Kept by the server: 1 reading.')
    expect(await page.inputValue('[name=value]')).toBe('')
    expect(await values()).toEqual([2])
    expect(await page.evaluate('localStorage.length')).toBe(0)
  })

  it('waits while there is no connection, and is sent once when there is one again', async () => {
    await phone.setOffline(true)
    await reading('2')
    await keepReading()
    await waits('1 reading waits on this device for the server')
    await reading('3')
    await keepReading()
    await waits('2 readings wait on this device for the server')
    expect(await page.textContent('#waiting')).toContain('noise · 2 · mV')
    expect(await page.isVisible('svg.qr')).toBe(true)
    expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBe(360)
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      expect(await violations(page)).toEqual([])
    }
    expect(await values()).toEqual([])
    await phone.setOffline(false)
    await nothingWaits()
    expect(await values()).toEqual([2, 3])
  })

  it('outlives its page: closed while it waits, it is sent when the job is opened again', async () => {
    await phone.setOffline(true)
    await reading('2')
    await keepReading()
    await waits('1 reading waits')
    await page.close()
    await phone.setOffline(false)
    page = await open()
    await page.waitForSelector('summary:has-text("All readings, the last first (1)")')
    await nothingWaits()
    expect(await values()).toEqual([2])
  })

  inLongRun('is sent from the list of jobs, too', async () => {
    await phone.setOffline(true)
    await reading('2')
    await keepReading()
    await waits('1 reading waits')
    await page.close()
    await phone.setOffline(false)
    page = await phone.newPage()
    await page.goto(`${at.origin}/jobs`)
    await nothingWaits()
    await everythingSent()
    expect(await values()).toEqual([2])
  })

  it('is not doubled when the answer was lost after the server had kept it', async () => {
    const losing = async (route: Route): Promise<void> => {
      await route.fetch({ maxRedirects: 0 })
      await route.abort('connectionreset')
    }
    await page.route('**/readings', losing)
    await reading('2')
    await keepReading()
    await waits('1 reading waits')
    expect(await values()).toEqual([2])
    await page.unroute('**/readings', losing)
    await page.click('button:has-text("Send now")')
    await page.waitForSelector('summary:has-text("All readings, the last first (1)")')
    await nothingWaits()
    expect(await values()).toEqual([2])
  })

  inLongRun('is not doubled by two taps, nor by a tab that sends it at the same time', async () => {
    await reading('2')
    await page.dblclick('button:has-text("Keep the reading")')
    await page.waitForSelector('summary:has-text("All readings, the last first (1)")')
    await phone.setOffline(true)
    await reading('3')
    await keepReading()
    await waits('1 reading waits')
    const other = await phone.newPage()
    // the first page sends by itself, the second as it opens
    await phone.setOffline(false)
    await other.goto(`${at.origin}/jobs/${id}`)
    await everythingSent()
    await nothingWaits()
    expect(await values()).toEqual([2, 3])
  })

  inLongRun('is back in the form after the tab was closed while typing, observations and choices as well', async () => {
    await reading('2,5')
    await page.fill('[name=lamps]', 'one lit')
    await page.check('[name=works][value=partly]')
    await page.close()
    page = await open()
    expect(await page.inputValue('[name=value]')).toBe('2,5')
    expect(await page.inputValue('[name=lamps]')).toBe('one lit')
    expect(await page.isChecked('[name=works][value=partly]')).toBe(true)
    await keepReading()
    await page.waitForSelector('summary:has-text("All readings, the last first (1)")')
    // what another form holds stays there
    expect(await page.inputValue('[name=lamps]')).toBe('one lit')
    expect(await values()).toEqual([2.5])
    await page.click('#details-form button')
    await everythingSent()
    expect((await job()).observations).toMatchObject({ lamps: 'one lit', works: 'partly' })
  })

  it('comes back with what is wrong with it, as typed, and is sent once corrected', async () => {
    await reading('1,500')
    await keepReading()
    await page.waitForSelector('.error-summary:has-text("can be read two ways")')
    expect(await page.title()).toContain('Error: ')
    expect(await page.inputValue('[name=value]')).toBe('1,500')
    await page.close()
    page = await open()
    expect(await page.inputValue('[name=value]')).toBe('1,500')
    await page.fill('[name=value]', '1.5')
    await keepReading()
    await page.waitForSelector('summary:has-text("All readings, the last first (1)")')
    expect(await values()).toEqual([1.5])
  })

  inLongRun('stays in the list with the reason where it is refused while something else is typed', async () => {
    await phone.setOffline(true)
    await reading('1,500')
    await keepReading()
    await waits('1 reading waits')
    await page.fill('[name=value]', '7')
    await phone.setOffline(false)
    await page.waitForSelector('#waiting strong:has-text("can be read two ways")')
    expect(await page.inputValue('[name=value]')).toBe('7')
    await page.click('button:has-text("Back into the form")')
    expect(await page.inputValue('[name=value]')).toBe('7')
    expect(await page.textContent('#live')).toContain('Something else is typed in that form')
    await page.click('button:has-text("Throw away")')
    await nothingWaits()
    expect(await values()).toEqual([])
  })

  inLongRun('is held against what someone else kept meanwhile, and both are shown', async () => {
    await phone.setOffline(true)
    await page.fill('[name=sounds]', 'none')
    await page.click('#details-form button')
    await waits('1 observation waits')
    const other = await (await fetch(`${at.origin}/jobs/${id}`, { headers: bearer })).text()
    const seen = /name="seen" value="([\w-]+)"/.exec(other)?.[1] ?? ''
    await fetch(`${at.origin}/jobs/${id}`, {
      method: 'POST',
      headers: { Authorization: bearer.Authorization },
      body: new URLSearchParams({ seen, name: 'Tape recorder', sounds: 'hum' }),
    })
    await phone.setOffline(false)
    await page.waitForSelector('.error-summary:has-text("This was changed meanwhile")')
    expect(await page.inputValue('[name=sounds]')).toBe('none')
    expect((await job()).observations.sounds).toBe('hum')
    await page.click('#details-form button')
    await everythingSent()
    expect((await job()).observations.sounds).toBe('none')
  })

  inLongRun('stays when the server asks for its passphrase, and is sent after that was entered', async () => {
    await phone.clearCookies()
    await reading('2')
    await keepReading()
    await page.waitForSelector('#waiting:has-text("The server asks for its passphrase.")')
    expect(await values()).toEqual([])
    await page.click('a:has-text("Enter it")')
    await enter()
    await page.waitForSelector('summary:has-text("All readings, the last first (1)")')
    expect(await values()).toEqual([2])
  })

  inLongRun.each([
    ['has no room for it', 507],
    ['was asked too much at once', 429],
  ])('stays when the server %s, and when something else than the server answers', async (_name, status) => {
    await page.route('**/readings', (route) => route.fulfill({ status, contentType: 'text/html', body: 'not now' }))
    await reading('2')
    await keepReading()
    await page.waitForSelector('#waiting:has-text("The server cannot keep this now.")')
    await page.unroute('**/readings')
    await page.route('**/readings', (route) => route.fulfill({ contentType: 'text/html', body: '<h1>Log in</h1>' }))
    await page.click('button:has-text("Send now")')
    await page.waitForTimeout(300)
    await waits('1 reading waits')
    await page.unroute('**/readings')
    await page.click('button:has-text("Send now")')
    await nothingWaits()
    expect(await values()).toEqual([2])
  })

  inLongRun.each([
    [
      'storage is forbidden',
      `Object.defineProperty(window, 'localStorage', { get() { throw new Error('forbidden') } })`,
    ],
    ['storage is full', `Storage.prototype.setItem = () => { throw new Error('full') }`],
  ])('is sent by the plain form where %s', async (_name, script) => {
    await page.close()
    await phone.addInitScript(script)
    page = await open()
    await reading('2')
    await keepReading()
    await page.waitForSelector('summary:has-text("All readings, the last first (1)")')
    expect(await values()).toEqual([2])
  })

  it('is sent by the plain form without script', async () => {
    const plain = await at.browser.newContext({
      javaScriptEnabled: false,
      extraHTTPHeaders: { Authorization: bearer.Authorization },
    })
    page = await plain.newPage()
    await page.goto(`${at.origin}/jobs/${id}`)
    await reading('2')
    await keepReading()
    await page.waitForSelector('summary:has-text("All readings, the last first (1)")')
    expect(await values()).toEqual([2])
    await plain.close()
  })

  inLongRun('waits with its photo, made smaller, also where the passphrase is asked anew', async () => {
    interface PhotoJson {
      widthPx: number
      createdAt: string
    }
    const photos = async () => ((await api(`/api/jobs/${id}`)) as unknown as { photos: PhotoJson[] }).photos
    // noise does not compress: a picture of more than 8 MB, as telephones take them
    const noise = { type: 'gaussian' as const, mean: 128, sigma: 60 }
    const picture = sharp({ create: { width: 4000, height: 3000, channels: 3, background: '#888', noise } })
    const buffer = await picture.jpeg({ quality: 95 }).toBuffer()
    expect(buffer.length).toBeGreaterThan(8e6)
    await page.setInputFiles('#photo', { name: 'plate.jpg', mimeType: 'image/jpeg', buffer })
    await phone.setOffline(true)
    const takenAt = Date.now()
    await page.click('button:has-text("Keep the photo")')
    await waits('1 photo waits on this device for the server')
    await page.waitForTimeout(4000)
    await phone.clearCookies()
    await phone.setOffline(false)
    await page.waitForSelector('#waiting:has-text("The server asks for its passphrase.")')
    expect((await photos()).length).toBe(0)
    await page.click('a:has-text("Enter it")')
    await enter()
    await expect.poll(async () => (await photos()).length, { timeout: 20_000 }).toBe(1)
    await nothingWaits()
    const [kept] = await photos()
    expect(kept?.widthPx).toBeLessThanOrEqual(2400)
    expect(Math.abs(Date.parse(kept?.createdAt ?? '') - takenAt)).toBeLessThan(2500)
  })
})
