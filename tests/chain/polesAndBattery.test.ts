import { describe, expect, it } from 'vitest'
import type { Device, Supply } from '../../server/chain/case/request.js'
import { outcomes, type TopicName } from '../../server/chain/finding.js'
import { assess } from '../support/told.js'
import { changed } from './cases.js'

const worst = (topic: TopicName, supply: Supply, device: Device) => {
  const found = assess(changed({ supply, device })).findings.filter((finding) => finding.topic === topic)
  return outcomes.find((outcome) => found.some((one) => one.outcome === outcome)) ?? '-'
}

describe('a pole joined to earth, and a pole joined to the case', () => {
  it.each([
    ['positive', 'negative', 'unknown'],
    ['negative', 'positive', 'unknown'],
    ['negative', 'negative', '-'],
    ['none', 'negative', '-'],
    ['negative', null, '-'],
    [null, 'negative', '-'],
    // a plus on earth shorts whatever else meets the earth: care where the other side cannot, not known where nobody looked
    ['none', 'positive', 'caution'],
    ['positive', 'none', 'caution'],
    ['positive', 'positive', 'caution'],
    ['positive', null, 'unknown'],
    [null, 'positive', 'unknown'],
  ] as const)('%s of the output, %s of the machine: %s', (outputEarthed, chassis, outcome) => {
    expect(worst('isolation', { outputEarthed }, { chassis })).toBe(outcome)
  })
})

describe('a pole of which the words of one plate speak, and an entry the other side or the same', () => {
  it.each<[string, Supply, Device, string]>([
    [
      'plus printed on the supply, minus entered of the machine',
      { label: 'POSITIVE EARTH' },
      { chassis: 'negative' },
      'unknown',
    ],
    [
      'minus printed on the supply, plus entered of the machine',
      { label: 'NEGATIVE EARTH' },
      { chassis: 'positive' },
      'unknown',
    ],
    [
      'minus printed on the machine, plus entered of the supply',
      { outputEarthed: 'positive' },
      { label: 'NEGATIVE GROUND' },
      'unknown',
    ],
    [
      'plus printed on the machine, minus entered of the supply',
      { outputEarthed: 'negative' },
      { label: 'PLUS AN MASSE' },
      'unknown',
    ],
    [
      'plus printed on the supply, minus entered of it',
      { label: 'POSITIVE EARTH', outputEarthed: 'negative' },
      {},
      'unknown',
    ],
    [
      'minus printed on the supply, neither entered of it',
      { label: 'NEGATIVE EARTH', outputEarthed: 'none' },
      {},
      'unknown',
    ],
    ['plus printed on both', { label: 'POSITIVE EARTH' }, { label: 'POSITIVE EARTH' }, 'caution'],
    ['minus printed on both', { label: 'NEGATIVE EARTH' }, { label: 'NEGATIVE EARTH' }, '-'],
    [
      'minus printed on the supply, minus entered of the machine',
      { label: 'NEGATIVE EARTH' },
      { chassis: 'negative' },
      '-',
    ],
  ])('%s', (_, supply, device, outcome) => {
    expect(worst('isolation', supply, device)).toBe(outcome)
  })
})

describe('a battery in the machine', () => {
  it.each([
    ['none', '-'],
    ['primary', 'caution'],
    ['nicd', 'caution'],
    ['lithium', 'caution'],
    ['unknown', 'unknown'],
  ] as const)('%s: %s', (battery, outcome) => {
    expect(worst('charging', {}, { battery })).toBe(outcome)
  })
})
