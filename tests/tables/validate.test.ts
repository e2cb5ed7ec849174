import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { countryRows } from '../../server/tables/mainsCountries.js'
import { plugTypes } from '../../server/tables/plugTypes.js'
import { faultsOfTables } from '../../server/tables/validate.js'
import { sourcesIn } from '../docs/sourcesDocument.js'

const folder = join(import.meta.dirname, '../../server/tables')
const files = readdirSync(folder).filter((name) => name.endsWith('.ts'))

describe('the reference tables', () => {
  it('have no faults', () => {
    expect(faultsOfTables()).toEqual([])
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

  it.each(files)('%s: every row and every entry with a value carries its source, none stands twice', async (file) => {
    const faults = Object.entries(await import(join(folder, file))).flatMap(([name, value]) => faultsOf(name, value))
    expect(faults).toEqual([])
  })

  it('are told where one is wrong', () => {
    const source = { title: 't', detail: 'd', kind: 'published' }
    expect(faultsOf('a', [])).toEqual(['a: has no rows'])
    expect(faultsOf('a', [{ x: 1 }])).toEqual(['a 0: has no source'])
    expect(faultsOf('a', [{ x: 1, sources: [] }])).toEqual(['a 0: has no source'])
    expect(
      faultsOf('a', [
        { x: 1, source },
        { x: 1, source },
      ]),
    ).toEqual(['a 1: stands twice'])
    expect(faultsOf('a', { value: 1 })).toEqual(['a: has no source'])
    expect(faultsOf('a', { value: Number.NaN, source })).toEqual(['a.value: is no number'])
    expect(faultsOf('a', { value: [1, Number.POSITIVE_INFINITY], source })).toEqual(['a.value.1: is no number'])
    expect(
      faultsOf('a', [
        { x: 1, source },
        { x: 2, source },
      ]),
    ).toEqual([])
  })

  it('name a few hundred sources, of every kind', async () => {
    const modules = await Promise.all(files.map((file) => import(join(folder, file))))
    const sources = modules.flatMap((module) => sourcesIn(module))
    expect(sources.length).toBeGreaterThan(200)
    expect(new Set(sources.map(({ kind }) => kind)).size).toBe(3)
  })
})

/** Lists that name what tables hold, or say how a table is read. */
const sourcedBesides = ['safetySchemes', 'gateColumns', 'gateRules', 'tables']

/** The upper end of a range of ratings: the last range may have none. */
const openAbove = /\.ratedToA$/

/** What is wrong in a table or an entry, whatever it holds; tables are found by their shape, so a new one is not forgotten. */
function faultsOf(name: string, value: unknown): string[] {
  if (typeof value === 'number') return Number.isFinite(value) || openAbove.test(name) ? [] : [`${name}: is no number`]
  if (typeof value !== 'object' || value === null) return []
  const inside = Object.entries(value).flatMap(([key, inner]) => faultsOf(`${name}.${key}`, inner))
  if (Array.isArray(value) && !name.includes('.')) return [...rowFaults(name, value), ...inside]
  return 'value' in value && !hasSource(value) ? [`${name}: has no source`, ...inside] : inside
}

function rowFaults(name: string, rows: readonly unknown[]): string[] {
  if (rows.length === 0) return [`${name}: has no rows`]
  const texts = rows.map((row) => JSON.stringify(row))
  return rows.flatMap((row, at) => [
    ...(typeof row === 'object' && !hasSource(row as object) && !sourcedBesides.includes(name)
      ? [`${name} ${at}: has no source`]
      : []),
    ...(texts.indexOf(texts[at] as string) < at ? [`${name} ${at}: stands twice`] : []),
  ])
}

const hasSource = (entry: object): boolean =>
  'source' in entry || ('sources' in entry && Array.isArray(entry.sources) && entry.sources.length > 0)
