import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Source } from '../../server/tables/source.js'

const folder = join(import.meta.dirname, '../../server/tables')

/** Files that only gather what others hold. */
const gathering = ['index.ts', 'validate.ts']

const isSource = (value: object): value is Source =>
  'title' in value && 'detail' in value && 'kind' in value && Object.keys(value).length === 3

/** Every source in a value and in everything it holds that was not visited before. */
export function sourcesIn(value: unknown, visited: Set<unknown> = new Set()): Source[] {
  if (typeof value !== 'object' || value === null) return []
  if (isSource(value)) return [value]
  if (visited.has(value)) return []
  visited.add(value)
  return Object.values(value).flatMap((inner) => sourcesIn(inner, visited))
}

interface Limit {
  readonly value: number | readonly number[]
  readonly unit: string
  readonly source: Source
}

const isLimit = (value: unknown): value is Limit =>
  typeof value === 'object' && value !== null && 'value' in value && 'unit' in value && 'source' in value

const cell = (text: string): string => text.replace(/\|/g, '\\|').replace(/\s+/g, ' ')
const row = (...cells: string[]): string => `| ${cells.map(cell).join(' | ')} |`

/** "voltageStopAbove" → "voltage stop above" */
const words = (name: string): string =>
  name.replace(/[A-Z]+(?![a-z])|[A-Z]/g, (letters) => ` ${letters.length > 1 ? letters : letters.toLowerCase()}`)

const byText = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0)

function section(file: string, module: Record<string, unknown>, visited: Set<unknown>): string[] {
  const lines = new Set(sourcesIn(module, visited).map(({ title, detail, kind }) => row(title, detail, kind)))
  if (lines.size === 0) return []
  const limits = Object.entries(module)
    .flatMap(([name, value]) => (isLimit(value) ? [{ name, ...value }] : []))
    .sort((one, other) => byText(one.name, other.name))
  return [
    `## ${words(file.replace(/\.ts$/, ''))}`,
    '',
    row('source', 'what it says, or where', 'kind'),
    '|---|---|---|',
    ...[...lines].sort(byText),
    '',
    ...(limits.length === 0
      ? []
      : [
          row('limit', 'value', 'source'),
          '|---|---|---|',
          ...limits.map(({ name, value, unit, source }) =>
            row(
              words(name.replace(/(Mm|VA|V|A|M)$/, '')),
              `${[value].flat().join(', ')}${unit === '1' ? '' : ` ${unit}`}`,
              source.title,
            ),
          ),
          '',
        ]),
  ]
}

/** docs/sources.md: every source the reference tables name, table by table. */
export async function sourcesDocument(): Promise<string> {
  const files = readdirSync(folder)
    .filter((name) => name.endsWith('.ts') && !gathering.includes(name))
    .sort(byText)
  const sections: string[] = []
  // a look-up that hands on another file's table does not list it again
  const visited = new Set<unknown>()
  for (const file of files) sections.push(...section(file, await import(join(folder, file)), visited))
  return [
    '# Sources',
    '',
    'Where the values come from that the program decides by, one section for each table in server/tables.',
    'Published: the document was read, or quoted where it says so. Common practice: a habit of the trade or a rule made here,',
    'with its reason. From memory: remembered of the document named, and not looked up.',
    '',
    'This page is written by `npm run docs` from the tables themselves; a test fails when it differs from them.',
    '',
    ...sections,
  ].join('\n')
}
