import { mkdtempSync, rmSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pino } from 'pino'
import type { BrowserContext, Page } from 'playwright-core'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import { openStore } from '../../server/store/openStore.js'
import { inLongRun } from '../support/long.js'
import { matching } from '../web/exampleChecks.js'
import { violations } from './axe.js'
import { sharedBrowser, withoutBrowser } from './browser.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

describe.skipIf(withoutBrowser)('at the machine, with one hand and a server that goes away', () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'lampline-machine-'))
  const store = openStore({ dataDir, databaseUrl: undefined, now: Date.now })
  let server: Server
  let port = 0
  let phone: BrowserContext
  let page: Page
  let id: string
  /** how late the server takes what is sent [ms] */
  let slowMs = 0

  const begin = async (): Promise<void> => {
    const config = readConfig({ DATA_DIR: dataDir, PORT: '0' })
    const app = createApp({ config, logger: pino({ level: 'silent' }), store, now: Date.now, lan: () => null })
    server = createServer((request, response) => {
      setTimeout(() => app(request, response), request.method === 'POST' ? slowMs : 0)
    })
    await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve))
    port = (server.address() as AddressInfo).port
  }
  const kill = async (): Promise<void> => {
    server.closeAllConnections()
    await new Promise((resolve) => server.close(resolve))
  }
  const origin = () => `http://127.0.0.1:${port}`
  interface JobJson {
    id: string
    readings: { key: string; value: number; at: string; typedAt?: string }[]
    stops: unknown[]
    log: { text: string }[]
    photos: { caption: string }[]
  }
  const api = async (path: string, body?: object): Promise<JobJson> =>
    (
      await fetch(origin() + path, {
        headers: { 'Content-Type': 'application/json' },
        ...(body ? { method: 'POST', body: JSON.stringify(body) } : {}),
      })
    ).json() as Promise<JobJson>
  const at = (key: string) => page.goto(`${origin()}/jobs/${id}/bench?step=${key}`)
  const press = (unit: string) => page.click(`.step:not([hidden]) button:text-is("${unit}")`)
  const type = (value: string) => page.fill('.step:not([hidden]) [name=value]', value)
  const inSight = () => page.textContent('.step:not([hidden]) .where strong')

  beforeAll(async () => {
    await store.ready()
    await begin()
    id = (await api('/api/jobs', { name: 'Tape recorder', check: matching })).id
    phone = await (await sharedBrowser()).newContext({ viewport: { width: 360, height: 620 }, hasTouch: true })
    page = await phone.newPage()
  }, 60_000)
  afterAll(async () => {
    await phone?.close()
    await kill()
    await store.close()
    rmSync(dataDir, { recursive: true, force: true })
  })

  it('shows a step on one screen, judges while one types, and asks for a unit', async () => {
    await at('supply-alone.off-load-1&despite=yes')
    // what is typed before the script stands is judged with the next stroke
    const stopped = page.locator('.step:not([hidden]) .judged.stop', { hasText: 'outside the expected 11.4' })
    await expect
      .poll(
        async () => {
          await type('14')
          await type('14.9')
          await page.waitForTimeout(700)
          return stopped.count()
        },
        { timeout: 30_000 },
      )
      .toBe(1)
    expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBe(360)
    const box = await page.locator('.step:not([hidden]) .typed').boundingBox()
    expect((box?.y ?? 999) + (box?.height ?? 0)).toBeLessThanOrEqual(620)
    expect(await violations(page)).toEqual([])
    await at('gate.live-neutral')
    await type('220')
    await page.press('.step:not([hidden]) [name=value]', 'Enter')
    await page.waitForSelector('.step:not([hidden]) .judged:has-text("of which unit?")')
    expect((await api(`/api/jobs/${id}`)).readings).toEqual([])
  })

  it('keeps what is typed while the server is gone, stops by it, and opens nothing until a cause is written', async () => {
    await at('look.discharge')
    await expect
      .poll(() =>
        page.evaluate('navigator.serviceWorker.controller !== null || navigator.serviceWorker.ready.then(() => true)'),
      )
      .toBe(true)
    await expect
      .poll(() => page.evaluate(`caches.open('bench').then((kept) => kept.match('/jobs/${id}/bench')).then(Boolean)`))
      .toBe(true)
    const number = await inSight()
    await kill()
    await type('3')
    const typedAt = Date.now()
    await press('V')
    await expect.poll(inSight).not.toBe(number)
    expect(await page.textContent('.step:not([hidden]) .queue')).toContain('1 not sent yet')
    await page.click(`.step:not([hidden]) a[rel=next]`)
    // the page is loaded anew with no server there
    await page.reload()
    await page.waitForSelector('.step:not([hidden]) .queue:has-text("1 not sent yet")')
    await page.goto(`${origin()}/jobs/${id}/bench?step=look.discharge`)
    await type('325')
    await press('V')
    await page.waitForSelector('#stop-here:not([hidden]) :text("325")', { timeout: 1000 })
    expect(await page.textContent('#stop-here .todo')).toContain('Touch nothing inside')
    expect(await page.locator('.step:not([hidden])').count()).toBe(0)
    expect(await violations(page)).toEqual([])
    await page.reload()
    await page.waitForSelector('#stop-here:not([hidden])')
    await page.fill('#cause-here', 'Bleeder open; let down through a resistor.')
    await page.click('#stop-here button')
    await page.waitForSelector('.step:not([hidden])')
    await new Promise((resolve) => setTimeout(resolve, 2000))
    await begin()
    await page.reload()
    await expect.poll(async () => (await api(`/api/jobs/${id}`)).log.length, { timeout: 40_000 }).toBe(1)
    const { readings, stops, log } = await api(`/api/jobs/${id}`)
    expect(readings.map(({ value }) => value)).toEqual([3, 325])
    expect(stops).toEqual([])
    expect(log[0]?.text).toContain('Bleeder open')
    expect(Math.abs(Date.parse(readings[0]?.typedAt ?? '') - typedAt)).toBeLessThan(1500)
    expect(Date.parse(readings[0]?.at ?? '') - typedAt).toBeGreaterThan(2000)
  }, 120_000)

  inLongRun(
    'has one address for what waits: localhost leads on to 127.0.0.1, unless something waits under that name',
    async () => {
      const named = await phone.newPage()
      const path = `/jobs/${id}/bench?step=look.case`
      await named.goto(`http://localhost:${port}${path}`)
      await named.waitForURL(`http://127.0.0.1:${port}${path}`)
      await named.addInitScript(
        "if (location.hostname === 'localhost') localStorage.setItem('typed /jobs/x/log', '{}')",
      )
      await named.goto(`http://localhost:${port}${path}`)
      await named.waitForSelector('.step:not([hidden]) .timers, .step:not([hidden]) [data-photo]:not([hidden])')
      expect(new URL(named.url()).hostname).toBe('localhost')
      await named.close()
    },
  )

  inLongRun.each([
    ['text of twice its size', 360, 2],
    ['a page enlarged to twice its size', 180, 1],
  ])('fits %s on a phone 360 px wide: job, plan, checklist, step', async (_what, width, times) => {
    const narrow = await phone.newPage()
    await narrow.setViewportSize({ width, height: 620 })
    const facts = 'country=DE&socket=F&supply=INPUT%3A+100-240V~+50%2F60Hz+0.8A%0AOUTPUT%3A+12V+2.0A'
    const pages = [`/jobs/${id}`, `/first-power?${facts}`, `/jobs/${id}/checklist`, `/jobs/${id}/bench?step=look.case`]
    const wide: string[] = []
    for (const path of pages) {
      await narrow.goto(origin() + path)
      const over = await narrow.evaluate<number>(`(() => {
        const root = document.documentElement
        root.style.fontSize = parseFloat(getComputedStyle(root).fontSize) * ${times} + 'px'
        for (const fold of document.querySelectorAll('details')) fold.open = true
        return root.scrollWidth - root.clientWidth
      })()`)
      if (over > 0) wide.push(`${path}: ${over}px`)
    }
    expect(wide).toEqual([])
    await narrow.close()
  })

  it('keeps a stop in sight, and what is written of its cause, while the server takes the reading', async () => {
    id = (await api('/api/jobs', { name: 'Radio', check: matching })).id
    slowMs = 1500
    await at('look.discharge')
    await page.waitForSelector('.step:not([hidden]) .marks:not([hidden])')
    await type('325')
    await press('V')
    await page.fill('#stop-here textarea', 'Bleeder op')
    // the server has it: its own stop stands there, with what was written
    const box = page.locator('#stopped textarea')
    await expect.poll(() => box.inputValue(), { timeout: 10_000 }).toBe('Bleeder op')
    expect(await page.locator('.step:not([hidden])').count()).toBe(0)
    slowMs = 0
    await box.pressSequentially('en; let down.')
    await page.click('#stopped button:text-is("Write the cause")')
    await page.waitForSelector('.step:not([hidden])')
    await expect.poll(async () => (await api(`/api/jobs/${id}`)).log.length, { timeout: 10_000 }).toBe(1)
    expect((await api(`/api/jobs/${id}`)).log[0]?.text).toContain('Bleeder open; let down.')
  })

  it('knows what the server took while something else was being typed: its gate is open', async () => {
    id = (await api('/api/jobs', { name: 'Terminal', check: matching })).id
    await at('gate.live-neutral')
    await page.waitForSelector('.step:not([hidden]) .marks:not([hidden])')
    const gated = page.locator('[data-key="supply-alone.lamp-volts"]').first()
    const openGates = async () => (await gated.locator('.waits').textContent())?.replace(/^.*?waits|\s+/gi, ' ') ?? ''
    const before = await openGates()
    const limits = await page.evaluate<{ low: number }>("document.querySelector('.step:not([hidden])').limits")
    slowMs = 800
    await type(String(limits.low * 2))
    await press('Ω')
    // the answer comes while this is being written
    await expect.poll(() => page.textContent('.step:not([hidden]) .queue')).toContain('1 not sent yet')
    await page.fill('.step:not([hidden]) input:not([type=hidden])', '5')
    const after = await openGates()
    expect(after).not.toBe(before)
    await page.waitForSelector('#live:has-text("Kept by the server")')
    expect(await page.textContent('.step:not([hidden]) .queue')).toBe('')
    expect(await openGates()).toBe(after)
    slowMs = 0
  })

  inLongRun('names a photo by its step, or by the one that stopped, and stays where one is', async () => {
    id = (await api('/api/jobs', { name: 'Printer', check: matching })).id
    const buffer = await sharp({ create: { width: 60, height: 40, channels: 3, background: '#555' } })
      .png()
      .toBuffer()
    const captions = async () => (await api(`/api/jobs/${id}`)).photos.map(({ caption }) => caption)
    const photo = () => page.setInputFiles('#photo', { name: 'a.png', mimeType: 'image/png', buffer })
    await at('look.case')
    await page.waitForSelector('.step:not([hidden]) [data-photo]:not([hidden])')
    const number = await inSight()
    await photo()
    await page.waitForSelector('#live:has-text("1 photo")')
    expect(await inSight()).toBe(number)
    await press('It is wrong')
    await page.waitForSelector('#stopped')
    await photo()
    await expect.poll(async () => (await captions()).length, { timeout: 10_000 }).toBe(2)
    for (const caption of await captions()) expect(caption.startsWith(`${number} `), caption).toBe(true)
    // what stopped is looked at again once its cause is written
    await page.fill('#stopped textarea', 'A loose screw in the case; taken out.')
    await page.click('#stopped button:text-is("Write the cause")')
    await page.waitForSelector('.step:not([hidden])')
    expect(await inSight()).toBe(number)
  })

  inLongRun('opens no step for words that are no cause, and for one cause of two', async () => {
    const stops = [
      ['look.discharge', 325],
      ['look.discharge', 200],
    ] as const
    for (const [key, value] of stops) await api(`/api/jobs/${id}/readings`, { key, value, unit: 'V' })
    await at('look.case')
    await page.waitForSelector('#stopped')
    const [first, second] = await page.locator('#stopped .stop').all()
    await first?.locator('textarea').fill('?')
    await first?.locator('button:text-is("Write the cause")').click()
    await page.waitForSelector('#stopped .letters')
    await kill()
    await first?.locator('textarea').fill('Bleeder open again.')
    await first?.locator('button:text-is("Write the cause")').click()
    await expect.poll(() => first?.isVisible()).toBe(false)
    expect(await second?.isVisible()).toBe(true)
    expect(await page.locator('.step:not([hidden])').count()).toBe(0)
    await begin()
  })
})
