import { describe, expect, it } from 'vitest'
import type { CheckRequest, Converter } from '../../server/chain/case/request.js'
import { changed, onlyFinding } from './cases.js'

/** A class I supply of 120 V that takes 60 VA, behind a converter. */
const behind = (converter: Partial<Converter>): CheckRequest =>
  changed({
    supply: {
      input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [50, 60], currentA: 0.5 },
      protectionClass: 'I',
      inlet: 'C14',
    },
    cord: { plug: 'CEE 7/7', connector: 'C13', ratedA: 10, earthed: true },
    converter: { kind: 'isolating', outputV: 120, ratedVA: 100, ...converter },
  })

describe('a converter that feeds several loads', () => {
  // 60 VA × 1.25 = 75 VA; 60 + 40 = 100 VA, no reserve; 60 + 41 = 101 VA
  it.each([
    [null, 'clear'],
    [20, 'clear'],
    [40, 'caution'],
    [41, 'stop'],
  ])('%s VA beside 60 VA on 100 VA: %s', (otherLoadsVA, outcome) => {
    expect(onlyFinding('converter', behind({ otherLoadsVA })).outcome).toBe(outcome)
  })

  it('shows the sum', () => {
    expect(
      onlyFinding('converter', behind({ otherLoadsVA: 40 }))
        .working.join('\n')
        .replaceAll('\u00a0', ' '),
    ).toContain('60 VA + 40 VA of the other loads = 100 VA')
  })
})

describe('the earth of a converter', () => {
  it.each([
    [true, /converter: carries the earth/],
    [false, /converter: breaks the earth/],
    [null, /converter: not known/],
  ])('passed on: %s', (earthed, says) => {
    const { outcome, working } = onlyFinding('earthing', behind({ earthed }))
    expect(working.join('\n')).toMatch(says)
    expect(outcome).toBe(earthed === true ? 'clear' : earthed === false ? 'stop' : 'unknown')
  })
})

describe('an autotransformer', () => {
  it('says what its output may stand at above earth, where it steps far down', () => {
    expect(onlyFinding('converter', behind({ kind: 'autotransformer' })).why).toMatch(
      /230\u00a0V above earth.*120\u00a0V/,
    )
    expect(onlyFinding('converter', behind({ kind: 'isolating' })).why).not.toMatch(/above earth/)
  })
})
