// Makes the pictures of the README anew: npx tsx tests/browser/screenshots.ts
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import sharp from 'sharp'
import { examples } from '../../server/web/parts/examples.js'
import { launch, run } from './browser.js'

const save = (picture: Uint8Array, name: string, width?: number) =>
  sharp(picture)
    .resize(width === undefined ? {} : { width })
    .png({ palette: true, colours: 64 })
    .toFile(new URL(`../../docs/images/${name}`, import.meta.url).pathname)

const server = await run()
const browser = await launch()
const open = async (address: string, viewport = { width: 1200, height: 800 }): Promise<Page> => {
  const page = await browser.newPage({ viewport, colorScheme: 'light' })
  await page.goto(server.origin + address)
  await page.evaluate(`for (const part of document.querySelectorAll('details:not(.fold > *)')) part.open = false`)
  return page
}
/** A page from one element's upper edge, or its own, to the lower edge of another. */
const part = async (page: Page, last: ReturnType<Page['locator']>, first?: ReturnType<Page['locator']>) => {
  // from the top, without the sentence that goes by itself
  await page.evaluate(`scrollTo({ top: 0, behavior: 'instant' }); document.querySelector('#live').replaceChildren()`)
  const [end, start] = [await last.boundingBox(), first ? await first.boundingBox() : { y: 16 }]
  if (!end || !start) throw new Error('the page lacks what its picture shows')
  const top = Math.max(0, Math.floor(start.y - 16))
  const height = Math.ceil(end.y + end.height + 16) - top
  const { width } = page.viewportSize() ?? { width: 1200 }
  return page.screenshot({ fullPage: true, clip: { x: 0, y: top, width, height } })
}

// power chain, answer, what to do next, what was found
const check = await open(examples[2]?.address ?? '/')
await save(await part(check, check.locator('.clears')), 'check.png')

const lamps = 'lamp1v=230&lamp1w=60&lamp1n=2&years=20&bulk=68&bulkv=400'
const query = `${(examples[0]?.address ?? '').replace(/^\/?\?/, '')}&${lamps}`
const plan = await open(`/first-power?${query}`)
const stage = plan.locator('#supply-alone-fold')
await save(await part(plan, stage.locator('.drawings figure').nth(1), stage), 'first-power.png')

// a step at the machine on a phone, of a job kept from that plan, with a reading judged as it is typed
await plan.getByRole('button', { name: 'Keep as a job' }).click()
const job = new URL(plan.url()).pathname
const phone = await open(`${job}/bench?step=look.discharge`, { width: 390, height: 660 })
await phone.locator('.step:not([hidden]) [name=value]').pressSequentially('12.1')
await phone.locator('.step:not([hidden]) .judged.clear').waitFor()
await save(await phone.screenshot(), 'at-the-machine.png')

// the first sheet of the printed checklist
const folder = mkdtempSync(join(tmpdir(), 'lampline-pictures-'))
const list = await open(`${job}/checklist`)
await list.pdf({ path: join(folder, 'list.pdf'), format: 'A4', preferCSSPageSize: false })
execFileSync('pdftoppm', [
  '-r',
  '110',
  '-f',
  '1',
  '-l',
  '1',
  '-png',
  '-singlefile',
  join(folder, 'list.pdf'),
  join(folder, 'list'),
])
await save(readFileSync(join(folder, 'list.png')), 'checklist.png', 800)
rmSync(folder, { recursive: true })

await browser.close()
await server.stop()
