import { describe, expect, it } from 'vitest'
import type { Outcome, TopicName } from '../../server/chain/finding.js'
import { assess } from '../support/told.js'
import { changed } from './cases.js'

const worst = (topic: TopicName, side: 'supply' | 'device', label: string): Outcome | '-' => {
  const found = assess(changed({ [side]: { label } })).findings.filter((finding) => finding.topic === topic)
  return (
    (['stop', 'unknown', 'caution', 'clear'] as const).find((outcome) =>
      found.some((one) => one.outcome === outcome),
    ) ?? '-'
  )
}

// plates written for this list, on a case in which nothing is open
describe('a phrase that was not read', () => {
  const plate = (words: string): string => `INPUT 100-240V~ OUTPUT 12V⎓2A ${words}`

  it.each([
    '120V ONLY',
    'FOR 120V MAINS ONLY',
    'NUR 120V',
    '(11-19V)',
    '(AC)',
    'NO LOAD 18V',
    'OPEN CIRCUIT 17 V',
    'WATER DAMAGE',
    'cable cut',
    'Wasserschaden',
    'НЕИСПРАВЕН',
    '进水',
  ])('%s: unknown, as it may undo the figures', (words) => {
    expect(worst('hazard-words', 'supply', plate(words))).toBe('unknown')
  })

  it.each(['THIRD DRAWER BEHIND WINDOW', 'KEEP BEHIND GREY CABINET'])('%s: care', (words) => {
    expect(worst('hazard-words', 'supply', plate(words))).toBe('caution')
  })

  it.each(['INDOOR USE ONLY', 'MADE IN CHINA', 'MODEL AB-12', 'THERMAL CUT-OUT'])('%s: nothing', (words) => {
    expect(worst('hazard-words', 'supply', plate(words))).toBe('-')
  })

  it('is nothing where it names the only voltage there is', () => {
    expect(worst('hazard-words', 'supply', 'INPUT 230V~ OUTPUT 12V⎓2A 230V ONLY')).toBe('-')
  })

  it('of a battery on a supply leaves open whether it is a charger', () => {
    expect(worst('charging', 'supply', plate('for Ni-MH'))).toBe('unknown')
    expect(worst('charging', 'supply', plate('MODEL AB-12'))).toBe('-')
  })
})

describe('a machine whose plate names its voltage for something else', () => {
  it.each(['DC OUT 12V⎓ 1A', 'OUTPUT 12V⎓ 1A', 'AUSGANG 12V⎓', 'SORTIE 12V⎓', 'выход 12В', '出力 12V', '输出 12V'])(
    '%s, entered as what it takes: unknown',
    (label) => {
      expect(worst('output-voltage', 'device', label)).toBe('unknown')
    },
  )

  it.each(['DC IN 12V⎓ 1A', 'INPUT 12V⎓ 1A OUTPUT 5V⎓ 1A', 'INPUT 12V⎓ 1A OUTPUT 12V⎓ 0.5A'])('%s: clear', (label) => {
    expect(worst('output-voltage', 'device', label)).toBe('clear')
  })

  it.each(['LADEN 12V⎓', 'заряд 12В', '充電 12V', '12V⎓ 1A CHARGE', 'RECHARGE 12V⎓'])(
    '%s: whether it runs from that is asked',
    (label) => {
      expect(worst('charging', 'device', label)).toBe('unknown')
    },
  )

  it('asks nothing where no word of charging stands', () => {
    expect(worst('charging', 'device', 'DC IN 12V⎓ 1A')).toBe('-')
  })
})
