import { describe, expect, it } from 'vitest'
import type { FuseRequest } from '../../../server/chain/fuse/fuseRequest.js'
import { reviewFuse } from '../../support/told.js'

type Outcome = ReturnType<typeof reviewFuse>['outcome']

interface Row {
  name: string
  because: string
  request: Partial<FuseRequest>
  outcome: Outcome
  /** the worst of the findings */
  worst: 'stop' | 'unknown' | 'caution' | 'clear'
  says?: RegExp
}

const mains = (circuit: Partial<FuseRequest['circuit']> = {}): Pick<FuseRequest, 'position' | 'circuit'> => ({
  position: 'mains',
  circuit: { voltageV: 230, currentA: 1, ...circuit },
})
const low = (circuit: Partial<FuseRequest['circuit']> = {}): Pick<FuseRequest, 'position' | 'circuit'> => ({
  position: 'low-voltage',
  circuit: { voltageV: 75, currentA: 3, ...circuit },
})
const plug = (powerW: number): Pick<FuseRequest, 'position' | 'circuit'> => ({
  position: 'plug',
  circuit: { voltageV: 230, powerW },
})
const as = (marking: string, prescribed: string): Pick<FuseRequest, 'marking' | 'prescribed'> => ({
  marking,
  prescribed,
})

const replacing = 'the print beside the holder decides (makers: replace by like)'
const arc = 'a direct current has no zero at which its arc goes out; an ac rating says nothing of it'
const numbers = 'UL links open within 1 h at 135 %, IEC links carry 150 % for 1 h'
const interrupts = 'UL 248-14: 10 kA at 125 V; at 250 V 35 A up to 1 A, 100 A up to 3.5 A'
const smallest = 'the smallest BS 1362 value that carries the load protects the cord best (BS 1363)'

/** Each rule on both sides of its edge. */
const rows: Row[] = [
  {
    name: 'T for F',
    because: `${replacing}: protects late`,
    request: { ...as('T2AL250V', 'F2AL250V'), ...mains() },
    outcome: 'replace',
    worst: 'stop',
    says: /protects late/,
  },
  {
    name: 'F for T',
    because: `${replacing}: fails early`,
    request: { ...as('F2AL250V', 'T2AL250V'), ...mains() },
    outcome: 'replace',
    worst: 'caution',
    says: /fails early, not late/,
  },
  {
    name: 'M for T',
    because: replacing,
    request: { ...as('M2AL250V', 'T2AL250V'), ...mains() },
    outcome: 'replace',
    worst: 'caution',
  },
  {
    name: 'FF for F',
    because: replacing,
    request: { ...as('FF2AL250V', 'F2AL250V'), ...mains() },
    outcome: 'replace',
    worst: 'caution',
  },
  {
    name: 'T for T',
    because: replacing,
    request: { ...as('T2AL250V', 'T2AL250V'), ...mains() },
    outcome: 'keep',
    worst: 'clear',
  },
  {
    name: 'F for T that was found open',
    because: 'the cause first',
    request: { ...as('F2AL250V', 'T2AL250V'), ...mains(), blown: true },
    outcome: 'find-out-first',
    worst: 'unknown',
  },

  {
    name: 'IEC where UL is written',
    because: numbers,
    request: { ...as('T2AL250V', '2A 250V UL'), ...mains({ voltageV: 120 }) },
    outcome: 'replace',
    worst: 'stop',
    says: /not the same link under one number/,
  },
  {
    name: 'IEC where CSA is written',
    because: numbers,
    request: { ...as('T2AL250V', '2A TIME LAG 250V CSA'), ...mains({ voltageV: 120 }) },
    outcome: 'replace',
    worst: 'stop',
  },
  {
    name: 'IEC where no standard is told',
    because: numbers,
    request: { ...as('T2AL250V', '2A 250V slow'), ...mains({ voltageV: 120 }) },
    outcome: 'find-out-first',
    worst: 'unknown',
    says: /by which standard/,
  },
  {
    name: 'no standard told where IEC is prescribed',
    because: numbers,
    request: { ...as('2A 250V slow', 'T2AL250V'), ...mains() },
    outcome: 'find-out-first',
    worst: 'unknown',
    says: /By which standard/,
  },
  {
    name: 'no standard told on either side',
    because: 'nothing known differs',
    request: { ...as('2A 125V slow', '2A 125V slow'), ...mains({ voltageV: 120 }) },
    outcome: 'keep',
    worst: 'clear',
  },
  {
    name: 'UL where UL is prescribed',
    because: 'alike',
    request: { ...as('MDL 2 250V', '2A 250V TIME DELAY'), ...mains({ voltageV: 120 }) },
    outcome: 'keep',
    worst: 'caution',
  },

  {
    name: 'UL 1 A for 250 V at 120 V, fault of 500 A',
    because: interrupts,
    request: {
      ...as('1A 250V UL fast', '1A 250V UL fast'),
      ...mains({ voltageV: 120, currentA: 0.5, prospectiveFaultA: 500 }),
    },
    outcome: 'keep',
    worst: 'clear',
    says: /breaks 10.kA/,
  },
  {
    name: 'the same at 230 V',
    because: interrupts,
    request: {
      ...as('1A 250V UL fast', '1A 250V UL fast'),
      ...mains({ voltageV: 230, currentA: 0.5, prospectiveFaultA: 500 }),
    },
    outcome: 'replace',
    worst: 'stop',
    says: /breaks 35.A/,
  },
  {
    name: 'two figures printed, at 120 V',
    because: 'a breaking figure belongs to its voltage',
    request: {
      ...as('1A 250V fast 100A@250V 10kA@125V UL', '1A 250V UL fast'),
      ...mains({ voltageV: 120, currentA: 0.5, prospectiveFaultA: 500 }),
    },
    outcome: 'keep',
    worst: 'clear',
    says: /breaks 10.kA/,
  },
  {
    name: 'two figures printed, at 230 V',
    because: 'a breaking figure belongs to its voltage',
    request: {
      ...as('1A 250V fast 100A@250V 10kA@125V UL', '1A 250V UL fast'),
      ...mains({ currentA: 0.5, prospectiveFaultA: 500 }),
    },
    outcome: 'replace',
    worst: 'stop',
    says: /breaks 100.A/,
  },

  {
    name: '75 V dc on an ac rating',
    because: arc,
    request: { ...as('T5AL250V', 'T5AL250V'), ...low({ kind: 'dc' }) },
    outcome: 'find-out-first',
    worst: 'unknown',
    says: /direct current \(DC\)/,
  },
  {
    name: '75 V, kind not given',
    because: arc,
    request: { ...as('T5AL250V', 'T5AL250V'), ...low() },
    outcome: 'find-out-first',
    worst: 'unknown',
    says: /alternating or direct current is not known/,
  },
  {
    name: '75 V ac',
    because: 'the rating is an ac rating',
    request: { ...as('T5AL250V', 'T5AL250V'), ...low({ kind: 'ac' }) },
    outcome: 'keep',
    worst: 'clear',
  },
  {
    name: '33 V dc',
    because: arc,
    request: { ...as('T5AL250V', 'T5AL250V'), ...low({ kind: 'dc', voltageV: 33 }) },
    outcome: 'find-out-first',
    worst: 'unknown',
  },
  {
    name: '32 V dc',
    because: 'links for vehicles: up to 32 V any rating',
    request: { ...as('T5AL250V', 'T5AL250V'), ...low({ kind: 'dc', voltageV: 32 }) },
    outcome: 'keep',
    worst: 'clear',
  },
  {
    name: '32 V, kind not given',
    because: 'links for vehicles: up to 32 V any rating',
    request: { ...as('T5AL250V', 'T5AL250V'), ...low({ voltageV: 32 }) },
    outcome: 'keep',
    worst: 'clear',
  },
  {
    name: '75 V dc on a dc rating of 75 V',
    because: 'it covers the circuit',
    request: { ...as('T5A 250VAC/75VDC', 'T5A'), ...low({ kind: 'dc' }) },
    outcome: 'keep',
    worst: 'clear',
  },
  {
    name: '75 V of a kind not given, on ratings for both',
    because: 'both cover it',
    request: { ...as('T5A 250VAC/75VDC', 'T5A'), ...low() },
    outcome: 'keep',
    worst: 'clear',
  },
  {
    name: '76 V dc on a dc rating of 75 V',
    because: 'below the circuit',
    request: { ...as('T5A 250VAC/75VDC', 'T5A'), ...low({ kind: 'dc', voltageV: 76 }) },
    outcome: 'replace',
    worst: 'stop',
    says: /75.V DC/,
  },
  {
    name: 'dc on the mains side',
    because: arc,
    request: { ...as('T5AL250V', 'T5AL250V'), ...mains({ kind: 'dc', voltageV: 110 }) },
    outcome: 'find-out-first',
    worst: 'unknown',
  },
  {
    name: 'what it breaks on dc',
    because: arc,
    request: { ...as('T5A H 250VAC/125VDC', 'T5AH'), ...low({ kind: 'dc', prospectiveFaultA: 400 }) },
    outcome: 'find-out-first',
    worst: 'unknown',
    says: /what it breaks on direct current is not known/,
  },

  {
    name: '13 A in a plug for 60 W',
    because: smallest,
    request: { marking: '13A BS1362', ...plug(60) },
    outcome: 'replace',
    worst: 'caution',
    says: /smallest BS 1362 link that carries the load is 3.A/,
  },
  {
    name: '3 A in a plug for 60 W',
    because: smallest,
    request: { marking: '3A BS1362', ...plug(60) },
    outcome: 'keep',
    worst: 'caution',
  },
  {
    name: '13 A in a plug for 60 W, as it is marked',
    because: 'the marking wins',
    request: { ...as('13A BS1362', '13A BS1362'), ...plug(60) },
    outcome: 'keep',
    worst: 'clear',
  },
  {
    name: '3 A in a plug at 690 W',
    because: '690 / 230 = 3 A',
    request: { marking: '3A BS1362', ...plug(690) },
    outcome: 'keep',
    worst: 'caution',
  },
  {
    name: '5 A in a plug at 691 W',
    because: '691 / 230 is above 3 A',
    request: { marking: '5A BS1362', ...plug(691) },
    outcome: 'keep',
    worst: 'caution',
  },

  {
    name: 'a thermal cut-off for a link',
    because: 'it breaks no overload',
    request: { ...as('2A 250V 130°C', 'T2AL250V'), ...mains() },
    outcome: 'replace',
    worst: 'stop',
    says: /is a thermal cut-off, not a fuse-link/,
  },
  {
    name: 'a resettable protector for a link',
    because: 'it closes again',
    request: { ...as('2A polyfuse', 'T2AL250V'), ...mains() },
    outcome: 'replace',
    worst: 'stop',
    says: /is a resettable protector/,
  },
  {
    name: 'a link for a thermal cut-off',
    because: 'it does not open at a temperature',
    request: { ...as('T2AL250V', 'THERMAL FUSE 2A 250V 130°C'), ...mains() },
    outcome: 'find-out-first',
    worst: 'stop',
    says: /where a thermal cut-off is prescribed/,
  },
  {
    name: 'a thermal cut-off for one',
    because: 'this review judges fuse-links only',
    request: { ...as('2A 130°C', '2A 130°C'), ...mains() },
    outcome: 'find-out-first',
    worst: 'stop',
  },

  {
    name: 'a damaged marking',
    because: 'what rating it means is not known',
    request: { ...as('T 1. 6A L 250V', 'T1.6AL250V'), ...mains() },
    outcome: 'find-out-first',
    worst: 'unknown',
    says: /looks damaged/,
  },
  {
    name: 'a link without voltage on 230 V mains',
    because: '230 V is the circuit’s',
    request: { ...as('T2A 230V', 'T2A'), ...mains() },
    outcome: 'find-out-first',
    worst: 'unknown',
    says: /rated voltage of the fitted link is not marked/,
  },
  {
    name: 'a prescription for 230 V, on 120 V',
    because: 'it is for another mains',
    request: { ...as('T1AL250V', '230V T1A'), ...mains({ voltageV: 120, currentA: 0.5 }) },
    outcome: 'find-out-first',
    worst: 'unknown',
    says: /is for 230.V/,
  },
  {
    name: 'a prescription for 230 V, on 230 V',
    because: 'it is for this mains',
    request: { ...as('T1AL250V', '230V T1A'), ...mains({ currentA: 0.5 }) },
    outcome: 'keep',
    worst: 'clear',
  },

  {
    name: 'two links',
    because: 'one in each pole',
    request: { ...as('T2AL250V', '2 x T2AL250V'), ...mains() },
    outcome: 'keep',
    worst: 'caution',
    says: /2 links are named: one in each conductor/,
  },
  {
    name: 'one link with two live conductors',
    because: 'the other conductor stays live',
    request: { ...as('T2AL250V', 'T2AL250V'), ...mains(), live: 'both' },
    outcome: 'keep',
    worst: 'caution',
    says: /the other conductor stays live/,
  },
  {
    name: 'one link behind a plug that goes in both ways',
    because: 'it may be in the neutral',
    request: { ...as('T2AL250V', 'T2AL250V'), ...mains(), live: 'either' },
    outcome: 'keep',
    worst: 'clear',
    says: /only the pulled plug makes it dead/,
  },
]

describe('what the review of a fuse-link decides', () => {
  it.each(rows)('$name: $outcome, because $because', ({ request, outcome, worst, says }) => {
    const answer = reviewFuse({ ...mains(), ...request })
    const text = answer.findings.map((one) => [one.title, one.why, ...one.working, one.action].join('\n')).join('\n')
    if (says) expect(text).toMatch(says)
    expect({ outcome: answer.outcome, worst: answer.findings[0]?.outcome }).toEqual({ outcome, worst })
  })
})

describe('the answer in one sentence', () => {
  it.each([
    {
      request: { ...as('T2AL250V', 'T2AL250V'), ...mains() },
      answer: 'The link can stay: nothing entered speaks against T 2 A L 250 V.',
    },
    {
      request: { ...as('T5AL250V', 'T500mAL250V'), ...mains({ currentA: 0.3 }) },
      answer: 'Replace the link by T 500 mA L 250 V: 5 A is fitted where 500 mA is prescribed: 10 times as much.',
    },
    {
      request: { ...as('F2AL250V', 'T2AL250V'), ...mains() },
      answer:
        'Replace the link by T 2 A L 250 V: the fitted one is faster (F) than prescribed (T), and fails early rather than late.',
    },
    {
      request: { marking: '13A BS1362', ...plug(60) },
      answer: 'Replace the link by 3 A to BS 1362: that carries the load, and 13 A protects the cord less.',
    },
    { request: { ...as('T2AL250V', ''), ...mains() }, answer: 'Find out first: what link is prescribed is not known.' },
    {
      request: { ...as('T1AL250V', 'T2AL250V'), ...mains({ currentA: 0.5 }) },
      answer: 'The link can stay, with care: 1 A is fitted where 2 A is prescribed: less than marked.',
    },
  ])('is “$answer”', ({ request, answer }) => {
    expect(reviewFuse(request).answer.replaceAll('\u00a0', ' ')).toBe(answer)
  })
})
