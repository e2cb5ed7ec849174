import { describe, expect, it } from 'vitest'
import { dataVersion, digestOf, rulesVersion } from '../../server/web/dataVersion.js'
import { keptOutcomes, outcomesNow } from '../support/outcomes.js'

const step =
  'Outcomes or limits of a kept case changed: add one to rulesVersion in server/web/dataVersion.ts, and run `npm run docs`.'

describe('the version of the rules', () => {
  it('is stepped where an outcome or a limit changes', () => {
    const kept = keptOutcomes()
    expect(kept.cases, step).toEqual(outcomesNow().cases)
    expect(kept.rulesVersion, step).toBe(rulesVersion)
  }, 60_000)

  it('watches cases that come to every outcome and have limits', () => {
    const all = Object.values(keptOutcomes().cases)
    for (const outcome of ['stop', 'unknown', 'caution', 'clear'])
      expect(all.filter((lines) => lines.some((line) => line.endsWith(` ${outcome}`))).length, outcome).toBeGreaterThan(
        5,
      )
    expect(all.filter((lines) => lines.some((line) => /\d to \d/.test(line))).length).toBeGreaterThan(20)
  })
})

describe('the version of the data', () => {
  it('is twelve figures, and the same each time', () => {
    expect(dataVersion()).toMatch(/^[0-9a-f]{12}$/)
    expect(dataVersion()).toBe(dataVersion())
  })

  const rows = {
    rulesVersion: 1,
    values: { table: { rows: [{ volts: 230, print: /a/ }], byName: new Map([['a', 1]]) } },
  }

  it('is the same whatever functions and sources stand beside the values, and in whatever order fields are written', () => {
    const row = { source: 'print', print: /a/, volts: 230 }
    const same = { values: { table: { look: () => 1, byName: new Map([['a', 1]]), rows: [row] } }, rulesVersion: 1 }
    expect(digestOf(same)).toBe(digestOf(rows))
  })

  it.each<[what: string, changed: object]>([
    ['a figure', { ...rows, values: { table: { ...rows.values.table, rows: [{ volts: 231, print: /a/ }] } } }],
    ['a pattern', { ...rows, values: { table: { ...rows.values.table, rows: [{ volts: 230, print: /b/ }] } } }],
    ['a row', { ...rows, values: { table: { ...rows.values.table, rows: [] } } }],
    ['a look-up', { ...rows, values: { table: { ...rows.values.table, byName: new Map([['a', 2]]) } } }],
    ['the rules', { ...rows, rulesVersion: 2 }],
  ])('is another where %s changes', (_what, changed) => {
    expect(digestOf(changed)).not.toBe(digestOf(rows))
  })
})
