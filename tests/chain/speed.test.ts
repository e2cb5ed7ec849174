import { describe, expect, it } from 'vitest'
import { assess } from '../support/told.js'
import { changed, matching, outcomesOn } from './cases.js'

const ac = changed({
  supply: { outputs: [{ kind: 'ac', voltageV: 9, currentA: 1 }], technology: 'transformer', plug: { polarity: null } },
  device: {
    inputs: [{ kind: 'ac', voltageV: 9, currentA: 0.8 }],
    regulatedNeeded: false,
    jack: { polarity: null },
  },
})

describe('speed', () => {
  const clock = (label: string) => changed({ device: { label, inputs: null } }, ac)
  it.each([
    ['60 Hz on 50 Hz', 'CLOCK 9V AC 60Hz 0.8A', ['caution']],
    ['its own frequency', 'CLOCK 9V AC 50Hz 0.8A', ['clear']],
    ['one of two', 'CLOCK 9V AC 50/60Hz 0.8A', ['clear']],
    ['no frequency printed', 'CLOCK 9V AC 0.8A', []],
    ['nothing that turns', 'MODEM 9V AC 60Hz 0.8A', []],
  ])('%s', (_, label, outcomes) => {
    expect(outcomesOn('speed', clock(label))).toEqual(outcomes)
  })
  it('says by how much: 50 / 60 = 0.833, ten minutes lost in each hour', () => {
    const finding = assess(clock('CLOCK 9V AC 60Hz 0.8A')).findings.find(({ topic }) => topic === 'speed')
    expect(finding?.title).toContain('0.833')
    expect(finding?.why).toContain('10')
  })
  // nominal frequencies agree within 1 %: 50 Hz ± 0.5 Hz
  it.each([
    [49.5, ['clear']],
    [49.4, ['caution']],
    [50.5, ['clear']],
    [50.6, ['caution']],
  ] as const)('of a clock for 50 Hz on %s Hz: %s', (frequencyHz, outcomes) => {
    const request = changed({ site: { country: null, voltageV: 230, frequencyHz } }, clock('CLOCK 9V AC 50Hz 0.8A'))
    expect(outcomesOn('speed', request)).toEqual(outcomes)
  })
  it.each([
    ['where a supply rectifies the mains first', changed({ supply: { technology: 'switch-mode' } }, ac)],
    ['where it gets direct current', matching],
    ['where no frequency is known', changed({ site: { country: null } }, ac)],
  ])('says nothing %s', (_, base) => {
    expect(outcomesOn('speed', changed({ device: { label: 'CLOCK 9V 60Hz 0.8A' } }, base))).toEqual([])
  })
})
