import { describe, expect, it } from 'vitest'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, findingsOn, onlyFinding } from './cases.js'

/** 5 V, 2.5 A, as in the worked example of a 1.5 m lead. */
const of = (
  lead: { lengthM: number; awg?: number; areaMm2?: number } | null,
  more: Parameters<typeof changed>[0] = {},
) =>
  changed(
    more,
    changed({
      supply: { outputs: [{ kind: 'dc', voltageV: 5, currentA: 3 }], lead },
      device: { inputs: [{ kind: 'dc', voltageV: 5, currentA: 2.5 }] },
    }),
  )

describe('lead-drop', () => {
  it('is not spoken of where no lead is described', () => {
    expect(findingsOn('lead-drop', of(null))).toEqual([])
  })

  // worked: AWG 22, 52.96 mΩ/m: 0.3972 V; AWG 18: 0.1571 V; least voltage wanted 4.75 V
  it.each<{ name: string; lead: { lengthM: number; awg?: number; areaMm2?: number }; is: Outcome }>([
    { name: 'AWG 18', lead: { lengthM: 1.5, awg: 18 }, is: 'clear' },
    { name: 'AWG 22', lead: { lengthM: 1.5, awg: 22 }, is: 'caution' },
    { name: 'AWG 26', lead: { lengthM: 1.5, awg: 26 }, is: 'stop' },
    // ρ 2 L / A × 2.5 A = 0.25 V (5 %) at A = 0.5172 mm², 0.5 V (10 %) at 0.2586 mm²
    { name: 'just 5 %', lead: { lengthM: 1.5, areaMm2: 0.51724 }, is: 'clear' },
    { name: 'just over 5 %', lead: { lengthM: 1.5, areaMm2: 0.517 }, is: 'caution' },
    { name: 'just 10 %', lead: { lengthM: 1.5, areaMm2: 0.25863 }, is: 'caution' },
    { name: 'just over 10 %', lead: { lengthM: 1.5, areaMm2: 0.2586 }, is: 'stop' },
  ])('1.5 m, $name: $is', ({ lead, is }) => {
    expect(onlyFinding('lead-drop', of(lead)).outcome).toBe(is)
  })

  it('leaves what the supply itself takes of the tolerance', () => {
    const lead = { lengthM: 1.5, awg: 18 }
    expect(onlyFinding('lead-drop', of(lead, { supply: { measured: { loadedV: 4.9 } } })).outcome).toBe('caution')
    expect(onlyFinding('lead-drop', of(lead, { supply: { measured: { loadedV: 5.1 } } })).outcome).toBe('clear')
  })

  it('is not known without the conductor’s size, or the current', () => {
    expect(onlyFinding('lead-drop', of({ lengthM: 1.5 })).outcome).toBe('unknown')
    expect(
      onlyFinding('lead-drop', of({ lengthM: 1.5, awg: 18 }, { device: { inputs: [{ kind: 'dc', voltageV: 5 }] } }))
        .outcome,
    ).toBe('unknown')
    expect(onlyFinding('lead-drop', of({ lengthM: 1.5, awg: 18 }, { device: { inputs: null } })).outcome).toBe(
      'unknown',
    )
  })

  it('is not known for a machine that takes anything from 0 V up', () => {
    const device = { inputs: null, label: 'INPUT 0-12V DC 1A' }
    expect(onlyFinding('lead-drop', of({ lengthM: 1.5, awg: 18 }, { device })).outcome).toBe('unknown')
  })

  it('is worked out for each rail', () => {
    const request = of(
      { lengthM: 1, awg: 18 },
      {
        supply: {
          outputs: [
            { kind: 'dc', voltageV: 5, currentA: 3 },
            { kind: 'dc', voltageV: -12, currentA: 1 },
          ],
        },
        device: {
          inputs: [
            { kind: 'dc', voltageV: -12, currentA: 0.5 },
            { kind: 'dc', voltageV: 5, currentA: 2 },
          ],
        },
      },
    )
    expect(findingsOn('lead-drop', request)).toHaveLength(2)
  })
})
