import { describe, expect, it } from 'vitest'
import { assess } from '../support/told.js'
import { changed, onlyFinding } from './cases.js'

/** An output that is 7 % high: it is to be measured, if the mains side lets it be. */
const high = { outputs: [{ kind: 'dc' as const, voltageV: 12.8, currentA: 2 }] }
const on120V = { input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60] } }

describe('while a stop or an open question stands on the mains side', () => {
  it('a reading under power is asked for only where none does', () => {
    const powered = (supply: object) =>
      onlyFinding('output-voltage', changed({ supply: { ...high, ...supply } })).actions.map(({ power }) => power)
    expect(powered({})).toContain('mains')
    expect(powered(on120V)).not.toContain('mains')
    expect(powered({ inlet: null })).not.toContain('mains')
  })

  it('what is left of a finding that asks for a reading alone is to wait', () => {
    const request = changed({
      supply: { ...on120V, regulated: false, technology: 'transformer', measured: { loadedV: 13.9, offLoadV: 15 } },
      device: { regulatedNeeded: false },
    })
    const waiting = assess(request).findings.filter(
      ({ outcome, actions }) => outcome !== 'clear' && actions.length === 0,
    )
    expect(waiting).toEqual([])
  })

  it('no cord set is to be bought for a supply that may not meet this mains', () => {
    const { findings } = assess(changed({ supply: on120V, cord: { plug: 'NEMA 1-15', ratedV: 125 } }))
    const asked = findings.flatMap(({ actions }) => actions.map((action) => action.do)).join('\n')
    expect(asked).not.toMatch(/cord set/)
    expect(findings.find(({ topic }) => topic === 'cord')?.outcome).toBe('stop')
  })

  it('a cord set is to be bought where it is the cord alone that does not suit', () => {
    const { findings } = assess(changed({ cord: { ratedV: 125 } }))
    const buys = findings.flatMap(({ actions }) => actions).filter((action) => action.buys === 'cord set')
    expect(buys.map((action) => action.do)).toEqual([expect.stringMatching(/whole cord set rated 250.V/)])
  })

  it.each(['inlet', 'connector'])(
    'a cord known as captive by its %s is for qualified hands, and no set to buy',
    (by) => {
      const { findings } = assess(
        changed({
          supply: { inlet: by === 'inlet' ? 'captive' : null },
          cord: { ratedV: 125, plug: 'NEMA 1-15', connector: by === 'connector' ? 'captive' : null },
        }),
      )
      const actions = findings.flatMap((finding) => finding.actions)
      expect(actions.map((action) => action.do).join('\n')).not.toMatch(/cord set/)
      expect(actions.filter(({ who }) => who === 'qualified').map((action) => action.do)).toContainEqual(
        expect.stringMatching(/led into the unit/),
      )
    },
  )
})
