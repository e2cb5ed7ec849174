import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { isLong } from '../support/long.js'
import { violations } from './axe.js'
import { withoutBrowser } from './browser.js'
import { type Opened, opened, scrollsSideways } from './opened.js'
import {
  brokenStates,
  emptyStates,
  enter,
  keep,
  keptStates,
  outOfOrder,
  type State,
  sharedStates,
  tryWrongPassphrases,
} from './states.js'

const unfold = `for (const part of document.querySelectorAll('details')) part.open = true`

/** What takes the focus without a visible ring, or takes it out of sight. Not before a key was pressed: a ring is for those who use keys. */
const unseenFocus = `[...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
  .filter((part) => part.checkVisibility() && part.type !== 'hidden' && !part.matches('.skip'))
  .filter((part) => {
    part.focus({ preventScroll: true })
    const { outlineStyle, outlineWidth } = getComputedStyle(part)
    const { width, height } = part.getBoundingClientRect()
    return document.activeElement !== part || outlineStyle === 'none' || parseFloat(outlineWidth) < 2 || width * height === 0
  })
  .map((part) => part.outerHTML.slice(0, 120))`

const claim =
  '%s: axe-core finds nothing, every focus is seen, nothing scrolls sideways, nothing leaves the host, no script fails'

/** What of axe-core hangs on the width of the window. */
const ofTheLayout = ['color-contrast', 'target-size', 'scrollable-region-focusable']

async function looksRight({ browser, origin }: Opened, state: State, kept?: Map<string, string>) {
  const context = await browser.newContext({ viewport: { width: 320, height: 800 } })
  const page = await context.newPage()
  const elsewhere: string[] = []
  const complaints: string[] = []
  page.on('request', (request) => {
    if (!request.url().startsWith(origin)) elsewhere.push(request.url())
  })
  page.on('pageerror', (error) => complaints.push(error.message))
  page.on('console', (message) => {
    if (message.type() === 'error' && !/status of [45]\d\d/.test(message.text())) complaints.push(message.text())
  })
  expect(await enter(page, origin, state, kept)).toBe(state[1])
  await page.evaluate(unfold)
  expect(await scrollsSideways(page)).toBe(false)
  await page.keyboard.press('Tab')
  expect(await page.evaluate(unseenFocus)).toEqual([])
  expect([complaints, elsewhere]).toEqual([[], []])
  expect(await violations(page)).toEqual([])
  if (isLong) await looksRightOnADesk(page)
  await context.close()
}

/** What hangs on the width of the window and its colours. */
async function looksRightOnADesk(page: Page) {
  await page.setViewportSize({ width: 1280, height: 800 })
  expect(await scrollsSideways(page)).toBe(false)
  expect(await page.evaluate(unseenFocus)).toEqual([])
  expect(await violations(page, ofTheLayout)).toEqual([])
  await page.emulateMedia({ colorScheme: 'dark' })
  expect(await violations(page, ['color-contrast'])).toEqual([])
}

/** What holds for every page, and so for each of the chosen states: on a phone 320 px wide, and on a desk. */
export const pagesOfNoRecords = (chosen: (state: State) => boolean) =>
  describe.skipIf(withoutBrowser)('every page with nothing kept', { timeout: 60_000 }, () => {
    const at = opened()
    it.each(emptyStates.filter(chosen))(claim, (...state) => looksRight(at, state))
  })

/** The same for pages of what is kept, of what a passphrase guards, and of records that cannot be read. */
export const pagesOfRecords = (chosen: (state: State) => boolean) =>
  describe.skipIf(withoutBrowser)('every page', { timeout: 60_000 }, () => {
    describe('with something kept', () => {
      const at = opened()
      let kept: Map<string, string>
      beforeAll(async () => {
        kept = await keep(at.origin)
      }, 60_000)
      it.each(keptStates.filter(chosen))(claim, (...state) => looksRight(at, state, kept))
    })

    describe('over a network', () => {
      const at = opened({ HOST: '0.0.0.0', PASSPHRASE: 'three dry lamps' })
      beforeAll(() => tryWrongPassphrases(at.origin))
      it.each(sharedStates.filter(chosen))(claim, (...state) => looksRight(at, state))
    })

    const broken = brokenStates.filter(chosen)
    // a suite without a test is a failure
    if (broken.length > 0)
      describe('with records out of order', () => {
        const at = opened({}, outOfOrder)
        it.each(broken)(claim, (...state) => looksRight(at, state))
      })
  })
