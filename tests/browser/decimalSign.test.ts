import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { some } from '../support/long.js'
import { withoutBrowser } from './browser.js'
import { opened } from './opened.js'

const plate = 'INPUT 100-240V 50/60Hz 0.8A\nOUTPUT 12.5V DC 1.25A'

describe.skipIf(withoutBrowser)('a reader whose browser asks for', { timeout: 60_000 }, () => {
  const at = opened()

  /** the page of a check, typed in by hand, when the result of it has been swapped in */
  const typedBy = async (locale: string): Promise<Page> => {
    const page = await (await at.browser.newContext({ locale })).newPage()
    await page.goto(`${at.origin}/?at=supply`)
    await page.fill('#supply', plate)
    await page.fill('#plugouter', '5,5')
    await page.fill('#pluginner', '2.1')
    // the other thing's boxes, with what was typed carried along
    await page.click('button[name=at][value=device]')
    await page.fill('#jackouter', '5.5')
    await page.fill('#jackinner', '2,5')
    await page.waitForSelector('#result .plugs[aria-label*="Jack"]', { state: 'attached' })
    return page
  }

  it.each(
    some([
      ['German', 'de-DE', ','],
      ['Swiss German', 'de-CH', '.'],
    ] as const),
  )(
    '%s types either sign, reads the own one, and finds what was typed as it was typed',
    async (_name, locale, sign) => {
      const page = await typedBy(locale)
      const [other] = sign === ',' ? ['.'] : [',']
      expect(await page.textContent('#supply-reading')).toContain(`12${sign}5\u00a0V`)
      expect(await page.getAttribute('#result svg.plugs', 'aria-label')).toContain(`5${sign}5`)
      const shown = (await page.textContent('ol.chain'))?.match(/\d[.,]\d/g) ?? []
      expect(shown.length).toBeGreaterThan(2)
      for (const number of shown) expect(number).not.toContain(other)
      expect(await page.inputValue('#supply')).toBe(plate)
      expect(await page.inputValue('input[name=plugouter]')).toBe('5,5')
      expect(await page.inputValue('input[name=pluginner]')).toBe('2.1')
      // the entries are shown back as they were typed, the plate among them
      expect(await page.textContent('#result .entered')).toContain('OUTPUT 12.5V DC 1.25A')
      await page.context().close()
    },
  )
})
