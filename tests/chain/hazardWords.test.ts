import { describe, expect, it } from 'vitest'
import { byWorst, type Verdict } from '../../server/chain/finding.js'
import { type HazardMeaning, hazardMeanings, hazardWords } from '../../server/tables/hazardWords.js'
import { some } from '../support/long.js'
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
const complete = { 'a dc pair': matching, 'an ac pair': ac }
const printed = (phrase: string): string => phrase.replaceAll('*', '').replaceAll('#', '5').replace('…', 'RX 7')
const decides = (meaning: HazardMeaning) => hazardMeanings[meaning].decides
const best: Verdict = 'no-conflict-found'

/** Every wording is asked, some thousands [ms]. */
const patience = 60_000

describe.each(Object.entries(complete))('words that decide, added to %s that is complete', (name, request) => {
  it('was without conflict', () => {
    expect(assess(request).verdict).toBe(best)
  })

  it.each(['supply', 'device'] as const)(
    'never leave it without conflict, on the plate of the %s',
    (side) => {
      const harmless = hazardWords
        .filter(({ meaning }) => decides(meaning) !== 'step')
        // a tip that turns round harms no alternating current
        .filter(({ meaning }) => name === 'a dc pair' || meaning !== 'interchangeable or reversible tips')
        .flatMap(({ words }) =>
          some(words).filter(
            (phrase) => assess(changed({ [side]: { label: printed(phrase) } }, request)).verdict === best,
          ),
        )
      expect(harmless).toEqual([])
    },
    patience,
  )

  it(
    'change nothing where they only warn',
    () => {
      // a voltage selector, a peak and an earthed minus are weighed with what else is known
      // and class II was entered, which a plate that asks for an earth denies
      const weighed: HazardMeaning[] = [
        'check or set the voltage selector',
        'peak current',
        'must be earthed (class I)',
      ]
      const warning = hazardWords.filter(({ meaning }) => decides(meaning) === 'step' && !weighed.includes(meaning))
      const changing = warning.flatMap(({ words }) =>
        words.filter((phrase) => {
          const { findings } = assess(changed({ supply: { label: printed(phrase) } }, request))
          return findings.some(({ outcome }) => outcome === 'stop' || outcome === 'unknown')
        }),
      )
      expect(changing).toEqual([])
    },
    patience,
  )
})

describe('phrases that were not read', () => {
  const phrase = 'NEVER LEAVE UNATTENDED'
  const withPhrase = changed({ supply: { label: phrase } })

  it('hold the verdict at care, and are named', () => {
    const { verdict, findings } = assess(withPhrase)
    expect(verdict).toBe('take-care')
    expect(findings.find(({ topic }) => topic === 'hazard-words')?.title).toContain(phrase)
  })

  it('do not once they were dismissed', () => {
    expect(assess({ ...withPhrase, readings: { dismissed: [phrase] } }).verdict).toBe(best)
  })

  it('never better a verdict', () => {
    for (const base of [
      matching,
      changed({ device: { inputs: null } }),
      changed({ supply: { outputs: [{ kind: 'dc', voltageV: 19, currentA: 2 }] } }),
    ])
      for (const words of ['QUAXEL', phrase, '必须保持通风良好']) {
        const outcomes = [base, changed({ supply: { label: words } }, base)].map((one) => assess(one).findings[0]!)
        expect(byWorst(outcomes[1]!, outcomes[0]!)).toBeLessThanOrEqual(0)
      }
  })
})

describe('tips that turn round', () => {
  const tips = { label: 'REVERSIBLE POLARITY PLUG' }
  it('leave the polarity to be measured', () => {
    expect(outcomesOn('polarity', changed({ supply: tips }))).toEqual(['unknown'])
  })
  it('want care once it was', () => {
    const measured = { ...tips, measured: { polarity: 'centre-positive' as const } }
    expect(outcomesOn('polarity', changed({ supply: measured }))).toEqual(['caution'])
  })
})

// from the head
describe('phrases that speak of what a topic decides', () => {
  it.each([
    ['TIP NOT POSITIVE', 'polarity'],
    ['CENTER GROUND', 'polarity'],
    ['INSULATION UNKNOWN', 'isolation'],
  ] as const)('leave it unknown though it was entered: %s', (label, topic) => {
    expect(outcomesOn(topic, changed({ supply: { label } }))).toEqual(['unknown'])
    const dismissed = { ...changed({ supply: { label } }), readings: { dismissed: [label] } }
    expect(assess(dismissed).verdict).toBe(best)
  })

  it('leave a measured polarity of the supply as it is', () => {
    const measured = changed({ supply: { label: 'TIP NOT POSITIVE', measured: { polarity: 'centre-positive' } } })
    expect(outcomesOn('polarity', measured)).toEqual(['clear'])
  })
})

describe('the name of a plug', () => {
  it('counts as words of its plate', () => {
    expect(outcomesOn('polarity', changed({ supply: { plug: { name: 'interchangeable tips' } } }))).toEqual(['unknown'])
    expect(outcomesOn('polarity', changed({ supply: { plug: { name: 'reversible plug' } } }))).toEqual(['unknown'])
  })
})

describe('a supply for LED lamps', () => {
  it('wants to be known as one that holds its voltage', () => {
    expect(outcomesOn('charging', changed({ supply: { label: 'LED POWER SUPPLY' } }))).toEqual(['unknown'])
    expect(outcomesOn('charging', changed({ supply: { label: 'LED POWER SUPPLY\nCONSTANT VOLTAGE' } }))).toEqual([
      'caution',
    ])
  })
})

describe('a picture tube that was entered', () => {
  it('is a caution, once, with and without words on the plate', () => {
    const entered = changed({ device: { mains: { pictureTube: true } } })
    expect(outcomesOn('hazard-words', entered)).toEqual(['caution'])
    expect(outcomesOn('hazard-words', changed({ device: { label: '12V⎓ 1A CRT' } }, entered))).toEqual(['caution'])
    expect(outcomesOn('hazard-words', changed({ device: { mains: { pictureTube: false } } }))).toEqual([])
  })
})
