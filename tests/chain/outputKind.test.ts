import { describe, expect, it } from 'vitest'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, onlyFinding, outcomesOn } from './cases.js'

type Kind = 'ac' | 'dc' | null
const of = (supply: Kind, device: Kind) =>
  onlyFinding(
    'output-kind',
    changed({
      supply: { outputs: [{ kind: supply, voltageV: 12, currentA: 2 }] },
      device: { inputs: [{ kind: device, voltageV: 12, currentA: 1 }] },
    }),
  )

describe('output-kind', () => {
  it.each<{ supply: Kind; device: Kind; is: Outcome }>([
    { supply: 'dc', device: 'dc', is: 'clear' },
    { supply: 'ac', device: 'ac', is: 'clear' },
    { supply: 'ac', device: 'dc', is: 'stop' },
    { supply: 'dc', device: 'ac', is: 'stop' },
    { supply: null, device: 'dc', is: 'unknown' },
    { supply: 'dc', device: null, is: 'unknown' },
    { supply: null, device: null, is: 'unknown' },
  ])('supply $supply, machine $device: $is', ({ supply, device, is }) => {
    expect(of(supply, device).outcome).toBe(is)
  })

  it('says how to find out: the symbols, or a meter on both ranges', () => {
    expect(of(null, 'dc').action).toMatch(/⎓.*~.*dc range.*ac range/s)
  })

  it('still lets voltage and current be compared', () => {
    const request = changed({ supply: { outputs: [{ kind: null, voltageV: 9, currentA: 0.5 }] } })
    expect(outcomesOn('output-voltage', request)).toEqual(['stop'])
    expect(outcomesOn('output-current', request)).toEqual(['stop'])
  })

  it.each([
    { name: 'supply', changes: { supply: { outputs: null } } },
    { name: 'machine', changes: { device: { inputs: null } } },
    { name: 'either', changes: { supply: { outputs: null }, device: { inputs: null } } },
  ])('is not known, as are voltage and current, where nothing is known of the $name', ({ changes }) => {
    for (const topic of ['output-kind', 'output-voltage', 'output-current'] as const)
      expect(outcomesOn(topic, changed(changes))).toEqual(['unknown'])
  })

  it('stops a machine whose plate names mains before a low-voltage supply', () => {
    const request = changed({ device: { label: '230V~ 50Hz 40W', inputs: null } })
    expect(outcomesOn('output-kind', request)).toEqual(['stop'])
    expect(outcomesOn('output-voltage', request)).toEqual(['stop'])
  })
})
