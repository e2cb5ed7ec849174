import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, matching } from '../chain/cases.js'
import { assess, planFirstPower, reviewFuse } from '../support/told.js'
import { askedQuestions } from './questions.js'
import { deciding } from './questionsDecided.js'

describe('questions that were asked in public', () => {
  it.each(askedQuestions)('$question: $expert ($source)', ({ check, is }) => {
    const { findings, verdict } = assess(check)
    // worst first: the first of a topic is its worst
    const found = (topic: string): Outcome | undefined => findings.find((one) => one.topic === topic)?.outcome
    for (const [topic, outcome] of Object.entries(is)) expect(found(topic), topic).toBe(outcome)
    expect(verdict === 'do-not-connect').toBe(Object.values(is).includes('stop'))
    expect(verdict).not.toBe('no-conflict-found')
  })

  it.each(askedQuestions.filter(({ decides }) => decides))(
    'have what decides among the first three that are not clear, or behind what was not entered alone: $question',
    (asked) => {
      const { place, before, placeWithCord } = deciding(asked)
      expect(place).toBeGreaterThan(0)
      if (place > 3) {
        expect(before.every(({ outcome }) => outcome === 'unknown')).toBe(true)
        expect(placeWithCord <= 3).toBe(asked.listed === undefined)
      }
    },
  )
})

describe('questions about fuse-links that were asked in public', () => {
  it('a 250 V link for one of 125 V: same amperes and speed with more volts is best (mypdh.engineer)', () => {
    const asked = { position: 'mains' as const, circuit: { voltageV: 120, currentA: 1 } }
    expect(reviewFuse({ ...asked, marking: 'T2A 250V', prescribed: 'T2A 125V' }).outcome).toBe('keep')
    for (const marking of ['T3A 250V', 'T2A 32V', 'TT2A 250V'])
      expect(reviewFuse({ ...asked, marking, prescribed: 'T2A 125V' }).outcome, marking).toBe('replace')
  })
  it('T in place of F never; F in place of T fails early (adrsoundsense.co.uk)', () => {
    const asked = { position: 'mains' as const, circuit: { voltageV: 230, powerW: 200 } }
    expect(reviewFuse({ ...asked, marking: 'T2A 250V', prescribed: 'F2A 250V' }).findings[0]).toMatchObject({
      outcome: 'stop',
    })
    const quick = reviewFuse({ ...asked, marking: 'F2A 250V', prescribed: 'T2A 250V' })
    expect(quick.findings.map(({ title, why }) => `${title} ${why}`).join()).toMatch(/quicker|early/i)
    expect(quick.outcome).not.toBe('keep')
  })
})

describe('questions about first power that were asked in public', () => {
  const lamps = { lampsOnHand: [{ ratedV: 230, ratedW: 100, count: 1 }] }
  it('an old switching supply needs a load from the start, on the output it regulates by (a mailing list, April 1997)', () => {
    const outputs = [
      { kind: 'dc' as const, voltageV: 5, currentA: 20 },
      { kind: 'dc' as const, voltageV: 12, currentA: 4 },
    ]
    const check = changed({ supply: { outputs }, device: { inputs: outputs } })
    const { gates } = planFirstPower(prepareCase(check), assess(check), lamps)
    expect(gates.map(({ key }) => key)).toContain('gate.least-load-1')
  })
  it('an old brick is proved under load and warm, not by a cold reading (guitarsite.de)', () => {
    const plan = planFirstPower(prepareCase(matching), assess(matching), lamps)
    const full = plan.stages
      .find(({ name }) => name === 'dummy-load')
      ?.steps.find(({ key }) => key === 'dummy-load.rail-1-at-100')
    expect(full?.text).toMatch(/min/)
    expect(full?.stopIf).toMatch(/outside/)
  })
  it('a 450 V capacitor is reformed out of circuit through 100 kΩ or more, the drop watched (qsl.net)', () => {
    const old = { ...lamps, yearsUnused: 30, bulkF: 47e-6, bulkRatedV: 450 }
    const { gates } = planFirstPower(prepareCase(matching), assess(matching), old)
    const fit = gates.find(({ key }) => key === 'gate.reform-fit')
    expect(fit?.text).toMatch(/out of circuit/)
    expect(Number(/resistor of (\d+)\skΩ/.exec(fit?.text ?? '')?.[1])).toBeGreaterThanOrEqual(100)
    expect(gates.filter(({ key }) => /^gate\.reform-\d/.test(key)).at(-1)?.text).toMatch(/450/)
  })
})
