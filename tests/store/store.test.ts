import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { keepsPromises, type Place } from './promises.js'

const file = async (): Promise<Place> => {
  const dataDir = mkdtempSync(join(tmpdir(), 'lampline-store-'))
  return { dataDir, databaseUrl: undefined, end: async () => rmSync(dataDir, { recursive: true }) }
}

const memory = async (): Promise<Place> => ({ dataDir: null, databaseUrl: undefined, end: async () => undefined })

keepsPromises([
  ['SQLite in a file', file],
  ['SQLite in memory', memory],
])
