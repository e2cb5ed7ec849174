import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { hasPoppler, withoutBrowser } from './browser.js'
import { opened, scrollsSideways } from './opened.js'

/** What a person types on the first screen about things of the archive, and a line that the paper of it has to have. */
const arrangements = [
  {
    have: 'separate',
    country: 'Germany',
    supply: 'INPUT 100-240V~ 50/60Hz 0.8A\nOUTPUT 12V DC 2A\nCLASS II',
    machine: '12V DC 1.2A',
    onPaper: /polarity/i,
  },
  {
    have: 'plug-in',
    country: 'United Kingdom',
    supply: 'INPUT 230V~ 50Hz 30mA\nOUTPUT 9V DC 300mA\nCLASS II',
    machine: '9V DC 200mA',
    onPaper: /polarity/i,
  },
  { have: 'built-in', country: 'Germany', supply: '', machine: '220V~ 50Hz 45W', onPaper: /live|neutral/i },
  {
    have: 'supply-only',
    country: 'Germany',
    supply: 'INPUT 230V~ 50Hz 0.2A\nOUTPUT 24V DC 1A\nCLASS II',
    machine: '',
    onPaper: /24\s*V/,
  },
] as const

describe.skipIf(withoutBrowser || (!hasPoppler && process.env.CI !== 'true'))(
  'from the first screen to paper, on a phone without scripts',
  { timeout: 60_000 },
  () => {
    const at = opened()
    const folder = mkdtempSync(join(tmpdir(), 'lampline-paper-'))
    afterAll(() => rmSync(folder, { recursive: true, force: true }))

    /** The first screen, filled in and sent. */
    async function answered({
      have,
      country,
      supply,
      machine,
    }: { [Of in 'have' | 'country' | 'supply' | 'machine']: string }) {
      const context = await at.browser.newContext({ viewport: { width: 360, height: 740 }, javaScriptEnabled: false })
      const page = await context.newPage()
      await page.goto(at.origin)
      await page.selectOption('#have', have)
      await page.fill('#country', country)
      await page.fill('#supply', supply)
      await page.fill('#machine', machine)
      await page.click('#check-form button[type=submit]')
      expect(await page.textContent('.verdict h2')).toMatch(/^(Find out first|Do not connect it|Take care|No conflict)/)
      return { page, close: () => context.close() }
    }

    it.each(arrangements)('$have', async ({ onPaper, ...typed }) => {
      const { page, close } = await answered(typed)
      await page.click('text=Print a bench checklist')
      expect(await page.locator('tbody.line').count()).toBeGreaterThan(15)
      expect(await scrollsSideways(page)).toBe(false)
      const pdf = join(folder, `${typed.have}.pdf`)
      writeFileSync(pdf, await page.pdf({ format: 'A4' }))
      const sheets = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' }).split('\f').slice(0, -1)
      expect(sheets.join(' ')).toMatch(onPaper)
      for (const sheet of sheets) expect(sheet).toContain('licensed electrician or other qualified person')
      await close()
    })

    it('machine-only: what to look for, to be printed, and nothing to put under power', async () => {
      const { page, close } = await answered({
        have: 'machine-only',
        country: 'Germany',
        supply: '',
        machine: '12V DC 1.2A',
      })
      await page.emulateMedia({ media: 'print' })
      expect(await page.textContent('#result')).toMatch(/12\s*V/)
      expect(await page.locator('#result').isVisible()).toBe(true)
      await close()
    })
  },
)
