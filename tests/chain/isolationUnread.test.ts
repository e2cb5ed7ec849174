import { describe, expect, it } from 'vitest'
import { assess } from '../support/told.js'
import { changed, outcomesOn } from './cases.js'

describe('words of live parts that were not read', () => {
  // from the head: what can be touched is, or may be, joined to the mains
  it.each([
    ['MAINS ON CASE'],
    ['SECONDARY TIED TO LINE'],
    ['OUTPUT COMMON WITH LINE NEUTRAL'],
    ['NEUTRAL CONNECTED TO OUTPUT NEGATIVE'],
    ['SEC. HOT'],
    ['Chassis unter Netzspannung'],
    ['chassis staat onder spanning'],
    ['OUTPUT TERMINALS LIVE'],
    ['AUTO-TRANSF.'],
  ])('leave the isolation open or stop it, and nothing is put under power: %s', (label) => {
    const request = changed({ supply: { label } })
    const { verdict, findings } = assess(request)
    expect(['do-not-connect', 'find-out-first']).toContain(verdict)
    expect(outcomesOn('isolation', request)[0]).toMatch(/^(stop|unknown)$/)
    expect(findings.flatMap(({ actions }) => actions).filter(({ power }) => power !== 'none')).toEqual([])
  })

  it('are settled by the person who says that they do not matter', () => {
    const request = { ...changed({ supply: { label: 'MAINS ON CASE' } }), readings: { dismissed: ['MAINS ON CASE'] } }
    expect(outcomesOn('isolation', request)).toEqual([])
  })

  it('count a sign of earth where class II was entered', () => {
    const request = changed({ supply: { label: '⏚' } })
    expect(outcomesOn('hazard-words', request)).toEqual(['caution'])
    expect(outcomesOn('hazard-words', changed({ supply: { protectionClass: 'I' } }, request))).toEqual([])
  })
})
