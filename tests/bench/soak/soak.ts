import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { soakMarkdown } from './report.js'
import { soak } from './run.js'

/** `npm run soak -- [seconds] [requests a second]`: prints a section for docs/performance.md; exit code 1 on any loss or fault. */
const [seconds = '600', perSecond = '40'] = process.argv.slice(2)
const dataDir = mkdtempSync(join(tmpdir(), 'lampline-soak-'))

const result = await soak({
  dataDir,
  seconds: Number(seconds),
  perSecond: Number(perSecond),
  seed: 1,
  progress: (second, heapUsed) => console.error(`${second} s, heap ${(heapUsed / 2 ** 20).toFixed(0)} MB`),
})
rmSync(dataDir, { recursive: true, force: true })

console.log(soakMarkdown(result))
for (const line of [...result.lost, ...result.failed].slice(0, 40)) console.log(line)
process.exitCode = result.lost.length > 0 || result.failed.length > 0 ? 1 : 0
