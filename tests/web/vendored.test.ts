import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'

it('the htmx file that is served is the one of the installed package', () => {
  const served = readFileSync(new URL('../../static/vendor/htmx.min.js', import.meta.url))
  const installed = readFileSync(new URL('../../node_modules/htmx.org/dist/htmx.min.js', import.meta.url))
  expect(served.equals(installed)).toBe(true)
})
