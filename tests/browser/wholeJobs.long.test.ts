import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { withoutBrowser } from './browser.js'
import { opened, scrollsSideways } from './opened.js'
import { Walk } from './walk.js'

const page = readFileSync(join(import.meta.dirname, '../../docs/whole-jobs.md'), 'utf8')

/** What the page of figures says a walk costs, by its name: the row’s numbers. */
function told(name: string): number[] {
  const row = page.split('\n').find((line) => line.startsWith(`| ${name} |`)) ?? ''
  return row
    .split('|')
    .slice(2, -1)
    .map((cell) => Number(cell.replace(/\s/g, '')))
}

/** Every job is done without scripts, so that the figures are those of a reader, not of a network. */
describe.skipIf(withoutBrowser)('a whole job, from the first screen on', { timeout: 60_000 }, () => {
  const at = opened()

  async function walked(name: string, way: (walk: Walk) => Promise<void>): Promise<void> {
    const context = await at.browser.newContext({ viewport: { width: 1280, height: 900 }, javaScriptEnabled: false })
    const walk = new Walk(await context.newPage(), at.origin)
    await way(walk)
    expect(await scrollsSideways(walk.page)).toBe(false)
    await context.close()
    const { fields, presses, words, wide, narrow } = walk.cost
    const [mostFields = 0, mostPresses = 0, mostWords = 0, mostWide = 0, mostNarrow = 0] = told(name)
    expect([fields, presses]).toEqual([mostFields, mostPresses])
    // a word more or less, a font of another machine
    expect(words).toBeLessThanOrEqual(mostWords * 1.1)
    expect(wide).toBeLessThanOrEqual(mostWide * 1.15)
    expect(narrow).toBeLessThanOrEqual(mostNarrow * 1.15)
  }

  it('a 120 V supply of class I in Britain', () =>
    walked('a 120 V supply of class I in Britain', async (walk) => {
      await walk.check({
        country: 'UK',
        supply: 'POWER SUPPLY\nINPUT 120V AC 60Hz 1.5A\nOUTPUT 12V DC 5A\nCLASS I',
        machine: 'LABEL PRINTER\n12V DC 4A',
      })
      expect(await walk.reads()).toMatch(/Do not connect it: .*1\.92 times/)
      await walk.measure()
      await walk.press('Keep as a job')
      expect(await walk.page.textContent('h1')).toBe('Label printer')
      // a transformer for it is found: its facts go into the same job
      await walk.press('A voltage converter')
      await walk.set('converter', 'isolating')
      await walk.set('converterv', '120')
      await walk.set('converterva', '500')
      await walk.press('Save into the job')
      expect(await walk.reads()).toMatch(/Do not connect → Find out first/)
      await walk.press(/^Undo/)
      expect(await walk.reads()).toMatch(/Taken back .*Find out first → Do not connect/)
    }))

  it('a 100 V brick at a machine for 9 V in Germany', () =>
    walked('a 100 V brick at a machine for 9 V in Germany', async (walk) => {
      await walk.check({
        country: 'Deutschland',
        supply: 'ACアダプター\n入力 AC100V 50/60Hz 12VA\n出力 DC9V 600mA',
        machine: 'TAPE RECORDER\nDC 9V 300mA',
      })
      expect(await walk.reads()).toMatch(/Do not connect it: 230\s?V/)
      await walk.measure()
      await walk.press('Keep as a job')
      // another supply takes its place, in the same job
      await walk.press('The supply')
      await walk.set('supply', 'SWITCHING SUPPLY\nINPUT 100-240V~ 50/60Hz 0.3A\nOUTPUT 9V DC 1A\nCLASS II')
      await walk.press('Save into the job')
      expect(await walk.reads()).toMatch(/Do not connect → Find out first/)
    }))

  it('a supply with a selector', () =>
    walked('a supply with a selector', async (walk) => {
      await walk.check({
        country: 'Germany',
        supply: 'INPUT 115/230V AC 50/60Hz 0.8A\nOUTPUT 12V DC 3A',
        machine: 'TERMINAL\n12V DC 2A',
      })
      expect(await walk.reads()).toMatch(/selector/i)
      await walk.measure()
      await walk.set('selector', '115')
      await walk.press('Answer')
      expect(await walk.reads()).toMatch(/Do not connect it/)
      await walk.press('Keep as a job')
      await walk.press('The supply')
      await walk.set('selector', '230')
      await walk.press('Save into the job')
      expect(await walk.reads()).toMatch(/Voltage selector is set to: 115 V → 230 V/)
      expect(await walk.reads()).toMatch(/Do not connect → /)
    }))

  it('a fuse that a bigger one took the place of', () =>
    walked('a fuse that a bigger one took the place of', async (walk) => {
      await walk.check({
        country: 'Germany',
        supply: 'INPUT 230V~ 50Hz 60W\nFUSE T630mAL250V\nOUTPUT 12V DC 3A',
        machine: 'TERMINAL\n12V DC 2A',
      })
      await walk.press('Review the fuse')
      await walk.set('marking', 'T3.15AL250V')
      await walk.set('prescribed', 'T630mAL250V')
      await walk.press(/^Review/)
      await walk.measure()
      expect(await walk.reads()).toMatch(/3\.15\s?A/)
      expect(await walk.page.locator('.outcome.stop, .verdict.stop').count()).toBeGreaterThan(0)
    }))

  it('a first power-up of +5, +12 and −12 V with old capacitors', () =>
    walked('a first power-up of +5, +12 and −12 V with old capacitors', async (walk) => {
      await walk.check({
        country: 'Germany',
        supply: 'SWITCHING POWER SUPPLY\nINPUT 230V~ 50Hz 1A\nOUTPUT +5V 6A +12V 2A -12V 0.5A\nCLASS I',
        machine: 'DATA TERMINAL\n+5V 4A +12V 1A -12V 0.3A',
      })
      await walk.press('Plan the first power-up')
      await walk.set('lamp1v', '230')
      await walk.set('lamp1w', '60')
      await walk.set('years', '30')
      await walk.press(/^(Plan|Work)/)
      await walk.measure()
      await walk.press('Keep as a job')
      expect(await walk.page.textContent('h1')).toBe('Data terminal')
      await walk.press('At the machine, step by step')
      await walk.press('Done')
      await walk.press('Done')
      expect(await walk.reads()).toMatch(/of \d+/)
    }))

  it('two jobs over weeks, and a shelf', () =>
    walked('two jobs over weeks, and a shelf', async (walk) => {
      const plates = {
        country: 'Germany',
        supply: 'SWITCHING SUPPLY\nINPUT 100-240V~ 50/60Hz 0.8A\nOUTPUT 12V DC 2A\nCLASS II',
      }
      await walk.check({ ...plates, machine: 'TAPE RECORDER\n12V DC 1.2A' })
      await walk.press('Keep as a job')
      const recorder = walk.page.url().replace(/#.*/, '')
      // a bad reading, typed with its unit, and a good one behind it
      const step = `${recorder}/bench?step=look.discharge`
      await walk.page.goto(step)
      await walk.set('value', '325 V', '.step:not([hidden])')
      await walk.press('V')
      expect(await walk.reads()).toMatch(/Stopped/)
      await walk.set('text', 'The bleeder resistor was open; replaced.', '#stopped')
      await walk.press('Write the cause')
      await walk.page.goto(step)
      await walk.set('value', '3 V', '.step:not([hidden])')
      await walk.press('V')
      await walk.page.goto(recorder)
      // a part on order, expected long ago
      await walk.set('part', 'Bleeder resistor', '#part-form')
      await walk.set('state', 'ordered', '#part-form')
      await walk.set('partexpected', '2026-01-03', '#part-form')
      await walk.press('Add the part')
      await walk.check({ ...plates, machine: 'LABEL PRINTER\n12V DC 1A' })
      await walk.press('Keep as a job')
      await walk.set('note', 'A cell of the clock has leaked.', '#details-form')
      await walk.press('Save')
      expect(await walk.reads()).toMatch(/Written down: “A cell of the clock has leaked\.”/)
      await walk.page.goto(`${at.origin}/jobs`)
      await walk.measure()
      expect(await walk.reads()).toMatch(
        /Today.*Tape recorder.*Bleeder resistor: expected 2026-01-03.*late.*Label printer/,
      )
      await walk.page.goto(`${at.origin}/shelf/supplies/new`)
      await walk.set('name', 'Grey brick')
      await walk.set('supply', 'INPUT 120V 60Hz\nOUTPUT DC 12V 1A')
      await walk.press(/^(Keep|Add|Save)/)
      await walk.press('Print its tag')
      expect(await walk.reads()).toMatch(/Grey brick/)
      await walk.page.goto(recorder)
      expect(await walk.reads()).toMatch(/Waits for parts|Find out first/)
    }))
})
