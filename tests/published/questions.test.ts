import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import type { Outcome } from '../../server/chain/finding.js'
import { reform } from '../../server/plan/bench/reform.js'
import { tell } from '../../server/words/tell.js'
import { changed, matching } from '../chain/cases.js'
import { assess, composeChecklist, planFirstPower, reviewFuse } from '../support/told.js'
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
    expect(Number(/through (\d+)\skΩ/.exec(fit?.text ?? '')?.[1])).toBeGreaterThanOrEqual(100)
    expect(gates.filter(({ key }) => /^gate\.reform-\d/.test(key)).at(-1)?.text).toMatch(/450/)
  })
})

describe('questions about a machine with its supply inside that were asked in public', () => {
  const inside = (mains: NonNullable<CheckRequest['device']['mains']>): CheckRequest => ({
    arrangement: 'built-in',
    site: { country: 'US', socket: 'B' },
    supply: {},
    device: {
      label: '120V 60Hz 60W FUSE T1AL250V',
      mains: { protectionClass: 'I', inlet: 'C14', motor: 'none', ...mains },
    },
    cord: { plug: 'NEMA 5-15', connector: 'C13', ratedV: 125, ratedA: 10, earthed: true, plugFitted: 'moulded' },
  })
  const planOf = (request: CheckRequest) => {
    const of = prepareCase(request)
    return planFirstPower(of, assess(request), { lampsOnHand: [{ ratedV: 120, ratedW: 100, count: 2 }] })
  }
  const gateOf = (key: string) => planOf(inside({ technology: 'transformer' })).gates.find((gate) => gate.key === key)

  it('a capacitor from the mains to the chassis, and a switch that turns the poles round, come out (guitarscanada.com)', () => {
    expect(gateOf('gate.chassis-capacitors')).toMatchObject({
      who: 'qualified',
      text: expect.stringMatching(/to the chassis, and a switch that turns .* taken out of circuit/),
      expect: expect.stringMatching(/Y2 and 4\.7.nF at most/),
    })
  })
  it('switch and fuse-link both go into the line conductor, else a blown link leaves it live (merwinmusic.com)', () => {
    expect(gateOf('gate.line-switched')).toMatchObject({
      who: 'qualified',
      expect: expect.stringMatching(/both in the line conductor/),
      stopIf: expect.stringMatching(/leaves the inside live/),
    })
  })
  it('a flash and then dim is no short; bright that stays is one: switch off (antiqueradio.org)', () => {
    const steps = planOf(inside({ technology: 'transformer', fuse: 'T1AL250V' })).stages.flatMap((stage) => stage.steps)
    const on = steps.find(({ key }) => key === 'inside-stripped.switch-on')
    expect(on?.expect).toMatch(/a flash under one second, then dark/)
    expect(on?.stopIf).toMatch(/still bright after .*unplug/)
  })
  it('a 6 A link of 120 V and 700 W that blew: the cause first, then the prescription; 5.8 A makes 6 A barely enough (nonsolonews.net)', () => {
    const { findings, required, outcome } = reviewFuse({
      marking: '6A',
      position: 'mains',
      circuit: { voltageV: 120, powerW: 700 },
      blown: true,
    })
    expect(outcome).toBe('find-out-first')
    expect(required.currentA).toBeCloseTo(5.83, 2)
    expect(findings[0]?.action).toMatch(/Find the cause first/)
    expect(findings.map(({ action }) => action).join()).toMatch(/Look beside the holder/)
  })
  it('a variable transformer is good for a transformer; a switch-mode supply starts at 85 V to 90 V all at once (classiccmp.org)', () => {
    const told = (technology: 'transformer' | 'switch-mode') =>
      planOf(inside({ technology, fuse: 'T1AL250V' }))
        .stages.flatMap(({ figures }) => figures)
        .find(({ label }) => /variable transformer/i.test(label))
    expect(told('transformer')?.working).toMatch(/raised by 5.V to 10.V a step/)
    expect(told('switch-mode')?.working).toMatch(/starts all at once.* to 90.V/)
  })
  // sources differ by a factor of three: three times what is still plugged in is taken, and what equal watts do is said
  it('a lamp of about what the unit takes, asked three times that; one that is too small glows anyway (hackaday.com)', () => {
    const request = inside({ technology: 'transformer', fuse: 'T1AL250V' })
    const of = prepareCase(request)
    const planned = (ratedW: number) =>
      planFirstPower(of, assess(request), { idleW: 20, lampsOnHand: [{ ratedV: 120, ratedW, count: 1 }] }).stages
    const rule = planned(60)[0]?.figures.find(({ label }) => /rule of 3 times/.test(label))
    expect(rule?.value).toBe('60\u00a0W')
    expect(rule?.working).toMatch(/equal watts would leave about 60.% of the mains/)
    expect(planned(25)[1]?.leftOut).toMatch(/would starve the whole machine, .* the lamp tells nothing/)
  })
  it('a spare is powered about once a year for some hours, after a long rest from a lower voltage (a mailing list, January 2020)', () => {
    const request = inside({ technology: 'transformer', fuse: 'T1AL250V' })
    const assessment = assess(request)
    const { stages } = composeChecklist({ ...prepareCase(request), assessment, plan: planOf(request) })
    expect(stages.at(-1)?.lines.find(({ key }) => key === 'done.stands')?.expect).toMatch(
      /about once a year, for some hours; after a longer rest .*lower voltage first/,
    )
  })
  it('211 000 µF for 15 V is reformed in steps of low voltage behind a resistor, one at a time (randomorbit.co.uk)', () => {
    const { stages, cautions } = tell(reform({ capacitanceF: 0.211, ratedV: 15, yearsUnused: 30 }))
    expect(stages.map(({ voltageV }) => voltageV)).toEqual([3, 6, 9, 12, 15])
    // a step of 3 V into its resistor: below a tenth of an ampere
    for (const { seriesOhm } of stages) expect(3 / seriesOhm).toBeLessThan(0.1)
    expect(cautions.join()).toMatch(/out of circuit/)
  })
})
