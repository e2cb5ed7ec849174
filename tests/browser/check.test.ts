import { describe, expect, it } from 'vitest'
import { examples } from '../../server/web/parts/examples.js'
import { inLongRun, scripting, widths } from '../support/long.js'
import { withoutBrowser } from './browser.js'
import { opened } from './opened.js'

describe.skipIf(withoutBrowser)('the main job in a browser', { timeout: 60_000 }, () => {
  const at = opened()

  interface Setting {
    width?: number
    scripts?: boolean
    dark?: boolean
  }

  /** Opens a page; whatever leaves the host or is thrown on it is gathered. */
  async function visit(address: string, { width = 1280, scripts = true, dark = false }: Setting = {}) {
    const context = await at.browser.newContext({
      viewport: { width, height: 900 },
      javaScriptEnabled: scripts,
      colorScheme: dark ? 'dark' : 'light',
    })
    const page = await context.newPage()
    const faults: string[] = []
    page.on('pageerror', (error) => faults.push(error.message))
    page.on('console', (message) => {
      // a 422 is told in the console by the browser itself
      if (message.type() === 'error' && !message.text().includes('422')) faults.push(message.text())
    })
    page.on('request', (request) => {
      if (!request.url().startsWith(at.origin)) faults.push(`left the host: ${request.url()}`)
    })
    await page.goto(at.origin + address)
    return { page, faults, close: () => context.close() }
  }

  const plate = 'INPUT 100-240V~ 50/60Hz 0.8A OUTPUT 12V DC 2A'

  it.each(widths)('without scripts, at %d px: fill in, press the button, read the result', async (width) => {
    const { page, faults, close } = await visit('/', { width, scripts: false })
    await page.fill('#country', 'Germany')
    await page.fill('#supply', plate)
    await page.fill('#machine', '12V DC 1.2A')
    await page.click('#check-form button[type=submit]')
    expect(page.url()).toContain('country=DE&supply=INPUT')
    expect(page.url()).not.toContain('mains=&')
    expect(await page.textContent('.verdict h2')).toMatch(/^Find out first: /)
    expect(await page.locator('.chain li').count()).toBeGreaterThanOrEqual(10)
    expect(await page.inputValue('#supply')).toBe(plate)
    // the answer begins within the first view
    expect((await page.locator('.verdict h2').boundingBox())?.y).toBeLessThan(700)
    expect(await page.textContent('#supply-reading')).toMatch(/100\s*V to 240\s*V/)
    expect(faults).toEqual([])
    await close()
  })

  it.each(widths)('with scripts, at %d px: reading and result follow the typing, the focus stays', async (width) => {
    const { page, faults, close } = await visit('/', { width })
    await page.focus('#supply')
    await page.keyboard.type(plate)
    await page.waitForSelector('#supply-reading dd')
    expect(await page.textContent('#supply-reading')).toMatch(/100\s*V to 240\s*V/)
    await page.waitForSelector('#result')
    expect(await page.evaluate<string>('document.activeElement.id')).toBe('supply')
    expect(await page.inputValue('#supply')).toBe(plate)
    expect(await page.textContent('#live')).toContain('Find out first.')
    await page.click('text=Where it will be used')
    await page.waitForURL(/at=site/)
    expect(await page.inputValue('#supply')).toBe(plate)
    await page.locator('input[name=socket][value=F]').check()
    await page.waitForURL(/socket=F/)
    await page.locator('.chain a', { hasText: 'Supply' }).click()
    await page.waitForURL(/at=supply/)
    expect(await page.textContent('#ina-read')).toMatch(/800\s*mA, from “.*0\.8A/)
    expect(faults).toEqual([])
    await close()
  })

  inLongRun(
    'with scripts: a number that can be read two ways waits without taking the focus; the button leads to the fault',
    async () => {
      const { page, close } = await visit('/?at=site')
      await page.focus('#mains')
      await page.keyboard.type('1,500')
      await page.waitForSelector('.waiting')
      expect(await page.evaluate<string>('document.activeElement.id')).toBe('mains')
      await page.click('#check-form button[type=submit]')
      await page.waitForSelector('.error-summary')
      expect(await page.title()).toMatch(/^Error: /)
      await page.waitForSelector('.error-summary:focus')
      await page.click('.error-summary a')
      expect(await page.evaluate<string>('document.activeElement.id')).toBe('mains')
      expect(await page.inputValue('#mains')).toBe('1,500')
      await close()
    },
  )

  it.each(scripting)('scripts %s: a question is answered where it stands, and the chain turns', async (scripts) => {
    const { page, faults, close } = await visit(`/?country=DE&supply=${encodeURIComponent(plate)}&machine=12V+DC+1A`, {
      scripts,
      width: 360,
    })
    const plug = page.locator('.chain li', { hasText: 'Plug' })
    expect(await plug.getAttribute('class')).toBe('unknown')
    await page.check('.ask input[name=plugpol][value=centre-negative]')
    await page.check('.ask input[name=jackpol][value=centre-positive]')
    await page.locator('.ask button').first().click()
    await page.waitForURL(/plugpol=centre-negative/)
    expect(await page.textContent('.verdict h2')).toMatch(/^Do not connect it: the plug is centre negative/)
    expect(await plug.getAttribute('class')).toBe('stop')
    expect(faults).toEqual([])
    await close()
  })

  it('remembers the place on the first screen, whose first box stands in the first third of it', async () => {
    const { page, close } = await visit('/?country=DE')
    await page.goto(at.origin)
    expect(await page.inputValue('#country')).toBe('Germany')
    expect((await page.locator('#country').boundingBox())?.y).toBeLessThan(340)
    await close()
  })

  it('with scripts: going away and back shows the whole page with what was typed', async () => {
    const { page, faults, close } = await visit('/')
    await page.focus('#supply')
    await page.keyboard.type('INPUT 230V')
    await page.waitForURL(/supply=INPUT\+230V/)
    await page.goto(`${at.origin}/fuse`)
    await page.goBack()
    expect(await page.inputValue('#supply')).toBe('INPUT 230V')
    expect(await page.locator('header nav').isVisible()).toBe(true)
    expect(await page.locator('#result').isVisible()).toBe(true)
    expect(faults).toEqual([])
    await close()
  })

  it.each(scripting)(
    'scripts %s: a check is kept as a job with one press, and opens again from it',
    async (scripts) => {
      const { page, faults, close } = await visit(examples[3]?.address ?? '/', { scripts })
      await page.click('text=Keep as a job')
      await page.waitForURL(/\/jobs\/[^/]+$/)
      expect(await page.textContent('h1')).toContain('Open-reel tape deck')
      await page.click('text=Open this check')
      expect(new URL(page.url()).search).toContain('converterv=120')
      expect(await page.textContent('.verdict h2')).toMatch(/^Do not connect it: /)
      expect(faults).toEqual([])
      await close()
    },
  )

  it('by keyboard alone: skip link, an example, its result, its working', async () => {
    const { page, faults, close } = await visit('/')
    await page.keyboard.press('Tab')
    expect(await page.evaluate<string>('document.activeElement.className')).toBe('skip')
    await page.keyboard.press('Enter')
    await page.keyboard.press('Tab')
    expect(await page.evaluate<string>('document.activeElement.id')).toBe('country')
    await page.locator('.worked a').first().focus()
    await page.keyboard.press('Enter')
    await page.waitForSelector('#result')
    await page.locator('.clears > summary').focus()
    await page.keyboard.press('Enter')
    await page.locator('.finding summary').first().focus()
    await page.keyboard.press('Enter')
    expect(await page.locator('.finding details').first().getAttribute('open')).not.toBeNull()
    expect(faults).toEqual([])
    await close()
  })

  inLongRun(
    'a check with its result weighs at most 60 kB over the wire, style, script and drawings included',
    async () => {
      const { page, close } = await visit('/')
      const session = await page.context().newCDPSession(page)
      await session.send('Network.enable')
      await session.send('Network.setCacheDisabled', { cacheDisabled: true })
      const finished: number[] = []
      session.on('Network.loadingFinished', ({ encodedDataLength }) => finished.push(encodedDataLength))
      await page.goto(at.origin + (examples[2]?.address ?? ''), { waitUntil: 'networkidle' })
      const bytes = finished.reduce((sum, size) => sum + size, 0)
      // page, style sheet, htmx, the paper script and the mark
      expect(finished.length).toBeGreaterThanOrEqual(4)
      console.log(`A check with its result: ${bytes} bytes over the wire.`)
      expect(bytes).toBeLessThanOrEqual(60_000)
      await close()
    },
  )

  it('on paper: the result unfolded, without form and navigation, in black on white', async () => {
    const { page, close } = await visit(examples[2]?.address ?? '/', { scripts: false, dark: true })
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
    expect(await page.locator('#check-form').isVisible()).toBe(false)
    expect(await page.locator('header nav').isVisible()).toBe(false)
    expect(await page.locator('.who').isVisible()).toBe(true)
    expect(await page.locator('.finding .sources').first().isVisible()).toBe(true)
    expect(await page.locator('.entered dd').first().isVisible()).toBe(true)
    expect(await page.evaluate<string>('getComputedStyle(document.documentElement).color')).toBe('rgb(0, 0, 0)')
    await close()
  })
})
