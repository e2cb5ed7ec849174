import { describe, expect, it } from 'vitest'
import { changed, outcomesOn } from './cases.js'

describe('charging', () => {
  it.each([
    ['a charger', 'BATTERY CHARGER', null, 'unknown'],
    ['constant current', 'CONSTANT CURRENT', null, 'stop'],
    ['an LED driver of constant voltage', 'LED DRIVER CONSTANT VOLTAGE', null, 'caution'],
    ['one that says both', 'LED DRIVER CONSTANT CURRENT, CONSTANT VOLTAGE', null, 'stop'],
    ['constant current on both', 'CONSTANT CURRENT', 'CONSTANT CURRENT', 'caution'],
    ['a machine for constant current alone', null, 'CONSTANT CURRENT', 'stop'],
    ['a battery in the machine', null, 'INTERNAL BATTERY', 'caution'],
  ] as const)('%s', (_, supply, device, outcome) => {
    expect(outcomesOn('charging', changed({ supply: { label: supply }, device: { label: device } }))).toEqual([outcome])
  })
  it('leaves no voltage that is held', () => {
    expect(outcomesOn('output-voltage', changed({ supply: { label: 'BATTERY CHARGER' } }))).toEqual(['unknown'])
    expect(outcomesOn('output-voltage', changed({ supply: { label: 'CONSTANT CURRENT' } }))).toEqual(['stop'])
  })
  it.each([
    ['5 V with a current', 'CHARGER OUTPUT 5V DC 2A', []],
    ['USB with USB voltages', 'USB CHARGER OUTPUT 5V DC 3A / 9V DC 2A', []],
    ['5 V without a current', 'CHARGER OUTPUT 5V DC', ['unknown']],
    ['4.7 V, just below what USB gives', 'CHARGER OUTPUT 4.7V DC 2A', ['unknown']],
    ['5.4 V, just above', 'CHARGER OUTPUT 5.4V DC 2A', ['unknown']],
    ['5 V beside 9 V AC', 'CHARGER OUTPUT 5V DC 2A 9V AC 1A', ['unknown']],
  ] as const)('is none that is a USB supply: %s', (_, label, outcomes) => {
    expect(outcomesOn('charging', changed({ supply: { label } }))).toEqual(outcomes)
  })
})
