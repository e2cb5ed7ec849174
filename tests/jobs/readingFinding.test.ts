import { describe, expect, it } from 'vitest'
import type { ReadingLimits } from '../../server/bench/jobs/job.js'
import { readingFinding } from '../../server/bench/jobs/readingFinding.js'
import type { TopicName } from '../../server/chain/finding.js'
import type { Link } from '../../server/facts/fact.js'
import { inUnit } from '../../server/words/unit.js'

const limits = (unit: string, low: number | null, high: number | null, stopIf: string | null = null): ReadingLimits =>
  ({ text: 'Measure.', unit, low, high, stopIf }) as ReadingLimits

describe('a reading of the bench', () => {
  it.each<[link: Link, unit: string, topic: TopicName]>([
    ['cord', 'Ω', 'earthing'],
    ['cord', 'mΩ', 'earthing'],
    ['inlet', 'MΩ', 'isolation'],
    ['machine', 'Ω', 'output-current'],
    ['machine', 'kohm', 'output-current'],
    ['machine', 'mA', 'output-current'],
    ['machine', 'W', 'output-current'],
    ['source', 'V', 'mains-voltage'],
    ['supply', 'V', 'output-voltage'],
    ['supply', 'mV', 'output-voltage'],
    ['plug', 'mm', 'dc-plug'],
  ])('of the %s in %s is about %s', (link, unit, topic) => {
    const step = { ...limits(unit, 0, 2), link }
    expect(readingFinding({ key: 'x', value: 1, unit }, step).topic).toBe(topic)
  })

  it.each([
    [350, 'mA', 'A', 0.35],
    [0.35, 'A', 'mA', 350],
    [4.7, 'kohm', 'Ω', 4700],
    [2, 'MΩ', 'kΩ', 2000],
    [68, 'µF', 'uF', 68],
    [230, 'V', 'V', 230],
    [12, 'V', 'A', null],
    [60, 'W', 'VA', null],
    [3, 'mm', 'm', null],
  ])('%d %s is, in %2$s: %d', (value, given, wanted, is) => {
    const converted = inUnit(value, given, wanted)
    if (is === null) expect(converted).toBeNull()
    else expect(converted).toBeCloseTo(is, 9)
  })

  it.each([
    ['at the least', 11.4, null, 'clear'],
    ['at the most', 12.6, null, 'clear'],
    ['below the least', 11.39, null, 'caution'],
    ['above the most', 12.61, null, 'caution'],
    ['above the most, where the plan says to stop', 12.61, 'it is more', 'stop'],
  ])('%s of its limits, %d V: %3$s', (_name, value, stopIf, outcome) => {
    const given = { key: 'supply-alone.off-load-1', value, unit: 'V' }
    expect(readingFinding(given, limits('V', 11.4, 12.6, stopIf)).outcome).toBe(outcome)
  })

  it('is not judged without a step or without a limit', () => {
    const given = { key: 'x', value: 1, unit: 'V' }
    expect(readingFinding(given, null).outcome).toBe('unknown')
    expect(readingFinding(given, limits('V', null, null)).outcome).toBe('unknown')
    expect(() => readingFinding(given, limits('A', 0, 1))).toThrow(RangeError)
  })
})
