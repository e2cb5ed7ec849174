import { describe, expect, it } from 'vitest'
import { withoutBrowser } from './browser.js'
import { opened, scrollsSideways } from './opened.js'

const whole =
  '/fuse?marking=T2AL250V&prescribed=F1.6AL250V&position=mains&volts=230&watts=60&peak=20&pulse=1+ms&shape=exponential&fault=1500&lamp=0.43&a=T1.6AH250V&b=3%2F8A+T-D+250V&c=F2AH250V'

describe.skipIf(withoutBrowser)('the fuse page in a browser', { timeout: 60_000 }, () => {
  const at = opened()

  const visit = async (address: string, width: number, scripts: boolean, dark = false) => {
    const context = await at.browser.newContext({
      viewport: { width, height: 900 },
      javaScriptEnabled: scripts,
      colorScheme: dark ? 'dark' : 'light',
    })
    const page = await context.newPage()
    await page.goto(at.origin + address)
    return { page, close: () => context.close() }
  }

  it('without scripts: fill in, press the button, read the result, at 360 px without scrolling sideways', async () => {
    const { page, close } = await visit('/fuse', 360, false)
    await page.fill('#marking', 'T5AL250V')
    await page.fill('#prescribed', 'T500mAL250V')
    await page.check('input[name=position][value=mains]')
    await page.fill('#volts', '230')
    await page.click('#fuse-form button[type=submit]')
    expect(page.url()).toContain('/fuse?marking=T5AL250V&prescribed=T500mAL250V&position=mains&volts=230')
    expect(await page.textContent('.verdict h2')).toContain('Replace the link')
    await close()
    const again = await visit(whole, 360, true)
    expect(await scrollsSideways(again.page)).toBe(false)
    await again.close()
  })

  it('with scripts: the result follows what is typed, and the address with it', async () => {
    const { page, close } = await visit(
      '/fuse?marking=T2AL250V&prescribed=T2AL250V&position=mains&volts=230',
      1280,
      true,
    )
    expect(await page.textContent('.verdict h2')).toContain('The link can stay')
    await page.fill('#marking', 'T5AL250V')
    await page.waitForSelector('.verdict h2:has-text("Replace")')
    expect(page.url()).toContain('marking=T5AL250V')
    expect(await page.textContent('#live')).toContain('Replace')
    await close()
  })

  it('on paper the lines of the drawing are told apart without colour', async () => {
    const { page, close } = await visit(whole, 1280, true)
    await page.emulateMedia({ media: 'print' })
    const strokes = await page.evaluate<string[]>(
      `[...document.querySelectorAll('svg.fuse-curve .draw, svg.fuse-curve .mark')].map((path) => getComputedStyle(path).stroke)`,
    )
    expect(new Set(strokes)).toEqual(new Set(['rgb(0, 0, 0)']))
    const dashes = await page.$$eval('svg.fuse-curve .draw[stroke-dasharray]', (paths) =>
      paths.map((path) => path.getAttribute('stroke-dasharray')),
    )
    // the prescribed link and three candidates, beside the fitted one that is drawn whole
    expect(new Set(dashes).size).toBe(4)
    await close()
  })
})
