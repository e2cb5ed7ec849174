import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pino } from 'pino'
import { type Browser, chromium } from 'playwright-core'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import { openStore } from '../../server/store/openStore.js'
import type { Store } from '../../server/store/store.js'
import { longestHeader } from '../../server/web/unreadable.js'

/** the build without windows first: it opens a page in half the time */
const places = [
  process.env.CHROMIUM,
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
]

/** Where a Chromium is; undefined where none is found. */
export const chromiumPath = places.find((path) => path !== undefined && existsSync(path))

/** Browser tests are left out only where there is no browser, and never where CI=true: there a missing one is a failure. */
export const withoutBrowser = chromiumPath === undefined && process.env.CI !== 'true'

if (withoutBrowser)
  console.warn(
    'Browser tests are skipped: no Chromium was found. Install one, or name it in CHROMIUM=/path/to/chromium.',
  )

/** Whether printed pages can be read back. */
export const hasPoppler = ((): boolean => {
  try {
    execFileSync('pdftoppm', ['-v'], { stdio: 'ignore' })
    return true
  } catch {
    return false
  }
})()

let shared: Promise<Browser> | undefined

/** The browser of all tests that run in this process; it ends with the process. */
export function sharedBrowser(): Promise<Browser> {
  shared ??= launch()
  return shared
}

export async function launch(): Promise<Browser> {
  if (chromiumPath === undefined) throw new Error('CI=true, but no Chromium was found; set CHROMIUM=/path/to/chromium')
  return chromium.launch({
    executablePath: chromiumPath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })
}

export interface Running {
  origin: string
  stop: () => Promise<void>
}

/**
 * The real application on a free port, with records of its own in a temporary folder.
 *
 * @param change  what becomes of the store before the application gets it
 */
export async function run(
  environment: Record<string, string> = {},
  change = (store: Store): Store => store,
): Promise<Running> {
  const dataDir = mkdtempSync(join(tmpdir(), 'lampline-browser-'))
  const store = openStore({ dataDir, databaseUrl: undefined, now: Date.now })
  await store.ready()
  const config = readConfig({ ...environment, DATA_DIR: dataDir, PORT: '0' })
  const app = createApp({
    config,
    logger: pino({ level: 'silent' }),
    store: change(store),
    now: Date.now,
    lan: () => '192.168.1.20',
  })
  const server: Server = createServer({ maxHeaderSize: longestHeader }, app)
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const { port } = server.address() as AddressInfo
  return {
    origin: `http://127.0.0.1:${port}`,
    stop: async () => {
      server.closeAllConnections()
      await new Promise((resolve) => server.close(resolve))
      await store.close()
      rmSync(dataDir, { recursive: true, force: true })
    },
  }
}
