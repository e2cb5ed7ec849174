import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { soakMarkdown } from './soak/report.js'
import { soak } from './soak/run.js'

it('loses no acknowledged write in some seconds of mixed load and a new start', { timeout: 300_000 }, async () => {
  const dataDir = mkdtempSync(join(tmpdir(), 'lampline-soak-'))
  const result = await soak({ dataDir, seconds: 20, perSecond: 12, seed: 7 })
  rmSync(dataDir, { recursive: true, force: true })
  expect(result.failed).toEqual([])
  expect(result.lost).toEqual([])
  expect(result.acknowledged).toBeGreaterThan(5)
  expect(soakMarkdown(result)).toMatch(/^`npm run soak -- [\s\S]+\| all \| 240 \|/)
})
