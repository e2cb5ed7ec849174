import type { Express } from 'express'
import { pino } from 'pino'
import { createApp } from '../../server/app.js'
import { readConfig } from '../../server/config.js'
import { openStore } from '../../server/store/openStore.js'
import type { Store } from '../../server/store/store.js'

export interface TestApp {
  app: Express
  store: Store
  /** the clock of the app [ms since 1970], set by the test */
  clock: { now: number }
}

/** The real app over records in memory, or in `dataDir`. */
export function testApp(dataDir: string | null = null): TestApp {
  const clock = { now: Date.UTC(2026, 0, 5, 9) }
  const now = () => clock.now
  const store = openStore({ dataDir, databaseUrl: undefined, now })
  const config = readConfig(dataDir === null ? {} : { DATA_DIR: dataDir })
  return { app: createApp({ config, logger: pino({ level: 'silent' }), store, now }), store, clock }
}
