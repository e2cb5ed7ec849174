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
      ).toEqual(['clear', 'clear', 'clear'])
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
