import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { accuracyDocument } from './accuracyDocument.js'
import { accuracyRows } from './accuracyRows.js'

describe('outside figures', () => {
  it.each(accuracyRows())('$part: $what', ({ theirs, ours, accepted }) => {
    expect(Math.abs(ours / theirs - 1)).toBeLessThanOrEqual(accepted)
  })

  it('docs/accuracy.md is what `npm run docs` writes', () => {
    const page = readFileSync(join(import.meta.dirname, '../../docs/accuracy.md'), 'utf8')
    expect(page === accuracyDocument(), 'docs/accuracy.md is stale: run npm run docs').toBe(true)
    // it reads every plate of the corpora anew
  }, 30_000)
})
