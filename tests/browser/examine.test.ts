import type { Page } from 'playwright-core'
import { describe, expect, it, vi } from 'vitest'
import { withoutBrowser } from './browser.js'
import { opened, scrollsSideways } from './opened.js'

vi.setConfig({ testTimeout: 60_000 })

const check = {
  arrangement: 'built-in',
  site: { country: 'DE' },
  supply: {},
  device: { mains: { technology: 'switch-mode' } },
}

describe.skipIf(withoutBrowser)('on a phone, without script', () => {
  const site = opened()

  const next = async (page: Page): Promise<string> => (await page.textContent('.next-examination .do')) ?? ''
  const press = async (page: Page, words: string): Promise<void> => {
    await page.click(`.next-examination :is(button, a):text-is("${words}")`)
    expect(await scrollsSideways(page)).toBe(false)
  }

  it('leads from a lamp that stays bright through two measurements to a part on the list of the job', async () => {
    const kept = await fetch(`${site.origin}/api/jobs`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ name: 'Data terminal', check }),
    })
    const { id } = (await kept.json()) as { id: string }
    const context = await site.browser.newContext({ viewport: { width: 360, height: 740 }, javaScriptEnabled: false })
    const page = await context.newPage()
    await page.goto(`${site.origin}/jobs/${id}`)
    await page.click('a:text-is("What to examine")')
    await page.click('summary:text-is("The series lamp")')
    await page.check('#seen-lamp-bright')
    await page.click('button:text-is("What to examine")')

    expect(await page.textContent('.at-once')).toContain('Switch off within seconds')
    expect(await next(page)).toContain('diode test on the mains rectifier bridge')
    expect(await page.textContent('.next-examination .power')).toBe('Power off.')
    await press(page, 'Not so')

    expect(await next(page)).toContain('switching transistor')
    await press(page, 'Found so')

    expect(await next(page)).toContain('what it may have taken with it')
    expect(await page.textContent('.waits-for')).toContain('to be mended')
    expect(await page.textContent('#readings ~ p')).toContain('Not proved')
    await press(page, 'Done')
    // the other causes of a lamp that stays bright still lack their results
    expect(await page.textContent('.next-examination .power')).toBe('Power off.')
    expect(await page.textContent('.waits-for')).toContain('without power comes first')

    await page.goto(`${site.origin}/jobs/${id}`)
    expect(await page.textContent('main')).toContain('Switching transistor')
    const job = (await (await fetch(`${site.origin}/api/jobs/${id}`)).json()) as {
      parts: { name: string; state: string; note: string }[]
      log: { text: string }[]
    }
    // the crest of 230 V + 10 % is 358 V
    expect(job.parts).toEqual([
      expect.objectContaining({ name: 'Switching transistor', state: 'wanted', note: expect.stringMatching(/358\sV/) }),
    ])
    expect(job.log.map(({ text }) => text).join(' ')).toContain('excluded: a mains rectifier diode is shorted')
    await context.close()
  })
})
