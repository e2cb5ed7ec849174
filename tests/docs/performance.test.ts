import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { figure, rowsOf, tableOf } from '../bench/speed/measured.js'
import { targets } from '../bench/speed/targets.js'
import { markedPart, withMarkedPart } from '../support/markedPart.js'

const root = join(import.meta.dirname, '../..')
const page = readFileSync(join(root, 'docs/performance.md'), 'utf8')
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { scripts: Record<string, string> }

describe('docs/performance.md', () => {
  it('names no command that does not exist', () => {
    const named = [...page.matchAll(/`npm run ([\w-]+)/g)].map(([, name = '']) => name)
    expect(named.length).toBeGreaterThan(0)
    expect(named.filter((name) => !(name in scripts))).toEqual([])
  })

  const rows = rowsOf(markedPart(page, 'bench'))

  it.each(Object.values(targets))(
    'states what was measured of “$what”, and whether that meets the target',
    ({ what, target }) => {
      const row = rows.find((one) => one.what === what)
      expect(row?.target).toEqual(target)
      const value = row?.value ?? Number.NaN
      const met = 'atLeast' in target ? value >= target.atLeast : value <= target.atMost
      expect(row?.said).toBe(met ? 'met' : 'missed')
    },
  )

  it('says on which machine and on which day it was measured', () => {
    expect(markedPart(page, 'bench')).toMatch(
      /^Measured with `npm run bench` on \d+ cores .* Node\.js v\d+.* \d{4}-\d\d-\d\d\.$/m,
    )
  })
})

describe('the table of figures', () => {
  const one = { what: 'a thing', unit: 'ms', target: { atMost: 150 }, value: 149.6, note: 'twice' }

  it('says met and missed by the figure it prints', () => {
    expect(rowsOf(tableOf([one]))).toEqual([{ what: 'a thing', target: { atMost: 150 }, value: 150, said: 'met' }])
    expect(rowsOf(tableOf([{ ...one, value: 151 }]))[0]?.said).toBe('missed')
    expect(rowsOf(tableOf([{ ...one, value: Number.NaN }]))[0]?.said).toBe('missed')
  })

  it.each([
    [0.6125, '0.613'],
    [43.12, '43.1'],
    [20_400, '20\u00a0400'],
  ])('writes %d as %s', (value, text) => {
    expect(figure(value)).toBe(text)
  })
})

describe('a marked part of a page', () => {
  const marked = 'before\n<!-- x: begin, written by the program -->\n<!-- x: end -->\nafter\n'

  it('is written anew, again and again, and nothing around it', () => {
    const once = withMarkedPart(marked, 'x', 'one')
    expect(markedPart(once, 'x')).toBe('one')
    const twice = withMarkedPart(once, 'x', 'two')
    expect(markedPart(twice, 'x')).toBe('two')
    expect(twice.replace(/<!--[\s\S]*-->/, '')).toBe(marked.replace(/<!--[\s\S]*-->/, ''))
  })

  it('must be there', () => {
    expect(() => markedPart(marked, 'y')).toThrow('y')
  })
})
