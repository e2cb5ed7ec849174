import { describe, expect, it } from 'vitest'
import { assessCase } from '../../server/chain/assess.js'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { assess, planFirstPower } from '../support/told.js'
import { changed } from './cases.js'

const isolation = (request: CheckRequest) =>
  assess(request).findings.find(({ topic }) => topic === 'isolation')?.outcome

const pair = (kind: 'dc' | 'ac', voltageV: number, supply: object) =>
  changed({
    supply: { outputs: [{ kind, voltageV, currentA: 0.5 }], ...supply },
    device: { inputs: [{ kind, voltageV, currentA: 0.1 }], regulatedNeeded: null },
  })

// limits 60 V d.c. and 50 V a.c.; an unregulated supply of this size stands about a third above its plate with nothing connected
describe('what an output may stand at, beyond its plate', () => {
  it.each([
    ['a reading of 61 V on a plate of 59 V', pair('dc', 59, { measured: { offLoadV: 61 } }), 'unknown'],
    ['a reading of 60 V', pair('dc', 59, { measured: { offLoadV: 60 } }), undefined],
    [
      'an unregulated transformer of 50 V DC',
      pair('dc', 50, { technology: 'transformer', regulated: false }),
      'unknown',
    ],
    ['a regulated one of 50 V DC', pair('dc', 50, { technology: 'switch-mode', regulated: true }), undefined],
    [
      'an unregulated transformer of 48 V AC',
      pair('ac', 48, { technology: 'transformer', regulated: false }),
      'unknown',
    ],
    [
      'an unregulated transformer of 12 V DC',
      pair('dc', 12, { technology: 'transformer', regulated: false }),
      undefined,
    ],
  ])('%s: %s', (_, request, expected) => {
    expect(isolation(request)).toBe(expected)
  })
})

describe('a machine alone that takes what is dangerous to touch', () => {
  const alone = (kind: 'dc' | 'ac', voltageV: number) => {
    const of = prepareCase({
      ...changed({ device: { inputs: [{ kind, voltageV, currentA: 1 }] } }),
      arrangement: 'machine-only',
      supply: {},
    })
    return planFirstPower(of, assessCase(of), {}).stages
  }

  it.each([
    ['dc', 61],
    ['dc', 120],
    ['dc', 230],
    ['ac', 51],
  ] as const)('%s %d V: no stage for the reader', (kind, voltageV) => {
    expect(alone(kind, voltageV).flatMap(({ steps }) => steps)).toEqual([])
    expect(alone(kind, voltageV)[0]?.leftOut).toContain('qualified')
  })

  it('60 V DC is brought up on a bench supply', () => {
    expect(alone('dc', 60).flatMap(({ steps }) => steps).length).toBeGreaterThan(0)
  })
})
