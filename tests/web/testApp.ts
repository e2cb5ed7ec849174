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

interface Place {
  environment?: Record<string, string>
  /** this machine's address on a network */
  lan?: string | null
}

/** The real app over records in memory, or in `dataDir`. */
export function testApp(dataDir: string | null = null, { environment = {}, lan = null }: Place = {}): TestApp {
  const clock = { now: Date.UTC(2026, 0, 5, 9) }
  const now = () => clock.now
  const store = openStore({ dataDir, databaseUrl: undefined, now })
  const config = readConfig({ ...environment, ...(dataDir === null ? {} : { DATA_DIR: dataDir }) })
  return { app: createApp({ config, logger: pino({ level: 'silent' }), store, now, lan: () => lan }), store, clock }
}
