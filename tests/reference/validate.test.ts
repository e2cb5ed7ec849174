import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { countryRows } from '../../server/reference/mainsCountries.js'
import { plugTypes } from '../../server/reference/plugTypes.js'
import { validateReference } from '../../server/reference/validate.js'
import { sourcesIn } from '../docs/sourcesDocument.js'

const folder = join(import.meta.dirname, '../../server/reference')
const files = readdirSync(folder).filter((name) => name.endsWith('.ts'))

describe('the reference tables', () => {
  it('have no faults', () => {
    expect(validateReference()).toEqual([])
  })

  it('cannot be changed', () => {
    expect(() => Object.assign(countryRows[0] ?? {}, { name: 'x' })).toThrow(TypeError)
    expect(() => (plugTypes as unknown[]).push('x')).toThrow(TypeError)
  })

  it.each(files)('%s: every source has a title, a detail and a known kind', async (file) => {
    const sources = sourcesIn(await import(join(folder, file)))
    const wrong = sources.filter(
      ({ title, detail, kind }) =>
        title.trim() === '' || detail.trim() === '' || !['published', 'common practice', 'from memory'].includes(kind),
    )
    expect(wrong).toEqual([])
  })

  it('name a few hundred sources, of every kind', async () => {
    const modules = await Promise.all(files.map((file) => import(join(folder, file))))
    const sources = modules.flatMap((module) => sourcesIn(module))
    expect(sources.length).toBeGreaterThan(200)
    expect(new Set(sources.map(({ kind }) => kind)).size).toBe(3)
  })
})
