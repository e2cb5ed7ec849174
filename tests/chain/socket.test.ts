import { describe, expect, it } from 'vitest'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, onlyFinding } from './cases.js'

const of = (
  plug: string | null,
  site: { country?: string | null; socket?: string | null },
  more: Parameters<typeof changed>[0] = {},
) => onlyFinding('socket', changed({ site: { country: null, socket: null, ...site }, cord: { plug } }, changed(more)))

describe('socket', () => {
  // pairs as printed in lists of plugs and sockets: see the rows of the table
  it.each<{ plug: string; site: { country?: string; socket?: string }; is: Outcome }>([
    { plug: 'CEE 7/16', site: { socket: 'F' }, is: 'clear' },
    { plug: 'CEE 7/7', site: { socket: 'E' }, is: 'clear' },
    { plug: 'BS 1363', site: { country: 'GB' }, is: 'clear' },
    { plug: 'NEMA 5-15', site: { country: 'US' }, is: 'clear' },
    { plug: 'NEMA 1-15', site: { country: 'DE' }, is: 'stop' },
    { plug: 'CEE 7/16', site: { country: 'US' }, is: 'stop' },
    { plug: 'CEE 7/16', site: { country: 'GB' }, is: 'stop' },
    { plug: 'BS 1363', site: { socket: 'F' }, is: 'stop' },
    // an Italian house has C and F, which it fits, or L, into which it can only be forced
    { plug: 'CEE 7/7', site: { country: 'IT' }, is: 'unknown' },
    { plug: 'CEE 7/17', site: { country: 'IN' }, is: 'clear' },
    { plug: 'CEE 7/16', site: { country: 'HK' }, is: 'stop' },
  ])('$plug in $site: $is', ({ plug, site, is }) => {
    expect(of(plug, site).outcome).toBe(is)
  })

  it('says what to buy: a whole cord set with plug, connector and ratings', () => {
    const { action } = of('NEMA 1-15', { country: 'DE', socket: 'F' })
    expect(action).toMatch(/whole cord set.*CEE 7\/16.*connector C7.*250.V.*by hand/s)
  })

  it('leaves a plug on captive flex to a qualified person', () => {
    const finding = of(
      'NEMA 1-15',
      { country: 'DE', socket: 'F' },
      { supply: { inlet: 'captive' }, cord: { connector: 'captive' } },
    )
    expect(finding.outcome).toBe('stop')
    expect(finding.action).toMatch(/licensed electrician.*qualified person.*local codes/s)
  })

  it('is a caution with an adapter, and asks for its rating and earth', () => {
    const finding = of('NEMA 1-15', { country: 'DE' }, { cord: { adapter: { earthed: null } } })
    expect(finding.outcome).toBe('caution')
    expect(finding.action).toMatch(/rating.*earth/s)
  })

  it.each<{ name: string; plug: string | null; site: { country?: string; socket?: string } }>([
    { name: 'no plug named', plug: null, site: { country: 'DE' } },
    { name: 'a plug that is not in the table', plug: 'the grey one', site: { country: 'DE' } },
    { name: 'no site named', plug: 'CEE 7/16', site: {} },
  ])('is not known with $name', ({ plug, site }) => {
    const finding = of(plug, site)
    expect(finding.outcome).toBe('unknown')
    expect(finding.action).not.toBeNull()
  })

  it('is not known for a pair the table has no row for', () => {
    const finding = of('CEE 7/17', { socket: 'N' })
    expect(finding.outcome).toBe('unknown')
    expect(finding.sources.length).toBeGreaterThan(0)
  })

  it('is no stop behind a converter, whose outlet takes the plug', () => {
    const finding = of('NEMA 1-15', { country: 'DE' }, { converter: { kind: 'isolating', outputV: 120, ratedVA: 200 } })
    expect(finding.outcome).toBe('caution')
    expect(finding.action).toMatch(/only through the converter/)
  })
})

describe('a socket letter without its country', () => {
  const american = { cord: { plug: 'NEMA 1-15', ratedV: 125 } }
  const on = (voltageV: number | null, country: string | null = null) =>
    onlyFinding('socket', changed({ ...american, site: { country, socket: 'A', voltageV, frequencyHz: null } }))
  // the wide blade of a polarised plug does not go into the older sockets of Japan, which has 100 V
  it('is no better than the country it may be', () => {
    expect(on(null, 'JP').outcome).toBe('unknown')
    expect(on(null)).toMatchObject({ outcome: 'unknown', action: expect.stringMatching(/and the country/) })
    expect(on(100).outcome).toBe('unknown')
    expect(on(120).outcome).toBe('clear')
  })
})
