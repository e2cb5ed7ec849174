import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll } from 'vitest'
import type { Store } from '../../server/store/store.js'
import { type Running, run, sharedBrowser } from './browser.js'

/** The browser and an application of its own, there from the first test of a `describe` to its last. */
export interface Opened {
  readonly browser: Browser
  readonly origin: string
}

/**
 * @param environment  settings of the application
 * @param change       what becomes of its store before it gets it
 */
export function opened(environment: Record<string, string> = {}, change?: (store: Store) => Store): Opened {
  let browser: Browser | undefined
  let server: Running | undefined
  beforeAll(async () => {
    browser = await sharedBrowser()
    server = await run(environment, change)
  }, 60_000)
  afterAll(async () => {
    await Promise.all(browser?.contexts().map((context) => context.close()) ?? [])
    await server?.stop()
  })
  return {
    get browser() {
      return browser as Browser
    },
    get origin() {
      return (server as Running).origin
    },
  }
}

/** Whether a page is wider than its window. */
export const scrollsSideways = (page: Page): Promise<boolean> =>
  page.evaluate<boolean>('document.documentElement.scrollWidth > document.documentElement.clientWidth')
