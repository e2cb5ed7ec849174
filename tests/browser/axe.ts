import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/**
 * What axe-core finds wrong on the page as it stands: rule and elements, one a line. The script is evaluated past the
 * page's own content policy.
 *
 * @param only  rules to run; all, and that of WCAG 2.2, 2.5.8 (targets of 24 by 24 CSS pixels), unless given
 */
export async function violations(page: Page, only?: string[]): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(`${axe}; undefined`)
  const options = only ? { runOnly: only } : { rules: { 'target-size': { enabled: true } } }
  return page.evaluate(async (options) => {
    const { axe } = globalThis as unknown as {
      axe: { run: (options: object) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> }
    }
    const found = await axe.run(options)
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`)
  }, options)
}
