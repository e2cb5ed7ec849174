import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const text = readFileSync(join(import.meta.dirname, '../../docs/method.md'), 'utf8')

interface Example {
  call: string
  formula: string
  module: string
  name: string
  /** which part of the result the row prints; empty for all of it */
  part: string[]
  args: unknown[]
  printed: string
}

/** The rows of the table of formulas: `module.function` or one part of what it answers, `arguments`, result. */
const examples: Example[] = text
  .split('\n')
  .map((line) => line.split('|').map((cell) => cell.trim()))
  .flatMap((cells) => {
    const call = /^`(\w+)\.(\w+)((?:\.\w+)*)`$/.exec(cells[3] ?? '')
    const args = /^`(.*)`$/.exec(cells[4] ?? '')
    if (!call || !args) return []
    const [, module = '', name = '', part = ''] = call
    return [
      {
        call: `${module}.${name}${part}`,
        formula: cells[1] ?? '',
        module,
        name,
        part: part.split('.').slice(1),
        args: JSON.parse(`[${args[1]}]`) as unknown[],
        printed: cells[5] ?? '',
      },
    ]
  })

/** The rows of the table of formulas that a test works out: `module.function`, example, `test`. */
const inTests = [...text.matchAll(/^\| .* \| `(\w+)\.(\w+)` \| .* \| `(tests\/\S+\.test\.ts)` \|$/gm)].map(
  ([, module = '', name = '', test = '']) => ({ call: `${module}.${name}`, module, name, test }),
)

const physics = join(import.meta.dirname, '../../server/physics')

/** Every function of server/physics with a formula set off in its doc comment. */
const withFormula = readdirSync(physics).flatMap((file) =>
  [
    ...readFileSync(join(physics, file), 'utf8').matchAll(
      /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)export (?:function|const) (\w+)/g,
    ),
  ]
    .filter(([, doc = '']) => / \* {3}\S.*=/.test(doc.split('@')[0] ?? ''))
    .map(([, , name]) => `${file.replace('.ts', '')}.${name}`),
)

/** Half of the last printed digit. */
function halfDigit(printed: string): number {
  const decimals = printed.split('.')[1]?.length ?? 0
  if (decimals > 0) return 0.5 * 10 ** -decimals
  // trailing zeros of a whole number are not digits that were printed
  return 0.5 * 10 ** (/0*$/.exec(printed)?.[0].length ?? 0)
}

describe('docs/method.md', () => {
  it('has a table of worked examples', () => {
    expect(examples.length).toBeGreaterThan(50)
    expect(examples.filter(({ printed }) => !/^-?\d+(\.\d+)?$/.test(printed))).toEqual([])
  })

  it('has a row for each formula of server/physics', () => {
    expect(withFormula.length).toBeGreaterThan(40)
    const rows = new Set([
      ...examples.map(({ module, name }) => `${module}.${name}`),
      ...inTests.map(({ call }) => call),
    ])
    expect(withFormula.filter((call) => !rows.has(call))).toEqual([])
  })

  it.each(inTests)('$call is called in $test', ({ module, name, test }) => {
    const code = readFileSync(join(import.meta.dirname, '../..', test), 'utf8')
    expect(code).toMatch(new RegExp(`import \\{[^}]*\\b${name}\\b[^}]*\\} from '[./]*/server/physics/${module}\\.js'`))
    expect(code).toMatch(new RegExp(`\\b${name}\\(`))
  })

  it.each(examples)('$call with $args is $printed', async ({ module, name, part, args, printed }) => {
    const functions = (await import(`../../server/physics/${module}.ts`)) as Record<
      string,
      (...given: unknown[]) => unknown
    >
    const result = part.reduce<unknown>(
      (whole, key) => (whole as Record<string, unknown>)[key],
      functions[name]?.(...args),
    )
    expect(result).toBeTypeOf('number')
    expect(Math.abs(Number(result) - Number(printed))).toBeLessThanOrEqual(halfDigit(printed) * 1.0001)
  })
})
