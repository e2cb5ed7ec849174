import { setTimeout } from 'node:timers/promises'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { examples } from '../../server/web/viewModels/examples.js'
import { violations } from './axe.js'
import { launch, type Running, run, withoutBrowser } from './browser.js'

const query = (index: number): string => (examples[index]?.address ?? '').replace(/^\/\?/, '')

/** Every page of the navigation, empty and with something on it. */
const pages: [name: string, address: string][] = [
  ['First power-up, empty', '/first-power'],
  ['First power-up of a clean match', `/first-power?${query(0)}`],
  ['First power-up behind a converter', `/first-power?${query(3)}`],
  ['First power-up with faults', '/first-power?mains=1%2C500'],
  ['Fuse, empty', '/fuse'],
  ['Fuse with a result', '/fuse?marking=T2AL250V&prescribed=F1.6AL250V&position=mains&volts=230&watts=60'],
  ['Fuse with faults', '/fuse?marking=T2AL250V'],
  ['Checklist of a clean match', `/checklist?${query(0)}`],
  ['Jobs, empty', '/jobs'],
  ['Shelf, empty', '/shelf'],
  ['Every supply for every machine, empty', '/shelf/matrix'],
  ['Add a supply', '/shelf/supplies/new'],
  ['Add a machine', '/shelf/devices/new'],
  ['Bring in or take out', '/records'],
]

const unfold = `for (const part of document.querySelectorAll('details')) part.open = true`

describe.skipIf(withoutBrowser)('every page of the navigation', { timeout: 60_000 }, () => {
  let browser: Browser
  let server: Running
  beforeAll(async () => {
    browser = await launch()
    server = await run()
  }, 60_000)
  afterAll(async () => {
    await browser?.close()
    await server?.stop()
  })

  it.each(pages)(
    '%s: axe-core finds nothing, nothing scrolls sideways at 320 px, nothing leaves the host',
    async (_name, address) => {
      // the policy is lifted for axe-core alone; tests of the main job run under it
      const context = await browser.newContext({ viewport: { width: 320, height: 800 }, bypassCSP: true })
      const page = await context.newPage()
      const elsewhere: string[] = []
      page.on('request', (request) => {
        if (!request.url().startsWith(server.origin)) elsewhere.push(request.url())
      })
      // a page that is still being worked out asks again by itself
      while ((await context.request.get(server.origin + address)).headers().refresh !== undefined)
        await setTimeout(1000)
      const answer = await page.goto(server.origin + address)
      expect([200, 422]).toContain(answer?.status())
      await page.evaluate(unfold)
      expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBe(320)
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme })
        expect(await violations(page)).toEqual([])
      }
      expect(elsewhere).toEqual([])
      await context.close()
    },
  )

  it.each(pages)('%s: runs under its own content policy without a complaint', async (_name, address) => {
    const context = await browser.newContext()
    const page = await context.newPage()
    const complaints: string[] = []
    page.on('pageerror', (error) => complaints.push(error.message))
    page.on('console', (message) => {
      if (message.type() === 'error' && !message.text().includes('422')) complaints.push(message.text())
    })
    await page.goto(server.origin + address, { waitUntil: 'networkidle' })
    expect(complaints).toEqual([])
    await context.close()
  })
})
