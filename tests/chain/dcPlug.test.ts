import { describe, expect, it } from 'vitest'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, onlyFinding, outcomesOn } from './cases.js'

type Size = [outerMm: number | null, innerMm: number | null]
const of = (plug: Size, jack: Size, more: Parameters<typeof changed>[0] = {}) =>
  onlyFinding(
    'dc-plug',
    changed(
      {
        supply: { plug: { outerMm: plug[0], innerMm: plug[1] } },
        device: { jack: { outerMm: jack[0], innerMm: jack[1] } },
      },
      changed(more),
    ),
  )

describe('dc-plug', () => {
  it.each<{ plug: Size; jack: Size; is: Outcome }>([
    { plug: [5.5, 2.1], jack: [5.5, 2.1], is: 'clear' },
    { plug: [5.5, 2.1], jack: [5.7, 2.1], is: 'clear' },
    { plug: [5.5, 2.1], jack: [5.71, 2.1], is: 'stop' },
    { plug: [5.5, 2.1], jack: [5.3, 2.1], is: 'clear' },
    { plug: [5.5, 2.1], jack: [5.29, 2.1], is: 'stop' },
    { plug: [5.5, 2.0], jack: [5.5, 2.1], is: 'clear' },
    { plug: [5.5, 2.1], jack: [5.5, 2.0], is: 'clear' },
    { plug: [6.3, 3.0], jack: [6.3, 3.1], is: 'clear' },
    { plug: [5.5, 2.1], jack: [5.5, 2.2], is: 'clear' },
    { plug: [5.5, 2.1], jack: [5.5, 2.21], is: 'stop' },
    { plug: [5.5, 2.1], jack: [5.5, 2.5], is: 'stop' },
    { plug: [5.5, 2.29], jack: [5.5, 2.1], is: 'clear' },
    { plug: [5.5, 2.3], jack: [5.5, 2.1], is: 'caution' },
    { plug: [5.5, 2.5], jack: [5.5, 2.1], is: 'caution' },
    { plug: [null, 2.1], jack: [5.5, 2.1], is: 'unknown' },
    { plug: [5.5, null], jack: [5.5, 2.1], is: 'unknown' },
    { plug: [5.5, 2.1], jack: [5.5, null], is: 'unknown' },
    { plug: [5.5, null], jack: [3.5, 1.35], is: 'stop' },
    { plug: [null, 1.3], jack: [null, 2.1], is: 'stop' },
    { plug: [null, null], jack: [null, null], is: 'unknown' },
  ])('plug $plug, jack $jack: $is', ({ plug, jack, is }) => {
    expect(of(plug, jack).outcome).toBe(is)
  })

  it('says how to measure: a caliper outside, a drill shank or gauge pin inside', () => {
    expect(of([null, null], [5.5, 2.1]).action).toMatch(/caliper.*drill shank or a gauge pin/)
  })

  it('takes the size from a name', () => {
    const named = (name: string) =>
      onlyFinding('dc-plug', changed({ supply: { plug: { outerMm: null, innerMm: null, name } } })).outcome
    expect(named('5.5 x 2.1')).toBe('clear')
    expect(named('5.5 x 2.5')).toBe('caution')
    expect(named('the thin one')).toBe('unknown')
  })

  it('is a caution where a plug of a voltage-coded series is used outside its class', () => {
    // JEITA RC-5320A type 4: 10.5 V to 13.5 V; type 2: 3.15 V to 6.3 V
    const plugged = (name: string) => {
      const plug = { outerMm: null, innerMm: null, name }
      return onlyFinding('dc-plug', changed({ supply: { plug }, device: { jack: plug } }))
    }
    expect(plugged('EIAJ-04').outcome).toBe('clear')
    expect(plugged('EIAJ-02').outcome).toBe('caution')
    expect(plugged('EIAJ-02').title).toMatch(/3\.15.V to 6\.3.V/)
  })

  it('proves no voltage by a size that other series share', () => {
    // 4.0 × 1.7 is JEITA type 2 and a common size at 9 to 20 V
    expect(of([4, 1.7], [4, 1.7]).outcome).toBe('clear')
  })

  it('is a caution where the contacts carry more than their usual rating', () => {
    // 5.5 × 2.1: ratings of 2 A to 5 A are printed for jacks of this size; the lowest counts
    const drawing = (currentA: number) =>
      of([5.5, 2.1], [5.5, 2.1], {
        supply: { outputs: [{ kind: 'dc', voltageV: 12, currentA: 10 }] },
        device: { inputs: [{ kind: 'dc', voltageV: 12, currentA }] },
      }).outcome
    expect(drawing(2)).toBe('clear')
    expect(drawing(2.1)).toBe('caution')
  })
})

describe('the current through the contacts of a supply with several outputs', () => {
  it('is not taken from the first that is listed, where nothing is known of the machine', () => {
    const rails = [
      { kind: 'dc' as const, voltageV: 12, currentA: 10 },
      { kind: 'dc' as const, voltageV: 5, currentA: 0.1 },
    ]
    const on = (outputs: typeof rails) =>
      outcomesOn('dc-plug', changed({ supply: { outputs }, device: { inputs: null } }))
    expect(on(rails)).toEqual(on(rails.toReversed()))
  })
})
