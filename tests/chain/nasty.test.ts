import { describe, expect, it } from 'vitest'
import { assess } from '../../server/chain/assess.js'
import type { CheckRequest } from '../../server/chain/request.js'
import { changed, onlyFinding, outcomesOn } from './cases.js'

type Changes = Parameters<typeof changed>[0]

/** The matching case as a class I supply with a C14 inlet and an earthed cord set. */
const classOne: CheckRequest = changed({
  supply: { protectionClass: 'I', inlet: 'C14' },
  cord: { plug: 'CEE 7/7', connector: 'C13', ratedA: 10, earthed: true },
})
const with1 = (changes: Changes): CheckRequest => changed(changes, classOne)

describe('the earth behind an adapter', () => {
  it.each(['A', 'C'])('is lost in socket %s, which has no earth contact, whatever the adapter passes on', (socket) => {
    const request = with1({ site: { socket }, cord: { adapter: { earthed: true } } })
    expect(onlyFinding('earthing', request).outcome).toBe('stop')
    expect(assess(request).verdict).toBe('do-not-connect')
  })
  it('is not known where the country has sockets with and without, or no socket is known', () => {
    const adapter = { earthed: true }
    expect(outcomesOn('earthing', with1({ site: { country: 'JP', socket: null }, cord: { adapter } }))).toEqual([
      'unknown',
    ])
    expect(outcomesOn('earthing', with1({ site: { country: null, socket: null }, cord: { adapter } }))).toEqual([
      'unknown',
    ])
  })
  it('is carried where socket and adapter have it', () => {
    expect(outcomesOn('earthing', with1({ site: { socket: 'F' }, cord: { adapter: { earthed: true } } }))).toEqual([
      'clear',
    ])
  })
})

describe('the weakest part of a cord set decides', () => {
  it.each(['NEMA 1-15', 'NEMA 5-15'])('a %s plug does not become one for 230 V by the print on its flex', (plug) => {
    for (const ratedV of [250, 300])
      expect(outcomesOn('cord', with1({ cord: { plug, ratedV, adapter: { earthed: true } } }))).toEqual(['stop'])
  })
  it('a plug of the 125 V class in a place whose own sockets of its shape carry 220 V is a caution', () => {
    const request = changed({
      site: { country: 'PH', socket: 'A', voltageV: 220, frequencyHz: 60 },
      cord: { plug: 'NEMA 1-15', ratedV: 250 },
    })
    expect(onlyFinding('cord', request)).toMatchObject({
      outcome: 'caution',
      action: expect.stringMatching(/Read the plug itself/),
    })
  })
  // IEC 60320 ratings of the connectors: 2.5 A for C5 and C7, 10 A for C13
  it.each([
    { connector: 'C7', plug: 'CEE 7/17', currentA: 2.6, is: 'stop' },
    { connector: 'C7', plug: 'CEE 7/17', currentA: 2.5, is: 'clear' },
    { connector: 'C5', plug: 'CEE 7/7', currentA: 3, is: 'stop' },
    { connector: 'C13', plug: 'CEE 7/7', currentA: 10, is: 'clear' },
    { connector: 'C13', plug: 'CEE 7/7', currentA: 10.1, is: 'stop' },
    { connector: 'C19', plug: 'CEE 7/7', currentA: 16.1, is: 'stop' },
  ])('$currentA A through $connector and $plug: $is', ({ connector, plug, currentA, is }) => {
    const request = changed({ supply: { input: { currentA } }, cord: { connector, plug, ratedA: 25 } })
    expect(outcomesOn('cord', request)).toEqual([is])
  })
  it('more current than the table of conductors reaches never passes a conductor', () => {
    const cord = { connector: null, plug: null, ratedA: 250 }
    expect(
      outcomesOn('cord', changed({ supply: { input: { currentA: 100 } }, cord: { ...cord, areaMm2: 0.5 } })),
    ).toEqual(['stop'])
    expect(
      outcomesOn('cord', changed({ supply: { input: { currentA: 100 } }, cord: { ...cord, areaMm2: 4 } })),
    ).toEqual(['unknown'])
  })
})
