import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js')

/** What axe-core finds wrong on the page as it stands: rule and elements, one a line. The script is put in past the page's policy. */
export async function violations(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.addScriptTag({ path: axePath })
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> }
    }
    const found = await axe.run()
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`)
  })
}
