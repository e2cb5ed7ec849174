// Makes the pictures of the README anew: npx tsx tests/browser/screenshots.ts
import sharp from 'sharp'
import { examples } from '../../server/web/viewModels/examples.js'
import { launch, run } from './browser.js'

const image = (name: string): string => new URL(`../../docs/images/${name}`, import.meta.url).pathname

const server = await run()
const browser = await launch()
const page = await browser.newPage({ viewport: { width: 1200, height: 800 }, colorScheme: 'light' })
await page.goto(server.origin + (examples[2]?.address ?? '/'))
await page.evaluate(`for (const part of document.querySelectorAll('details')) part.open = false`)
// down to the end of the second finding: plates, verdict, power chain, worst findings
const end = await page.locator('.finding').nth(1).boundingBox()
if (!end) throw new Error('the example shows no findings')
const picture = await page.screenshot({
  fullPage: true,
  clip: { x: 0, y: 0, width: 1200, height: Math.ceil(end.y + end.height + 16) },
})
await sharp(picture).png({ palette: true, colours: 64 }).toFile(image('check.png'))
await browser.close()
await server.stop()
