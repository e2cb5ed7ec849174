import { describe, expect, it } from 'vitest'
import type { CheckRequest, Converter, Site } from '../../server/chain/case/request.js'
import { outcomes } from '../../server/chain/finding.js'
import { assess } from '../support/told.js'

type Motor = 'synchronous' | 'induction' | 'universal' | 'dc' | 'none'

/** A recorder of 30 VA with a motor on the mains. */
const recorder = (motor: Motor | null, converter: Converter | null, source: Site['source'] = null): CheckRequest => ({
  arrangement: 'built-in',
  site: { country: 'DE', socket: 'F', source },
  supply: {},
  device: { label: '120V 50/60Hz 30VA', mains: { motor } },
  converter,
})
const worst = (request: CheckRequest) => {
  const found = assess(request).findings.filter(({ topic }) => topic === 'starting')
  return outcomes.find((outcome) => found.some((one) => one.outcome === outcome)) ?? '-'
}
const rated = (ratedVA: number | null): Converter => ({ kind: 'isolating', outputV: 120, ratedVA })

describe('the start of a motor on the mains', () => {
  // 3 × 30 VA = 90 VA
  it.each([
    [89, 'caution'],
    [90, 'clear'],
    [200, 'clear'],
    [null, 'unknown'],
  ])('behind a converter of %s VA: %s', (ratedVA, outcome) => {
    expect(worst(recorder('induction', rated(ratedVA)))).toBe(outcome)
  })

  it('is not known where nobody knows what the machine takes', () => {
    const silent = {
      ...recorder('induction', rated(200)),
      device: { label: '120V 60Hz', mains: { motor: 'induction' as const } },
    }
    expect(worst(silent)).toBe('unknown')
  })

  // a converter passes on what the start asks for: 3 × 30 VA = 90 VA are within its 200 VA, and the source gives up as before
  it.each(['generator', 'inverter-sine', 'inverter-stepped'] as const)(
    'asks for care of a %s in front of a converter as well',
    (source) => {
      const of = (ratedVA: number | null) =>
        assess(recorder('induction', rated(ratedVA), source))
          .findings.filter(({ topic }) => topic === 'starting')
          .map(({ outcome }) => outcome)
      expect(of(200)).toEqual(['caution', 'clear'])
      expect(of(null)).toEqual(['unknown', 'caution'])
    },
  )

  it('asks for care of an inverter or a generator, and is no matter on the wall or without such a motor', () => {
    expect(worst(recorder('universal', null, 'inverter-sine'))).toBe('caution')
    expect(worst(recorder('synchronous', null, 'generator'))).toBe('caution')
    expect(worst(recorder('induction', null))).toBe('-')
    for (const motor of ['dc', 'none', null] as const) expect(worst(recorder(motor, rated(50)))).toBe('-')
  })
})
