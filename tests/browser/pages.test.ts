import { setTimeout } from 'node:timers/promises'

import { beforeAll, describe, expect, it } from 'vitest'
import { exampleRows, examples } from '../../server/web/viewModels/examples.js'
import { violations } from './axe.js'
import { withoutBrowser } from './browser.js'
import { opened } from './opened.js'

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
  ['Passphrase', '/enter'],
  ['An address that does not exist', '/nowhere'],
]

/** Pages of what is kept, by the address that keeping it led to. */
const keptPages: [name: string, keep: string, after: string][] = [
  ['A job that can begin', 'match', ''],
  ['A job with a stop', 'stop', ''],
  ['A job kept from a first power-up', 'plan', ''],
  ['A job judged again', 'stop', '/rejudge'],
  ['The checklist of a job', 'plan', '/checklist'],
  ['A supply', 'supply', ''],
  ['A supply being changed', 'supply', '/edit'],
  ['A machine with what suits it and what to look for', 'device', '?country=DE'],
  ['Jobs', '/jobs', ''],
  ['Shelf', '/shelf?country=DE', ''],
  ['Every supply for every machine', '/shelf/matrix?country=DE', ''],
]

const keeping: Record<string, [address: string, fields: Record<string, string>]> = {
  match: ['/jobs', { check: query(0) }],
  stop: ['/jobs', { check: query(1) }],
  plan: ['/jobs', { plan: `${query(0)}&lamp1v=230&lamp1w=60&lamp1n=2&years=20&bulk=68&bulkv=400` }],
  supply: ['/shelf/supplies', exampleRows.supply],
  device: ['/shelf/devices', exampleRows.device],
}

const unfold = `for (const part of document.querySelectorAll('details')) part.open = true`

describe.skipIf(withoutBrowser)('every page of the navigation', { timeout: 60_000 }, () => {
  const at = opened()

  /** axe-core finds nothing, nothing scrolls sideways at 320 px, nothing leaves the host */
  const looksRight = async (address: string): Promise<void> => {
    // the policy is lifted for axe-core alone; tests of the main job run under it
    const context = await at.browser.newContext({ viewport: { width: 320, height: 800 }, bypassCSP: true })
    const page = await context.newPage()
    const elsewhere: string[] = []
    page.on('request', (request) => {
      if (!request.url().startsWith(at.origin)) elsewhere.push(request.url())
    })
    // a page that is still being worked out asks again by itself
    while ((await context.request.get(at.origin + address)).headers().refresh !== undefined) await setTimeout(1000)
    const answer = await page.goto(at.origin + address)
    expect([200, 404, 422]).toContain(answer?.status())
    await page.evaluate(unfold)
    expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBe(320)
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      expect(await violations(page)).toEqual([])
    }
    expect(elsewhere).toEqual([])
    await context.close()
  }

  /** nothing is refused by the page's own content policy, and no script fails */
  const runsQuietly = async (address: string): Promise<void> => {
    const context = await at.browser.newContext()
    const page = await context.newPage()
    const complaints: string[] = []
    page.on('pageerror', (error) => complaints.push(error.message))
    page.on('console', (message) => {
      if (message.type() === 'error' && !/status of (404|422)/.test(message.text())) complaints.push(message.text())
    })
    await page.goto(at.origin + address, { waitUntil: 'networkidle' })
    expect(complaints).toEqual([])
    await context.close()
  }

  it.each(pages)(
    '%s: axe-core finds nothing, nothing scrolls sideways at 320 px, nothing leaves the host',
    (_name, address) => looksRight(address),
  )

  it.each(pages)('%s: runs under its own content policy without a complaint', (_name, address) => runsQuietly(address))

  describe('with something kept', () => {
    const kept = new Map<string, string>()
    beforeAll(async () => {
      for (const [name, [address, fields]] of Object.entries(keeping)) {
        const answer = await fetch(at.origin + address, {
          method: 'POST',
          redirect: 'manual',
          body: new URLSearchParams(fields),
        })
        expect(answer.status).toBe(303)
        kept.set(name, answer.headers.get('location') ?? '')
      }
    }, 60_000)

    it.each(keptPages)(
      '%s: axe-core finds nothing, nothing scrolls sideways at 320 px, all runs under its content policy',
      async (_name, keep, after) => {
        const address = (kept.get(keep) ?? keep) + after
        await looksRight(address)
        await runsQuietly(address)
      },
    )
  })
})
