import { describe, expect, it } from 'vitest'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { changed, findingsOn, outcomesOn } from './cases.js'

type Outputs = CheckRequest['supply']['outputs']
type Inputs = CheckRequest['device']['inputs']

const switched = (settings: number[] | undefined, setV?: number): Outputs => [
  { kind: 'dc', voltageV: 12, currentA: 2, settings, setV },
]

describe('a switch on an output', () => {
  it.each<{ name: string; outputs: Outputs; is: string[] }>([
    { name: 'stands where the machine wants it', outputs: switched([9, 12, 15], 12), is: ['clear'] },
    { name: 'stands elsewhere', outputs: switched([9, 12, 15], 15), is: ['stop'] },
    { name: 'stands at what none of its settings is', outputs: switched([9, 15], 12), is: ['unknown', 'clear'] },
    { name: 'where it stands is not known', outputs: switched([9, 12, 15]), is: ['unknown', 'clear'] },
    { name: 'has no setting that serves', outputs: switched([3, 6]), is: ['unknown', 'stop'] },
    { name: 'is an adjustment, set', outputs: switched(undefined, 9), is: ['stop'] },
  ])('$name: $is', ({ outputs, is }) => {
    expect(outcomesOn('output-voltage', changed({ supply: { outputs } })).toSorted()).toEqual(is.toSorted())
  })

  it('of a negative output keeps the sign', () => {
    const request = changed({
      supply: { outputs: [{ kind: 'dc', voltageV: -12, currentA: 1, settings: [9, 12], setV: 12 }] },
      device: { inputs: [{ kind: 'dc', voltageV: -12, currentA: 0.5 }] },
    })
    expect(outcomesOn('output-voltage', request)).toEqual(['clear'])
  })
})

describe('a peak that was entered of an input', () => {
  const withPeak = (peakA: number): Inputs => [{ kind: 'dc', voltageV: 12, currentA: 1, peakA }]
  it.each([
    // the supply is rated for 2 A
    { peakA: 2, is: ['clear'] },
    { peakA: 2.1, is: ['caution', 'clear'] },
  ])('$peakA A: $is', ({ peakA, is }) => {
    expect(outcomesOn('output-current', changed({ device: { inputs: withPeak(peakA) } }))).toEqual(is)
  })
})

describe('an input that regulates inside', () => {
  // 12 V 1 A unregulated stands at about 1.2 times its plate at 0.5 A: over 1.15, below 1.5
  const onUnregulated = (inside: boolean | undefined, machine?: boolean): CheckRequest =>
    changed({
      supply: { technology: 'transformer', regulated: false, outputs: [{ kind: 'dc', voltageV: 12, currentA: 1 }] },
      device: {
        regulatedNeeded: null,
        regulatesInside: machine ?? null,
        inputs: [{ kind: 'dc', voltageV: 12, currentA: 0.5, regulatesInside: inside }],
      },
    })
  it.each([
    { name: 'it does', request: onUnregulated(true), is: 'clear' },
    { name: 'it is not known', request: onUnregulated(undefined), is: 'unknown' },
    { name: 'the machine does, this input does not', request: onUnregulated(false, true), is: 'unknown' },
    { name: 'the machine does', request: onUnregulated(undefined, true), is: 'clear' },
  ])('$name: $is', ({ request, is }) => {
    expect(findingsOn('output-voltage', request)[0]?.outcome).toBe(is)
  })
})
