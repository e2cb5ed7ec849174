import type { Browser } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { withoutBrowser } from './browser.js'
import { opened, scrollsSideways } from './opened.js'

describe.skipIf(withoutBrowser)('the reference in a browser', { timeout: 90_000 }, () => {
  const at = opened()

  const visit = async (address: string, width: number, options: Parameters<Browser['newContext']>[0] = {}) => {
    const context = await at.browser.newContext({ viewport: { width, height: 900 }, ...options })
    const page = await context.newPage()
    await page.goto(at.origin + address)
    return { page, close: () => context.close() }
  }

  it('without scripts: search everything, go to the row, and see it marked', async () => {
    const { page, close } = await visit('/reference', 1280, { javaScriptEnabled: false })
    await page.fill('#q', 'germany')
    await page.press('#q', 'Enter')
    await page.click('a[href="/reference/countries#de"]')
    expect(new URL(page.url()).hash).toBe('#de')
    expect(await page.locator('tr:target th').textContent()).toBe('Germany')
    expect(await page.evaluate(`getComputedStyle(document.querySelector('tr:target')).outlineStyle`)).toBe('solid')
    await close()
  })

  it('without scripts: the meaning of a word opens and closes at its field by keyboard', async () => {
    const { page, close } = await visit('/?at=supply', 360, { javaScriptEnabled: false })
    const meaning = page.locator('#term-inlet')
    expect(await meaning.isVisible()).toBe(false)
    await page.focus('button[popovertarget=term-inlet]')
    await page.keyboard.press('Enter')
    expect(await meaning.isVisible()).toBe(true)
    const box = await meaning.boundingBox()
    expect(box && box.x >= 0 && box.x + box.width <= 360).toBe(true)
    await page.keyboard.press('Enter')
    expect(await meaning.isVisible()).toBe(false)
    await close()
  })

  it('on paper a wide table stays within the sheet and its sources follow it', async () => {
    const { page, close } = await visit('/reference/plugs', 794)
    await page.emulateMedia({ media: 'print' })
    expect(await scrollsSideways(page)).toBe(false)
    expect(await page.locator('ol.sources').isVisible()).toBe(true)
    await close()
  })
})
