import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { checkNames } from '../../server/web/forms/checkNames.js'

const page = readFileSync(new URL('../../docs/address.md', import.meta.url), 'utf8')
const documented = new Set(
  page.match(/^\| `.*?\|/gm)?.flatMap((cell) => [...cell.matchAll(/`(\w+)`/g)].map(([, name]) => name)),
)

// rows two to six are written as "`out1` … `out6`"
const told = checkNames.filter((name) => !/^(out|need)[2-6]/.test(name))

it('every parameter of a check’s address is documented', () => {
  expect(told.filter((name) => !documented.has(name))).toEqual([])
})

it('no parameter is documented that does not exist', () => {
  expect([...documented].filter((name) => name && !checkNames.includes(name))).toEqual([])
})
