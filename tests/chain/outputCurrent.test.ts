import { describe, expect, it } from 'vitest'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, findingsOn, onlyFinding, outcomesOn } from './cases.js'

const of = (ratedA: number | null, drawnA: number | null, currentIs: 'plate' | 'measured' | null = 'plate') =>
  onlyFinding(
    'output-current',
    changed({
      supply: { outputs: [{ kind: 'dc', voltageV: 12, currentA: ratedA }] },
      device: { inputs: [{ kind: 'dc', voltageV: 12, currentA: drawnA, currentIs }] },
    }),
  )

describe('output-current', () => {
  it.each<{ ratedA: number | null; drawnA: number | null; currentIs: 'plate' | 'measured' | null; is: Outcome }>([
    { ratedA: 1, drawnA: 1, currentIs: 'plate', is: 'clear' },
    { ratedA: 0.99, drawnA: 1, currentIs: 'plate', is: 'stop' },
    { ratedA: 5, drawnA: 1, currentIs: 'plate', is: 'clear' },
    { ratedA: 1, drawnA: 1, currentIs: null, is: 'clear' },
    { ratedA: 1.25, drawnA: 1, currentIs: 'measured', is: 'clear' },
    { ratedA: 1.24, drawnA: 1, currentIs: 'measured', is: 'caution' },
    { ratedA: 1, drawnA: 1, currentIs: 'measured', is: 'caution' },
    { ratedA: 0.99, drawnA: 1, currentIs: 'measured', is: 'stop' },
    { ratedA: null, drawnA: 1, currentIs: 'plate', is: 'unknown' },
    { ratedA: 1, drawnA: null, currentIs: 'plate', is: 'unknown' },
    { ratedA: 1, drawnA: 0, currentIs: 'plate', is: 'unknown' },
    { ratedA: null, drawnA: null, currentIs: null, is: 'unknown' },
  ])('$ratedA A for $drawnA A ($currentIs): $is', ({ ratedA, drawnA, currentIs, is }) => {
    expect(of(ratedA, drawnA, currentIs).outcome).toBe(is)
  })

  it('shows the headroom, and asks to limit the current at first power where more is available', () => {
    const finding = of(2, 1)
    expect(finding.title).toMatch(/50.%/)
    expect(finding.action).toMatch(/Limit the current/)
    expect(of(1, 1).action).toBeNull()
  })

  it('takes the higher of what a machine’s plate says in amperes and in watts', () => {
    // at the bottom of its range it may draw 15 W / 10 V = 1.5 A
    const machine = { inputs: null, label: 'DC 10-15V 1.2A 15W' }
    const on = (currentA: number) =>
      onlyFinding(
        'output-current',
        changed({ supply: { outputs: [{ kind: 'dc', voltageV: 12, currentA }] }, device: machine }),
      ).outcome
    expect(on(1.4)).toBe('stop')
    expect(on(1.5)).toBe('clear')
  })

  it('asks for the headroom of a measured current where one of several inputs on an output was measured', () => {
    const input = { kind: 'dc' as const, voltageV: 12 }
    const on = (ratedA: number) =>
      outcomesOn(
        'output-current',
        changed({
          supply: { outputs: [{ ...input, currentA: ratedA }] },
          device: {
            inputs: [
              { ...input, currentA: 1, currentIs: 'plate' },
              { ...input, currentA: 0.8, currentIs: 'measured' },
            ],
          },
        }),
      )
    // 1.8 A in all: 2.25 A are a quarter more
    expect(on(2)).toEqual(['caution', 'caution'])
    expect(on(2.25)).toEqual(['clear', 'clear'])
  })

  it('takes the current from watts where only they are printed, and the lower where both are', () => {
    const giving = (output: { currentA?: number; powerW?: number }) =>
      onlyFinding(
        'output-current',
        changed({
          supply: { outputs: [{ kind: 'dc', voltageV: 12, ...output }] },
          device: { inputs: [{ kind: 'dc', voltageV: 12, currentA: 2 }] },
        }),
      ).outcome
    expect(giving({ powerW: 24 })).toBe('clear')
    expect(giving({ powerW: 23 })).toBe('stop')
    expect(giving({ currentA: 3, powerW: 23 })).toBe('stop')
  })

  describe('of several rails', () => {
    const dc = (voltageV: number, currentA: number, powerW: number | null = null) => ({
      kind: 'dc' as const,
      voltageV,
      currentA,
      powerW,
    })
    const on = (outputs: ReturnType<typeof dc>[], inputs: [number, number][]) =>
      changed({
        supply: { outputs },
        device: { inputs: inputs.map(([voltageV, currentA]) => ({ kind: 'dc' as const, voltageV, currentA })) },
      })

    it('is answered once for each', () => {
      expect(
        outcomesOn(
          'output-current',
          on(
            [dc(5, 3), dc(12, 1)],
            [
              [5, 2],
              [12, 2],
            ],
          ),
        ),
      ).toEqual(['stop', 'clear'])
    })
    it('adds up machine rails that share one output', () => {
      const findings = findingsOn(
        'output-current',
        on(
          [dc(5, 3)],
          [
            [5, 2],
            [5, 2],
          ],
        ),
      )
      expect(findings.map(({ outcome }) => outcome)).toEqual(['stop', 'stop'])
      expect(findings[0]?.title).toMatch(/4.A/)
    })
    it('gives the hungrier machine rail the stronger of two equal outputs', () => {
      expect(
        outcomesOn(
          'output-current',
          on(
            [dc(12, 1), dc(12, 3)],
            [
              [12, 2.5],
              [12, 0.5],
            ],
          ),
        ),
      ).toEqual(['clear', 'clear'])
    })
    it('compares the power of all together where the plate gives one', () => {
      // 5 V × 3 A + 12 V × 1 A = 27 W
      expect(
        outcomesOn(
          'output-current',
          on(
            [dc(5, 3, 20), dc(12, 1)],
            [
              [5, 3],
              [12, 1],
            ],
          ),
        ),
      ).toContain('stop')
      expect(
        outcomesOn(
          'output-current',
          on(
            [dc(5, 3, 27), dc(12, 1)],
            [
              [5, 3],
              [12, 1],
            ],
          ),
        ),
      ).toEqual(['clear', 'clear'])
    })
  })
})

describe('an output too far off for a rail', () => {
  it('draws nothing from the rail it does serve', () => {
    const request = changed({
      supply: { outputs: [{ kind: 'dc', voltageV: 12, currentA: 1 }] },
      device: {
        inputs: [
          { kind: 'dc', voltageV: 12, currentA: 1 },
          { kind: 'dc', voltageV: 5, currentA: 1 },
        ],
      },
    })
    expect(outcomesOn('output-voltage', request)).toEqual(['stop', 'clear'])
    expect(outcomesOn('output-current', request)).toEqual(['clear', 'clear'])
  })
})

describe('the power of all outputs together', () => {
  const rails = [
    { kind: 'dc' as const, voltageV: 5, currentA: 20 },
    { kind: 'dc' as const, voltageV: 12, currentA: 8 },
  ]
  const of = (outputsTotalW: number | null, wants: [volts: number, amperes: number | null][], by: object = {}) =>
    changed({
      supply: { outputsTotalW, outputs: rails },
      device: { inputs: wants.map(([voltageV, currentA]) => ({ kind: 'dc' as const, voltageV, currentA, ...by })) },
    })
  it.each([
    // 5 × 18 + 12 × 7 = 174 W
    {
      totalW: 150,
      wants: [
        [5, 18],
        [12, 7],
      ],
      by: {},
      is: ['stop', 'clear', 'clear'],
    },
    {
      totalW: 174,
      wants: [
        [5, 18],
        [12, 7],
      ],
      by: {},
      is: ['clear', 'clear'],
    },
    {
      totalW: null,
      wants: [
        [5, 18],
        [12, 7],
      ],
      by: {},
      is: ['clear', 'clear'],
    },
    // measured: 5 × 10 + 12 × 5 = 110 W; 1.25 × 110 = 137.5 W
    {
      totalW: 137.5,
      wants: [
        [5, 10],
        [12, 5],
      ],
      by: { currentIs: 'measured' },
      is: ['clear', 'clear'],
    },
    {
      totalW: 137,
      wants: [
        [5, 10],
        [12, 5],
      ],
      by: { currentIs: 'measured' },
      is: ['caution', 'clear', 'clear'],
    },
    // one rail not known: too much is too much already, else it is to be found out
    {
      totalW: 80,
      wants: [
        [5, 18],
        [12, null],
      ],
      by: {},
      is: ['stop', 'unknown', 'clear'],
    },
    {
      totalW: 150,
      wants: [
        [5, 18],
        [12, null],
      ],
      by: {},
      is: ['unknown', 'clear'],
    },
  ] as { totalW: number | null; wants: [number, number | null][]; by: object; is: string[] }[])(
    '$totalW W for $wants $by: $is',
    ({ totalW, wants, by, is }) => {
      expect(outcomesOn('output-current', of(totalW, wants, by))).toEqual(is)
    },
  )
  it('stands in the working where it is enough', () => {
    const [finding] = findingsOn(
      'output-current',
      of(174, [
        [5, 18],
        [12, 7],
      ]),
    )
    expect(finding?.working.join()).toMatch(/174.W \/ \(90.W \+ 84.W\) = 1/)
  })
  it('of one output joins its finding', () => {
    expect(outcomesOn('output-current', changed({ supply: { outputsTotalW: 11.9 } }))).toEqual(['stop'])
    expect(outcomesOn('output-current', changed({ supply: { outputsTotalW: 12 } }))).toEqual(['clear'])
  })
  it('bounds what the supply takes from the mains', () => {
    // 196 W by the rails; 150 W / 0.75 / 0.6 = 333 VA, 1.25 × 333 = 417 VA
    const request = of(150, [
      [5, 1],
      [12, 1],
    ])
    request.supply.input = { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60] }
    request.converter = { kind: 'isolating', outputV: 120, ratedVA: 420 }
    expect(outcomesOn('converter', request)).toEqual(['clear'])
    request.supply.outputsTotalW = null
    expect(outcomesOn('converter', request)).toEqual(['stop'])
  })
})
