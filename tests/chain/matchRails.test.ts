import { describe, expect, it } from 'vitest'
import type { DeviceRail, Rail } from '../../server/chain/case/situation.js'
import { matchRails } from '../../server/chain/matching/matchRails.js'

const rail = (voltageV: number, kind: Rail['kind'] = 'dc', currentA: number | null = 1): Rail => ({
  kind,
  voltageV,
  voltageMaxV: null,
  currentA,
  powerW: null,
})
const wants = (voltageV: number, kind: Rail['kind'] = 'dc', currentA = 1): DeviceRail => ({
  ...rail(voltageV, kind, currentA),
  currentIs: 'plate',
  tolerance: null,
})
/** "12 dc ← 12 dc": what is wanted and what is given for it. */
const matched = (supplies: Rail[], devices: DeviceRail[]): string[] =>
  matchRails(supplies, devices).map(
    ({ device, supply }) =>
      `${device.voltageV} ${device.kind} ← ${supply === null ? 'nothing' : `${supply.voltageV} ${supply.kind}`}`,
  )

describe('the output that is meant for what a machine wants', () => {
  it.each<[string, Rail[], DeviceRail[], string[]]>([
    ['the only one', [rail(9)], [wants(12)], ['12 dc ← 9 dc']],
    ['none of the other sign', [rail(-12)], [wants(12)], ['12 dc ← nothing']],
    ['none where there is none', [], [wants(12)], ['12 dc ← nothing']],
    ['the nearest in volts', [rail(5), rail(12)], [wants(9)], ['9 dc ← 12 dc']],
    ['of the same kind before the nearest', [rail(9, 'ac'), rail(12)], [wants(9)], ['9 dc ← 12 dc']],
    ['of the same kind at the same volts', [rail(12, 'ac'), rail(12)], [wants(12)], ['12 dc ← 12 dc']],
    ['the same the other way', [rail(12), rail(12, 'ac')], [wants(12, 'ac')], ['12 ac ← 12 ac']],
    ['each its own', [rail(-12), rail(12), rail(5)], [wants(5), wants(-12)], ['5 dc ← 5 dc', '-12 dc ← -12 dc']],
  ])('is %s', (_name, supplies, devices, is) => {
    expect(matched(supplies, devices)).toEqual(is)
    expect(matched(supplies.toReversed(), devices.toReversed())).toEqual(is)
  })

  it('is shared by all that want its volts, the hungriest on the strongest', () => {
    const [first, second] = matchRails(
      [rail(12, 'dc', 1), rail(12, 'dc', 3)],
      [wants(12, 'dc', 0.5), wants(12, 'dc', 2)],
    )
    expect(first).toMatchObject({ device: { currentA: 2 }, supply: { currentA: 3 } })
    expect(second).toMatchObject({ device: { currentA: 0.5 }, supply: { currentA: 1 } })
    const [shared] = matchRails([rail(12, 'dc', 3)], [wants(12, 'dc', 0.5), wants(12, 'dc', 2)])
    expect(shared?.sharedWith).toHaveLength(2)
  })
})
