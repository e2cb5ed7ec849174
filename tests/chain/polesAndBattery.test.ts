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
    ['none', 'positive', '-'],
    ['positive', null, '-'],
  ] as const)('%s of the output, %s of the machine: %s', (outputEarthed, chassis, outcome) => {
    expect(worst('isolation', { outputEarthed }, { chassis })).toBe(outcome)
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
