import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { apiDocument } from './apiDocument.js'

it('docs/api.md is what `npm run docs` writes from the request schemas', () => {
  const page = readFileSync(join(import.meta.dirname, '../../docs/api.md'), 'utf8')
  expect(page === apiDocument(), 'docs/api.md is stale: run npm run docs').toBe(true)
})
