import { execFileSync } from 'node:child_process'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { widths } from '../support/long.js'
import { hasPoppler, withoutBrowser } from './browser.js'
import { opened } from './opened.js'

describe.skipIf(withoutBrowser)('the first power-up in a browser', { timeout: 90_000 }, () => {
  const at = opened()

  async function visit(address: string, width: number, scripts: boolean) {
    const context = await at.browser.newContext({
      viewport: { width, height: 900 },
      javaScriptEnabled: scripts,
    })
    const page = await context.newPage()
    const faults: string[] = []
    page.on('pageerror', (error) => faults.push(error.message))
    page.on('console', (message) => {
      if (message.type() === 'error' && !message.text().includes('422')) faults.push(message.text())
    })
    await page.goto(at.origin + address)
    return { page, faults, close: () => context.close() }
  }

  const openExample = async (page: Page): Promise<void> => {
    await page.click('text=See a made-up example')
    await page.locator('#result').waitFor()
    await page.waitForLoadState()
  }

  const unfold = `for (const part of document.querySelectorAll('details')) part.open = true`
  const sideways = (page: Page) =>
    page.evaluate<boolean>('document.documentElement.scrollWidth > document.documentElement.clientWidth')

  it.each(widths)('without scripts, at %d px: from the example to four stages with their drawings', async (width) => {
    const { page, faults, close } = await visit('/first-power', width, false)
    await openExample(page)
    expect(await page.locator('.plan section h2').allTextContents()).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^3\. The supply alone/),
        expect.stringMatching(/^6\. Supply and machine/),
      ]),
    )
    expect(await page.locator('.plan svg[role=img]').count()).toBeGreaterThanOrEqual(5)
    expect(await sideways(page)).toBe(false)
    await page.fill('#lamp1w', '100')
    await page.click('#first-power-form button[type=submit]')
    expect(page.url()).toContain('lamp1w=100')
    expect(page.url()).toContain('cordplug=')
    expect(await page.textContent('.plan')).toMatch(/lamp of 100\s*W 230\s*V/)
    expect(faults).toEqual([])
    await close()
  })

  it.each(widths)('with scripts, at %d px: the plan follows the typing, everything unfolded fits', async (width) => {
    const { page, faults, close } = await visit('/first-power', width, true)
    await openExample(page)
    await page.fill('#lamp1w', '150')
    await page.locator('.plan', { hasText: /lamp of 150\s*W/ }).waitFor()
    expect(await page.textContent('#live')).toMatch(/of 4 stages/)
    await page.evaluate(unfold)
    expect(await sideways(page)).toBe(false)
    expect(faults).toEqual([])
    await close()
  })

  it('leads to what is wrong in a form with a fault', async () => {
    const { page, close } = await visit('/first-power?lamp1w=60', 360, true)
    expect(await page.evaluate<boolean>(`document.activeElement.className === 'error-summary'`)).toBe(true)
    await close()
  })

  it('folds all stages but the first, unfolds one by a link to it, and leaves it so while the plan is made anew', async () => {
    const { page, close } = await visit('/first-power', 320, true)
    await openExample(page)
    const open = () => page.locator('.fold > details[open] h2').allTextContents()
    expect(await open()).toEqual([expect.stringMatching(/^3\. The supply alone/)])
    // what is folded says what it holds, with its numbers
    expect(await page.locator('#together-fold .gist').textContent()).toMatch(
      /^\d+ steps, behind .*60\s*W 230\s*V.*12\.6\s*V/,
    )
    await page.evaluate(`location.hash = 'together'`)
    await expect.poll(open).toHaveLength(2)
    await page.fill('#lamp1w', '150')
    await page
      .locator('.plan', { hasText: /lamp of 150\s*W/ })
      .first()
      .waitFor()
    expect(await open()).toHaveLength(2)
    await close()
  })

  it('is named after the thing it is for', async () => {
    const { page, close } = await visit('/first-power', 360, false)
    expect(await page.title()).toBe('First power-up · Lampline')
    await openExample(page)
    expect(await page.title()).toBe('First power-up: Tape recorder · Lampline')
    expect(await page.textContent('h1')).toBe('First power-up: Tape recorder')
    await close()
  })

  const unread = !hasPoppler && process.env.CI !== 'true'
  it.skipIf(unread)('prints all that is folded without scripts, formulas too, on at most ten sheets', async () => {
    const { page, close } = await visit('/first-power', 1280, false)
    await openExample(page)
    const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: false })
    const text = execFileSync('pdftotext', ['-', '-'], { input: pdf, encoding: 'utf8' })
    expect(text.split('\f').length - 1).toBeLessThanOrEqual(10)
    for (const words of ['6. Supply and machine', '24 W out / 0.75', 'A tingle at the case', 'Largest capacitor'])
      expect(text.replace(/\s+/g, ' ')).toContain(words)
    await close()
  })

  it('prints without the form, and every step whole on one page', async () => {
    const { page, close } = await visit('/first-power', 1280, true)
    await openExample(page)
    await page.emulateMedia({ media: 'print' })
    expect(await page.isVisible('#first-power-form')).toBe(false)
    expect(await page.isVisible('.plan .steps')).toBe(true)
    expect(
      await page.evaluate<string>(`getComputedStyle(document.querySelector('.plan .steps > li')).breakInside`),
    ).toBe('avoid')
    await close()
  })
})
