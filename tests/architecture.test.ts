import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { describe, expect, it } from 'vitest'

const server = join(import.meta.dirname, '../server')

const files = readdirSync(server, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))

interface Import {
  file: string
  target: string
  typeOnly: boolean
}

/** Every `import … from '…'` and `export … from '…'` line of server/. */
const imports: Import[] = files.flatMap((file) => {
  const text = readFileSync(join(server, file), 'utf8')
  const found = text.matchAll(/^(?:import|export)\s+(type\s)?(?:[^'";]*?\sfrom\s)?'([^']+)'/gm)
  return [...found].map((match) => ({ file, target: match[2] ?? '', typeOnly: match[1] !== undefined }))
})

/** The folder under server/ that a file belongs to; '' for main.ts, app.ts and config.ts. */
const folderOf = (file: string): string => (file.includes('/') ? (file.split('/')[0] ?? '') : '')

/** What each folder may import, itself aside. */
const allowed: Record<string, string[]> = {
  tables: [],
  words: [],
  physics: ['tables'],
  plate: ['tables'],
  facts: ['plate', 'physics', 'words', 'tables'],
  chain: ['facts', 'plate', 'physics', 'words', 'tables'],
  plan: ['chain', 'facts', 'plate', 'physics', 'words', 'tables'],
  examine: ['chain', 'facts', 'plate', 'physics', 'words', 'tables'],
  store: [],
  bench: ['store', 'plan', 'examine', 'chain', 'facts', 'plate', 'physics', 'words', 'tables'],
  web: ['', 'store', 'bench', 'plan', 'examine', 'chain', 'facts', 'plate', 'physics', 'words', 'tables'],
  '': ['', 'store', 'web', 'bench', 'tables'],
}

const local = imports.filter(({ target }) => target.startsWith('.'))
const packages = imports.filter(({ target }) => !target.startsWith('.'))

describe('the arrows between folders', () => {
  it('finds the import lines at all', () => {
    expect(local.length).toBeGreaterThan(20)
    expect(packages.length).toBeGreaterThan(5)
  })

  it('knows every folder under server/', () => {
    expect(new Set(files.map(folderOf))).toEqual(new Set(Object.keys(allowed)))
  })

  it('lead to text at the edge alone: whoever tells a phrase writes pages, JSON or kept records', () => {
    const telling = local.filter(({ target, typeOnly }) => target.endsWith('words/tell.js') && !typeOnly)
    expect(telling.length).toBeGreaterThan(5)
    const below = telling.filter(({ file }) => !['web', 'bench'].includes(folderOf(file)))
    expect(below).toEqual([])
  })

  it('go one way: web → bench → plan, examine → chain → facts → plate, physics, words → tables', () => {
    const wrong = local.filter(({ file, target }) => {
      const to = folderOf(relative(server, join(server, dirname(file), target)))
      const from = folderOf(file)
      return to !== from && !allowed[from]?.includes(to)
    })
    expect(wrong).toEqual([])
  })

  it('lets physics take from tables only types: table values arrive as arguments', () => {
    const wrong = local.filter(
      ({ file, target, typeOnly }) => folderOf(file) === 'physics' && target.includes('../tables/') && !typeOnly,
    )
    expect(wrong).toEqual([])
  })

  it.each(['tables', 'physics', 'plate', 'chain', 'plan', 'examine'])('keeps every package out of %s', (folder) => {
    expect(packages.filter(({ file }) => folderOf(file) === folder)).toEqual([])
  })

  it('lets facts have the package for schemas alone', () => {
    const found = packages.filter(({ file }) => folderOf(file) === 'facts').map(({ target }) => target)
    expect(new Set(found)).toEqual(new Set(['zod']))
  })

  it.each(['tables', 'physics', 'plate', 'facts', 'chain', 'plan'])('reads no clock and no chance in %s', (folder) => {
    const wrong = files.filter(
      (file) =>
        folderOf(file) === folder &&
        /\bDate\.now\b|\bnew Date\(\)|\bperformance\.now\b|\bMath\.random\b/.test(
          readFileSync(join(server, file), 'utf8'),
        ),
    )
    expect(wrong).toEqual([])
  })
})
