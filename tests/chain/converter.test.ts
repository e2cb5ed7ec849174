import { describe, expect, it } from 'vitest'
import type { CheckRequest } from '../../server/chain/case/request.js'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, findingsOn, onlyFinding } from './cases.js'

/** A 120 V supply of 60 VA (120 V × 0.5 A) behind a converter. */
const behind = (converter: CheckRequest['converter'], input: object = { currentA: 0.5 }) =>
  changed({
    supply: { input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [50, 60], currentA: null, ...input } },
    converter,
  })

describe('converter', () => {
  it.each<{ name: string; ratedVA: number; is: Outcome }>([
    { name: '1.25 times', ratedVA: 75, is: 'clear' },
    { name: 'just under 1.25 times', ratedVA: 74.9, is: 'caution' },
    { name: 'just what it takes', ratedVA: 60, is: 'caution' },
    { name: 'just under what it takes', ratedVA: 59.9, is: 'stop' },
  ])('of $name what the supply takes: $is', ({ ratedVA, is }) => {
    expect(onlyFinding('converter', behind({ kind: 'isolating', outputV: 120, ratedVA })).outcome).toBe(is)
  })

  // input VA, worked by hand; the converter is rated at exactly 1.25 times
  it.each<{ name: string; input: object; needsVA: number; technology?: 'transformer' }>([
    { name: 'VA on the plate come first', input: { powerVA: 40, currentA: 0.5, powerW: 10 }, needsVA: 50 },
    {
      name: 'amperes times the lowest voltage of a wide plate',
      input: { voltages: [{ min: 100, max: 240 }], currentA: 0.5 },
      needsVA: 62.5,
    },
    { name: 'watts over 0.6 of a switch-mode supply', input: { powerW: 30 }, needsVA: 62.5 },
    { name: 'watts over 0.8 of a transformer supply', input: { powerW: 32 }, needsVA: 50, technology: 'transformer' },
    { name: 'output 24 W over 0.75 and 0.6', input: {}, needsVA: 66.7 },
  ])('takes the input power from: $name', ({ input, needsVA, technology }) => {
    const request = (ratedVA: number) =>
      changed(
        { supply: { technology: technology ?? 'switch-mode' } },
        behind({ kind: 'isolating', outputV: 120, ratedVA }, input),
      )
    expect(onlyFinding('converter', request(needsVA)).outcome).toBe('clear')
    expect(onlyFinding('converter', request(needsVA - 0.2)).outcome).toBe('caution')
  })

  it('of the electronic kind is a stop with any supply', () => {
    expect(onlyFinding('converter', behind({ kind: 'electronic', outputV: 120, ratedVA: 2000 })).outcome).toBe('stop')
    expect(onlyFinding('converter', behind({ kind: 'electronic', outputV: null, ratedVA: null })).outcome).toBe('stop')
  })

  it('of the autotransformer kind is told not to isolate', () => {
    expect(onlyFinding('converter', behind({ kind: 'autotransformer', outputV: 120, ratedVA: 100 })).why).toMatch(
      /not isolate/,
    )
  })

  it.each<{ name: string; converter: CheckRequest['converter']; input?: object }>([
    { name: 'kind', converter: { kind: null, outputV: 120, ratedVA: 100 } },
    { name: 'rating', converter: { kind: 'isolating', outputV: 120, ratedVA: null } },
    { name: 'output voltage', converter: { kind: 'isolating', outputV: null, ratedVA: 100 } },
  ])('is not known without its $name', ({ converter }) => {
    expect(onlyFinding('converter', behind(converter)).outcome).toBe('unknown')
  })

  it('is not known where the supply’s power is not', () => {
    const request = changed(
      { supply: { outputs: null } },
      behind({ kind: 'isolating', outputV: 120, ratedVA: 100 }, {}),
    )
    expect(onlyFinding('converter', request).outcome).toBe('unknown')
  })

  it('is asked for, with size and voltage, where the mains stops the supply and none is described', () => {
    const finding = onlyFinding('converter', behind(null))
    expect(finding.outcome).toBe('unknown')
    expect(finding.title).toMatch(/from 230.V to 120.V, 75.VA/)
  })

  it('is not spoken of where none is used or needed', () => {
    expect(findingsOn('converter', changed({}))).toEqual([])
    expect(findingsOn('converter', changed({ supply: { input: null } }))).toEqual([])
  })

  it('is not spoken of where the selector only stands wrong, or the unit takes dc', () => {
    expect(
      findingsOn(
        'converter',
        changed({
          supply: {
            input: {
              voltages: [
                { min: 115, max: 115 },
                { min: 230, max: 230 },
              ],
              selectorV: 115,
            },
          },
        }),
      ),
    ).toEqual([])
    expect(
      findingsOn('converter', changed({ supply: { input: null, label: 'INPUT 12V DC OUTPUT 5V DC 1A' } })),
    ).toEqual([])
  })
})

describe('a converter and the flux of a transformer behind it', () => {
  // the converter keeps the 50 Hz of the place: r = (V / 50) / (120 / 60) = V / 100
  it.each([
    [100, 'clear', /1 times the plate’s flux/],
    [110, 'caution', /1\.1 times the plate’s flux/],
    [120, 'stop', /1\.2 times the plate’s flux/],
  ] as const)('%d V of it, for 120 V 60 Hz: %s', (outputV, outcome, title) => {
    const request = changed({
      supply: { technology: 'transformer', input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60] } },
      converter: { kind: 'isolating', outputV, ratedVA: 300 },
    })
    const finding = onlyFinding('mains-frequency', request)
    expect(finding.outcome).toBe(outcome)
    expect(finding.title).toMatch(title)
    expect(finding.working.join()).toMatch(/r = 1 at .* = 100/)
  })
})
