import { describe, expect, it } from 'vitest'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, onlyFinding } from './cases.js'

const of = (inlet: string | null, connector: string | null) =>
  onlyFinding('inlet', changed({ supply: { inlet }, cord: { connector } }))

describe('inlet', () => {
  // IEC 60320: pairs, and a hotter connector on a cooler inlet
  it.each<{ inlet: string | null; connector: string | null; is: Outcome }>([
    { inlet: 'C8', connector: 'C7', is: 'clear' },
    { inlet: 'C14', connector: 'C13', is: 'clear' },
    { inlet: 'C16', connector: 'C15', is: 'clear' },
    { inlet: 'C14', connector: 'C15', is: 'clear' },
    { inlet: 'C16', connector: 'C13', is: 'stop' },
    { inlet: 'C14', connector: 'C7', is: 'stop' },
    { inlet: 'C14', connector: 'C17', is: 'stop' },
    { inlet: 'C20', connector: 'C13', is: 'stop' },
    { inlet: 'captive', connector: 'captive', is: 'clear' },
    { inlet: 'captive', connector: null, is: 'clear' },
    { inlet: 'captive', connector: 'C13', is: 'unknown' },
    { inlet: 'C14', connector: 'captive', is: 'unknown' },
    { inlet: 'C14', connector: null, is: 'unknown' },
    { inlet: null, connector: 'C13', is: 'unknown' },
    { inlet: null, connector: null, is: 'unknown' },
    { inlet: 'three round pins', connector: 'C13', is: 'unknown' },
  ])('$connector on $inlet: $is', ({ inlet, connector, is }) => {
    expect(of(inlet, connector).outcome).toBe(is)
  })

  it('names the connector to buy', () => {
    expect(of('C14', 'C7').action).toMatch(/whole cord set with a C13/)
  })
})
