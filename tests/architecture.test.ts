import { readdirSync, readFileSync } from 'node:fs'
import { basename, dirname, join, relative } from 'node:path'
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

/** Folders that can be tested against print alone. */
const pure = ['tables', 'words', 'physics', 'plate', 'facts', 'chain', 'plan', 'examine']

const within = (folder: string): string[] => files.filter((file) => folderOf(file) === folder)

/** The code of a file, without its comments. */
const textOf = (file: string): string =>
  readFileSync(join(server, file), 'utf8').replace(/\/\*\*?[\s\S]*?\*\/|^\s*\/\/.*$/gm, '')

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

  it('go one way: web → bench → plan, examine → chain → facts → plate, physics, words; plate, physics → tables', () => {
    const wrong = local.filter(({ file, target }) => {
      const to = folderOf(relative(server, join(server, dirname(file), target)))
      const from = folderOf(file)
      return to !== from && !allowed[from]?.includes(to)
    })
    expect(wrong).toEqual([])
  })

  it('are those of the picture in docs/architecture.md, each by itself or by way of others', () => {
    const picture = readFileSync(join(server, '../docs/architecture.md'), 'utf8')
    const drawn = [...picture.matchAll(/^ {2}(\w+)(?:\[.*?\])? -(?:->|\. types only \.->) (\w+)/gm)].map(
      ([, from = '', to = '']) => [from, to] as const,
    )
    expect(drawn.length).toBeGreaterThan(10)
    const reached = (from: string): string[] =>
      drawn.filter(([one]) => one === from).flatMap(([, to]) => [to, ...reached(to)])
    const outside = Object.entries(allowed)
      .filter(([from]) => from !== '')
      .flatMap(([from, to]) => to.filter((one) => one !== '' && !reached(from).includes(one)).map((one) => [from, one]))
    expect(outside).toEqual([])
    expect(drawn.filter(([from, to]) => allowed[from] && !allowed[from].includes(to))).toEqual([])
  })

  it('lets physics take from tables only types: table values arrive as arguments', () => {
    const wrong = local.filter(
      ({ file, target, typeOnly }) => folderOf(file) === 'physics' && target.includes('../tables/') && !typeOnly,
    )
    expect(wrong).toEqual([])
  })

  it.each(['tables', 'words', 'physics', 'plate', 'chain', 'plan', 'examine'])(
    'keeps every package out of %s',
    (folder) => {
      expect(packages.filter(({ file }) => folderOf(file) === folder)).toEqual([])
    },
  )

  it('lets facts have the package for schemas alone', () => {
    const found = packages.filter(({ file }) => folderOf(file) === 'facts').map(({ target }) => target)
    expect(new Set(found)).toEqual(new Set(['zod']))
  })

  it.each(pure)('reads no clock and no chance in %s', (folder) => {
    const asked = /\bDate\.now\b|\bnew Date\(\)|\bperformance\.now\b|\bMath\.random\b|\brandomUUID\b/
    expect(within(folder).filter((file) => asked.test(textOf(file)))).toEqual([])
  })

  it.each(pure)('touches no network and no setting of the process in %s', (folder) => {
    const asked = /\bprocess\.|\bfetch\(|\bconsole\./
    expect(within(folder).filter((file) => asked.test(textOf(file)))).toEqual([])
  })
})

describe('importing a module', () => {
  it('does nothing: only main.ts acts', () => {
    const acts = /^(?:await |void |set(?:Timeout|Interval)\(|process\.|console\.|\w+\.(?:listen|on)\()/m
    expect(files.filter((file) => file !== 'main.ts' && acts.test(textOf(file)))).toEqual([])
  })

  it('leaves nothing that a call could change, but what is made once of tables that never change', () => {
    const changing = /^(?:export )?let |^(?:export )?const \w+[^=\n]*= new (?:Map|Set|WeakMap|WeakSet)(?:<.*>)?\(\)$/m
    expect(files.filter((file) => changing.test(textOf(file))).toSorted()).toEqual(madeOnce)
  })
})

/** What each keeps follows from tables alone, and is made when it is first asked for; main.ts notes that it stops. */
const madeOnce = [
  'main.ts',
  'plate/hazards.ts',
  'plate/lexicon.ts',
  'plate/openPhrases.ts',
  'plate/polarityClauses.ts',
  'plate/tellingPieces.ts',
  'tables/sockets.ts',
  'web/dataVersion.ts',
  'web/pages/reference/pageTables.ts',
  'web/parts/countryNames.ts',
]

describe('the names of files', () => {
  /** One subject has its rows, its fact, its formula, its topic, its answer, its call, its schema, its drawing: each in its layer. */
  const layers = [
    'tables',
    'facts',
    'physics',
    'chain',
    'plan',
    'examine',
    'bench',
    'web/calls',
    'web/schemas',
    'web/charts',
    'web/drawings',
  ]
  /** Of every page, of every folder, or of every layer: the same kind of thing. */
  const kinds = ['route.ts', 'view.ts', 'form.ts', 'index.ts', 'errors.ts', 'quantity.ts']

  it('differ, unless they are the same kind of thing, or one subject in its layers', () => {
    const layerOf = (file: string): string | undefined => layers.find((layer) => file.startsWith(`${layer}/`))
    const wrong = files.filter((file) => {
      const name = basename(file)
      const others = files.filter((other) => other !== file && basename(other) === name)
      return !kinds.includes(name) && others.some((other) => !layerOf(file) || layerOf(other) === layerOf(file))
    })
    expect(wrong).toEqual([])
  })
})
