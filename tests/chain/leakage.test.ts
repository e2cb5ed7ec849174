import { describe, expect, it } from 'vitest'
import type { Site } from '../../server/chain/case/request.js'
import { outcomes } from '../../server/chain/finding.js'
import { assess } from '../support/told.js'
import { changed } from './cases.js'

interface On {
  ratedA?: number | null
  others?: number | null
  own?: number | null
  source?: Site['source']
}

const findingsOn = ({ ratedA = null, others = null, own = null, source = null }: On) =>
  assess(
    changed({
      site: { residualCurrentA: ratedA, othersLeakA: others, source, voltageV: 230, frequencyHz: 50 },
      supply: { input: { voltages: [{ min: 100, max: 240 }], frequenciesHz: [50, 60], earthLeakA: own } },
    }),
  ).findings.filter(({ topic }) => topic === 'leakage')
const worst = (on: On) =>
  outcomes.find((outcome) => findingsOn(on).some((finding) => finding.outcome === outcome)) ?? 'not judged'

describe('what stands on one residual-current device', () => {
  // maker's questions and BS 7671 531.3.3: 30 % advised, half must not trip, the rating must
  it.each([
    [30e-3, 8e-3, 1e-3, 'clear', 'within what is advised'],
    [30e-3, 8e-3, 1.1e-3, 'caution', 'more than is advised'],
    [30e-3, 14e-3, 1e-3, 'caution', 'more than is advised'],
    [30e-3, 14e-3, 1.1e-3, 'caution', 'may trip'],
    [30e-3, 28e-3, 1.9e-3, 'caution', 'may trip'],
    [30e-3, 29e-3, 1e-3, 'stop', 'it trips'],
    // the same shares of 10 mA and 100 mA
    [10e-3, 2e-3, 1e-3, 'clear', 'within'],
    [10e-3, 4.5e-3, 1e-3, 'caution', 'may trip'],
    [10e-3, 9e-3, 1e-3, 'stop', 'it trips'],
    [100e-3, 29e-3, 1e-3, 'clear', 'within'],
    // class A interrupter, UL 943: must not trip under 4 mA, must at 6 mA
    [5e-3, 2.9e-3, 1e-3, 'clear', 'within'],
    [5e-3, 3.5e-3, 1e-3, 'caution', 'may trip'],
    [5e-3, 5e-3, 1e-3, 'stop', 'it trips'],
  ])('%s A, %s A of others and %s A of the unit: %s', (ratedA, others, own, outcome, words) => {
    const [finding] = findingsOn({ ratedA, others, own })
    expect(finding?.outcome).toBe(outcome)
    expect(finding?.title).toContain(words)
  })

  // facts on leakage: 18 machines of 0.5 mA, 9 of 1 mA, 2 of 3.5 mA, 1 with 0.1 µF (7.23 mA) by the 30 % rule; one more is too many
  it.each([
    [0.5e-3, 18],
    [1e-3, 9],
    [3.5e-3, 2],
    [7.23e-3, 1],
  ])('of %s A each on 30 mA, %s machines are within what is advised, one more is not', (each, most) => {
    const machines = (count: number) => worst({ ratedA: 30e-3, others: (count - 1) * each, own: each })
    expect(machines(most)).toBe('clear')
    expect(machines(most + 1)).toBe('caution')
  })

  // the minicomputer with four 0.1 µF, measured at 13 mA to 21 mA on 240 V, tripped a device of 30 mA; with four of 4.7 nF it has 0.7 mA
  it.each([
    [15.1e-3, 'caution'],
    [0.7e-3, 'clear'],
  ])('a machine of %s A alone on 30 mA: %s', (own, outcome) => {
    expect(worst({ ratedA: 30e-3, others: 0, own })).toBe(outcome)
  })

  it.each<[string, On]>([
    ['the rating', { others: 1e-3, own: 1e-3 }],
    ['what else hangs on it', { ratedA: 30e-3, own: 1e-3 }],
    ['the unit’s own', { ratedA: 30e-3, others: 1e-3 }],
  ])('is not known without %s, and says how to find out', (_, on) => {
    const [finding] = findingsOn(on)
    expect(finding?.outcome).toBe('unknown')
    expect(finding?.action).toMatch(/qualified person/)
  })

  it('trips by what is known already, whatever is missing', () => {
    expect(worst({ ratedA: 30e-3, others: 31e-3 })).toBe('stop')
    expect(worst({ ratedA: 30e-3, own: 31e-3 })).toBe('stop')
  })

  it('is no question while nothing of others was said and no device was named, nor of a device alone', () => {
    expect(worst({})).toBe('not judged')
    expect(worst({ own: 1e-3 })).toBe('not judged')
    expect(worst({ ratedA: 30e-3 })).toBe('not judged')
  })

  it('is not judged where the device sees nothing of it: behind windows of their own', () => {
    const all = { ratedA: 30e-3, others: 20e-3, own: 20e-3 }
    expect(worst(all)).toBe('stop')
    expect(worst({ ...all, source: 'isolating-transformer' })).toBe('not judged')
    expect(worst({ ...all, source: 'site-transformer' })).toBe('not judged')
    expect(worst({ ...all, source: 'two-live' })).toBe('stop')
  })

  it('takes that of a machine with its supply inside from the machine', () => {
    const { findings } = assess({
      arrangement: 'built-in',
      site: { country: 'DE', residualCurrentA: 30e-3, othersLeakA: 20e-3 },
      supply: {},
      device: { label: '230V~ 50Hz 40W', mains: { input: { earthLeakA: 3.5e-3 } } },
    })
    const found = findings.find(({ topic }) => topic === 'leakage')
    expect(found?.title.replaceAll('\u00a0', ' ')).toMatch(/^23\.5 mA leaks .* 30 mA: it may trip/)
  })
})
