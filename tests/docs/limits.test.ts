import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import { topicNames } from '../../server/chain/index.js'
import { changed } from '../chain/cases.js'
import { assess, planFirstPower } from '../support/told.js'

const text = readFileSync(join(import.meta.dirname, '../../docs/limits.md'), 'utf8')

const rows = text
  .slice(text.indexOf('| danger |'))
  .split('\n')
  .slice(2)
  .map((line) => line.split('|').map((cell) => cell.trim()))
  .filter((cells) => cells.length > 4)

/** Every step there may be: an old multi-output supply of class I behind an isolating transformer, with a tube in the machine. */
const keys = (): string[] => {
  const outputs = [
    { kind: 'dc' as const, voltageV: 5, currentA: 4 },
    { kind: 'dc' as const, voltageV: 12, currentA: 2 },
  ]
  const check = changed({
    supply: { outputs, input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [50, 60] } },
    device: { label: 'MONITOR CRT', inputs: outputs },
    converter: { kind: 'isolating', outputV: 120, ratedVA: 100 },
  })
  const old = { yearsUnused: 30, bulkF: 100e-6, bulkRatedV: 250, lampsOnHand: [{ ratedV: 120, ratedW: 60, count: 1 }] }
  const { gates, stages } = planFirstPower(prepareCase(check), assess(check), old)
  return [...gates, ...stages.flatMap(({ steps }) => steps)].map(({ key }) => key)
}

describe('docs/limits.md', () => {
  it('names fifteen dangers, each with what is not known of it', () => {
    expect(rows).toHaveLength(15)
    for (const [, danger, , , notKnown] of rows) expect(notKnown?.length, danger).toBeGreaterThan(15)
  })
  it('names topics and steps that there are', () => {
    const known = new Set<string>([...topicNames, ...keys()])
    const named = rows.flatMap(([, danger, judged, cautioned]) =>
      [...`${judged} ${cautioned}`.matchAll(/`([^`]+)`/g)].map(([, name]) => ({ danger, name: name ?? '' })),
    )
    expect(named.length).toBeGreaterThan(20)
    for (const { danger, name } of named) expect(known.has(name), `${danger}: ${name}`).toBe(true)
  }, 30_000)
})
