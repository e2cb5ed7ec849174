import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'

const folder = join(import.meta.dirname, '../../server/tables')

/** The places in a value, functions aside, that could still be changed. */
const open = (value: unknown, path: string): string[] =>
  typeof value !== 'object' || value === null
    ? []
    : [
        ...(Object.isFrozen(value) ? [] : [path]),
        ...Object.entries(value).flatMap(([name, inner]) => open(inner, `${path}.${name}`)),
      ]

// values.ts hands out the other files themselves, and nobody can assign to what a file exports
it.each(readdirSync(folder).filter((file) => file !== 'values.ts'))(
  'nothing that %s hands out can be changed',
  async (file) => {
    const module = (await import(join(folder, file))) as Record<string, unknown>
    expect(Object.entries(module).flatMap(([name, value]) => open(value, name))).toEqual([])
  },
)
