import { mkdtempSync, rmSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pino } from 'pino'
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import { openStore } from '../../server/store/openStore.js'
import { matching } from '../web/exampleChecks.js'
import { violations } from './axe.js'
import { sharedBrowser, withoutBrowser } from './browser.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 300_000 })

interface StepLimits {
  unit: string | null
  low: number | null
  high: number | null
}

interface Entry {
  key: string
  value?: number | null
  at: string
  typedAt?: string
  withdrawn?: object
}

/** A figure within the limits of a step: half its upper one, so that what may not rise stays; else twice its lower one, or volts of its sign. */
function within({ low, high }: StepLimits): number {
  if (low === null) return (high ?? 2) / 2
  if (high === null) return low * 2 || 12
  return low < high / 2 ? high / 2 : (low + high) / 2
}

describe.skipIf(withoutBrowser)('a whole first power-up on a phone', () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'lampline-whole-'))
  const store = openStore({ dataDir, databaseUrl: undefined, now: Date.now })
  let server: Server
  let port = 0
  let phone: BrowserContext
  let page: Page
  let id: string
  /** taps of each step: on its box, its buttons, what leads on; without the figures of the number */
  const taps: number[] = []
  /** steps whose row to press is not in sight as the step comes */
  const scrolled: string[] = []
  let slowestStopMs = 0
  const typed: { key: string; value: number | null; at: number }[] = []
  const seen: { key: string; number: string; words: string }[] = []
  /** how far the clock of the phone is ahead: what waits at the bench is not waited for here [ms] */
  let ahead = 0

  const begin = async (): Promise<void> => {
    const config = readConfig({ DATA_DIR: dataDir, PORT: '0' })
    server = createServer(
      createApp({ config, logger: pino({ level: 'silent' }), store, now: Date.now, lan: () => null }),
    )
    await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve))
    port = (server.address() as AddressInfo).port
  }
  const kill = async (): Promise<void> => {
    server.closeAllConnections()
    await new Promise((resolve) => server.close(resolve))
  }
  const origin = () => `http://127.0.0.1:${port}`
  const job = async () =>
    (await (await fetch(`${origin()}/api/jobs/${id}`)).json()) as {
      readings: Entry[]
      ticks: Entry[]
      stops: object[]
      log: { text: string; at: string }[]
    }
  const open = '.step:not([hidden])'
  const keyInSight = () => page.getAttribute(open, 'data-key')
  const wait = async (ms: number): Promise<void> => {
    await page.clock.fastForward(ms)
    ahead += ms
  }

  /** Does the step in sight as it should be, or reads at it what is given, and waits for the next one. */
  async function doStep(given?: number): Promise<void> {
    const step = page.locator(open)
    const key = (await keyInSight()) ?? ''
    const limits = await page.evaluate<StepLimits>(`document.querySelector('${open}').limits`)
    seen.push({
      key,
      number: (await step.getAttribute('data-number')) ?? '',
      words: (await step.locator('.do').textContent()) ?? '',
    })
    const hands = step.locator(limits.unit === null ? '.answers' : '.typed')
    // the page may just be shown anew, as the server answered what was sent before
    const row = await vi.waitUntil(() => hands.boundingBox(), { timeout: 10_000 })
    const top = await page.evaluate<number>('scrollY')
    if (top > 0 || row.y + row.height > 620) scrolled.push(`${key} from ${top} to ${row.y + row.height}`)
    if (limits.unit === null) {
      if (key === 'gate.tested-by') await step.locator('[name=words]').fill('R. Tester, insulation tester 3')
      await step.locator('button:text-is("Done")').click()
      taps.push(1)
      typed.push({ key, value: null, at: Date.now() + ahead })
    } else {
      const value = Number((given ?? within(limits)).toPrecision(3))
      await step.locator('[name=value]').click()
      await page.keyboard.type(String(value))
      await step.locator(`.typed button:text-is("${limits.unit}")`).click()
      taps.push(2)
      typed.push({ key, value, at: Date.now() + ahead })
    }
    if (given === undefined && key !== 'done.signed')
      await page.waitForSelector(`[data-key="${key}"]`, { state: 'hidden', timeout: 30_000 })
  }

  beforeAll(async () => {
    await store.ready()
    await begin()
    const made = await fetch(`${origin()}/api/jobs`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ name: 'Tape recorder', check: matching }),
    })
    id = ((await made.json()) as { id: string }).id
    phone = await (await sharedBrowser()).newContext({ viewport: { width: 360, height: 620 }, hasTouch: true })
    page = await phone.newPage()
    await page.clock.install()
  }, 60_000)
  afterAll(async () => {
    await phone?.close()
    await kill()
    await store.close()
    rmSync(dataDir, { recursive: true, force: true })
  })

  it('loses nothing with the network gone, the server killed and the page loaded anew, and fills the screen with the stop', async () => {
    await page.goto(`${origin()}/jobs/${id}/bench`)
    await page.waitForSelector(`${open} [data-photo]:not([hidden])`)
    await expect.poll(() => page.evaluate('navigator.serviceWorker.ready.then(() => true)')).toBe(true)
    const lines = await page.locator('.step').count()
    for (let done = 0; done < 3; done += 1) await doStep()
    await expect.poll(async () => (await job()).ticks.length + (await job()).readings.length).toBe(3)
    await expect
      .poll(() =>
        page.evaluate(
          `caches.open('bench').then((kept) => kept.match('/jobs/${id}/bench')).then((page) => page.text()).then((text) => new DOMParser().parseFromString(text, 'text/html').querySelectorAll('.step .last').length)`,
        ),
      )
      .toBe(3)
    expect(await violations(page)).toEqual([])

    // the network is lost, and the server with it
    await kill()
    await phone.setOffline(true)
    const lostAt = Date.now() + ahead
    while ((await keyInSight()) !== 'supply-alone.switch-on') {
      await doStep()
      await wait(7000)
    }
    await page.reload()
    await page.waitForSelector(`${open}[data-key="supply-alone.switch-on"] .queue:has-text("not sent yet")`)
    expect(await violations(page)).toEqual([])
    while ((await keyInSight()) !== 'supply-alone.off-load-1') {
      await doStep()
      await wait(20_000)
    }
    // 12 V output, 14.9 V read
    await doStep(14.9)
    const pressed = Date.now()
    await page.waitForSelector('#stop-here:not([hidden])', { timeout: 1000 })
    slowestStopMs = Date.now() - pressed
    const stop = await page.locator('#stop-here').boundingBox()
    expect(stop?.height ?? 0).toBeGreaterThanOrEqual(620)
    expect(stop?.y ?? 1).toBeLessThanOrEqual(20)
    expect(await page.locator(open).count()).toBe(0)
    expect(await violations(page)).toEqual([])
    await page.reload()
    await page.fill('#stop-here textarea', 'The lead stood on another output.')
    await page.click('#stop-here button')
    await page.waitForSelector(open)
    // read again, as it should have been
    await page.goto(`${origin()}/jobs/${id}/bench?step=supply-alone.off-load-1`)
    await page.waitForSelector(`${open} .mine:not([hidden])`)
    await doStep()
    while ((await keyInSight()) !== 'full.on') await doStep()
    expect(Date.now() + ahead - lostAt).toBeGreaterThan(180_000)

    // both are back
    await phone.setOffline(false)
    await begin()
    await page.reload()
    await expect.poll(() => page.textContent(`${open} .queue`), { timeout: 120_000 }).toBe('')
    while (seen.length < lines + 1) await doStep()
    await expect
      .poll(async () => (await job()).readings.length + (await job()).ticks.length, { timeout: 120_000 })
      .toBe(lines + 1)

    const { readings, ticks, stops, log } = await job()
    expect(readings.map(({ key, value }) => [key, value])).toEqual(
      typed.filter(({ value }) => value !== null).map(({ key, value }) => [key, value]),
    )
    expect(ticks.map(({ key }) => key)).toEqual(typed.filter(({ value }) => value === null).map(({ key }) => key))
    expect(stops).toEqual([])
    expect(log).toMatchObject([{ text: expect.stringContaining('The lead stood on another output.') }])
    // by the phone's clock, which was ahead of the server's by what was not waited for when it sent them
    const entries = [...readings, ...ticks]
    for (const { key, value, at } of typed) {
      const kept = entries.find((entry) => entry.key === key && (entry.value ?? null) === value)
      expect(Math.abs(Date.parse(kept?.typedAt ?? kept?.at ?? '') + (at < lostAt ? 0 : ahead) - at), key).toBeLessThan(
        10_000,
      )
    }
  })

  it('takes at most three taps a step beside the figures, and no scrolling', () => {
    const median = taps.toSorted((one, other) => one - other)[Math.floor(taps.length / 2)]
    console.info({ steps: taps.length, median, most: Math.max(...taps), scrolled: scrolled.length, slowestStopMs })
    expect(median).toBeLessThanOrEqual(3)
    expect(scrolled).toEqual([])
    expect(slowestStopMs).toBeLessThan(1000)
  })

  it('has the lines of its paper, on which everything stands as it was done', async () => {
    const checklist = (await (await fetch(`${origin()}/api/jobs/${id}/checklist`)).json()) as {
      stages: { lines: { key: string; number: string; text: string }[] }[]
    }
    const paper = checklist.stages.flatMap(({ lines }) => lines)
    const once = [...new Map(seen.map((line) => [line.key, line])).values()]
    expect(once.map(({ key, number }) => [key, number])).toEqual(paper.map(({ key, number }) => [key, number]))
    for (const [at, { words }] of once.entries())
      expect(paper[at]?.text.startsWith(words.replace(/…$/, '')), words).toBe(true)
    await page.goto(`${origin()}/jobs/${id}/checklist`)
    expect(await page.locator('.line .done').count()).toBe(paper.length)
    expect(await page.locator('.line .box.ticked').count()).toBe(paper.length)
  })
})
