import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { withMarkedPart } from '../../support/markedPart.js'
import { soakMarkdown } from './report.js'
import { soak } from './run.js'

/**
 * `npm run soak -- [seconds] [requests a second]`: prints what was measured, and writes it into docs/performance.md after ten
 * minutes or more; exit code 1 on any loss or fault.
 */
const [seconds = '600', perSecond = '20'] = process.argv.slice(2)
const dataDir = mkdtempSync(join(tmpdir(), 'lampline-soak-'))

const result = await soak({
  dataDir,
  seconds: Number(seconds),
  perSecond: Number(perSecond),
  seed: 1,
  progress: (second, heapUsed) => console.error(`${second} s, heap ${(heapUsed / 2 ** 20).toFixed(0)} MB`),
})
rmSync(dataDir, { recursive: true, force: true })

const told = soakMarkdown(result)
console.log(told)
if (Number(seconds) >= 600) {
  const page = new URL('../../../docs/performance.md', import.meta.url)
  writeFileSync(page, withMarkedPart(readFileSync(page, 'utf8'), 'soak', told))
}
for (const line of [...result.lost, ...result.failed].slice(0, 40)) console.log(line)
process.exitCode = result.lost.length > 0 || result.failed.length > 0 ? 1 : 0
