import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { fuzz } from './fuzz/run.js'

it('gets a sound answer to each of 1 000 requests, right, nearly right and hostile', {
  timeout: 300_000,
}, async () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'lampline-fuzz-'))
  const { faults, statuses } = await fuzz({ dataDir, seed: 20_261, count: 1000, atOnce: 4, quiet: false })
  rmSync(dataDir, { recursive: true, force: true })
  expect(faults).toEqual([])
  // each kind of answer was met, or little was tried
  for (const status of ['200', '201', '303', '404', '422']) expect(statuses).toHaveProperty(status)
})
