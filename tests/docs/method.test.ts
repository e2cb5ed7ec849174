import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const text = readFileSync(join(import.meta.dirname, '../../docs/method.md'), 'utf8')

interface Example {
  call: string
  formula: string
  module: string
  name: string
  args: unknown[]
  printed: string
}

/** The rows of the table of formulas: `module.function`, `arguments`, result. */
const examples: Example[] = text
  .split('\n')
  .map((line) => line.split('|').map((cell) => cell.trim()))
  .flatMap((cells) => {
    const call = /^`(\w+)\.(\w+)`$/.exec(cells[3] ?? '')
    const args = /^`(.*)`$/.exec(cells[4] ?? '')
    if (!call || !args) return []
    const [, module = '', name = ''] = call
    return [
      {
        call: `${module}.${name}`,
        formula: cells[1] ?? '',
        module,
        name,
        args: JSON.parse(`[${args[1]}]`) as unknown[],
        printed: cells[5] ?? '',
      },
    ]
  })

/** Half of the last printed digit. */
function halfDigit(printed: string): number {
  const decimals = printed.split('.')[1]?.length ?? 0
  if (decimals > 0) return 0.5 * 10 ** -decimals
  // trailing zeros of a whole number are not digits that were printed
  return 0.5 * 10 ** (/0*$/.exec(printed)?.[0].length ?? 0)
}

describe('docs/method.md', () => {
  it('has a table of worked examples', () => {
    expect(examples.length).toBeGreaterThan(25)
  })

  it.each(examples)('$call with $args is $printed', async ({ module, name, args, printed }) => {
    const functions = (await import(`../../server/physics/${module}.ts`)) as Record<
      string,
      (...given: unknown[]) => number
    >
    const result = functions[name]?.(...args)
    expect(result).toBeTypeOf('number')
    expect(Math.abs((result ?? Number.NaN) - Number(printed))).toBeLessThanOrEqual(halfDigit(printed) * 1.0001)
  })
})
