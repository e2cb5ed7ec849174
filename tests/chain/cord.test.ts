import { describe, expect, it } from 'vitest'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, findingsOn, onlyFinding } from './cases.js'

type Changes = Parameters<typeof changed>[0]
// the C7 connector of the matching case carries 2.5 A, so it is left open where more is drawn
const of = (changes: Changes) => onlyFinding('cord', changed(changes))
/** A supply that draws exactly this current at 230 V. */
const drawing = (currentA: number): Changes => ({ supply: { input: { currentA }, protectionClass: 'II' } })
const uk = (currentA: number, cord: NonNullable<Changes['cord']>): Changes => ({
  ...drawing(currentA),
  site: { country: 'GB', socket: null },
  cord: { plug: 'BS 1363', connector: null, ratedA: 13, ...cord },
})

describe('cord', () => {
  it.each<{ name: string; changes: Changes; is: Outcome }>([
    { name: 'both ratings enough', changes: {}, is: 'clear' },
    { name: '125 V set on 230 V', changes: { cord: { ratedV: 125 } }, is: 'stop' },
    {
      name: '125 V set on 120 V',
      changes: {
        site: { country: 'US', socket: null },
        supply: { input: { voltages: [{ min: 100, max: 240 }] } },
        cord: { ratedV: 125 },
      },
      is: 'clear',
    },
    // a set marked with the nominal voltage itself, or with another of its class, is of that class (IEC 60038 names 230 V, 240 V)
    { name: 'set marked 230 V on 230 V', changes: { cord: { ratedV: 230 } }, is: 'clear' },
    { name: 'set marked 240 V on 230 V', changes: { cord: { ratedV: 240 } }, is: 'clear' },
    { name: 'set marked 230 V on 240 V', changes: { site: { voltageV: 240 }, cord: { ratedV: 230 } }, is: 'stop' },
    { name: 'set marked 229 V on 230 V', changes: { cord: { ratedV: 229 } }, is: 'stop' },
    { name: 'rated at exactly what is drawn', changes: { ...drawing(2.5) }, is: 'clear' },
    { name: 'rated a little under what is drawn', changes: { ...drawing(2.51) }, is: 'stop' },
    { name: 'no rated voltage', changes: { cord: { ratedV: null } }, is: 'unknown' },
    { name: 'no rated current', changes: { cord: { ratedA: null } }, is: 'unknown' },
    {
      name: 'what is drawn not known',
      changes: { supply: { input: { currentA: null }, outputs: null } },
      is: 'unknown',
    },
    { name: 'site not known', changes: { site: { country: null, socket: null } }, is: 'unknown' },
    { name: 'no cord described', changes: { cord: null }, is: 'unknown' },
    { name: 'plug fitted by hand', changes: { cord: { plug: 'CEE 7/7', plugFitted: 'rewired' } }, is: 'caution' },
    { name: 'plug fitted by hand and called CEE 7/16', changes: { cord: { plugFitted: 'rewired' } }, is: 'stop' },
    { name: 'CEE 7/16 on class I', changes: { supply: { protectionClass: 'I' } }, is: 'stop' },
    { name: 'CEE 7/16 above 2.5 A on a thicker set', changes: { ...drawing(2.6), cord: { ratedA: 10 } }, is: 'stop' },
    { name: 'CEE 7/16 at 2.5 A', changes: { ...drawing(2.5), cord: { ratedA: 10 } }, is: 'clear' },
  ])('$name: $is', ({ changes, is }) => {
    expect(of(changes).outcome).toBe(is)
  })

  it('leaves a plug fitted by hand to be checked by a qualified person', () => {
    expect(of({ cord: { plug: 'CEE 7/7', plugFitted: 'rewired' } }).action).toMatch(/checked by a qualified person/)
  })

  it('takes the current at the voltage in use: 0.5 A at 100 V is 217 mA at 230 V', () => {
    const finding = of({
      supply: { input: { voltages: [{ min: 100, max: 240 }], currentA: 0.5 } },
      cord: { ratedA: 0.22 },
    })
    expect(finding.outcome).toBe('clear')
    expect(finding.working.join('\n')).toMatch(/50.VA \/ 230.V = 217\.4.mA/)
    expect(
      of({ supply: { input: { voltages: [{ min: 100, max: 240 }], currentA: 0.5 } }, cord: { ratedA: 0.21 } }).outcome,
    ).toBe('stop')
  })

  describe('conductor', () => {
    // IEC 60335-1 table 11: up to 3 A 0.5 mm² (2 m at most), up to 6 A 0.75 mm², up to 10 A 1.0 mm² (0.75 mm² up to 2 m)
    const cord = { plug: 'CEE 7/7', connector: null, ratedA: 16 }
    it.each<{ name: string; currentA: number; areaMm2: number; is: Outcome }>([
      { name: '0.75 mm² at 6 A', currentA: 6, areaMm2: 0.75, is: 'clear' },
      { name: '0.5 mm² at 6 A', currentA: 6, areaMm2: 0.5, is: 'stop' },
      { name: '1.0 mm² at 10 A', currentA: 10, areaMm2: 1, is: 'clear' },
      { name: '0.75 mm² at 10 A, up to 2 m only', currentA: 10, areaMm2: 0.75, is: 'caution' },
      { name: '0.5 mm² at 10 A', currentA: 10, areaMm2: 0.5, is: 'stop' },
    ])('$name: $is', ({ currentA, areaMm2, is }) => {
      expect(of({ ...drawing(currentA), cord: { ...cord, areaMm2 } }).outcome).toBe(is)
    })
    it('is taken from its gauge: AWG 18 is 0.823 mm²', () => {
      expect(of({ ...drawing(6), cord: { ...cord, awg: 18 } }).working.join('\n')).toMatch(/AWG 18 = 0\.823.mm²/)
      expect(of({ ...drawing(6), cord: { ...cord, awg: 22 } }).outcome).toBe('stop')
    })
  })

  describe('plug fuse of a BS 1363 plug', () => {
    it('is the smallest BS 1362 value that carries the load', () => {
      expect(of(uk(0.5, {})).title).toMatch(/3.A to BS 1362/)
      expect(of(uk(3, {})).title).toMatch(/3.A to BS 1362/)
      expect(of(uk(3.1, {})).title).toMatch(/5.A to BS 1362/)
      expect(of(uk(13, {})).title).toMatch(/13.A to BS 1362/)
    })
    it('larger than the cord’s own rating is a caution', () => {
      expect(of(uk(2, { ratedA: 2.5 })).outcome).toBe('caution')
      expect(of(uk(2, { ratedA: 3 })).outcome).toBe('clear')
    })
    it('larger than BS 1363-1 table 2 allows for the conductor is a stop: 5 A on 0.5 mm²', () => {
      const finding = of(uk(4, { areaMm2: 0.5 }))
      expect(finding.outcome).toBe('stop')
      expect(finding.title).toMatch(/5.A plug fuse-link.*3.A/)
    })
    it('is not spoken of with other plugs', () => {
      expect(of({}).title).not.toMatch(/BS 1362/)
    })
  })

  it('is not asked of a unit that plugs straight into the socket', () => {
    expect(findingsOn('cord', changed({ supply: { inlet: 'plug-in' } }))).toEqual([])
  })
})

describe('what is not asked for and is seen at a glance', () => {
  it('is to be looked at: whether a plug that can be rewired was', () => {
    const earthed = changed({
      supply: { protectionClass: 'I', inlet: 'C14' },
      cord: { plug: 'CEE 7/7', connector: 'C13', ratedA: 10, earthed: true, plugFitted: null },
    })
    expect(onlyFinding('cord', earthed)).toMatchObject({
      outcome: 'clear',
      action: expect.stringMatching(/moulded to its cord or was fitted by hand/),
    })
    expect(onlyFinding('cord', changed({ cord: { plugFitted: null } })).action).toBeNull()
  })
  it('is to be looked at: the link in a fused plug', () => {
    const british = changed({ site: { country: 'GB', socket: 'G' }, cord: { plug: 'BS 1363', ratedA: 3 } })
    expect(onlyFinding('cord', british)).toMatchObject({
      outcome: 'clear',
      action: expect.stringMatching(/Look at the link that is fitted in the plug.*3.A to BS 1362/),
    })
  })
})
