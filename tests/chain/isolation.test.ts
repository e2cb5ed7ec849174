import { describe, expect, it } from 'vitest'
import { assess } from '../support/told.js'
import { changed, outcomesOn } from './cases.js'

describe('isolation', () => {
  it('lets an autotransformer feed a machine that takes mains, with care', () => {
    const request = changed({
      supply: { label: 'AUTOTRANSFORMER', outputs: [{ kind: 'ac', voltageV: 120, currentA: 2 }] },
      device: { label: 'INPUT 120V~ 50Hz 40W', inputs: null },
    })
    expect(outcomesOn('isolation', request)).toEqual(['caution'])
  })
  it('stops an autotransformer for a jack that can be touched', () => {
    expect(outcomesOn('isolation', changed({ supply: { label: 'SPARTRAFO' } }))).toEqual(['stop'])
  })
  it('asks where the two join other poles to earth', () => {
    const request = changed({ supply: { label: '-VE GROUNDED' }, device: { label: '+VE CHASSIS' } })
    expect(outcomesOn('isolation', request)).toEqual(['unknown'])
  })
  it('says nothing of a minus on earth alone', () => {
    expect(outcomesOn('isolation', changed({ supply: { label: '-VE GROUNDED' } }))).toEqual([])
  })
  it.each([
    { isolated: true, label: null, outcomes: ['clear'], why: 'tested, and no plate says otherwise' },
    { isolated: false, label: null, outcomes: ['stop'], why: 'found not to be' },
    { isolated: null, label: null, outcomes: [], why: 'nothing said' },
    { isolated: true, label: 'NOT ISOLATED FROM MAINS', outcomes: ['stop'], why: 'tested, against the plate' },
    { isolated: false, label: 'NOT ISOLATED FROM MAINS', outcomes: ['stop'], why: 'both' },
    { isolated: true, label: '+VE CHASSIS', outcomes: ['unknown'], why: 'tested, and the plus on the case' },
  ] as const)('by what was entered of the output and its plate: $why', ({ isolated, label, outcomes }) => {
    expect(outcomesOn('isolation', changed({ supply: { isolated, label } }))).toEqual(outcomes)
  })
  it('stops a machine with a live chassis, whatever its supply is', () => {
    const request = changed({ supply: { isolated: true }, device: { label: 'HOT CHASSIS' } })
    expect(outcomesOn('isolation', request)).toEqual(['stop'])
  })
  it('silences everything that would put power on an output that is not isolated, and leaves the rest to qualified hands', () => {
    const { findings } = assess(changed({ supply: { isolated: false, plug: { polarity: null } } }))
    expect(findings.flatMap(({ actions }) => actions).filter(({ power }) => power !== 'none')).toEqual([])
    const stop = findings.find(({ topic }) => topic === 'isolation')
    expect(stop?.actions.some(({ who }) => who === 'qualified')).toBe(true)
  })
})
