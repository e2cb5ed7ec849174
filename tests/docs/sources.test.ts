import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { sourcesDocument } from './sourcesDocument.js'

it('docs/sources.md is what `npm run docs` writes from the tables', async () => {
  const committed = readFileSync(join(import.meta.dirname, '../../docs/sources.md'), 'utf8')
  expect(committed).toBe(await sourcesDocument())
})
