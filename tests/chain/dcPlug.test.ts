import { describe, expect, it } from 'vitest'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, findingsOn, onlyFinding, outcomesOn } from './cases.js'

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

describe('a name against a size', () => {
  interface Side {
    name?: string
    outerMm?: number | null
    innerMm?: number | null
  }
  const told = (plug: Side, jack: Side = { outerMm: 5.5, innerMm: 2.1 }, label = '') => {
    const supply = { plug: { outerMm: null, innerMm: null, ...plug }, ...(label === '' ? {} : { label }) }
    return findingsOn('dc-plug', changed({ supply, device: { jack: { outerMm: null, innerMm: null, ...jack } } }))
  }
  /** what is told of it: in the title, or behind a stop in the working */
  const conflict = (...of: Parameters<typeof told>) =>
    told(...of).flatMap(({ outcome, title, working, action }) => {
      const line = [title, ...working].find((one) => /but .* was entered for the/.test(one))
      return line ? [{ outcome, line, action }] : []
    })

  // sizes by JEITA RC-5320A, IEC 60130-10 and DIN 45323, as the table of plugs has them with their sources
  it.each<[string, Side]>([
    ['EIAJ-02', { outerMm: 5.5, innerMm: 2.1 }],
    ['JEITA RC-5320A type 4', { outerMm: 5.5, innerMm: 2.5 }],
    ['EIAJ RC-5320A 5', { outerMm: 5.5, innerMm: 2.1 }],
    ['RC-5320A', { outerMm: 5.5, innerMm: 2.1 }],
    ['IEC 60130-10 type A', { outerMm: 3.8, innerMm: 1.4 }],
    ['IEC 60130-10 type C', { outerMm: 5.5, innerMm: 2.1 }],
    ['DIN 45323', { outerMm: 5.5, innerMm: 2.1 }],
    ['5.5 x 2.5', { outerMm: 5.5, innerMm: 2.1 }],
    ['EIAJ-03', { outerMm: 5.5 }],
    ['EIAJ-04', { innerMm: 2.1 }],
  ])('“%s” is told against %j, of the plug as of the jack', (name, size) => {
    for (const found of [conflict({ name, ...size }), conflict({ outerMm: 5.5, innerMm: 2.1 }, { name, ...size })]) {
      expect(['unknown', 'stop']).toContain(found[0]?.outcome)
      expect(found[0]?.line).toContain(`“${name}”`)
      expect(found[0]?.action).toMatch(/caliper.*name right, or the size/)
    }
  })

  it.each<[string, Side]>([
    ['EIAJ-04', { outerMm: 5.5, innerMm: 3.4 }],
    ['EIAJ-03', { outerMm: 4.8, innerMm: 1.7 }],
    ['RC-5320A', { outerMm: 4, innerMm: 1.7 }],
    ['IEC 60130-10 type A', { outerMm: 5.5, innerMm: 2.1 }],
    ['IEC 60130-10 type A', { outerMm: 5.5, innerMm: 2.5 }],
    ['DIN 45323', { outerMm: 5, innerMm: 2.1 }],
    ['the grey one', { outerMm: 9, innerMm: 1 }],
    ['EIAJ-02', {}],
  ])('“%s” and %j are no conflict', (name, size) => {
    expect(conflict({ name, ...size })).toEqual([])
  })

  it('is not known where the size entered suits the jack', () => {
    expect(conflict({ name: 'EIAJ-02', outerMm: 5.5, innerMm: 2.1 })).toMatchObject([{ outcome: 'unknown' }])
    expect(conflict({ outerMm: 5.5, innerMm: 2.1 }, { name: 'DIN 45323', outerMm: 5.5, innerMm: 2.1 })).toMatchObject([
      { outcome: 'unknown' },
    ])
  })

  it('is told of a supply alone and of a machine alone, too', () => {
    const plug = { name: 'EIAJ-02', outerMm: 5.5, innerMm: 2.1 }
    const alone = changed({ supply: { plug }, device: { jack: plug } })
    for (const arrangement of ['supply-only', 'machine-only'] as const)
      expect(findingsOn('dc-plug', { ...alone, arrangement })).toMatchObject([{ outcome: 'unknown' }])
  })

  it('a name that stands for two bores leaves the bore open, and one that no table has leaves both', () => {
    const titles = (name: string) =>
      told({ name })
        .map(({ outcome, title }) => `${outcome}: ${title}`)
        .join('\n')
    expect(titles('IEC 60130-10 type A')).toMatch(/^unknown: .*not known: the plug’s bore$/)
    expect(titles('Unheard 7')).toMatch(/^unknown: .*not known: the plug’s outer diameter, the plug’s bore$/)
  })

  it('print is told against what was entered, by its name and by its figures', () => {
    const plate = (print: string) => `INPUT: 100-240V~ 50/60Hz 0.8A\nOUTPUT: 12V ⎓ 2.0A\nclass II\n${print}`
    expect(conflict({ outerMm: 5.5, innerMm: 2.1 }, undefined, plate('EIAJ TYPE 4'))).toHaveLength(1)
    expect(conflict({ outerMm: 5.5, innerMm: 2.1 }, undefined, plate('PLUG 5.5x2.5mm'))).toHaveLength(1)
    expect(conflict({ outerMm: 5.5, innerMm: 2.1 }, undefined, plate('PLUG 5.5x2.1mm'))).toEqual([])
    expect(conflict({ name: 'EIAJ-02' }, undefined, plate('EIAJ TYPE 4'))).toHaveLength(1)
  })
})
