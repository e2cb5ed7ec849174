import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import * as values from '../../server/tables/values.js'

const folder = join(import.meta.dirname, '../../server/tables')

/** Files that hold nothing that is decided by. */
const withoutValues = ['faults', 'frozen', 'index', 'source', 'sourced', 'table', 'validate', 'values']

it('counts every table of the folder among the values', () => {
  const files = readdirSync(folder).map((name) => name.replace(/\.ts$/, ''))
  expect([...Object.keys(values), ...withoutValues].sort()).toEqual(files.sort())
})
