import { describe, expect, it } from 'vitest'
import type { CheckRequest } from '../../server/chain/case/request.js'
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
    ['no frequency printed', 'CLOCK 9V AC 0.8A', ['unknown']],
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

describe('speed in a machine with its supply inside', () => {
  type Mains = NonNullable<CheckRequest['device']['mains']>
  const inside = (label: string, mains: Mains, site: CheckRequest['site'] = { country: 'DE', socket: 'F' }) =>
    outcomesOn('speed', { arrangement: 'built-in', site, supply: {}, device: { label, mains } })

  // a synchronous or induction motor turns in step with the mains; one with brushes or on direct current from inside does not
  it.each<[Mains['motor'], Mains['technology'], string[]]>([
    ['synchronous', 'switch-mode', ['caution']],
    ['synchronous', 'transformer', ['caution']],
    ['induction', 'switch-mode', ['caution']],
    ['universal', 'transformer', []],
    ['dc', 'switch-mode', []],
    ['dc', 'transformer', []],
    ['none', 'transformer', []],
    [null, 'switch-mode', ['unknown']],
    [null, 'transformer', ['unknown']],
    [null, null, ['unknown']],
  ])('60 Hz on 50 Hz, the motor %s, the supply inside %s: %s', (motor, technology, outcomes) => {
    expect(inside('230V~ 60Hz 40W', { motor, technology })).toEqual(outcomes)
  })

  it.each<[string, Mains, string[]]>([
    ['230V~ 50Hz 40W', { motor: 'synchronous' }, ['clear']],
    ['230V~ 50Hz 40W', {}, []],
    ['230V~ 50/60Hz 40W', {}, []],
    ['230V~ 50/60Hz 40W', { motor: 'induction' }, ['caution']],
    // words of a motor: on the mains beside a transformer, perhaps on direct current from a switch-mode supply
    ['TAPE DECK MOTOR 230V~ 60Hz 40W', { technology: 'transformer' }, ['caution']],
    ['TAPE DECK MOTOR 230V~ 60Hz 40W', { technology: 'switch-mode' }, ['unknown']],
    ['TAPE DECK MOTOR 230V~ 60Hz 40W', { technology: 'switch-mode', motor: 'dc' }, []],
  ])('%s, %j, on 50 Hz: %s', (label, mains, outcomes) => {
    expect(inside(label, mains)).toEqual(outcomes)
  })

  it('takes the frequency of the home regions of its voltage where the plate names none: 120 V is 60 Hz', () => {
    const behind = (motor: Mains['motor'], label = '120V 40W') =>
      assess({
        arrangement: 'built-in',
        site: { country: 'DE', socket: 'F' },
        supply: {},
        device: { label, mains: { motor, technology: 'switch-mode' } },
        converter: { kind: 'autotransformer', outputV: 120, ratedVA: 500 },
      }).findings.filter(({ topic }) => topic === 'speed')
    expect(behind('synchronous')).toMatchObject([{ outcome: 'caution', title: expect.stringMatching(/0\.833/) }])
    expect(behind(null)).toMatchObject([{ outcome: 'unknown' }])
    expect(behind('dc')).toEqual([])
  })

  it('is not known where something follows the mains and one of the frequencies is not', () => {
    expect(inside('230V~ 50Hz 40W', { motor: 'synchronous' }, {})).toEqual(['unknown'])
    expect(inside('40W', { motor: 'synchronous' })).toEqual(['unknown'])
    expect(inside('40W', {})).toEqual([])
  })
})
