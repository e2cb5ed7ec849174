import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, describe, expect, it } from 'vitest'
import { hasPoppler, withoutBrowser } from './browser.js'
import { opened } from './opened.js'

const check = new URLSearchParams({
  country: 'DE',
  socket: 'F',
  supply: 'INPUT 100-240V~ 50/60Hz 0.8A\nOUTPUT 12V DC 2A\nCLASS II centre positive',
  type: 'switch-mode',
  regulated: 'yes',
  inlet: 'C8',
  plugouter: '5.5',
  pluginner: '2.1',
  machine: '12V DC 1.2A centre positive',
  needreg: 'yes',
  jackouter: '5.5',
  jackinner: '2.1',
  cordplug: 'CEE 7/16',
  cordend: 'C7',
  cordv: '250',
  corda: '2.5',
  lamp1v: '230',
  lamp1w: '60',
  lamp2v: '230',
  lamp2w: '25',
})

if (!hasPoppler && process.env.CI !== 'true')
  console.warn('Tests of printed pages are skipped: pdftoppm was not found; install poppler-utils.')

describe.skipIf(withoutBrowser || (!hasPoppler && process.env.CI !== 'true'))(
  'the printed checklist',
  { timeout: 60_000 },
  () => {
    const at = opened()
    const folder = mkdtempSync(join(tmpdir(), 'lampline-print-'))

    afterAll(() => rmSync(folder, { recursive: true, force: true }))

    async function print(format: 'A4' | 'Letter'): Promise<{ pages: string[]; images: Buffer[] }> {
      const page = await at.browser.newPage()
      await page.goto(`${at.origin}/checklist?${check}`)
      const pdf = join(folder, `${format}.pdf`)
      writeFileSync(pdf, await page.pdf({ format, preferCSSPageSize: false }))
      await page.close()
      const pages = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' }).split('\f').slice(0, -1)
      execFileSync('pdftoppm', ['-r', '50', '-gray', '-png', pdf, join(folder, format)])
      const images = pages.map((_text, index) => readFileSync(join(folder, `${format}-${index + 1}.png`)))
      return { pages, images }
    }

    it.each(['A4', 'Letter'] as const)(
      'takes two to six pages on %s, each numbered, dated and named',
      async (format) => {
        const { pages, images } = await print(format)
        expect(pages.length).toBeGreaterThanOrEqual(2)
        expect(pages.length).toBeLessThanOrEqual(6)
        // what is held in one's hands is compared with the head of the first
        expect(pages[0]).toContain('Supply’s plate')
        for (const [index, text] of pages.entries()) {
          expect(text).toContain(`Page ${index + 1} of ${pages.length}`)
          expect(text).toMatch(/\d{4}-\d{2}-\d{2} · data [0-9a-f]{12}/)
          expect(text).toContain('licensed electrician or other qualified person')
        }
        for (const image of images) {
          const { channels, isOpaque } = await sharp(image).stats()
          // ink on paper: neither a blank page nor fills that a printer would drop
          expect(isOpaque).toBe(true)
          expect(channels[0]?.mean).toBeGreaterThan(215)
          expect(channels[0]?.mean).toBeLessThan(254)
        }
      },
    )

    it('keeps a caution on the page of the line it concerns, and every line in one piece', async () => {
      const page = await at.browser.newPage({ viewport: { width: 680, height: 900 } })
      await page.emulateMedia({ media: 'print' })
      await page.goto(`${at.origin}/checklist?${check}`)
      const breaks = await page.evaluate<string[]>(
        "[...document.querySelectorAll('tbody.line')].map((line) => getComputedStyle(line).breakInside)",
      )
      expect(breaks.length).toBeGreaterThan(30)
      expect(new Set(breaks)).toEqual(new Set(['avoid']))
      // the rule to write on and the unit behind it have room in their column
      const cut = await page.evaluate<string[]>(
        "[...document.querySelectorAll('td.write')].filter((cell) => cell.scrollWidth > cell.clientWidth).map((cell) => cell.textContent)",
      )
      expect(cut).toEqual([])
      await page.close()

      const { pages } = await print('A4')
      // the last words of a caution and the first of its line, as they stand in the data
      const pairs: [string, string][] = [
        ['a residual-current device upstream', 'Have the lamp circuit ready'],
        ['Take every battery out first', 'Take out every battery'],
        ['line before this one was within its limits', 'Unplug, lamp out of the circuit'],
      ]
      const flat = pages.map((text) => text.replace(/\s+/g, ' '))
      for (const [caution, line] of pairs)
        expect(flat.some((text) => text.includes(caution) && text.includes(line))).toBe(true)
    })
  },
)
