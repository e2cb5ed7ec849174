import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { inLongRun } from '../support/long.js'
import { withoutBrowser } from './browser.js'
import { opened } from './opened.js'

interface Stop {
  text: string
  top: number
  left: number
}

/** What has the focus: its own words or those of its label, and where it stands on the page; null where nothing has it. */
const focused = `(() => {
  const at = document.activeElement
  if (at === null || at === document.body) return null
  const { top, left } = at.getBoundingClientRect()
  const words = at.labels?.[0] ?? at
  return { text: (at.getAttribute('aria-label') ?? words.textContent).trim(), top: top + scrollY, left: left + scrollX }
})()`

const focus = (page: Page): Promise<Stop | null> => page.evaluate<Stop | null>(focused)

/** Presses Tab until what has the focus begins with these words, with no stop on the way where nothing has it. */
async function reach(page: Page, words: string): Promise<void> {
  for (let presses = 0; presses < 150; presses += 1) {
    await page.keyboard.press('Tab')
    const stop = await focus(page)
    if (stop === null) throw new Error(`the focus was lost on the way to “${words}”`)
    if (stop.text.startsWith(words)) return
  }
  throw new Error(`“${words}” was not reached by Tab`)
}

const press = async (page: Page, words: string, key: 'Enter' | 'Space'): Promise<void> => {
  await reach(page, words)
  await page.keyboard.press(key)
}

describe.skipIf(withoutBrowser)('by keyboard alone', { timeout: 120_000 }, () => {
  const at = opened()

  it('a machine goes the whole way from the first page to a finished job', async () => {
    const page = await at.browser.newPage()
    await page.goto(at.origin)
    await press(page, 'Skip to the main part', 'Enter')
    await press(page, 'A clean match', 'Enter')
    await page.waitForSelector('.verdict.clear')
    await press(page, 'Plan the first power-up', 'Enter')
    await page.waitForURL(/first-power/)

    // the plan follows what is typed, and the focus stays where it is typed
    await reach(page, 'Lamp 1, rated voltage')
    await page.keyboard.type('230')
    await reach(page, 'Lamp 1, power')
    await page.keyboard.type('60')
    await page.waitForSelector('.plan p:has-text("a lamp of 60 W 230 V")')
    expect((await focus(page))?.text).toBe('Lamp 1, power (W)')

    await press(page, 'Print a bench checklist', 'Enter')
    await page.waitForSelector('h1:has-text("Bench checklist")')
    await press(page, 'Back to the first power-up', 'Enter')
    await page.waitForURL(/first-power/)
    await press(page, 'Keep as a job', 'Space')
    await page.waitForURL(/jobs\/[\w-]+$/)

    await reach(page, 'What was done')
    await page.keyboard.type('Cleaned the contacts.')
    await press(page, 'Write it down', 'Enter')
    await page.waitForSelector('article.log:has-text("Cleaned the contacts.")')
    expect((await focus(page))?.text).toBe('Log')

    await page.reload()
    await reach(page, 'Not seen yet')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Space')
    await press(page, 'Save', 'Enter')
    await page.waitForSelector('#standing:has-text("Finished")')
    expect((await focus(page))?.text).toBe('Name, and what was seen at first power')
    await page.close()
  })

  const readsOn = async (address: string): Promise<void> => {
    const page = await at.browser.newPage({ viewport: { width: 1280, height: 800 } })
    await page.goto(at.origin + address)
    await page.evaluate(`for (const part of document.querySelectorAll('details')) part.open = true`)
    const stops: Stop[] = []
    for (let stop = null; ; stops.push(stop)) {
      await page.keyboard.press('Tab')
      stop = await focus(page)
      if (stop === null || (stops.length > 0 && stop.text === 'Skip to the main part')) break
    }
    expect(stops.length).toBeGreaterThan(15)
    const backwards = stops.filter(({ top, left }, index) => {
      const before = stops[index - 1]
      return before !== undefined && top < before.top - 4 && left <= before.left
    })
    expect(backwards).toEqual([])
    await page.close()
  }
  const claim = '%s: the focus goes the way one reads: down, or to the right'
  it.each(['/'])(claim, readsOn)
  inLongRun.each(['/first-power', '/fuse', '/shelf/supplies/new', '/reference'])(claim, readsOn)
})
