import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { answerCheck } from '../../../server/chain/answer.js'
import type { CheckRequest } from '../../../server/chain/case/request.js'
import { type Outcome, outcomes } from '../../../server/chain/finding.js'
import { mainsTopics, type TopicName } from '../../../server/chain/index.js'
import { facts } from '../../../server/facts/boxes.js'
import { tell } from '../../../server/words/tell.js'
import { anyRequest } from '../anyRequest.js'
import { changed, matching } from '../cases.js'

const answered = (request: CheckRequest) => tell(answerCheck(request))
const doing = (request: CheckRequest): string[] => answered(request).next.map((one) => one.do)
const asked = (request: CheckRequest): string[] => answered(request).next.flatMap(({ fact }) => fact ?? [])

describe('the answer', () => {
  it('of a stop says not to connect it, with the number that decides', () => {
    // 230 / 120 = 1.92
    expect(answered(changed({ supply: { input: { voltages: [{ min: 120, max: 120 }] } } })).answer).toMatch(
      /^Do not connect it: 230\u00a0V mains is 1\.92 times the 120\u00a0V .*\.$/,
    )
  })

  it('of several stops begins with what destroys at once, and counts the rest', () => {
    const two = changed({ supply: { plug: { polarity: 'centre-negative' } }, cord: { ratedV: 125 } })
    expect(answered(two).answer).toMatch(/^Do not connect it: the plug is centre negative.*; 1 more stop\.$/)
  })

  it('of something not known says what to find out first', () => {
    expect(answered(changed({ device: { jack: { polarity: null } } })).answer).toMatch(
      /^Find out first: .*polarity.*\.$/,
    )
  })

  it('of a caution says to take care, and of nothing in conflict no more than that', () => {
    expect(answered(changed({ device: { inputs: [{ kind: 'dc', voltageV: 13, currentA: 1 }] } })).answer).toMatch(
      /^Take care: .*13\u00a0V/,
    )
    expect(answered(matching).answer).toMatch(/^No conflict found in what was entered: /)
  })

  it('of nothing entered says so in one sentence', () => {
    expect(answered({ site: {}, supply: {}, device: {} }).answer).toMatch(/^Find out first: [^.]*\.$/)
  })
})

describe('what to do next', () => {
  it('begins with what the stop asks for, and asks nothing more about a supply that is not for this mains', () => {
    const wrong = changed({
      supply: { input: { voltages: [{ min: 120, max: 120 }] } },
      device: { jack: { polarity: null } },
    })
    const { next, waiting } = answered(wrong)
    expect(next[0]?.do).toContain('Do not connect it to 230\u00a0V')
    expect(next.some(({ fact }) => fact !== undefined)).toBe(false)
    // a converter that would be needed, and the polarity
    expect(waiting).toBe(2)
  })

  it('goes on asking where another part mends the stop', () => {
    const wrong = changed({ cord: { plug: 'NEMA 1-15' }, device: { jack: { polarity: null } } })
    expect(asked(wrong)).toEqual(['device.jack.polarity'])
    expect(doing(wrong)[0]).toMatch(/cord set/)
  })

  it('asks for a fact once, with what its answers could turn', () => {
    const open = answered(changed({ device: { jack: { polarity: null } } })).next.filter(({ fact }) => fact)
    expect(open).toEqual([
      expect.objectContaining({ fact: 'device.jack.polarity', couldTurn: ['stop', 'clear'], link: 'jack' }),
    ])
  })

  it('asks for the selector before the shape of a plug: a wrong one kills at once', () => {
    const open = changed({
      supply: {
        input: {
          voltages: [
            { min: 115, max: 115 },
            { min: 230, max: 230 },
          ],
        },
      },
      device: { jack: { outerMm: null } },
    })
    expect(asked(open)).toEqual(['supply.input.selectorV', 'device.jack.outerMm'])
  })

  it('asks for both sizes where neither is known, as one alone settles nothing', () => {
    const open = changed({ supply: { plug: { outerMm: null } }, device: { jack: { outerMm: null } } })
    expect(asked(open).toSorted()).toEqual(['device.jack.outerMm', 'supply.plug.outerMm'])
  })

  it('asks for the inlet alone where inlet and class are open and the inlet tells both', () => {
    const open = changed({ supply: { inlet: null, protectionClass: null } })
    expect(asked(open)).toEqual(['supply.inlet'])
  })

  it('asks whether a figure of a damaged plate was read right', () => {
    const damaged = changed({ device: { label: 'DC l2V 1A', inputs: null } })
    expect(asked(damaged)).toContain('readings.confirmed')
  })

  it('of a case without conflict is the checks without power, then the first power-up', () => {
    expect(answered(matching).next.map(({ power }) => power)).toEqual(['none', 'mains'])
  })

  it('says whose work mains wiring is in the step itself', () => {
    const built = changed({ supply: { input: { voltages: [{ min: 120, max: 120 }] } } })
    expect(doing(built)[0]).toContain('licensed electrician')
  })
})

const open: readonly Outcome[] = ['stop', 'unknown']
const mainsSide: readonly TopicName[] = [...mainsTopics.map(({ name }) => name), 'isolation']

describe('any check', { timeout: 60_000 }, () => {
  it('is told to put nothing under power before what needs none, nor while the mains side is open', () => {
    let powered = 0
    fc.assert(
      fc.property(anyRequest, (request) => {
        const { findings, next } = answerCheck(request)
        const first = next.findIndex(({ power }) => power !== 'none')
        if (first < 0) return
        powered += 1
        expect(findings.filter(({ topic, outcome }) => mainsSide.includes(topic) && open.includes(outcome))).toEqual([])
        expect(next.slice(first).filter(({ power }) => power === 'none')).toEqual([])
        expect(tell(next[first - 1]!.do)).toContain('Before anything is switched on')
      }),
      { numRuns: 500, examples: [[matching], [changed({ device: { jack: { polarity: null } } })]] },
    )
    expect(powered).toBeGreaterThan(0)
  })

  it('is told what to do, stops first, each thing once, each question by a fact that there is', () => {
    const keys = facts.map(({ key }) => key)
    fc.assert(
      fc.property(anyRequest, (request) => {
        const { verdict, findings, answer, next, waiting } = answered(request)
        expect(next.length).toBeGreaterThan(0)
        expect(new Set(next.map((one) => one.do)).size).toBe(next.length)
        if (verdict !== 'do-not-connect') expect(waiting).toBe(0)
        const stops = new Set(
          findings.flatMap(({ outcome, actions }) => (outcome === 'stop' ? actions.map((one) => one.do) : [])),
        )
        const question = next.findIndex(({ fact }) => fact !== undefined)
        const stopping = next.findLastIndex((one) => stops.has(one.do) && one.power === 'none')
        if (question >= 0) expect(stopping).toBeLessThan(question)
        for (const { fact, couldTurn } of next) {
          if (fact !== undefined) expect(keys).toContain(fact)
          if (couldTurn) expect(couldTurn).toEqual(outcomes.filter((outcome) => couldTurn.includes(outcome)))
        }
        expect(answer).toMatch(
          /^(?:Do not connect it|Find out first|Take care|No conflict found in what was entered): .+\.$/,
        )
        expect(JSON.stringify({ answer, next })).not.toMatch(/\bsafe(ly)?\b|NaN|Infinity|undefined|\[object/i)
      }),
      { numRuns: 300 },
    )
  })
})
