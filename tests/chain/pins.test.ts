import { describe, expect, it } from 'vitest'
import type { CheckRequest, Pin, Polarity } from '../../server/chain/case/request.js'
import { outcomes } from '../../server/chain/finding.js'
import { checkSchema } from '../../server/facts/check.js'
import { assess } from '../support/told.js'
import { changed, outcomesOn } from './cases.js'

const rail = (id: string, voltageV: number, measuredV: number | null = null, kind: 'dc' | 'ac' | null = 'dc'): Pin => ({
  id,
  role: 'rail',
  voltageV,
  measuredV,
  kind,
})
const of = (id: string, role: Pin['role'], measuredV: number | null = null): Pin => ({ id, role, measuredV })

/** A machine of three rails on a six-way connector, with a map of either side. */
const pinned = (supply: Pin[] | null, device: Pin[] | null): CheckRequest =>
  changed({
    supply: {
      outputs: [
        { kind: 'dc', voltageV: 5, currentA: 6 },
        { kind: 'dc', voltageV: 12, currentA: 2 },
        { kind: 'dc', voltageV: -12, currentA: 0.5 },
      ],
      plug: { outerMm: null, innerMm: null, polarity: null, name: '6-way' },
      pins: supply,
    },
    device: {
      inputs: [
        { kind: 'dc', voltageV: 5, currentA: 4 },
        { kind: 'dc', voltageV: 12, currentA: 1 },
        { kind: 'dc', voltageV: -12, currentA: 0.2 },
      ],
      jack: { outerMm: null, innerMm: null, polarity: null, name: '6-way' },
      pins: device,
    },
  })

const given = [rail('1', 5, 5.02), rail('2', 12, 12.1), rail('3', -12, -11.9), of('4', 'return'), of('5', 'none')]
const wanted = [rail('1', 5), rail('2', 12), rail('3', -12), of('4', 'return'), of('6', 'signal')]
const onPins = (request: CheckRequest) => {
  const found = assess(request).findings.filter(({ topic }) => topic === 'pins')
  return outcomes.find((outcome) => found.some((one) => one.outcome === outcome)) ?? '-'
}
/** The map of the supply with one contact in place of the one of its name. */
const supplyWith = (pin: Pin) => onPins(pinned([...given.filter(({ id }) => id !== pin.id), pin], wanted))

describe('contacts, one by one', () => {
  it('a whole, measured, matching map ends without conflict, and the barrel plug is not asked for', () => {
    const { verdict, findings } = assess(pinned(given, wanted))
    expect(verdict).toBe('no-conflict-found')
    expect(findings.map(({ topic }) => topic)).not.toContain('polarity')
    expect(findings.map(({ topic }) => topic)).not.toContain('dc-plug')
  })

  it('without a map the connector stays not known', () => {
    expect(onPins(pinned(null, null))).toBe('-')
    expect(assess(pinned(null, null)).verdict).toBe('find-out-first')
    expect(onPins(pinned(given, null))).toBe('unknown')
    expect(onPins(pinned(null, wanted))).toBe('unknown')
  })

  it.each<[string, Pin, string]>([
    ['a rail that was not measured', rail('1', 5), 'unknown'],
    ['a rail without AC or DC', rail('1', 5, 5, null), 'unknown'],
    ['a rail that measures 20 % more than mapped', rail('1', 5, 6), 'stop'],
    ['the other sign on a contact', rail('3', 12, 12), 'stop'],
    ['AC where DC is wanted', rail('2', 12, 12, 'ac'), 'stop'],
    ['nothing where a rail is wanted', of('2', 'none'), 'stop'],
    ['a return where a rail is wanted', of('2', 'return'), 'stop'],
    ['a voltage on the only return', rail('4', 12, 12), 'stop'],
    ['a voltage on a signal', rail('6', 12, 12), 'stop'],
    ['a return on a signal', of('6', 'return'), 'stop'],
    ['a contact mapped as nothing that measures 12 V', of('5', 'none', 12), 'stop'],
    ['a voltage on a contact that the machine’s map has not', rail('7', 12, 12), 'unknown'],
  ])('%s is not let through', (_, pin, outcome) => {
    expect(supplyWith(pin)).toBe(outcome)
  })

  it('a map without a contact for a rail of its side is not whole; a name twice is none', () => {
    expect(
      onPins(
        pinned(
          given,
          wanted.filter(({ id }) => id !== '3'),
        ),
      ),
    ).toBe('unknown')
    expect(onPins(pinned([...given, of('1', 'none')], wanted))).toBe('unknown')
    expect(onPins(pinned([...given, of(' 1', 'none')], wanted))).toBe('unknown')
  })

  it('taking any contact or measurement away never leaves it without conflict', () => {
    for (const side of ['supply', 'device'] as const)
      for (const at of (side === 'supply' ? given : wanted).filter(
        ({ role }) => role === 'rail' || role === 'return',
      )) {
        const less = (map: Pin[]) => map.filter(({ id }) => id !== at.id)
        const request = side === 'supply' ? pinned(less(given), wanted) : pinned(given, less(wanted))
        expect(['stop', 'unknown'], `${side} ${at.id}`).toContain(onPins(request))
      }
  })

  it('a supply alone is held to its own map', () => {
    const alone = (map: Pin[]): CheckRequest => ({ ...pinned(map, null), arrangement: 'supply-only', device: {} })
    expect(onPins(alone(given))).toBe('clear')
    expect(onPins(alone([...given.slice(1), rail('1', 5, 9)]))).toBe('stop')
    expect(onPins(alone([...given.slice(1), rail('1', 5)]))).toBe('unknown')
    expect(assess(alone(given)).findings.map(({ topic }) => topic)).not.toContain('dc-plug')
  })

  it('contacts are named as printed, without spaces', () => {
    const named = (id: string) => checkSchema.safeParse(pinned([...given, of(id, 'none')], wanted)).success
    expect([named('12a'), named('pin 5'), named('')]).toEqual([true, false, false])
  })
})

describe('signs of centre and sleeve beside maps of the contacts', () => {
  const on = (
    plug: Polarity | null,
    jack: Polarity | null,
    [centre, sleeve]: [string, string] = ['1', '2'],
    negative = false,
  ) => {
    const hot = negative ? sleeve : centre
    const cold = negative ? centre : sleeve
    return outcomesOn(
      'polarity',
      changed({
        supply: { plug: { polarity: plug }, pins: [rail(hot, 12, 12.1), of(cold, 'return')] },
        device: { jack: { polarity: jack }, pins: [rail(hot, 12), of(cold, 'return')] },
      }),
    )
  }
  it.each<[string, Polarity | null, Polarity | null, string[]]>([
    ['both the same', 'centre-positive', 'centre-positive', []],
    ['opposite', 'centre-positive', 'centre-negative', ['unknown']],
    ['one alone', null, 'centre-negative', []],
    ['none', null, null, []],
  ])('of contacts by figures, %s', (_, plug, jack, outcome) => {
    expect(on(plug, jack)).toEqual(outcome)
  })
  it.each<[[string, string], boolean, Polarity, string[]]>([
    [['tip', 'sleeve'], false, 'centre-positive', []],
    [['tip', 'sleeve'], false, 'centre-negative', ['unknown']],
    [['Centre', 'Outer'], true, 'centre-negative', []],
    [['Centre', 'Outer'], true, 'centre-positive', ['unknown']],
  ])('of contacts called %s, the rail outside: %s, a jack of %s', (names, negative, jack, outcome) => {
    expect(on(null, jack, names, negative)).toEqual(outcome)
  })
  it('a measured sign against the printed one is a stop with maps as without', () => {
    const request = changed({
      supply: { measured: { polarity: 'centre-negative' }, pins: [rail('1', 12, 12.1), of('2', 'return')] },
      device: { pins: [rail('1', 12), of('2', 'return')] },
    })
    expect(outcomesOn('polarity', request)).toEqual(['stop'])
  })
})
