import { describe, expect, it } from 'vitest'
import type { CheckRequest } from '../../server/chain/case/request.js'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, onlyFinding } from './cases.js'

/** A class I supply with every link earthed: C14, three-core cord, CEE 7/7 in an F socket. */
const classOne = changed({
  supply: { protectionClass: 'I', inlet: 'C14' },
  cord: { plug: 'CEE 7/7', connector: 'C13', ratedA: 10, earthed: true },
})

const outcome = (changes: Parameters<typeof changed>[0]) => onlyFinding('earthing', changed(changes, classOne)).outcome

describe('earthing', () => {
  it('is clear for class I where every link carries the earth', () => {
    expect(outcome({})).toBe('clear')
  })

  it.each<{ name: string; changes: Parameters<typeof changed>[0]; is: Outcome }>([
    { name: 'a two-pin inlet', changes: { supply: { inlet: 'C18' } }, is: 'stop' },
    { name: 'a cord without earth', changes: { cord: { earthed: false } }, is: 'stop' },
    { name: 'a two-pole connector', changes: { cord: { connector: 'C17' } }, is: 'stop' },
    { name: 'a plug without earth contact', changes: { cord: { plug: 'CEE 7/17' } }, is: 'stop' },
    {
      name: 'a plug whose earth the socket does not meet',
      changes: { site: { country: 'DK', socket: 'K' } },
      is: 'stop',
    },
    { name: 'an adapter that drops the earth', changes: { cord: { adapter: { earthed: false } } }, is: 'stop' },
    { name: 'an adapter that may drop the earth', changes: { cord: { adapter: { earthed: null } } }, is: 'unknown' },
    { name: 'an earthed adapter', changes: { cord: { adapter: { earthed: true } } }, is: 'clear' },
    { name: 'a cord of which it is not known', changes: { cord: { earthed: null } }, is: 'unknown' },
    { name: 'a plug not named', changes: { cord: { plug: null } }, is: 'unknown' },
    { name: 'a site not named', changes: { site: { country: null, socket: null } }, is: 'unknown' },
    { name: 'an inlet not named', changes: { supply: { inlet: null } }, is: 'unknown' },
    { name: 'no cord described', changes: { cord: null }, is: 'unknown' },
    {
      name: 'a converter, whose earth is not known',
      changes: { converter: { kind: 'isolating', outputV: 230, ratedVA: 500 } },
      is: 'unknown',
    },
    {
      name: 'a three-core captive flex',
      changes: { supply: { inlet: 'captive' }, cord: { connector: 'captive' } },
      is: 'clear',
    },
    {
      name: 'a two-core captive flex',
      changes: { supply: { inlet: 'captive' }, cord: { connector: 'captive', earthed: false } },
      is: 'stop',
    },
    {
      name: 'a captive flex whose cores are not known',
      changes: { supply: { inlet: 'captive' }, cord: { connector: 'captive', earthed: null } },
      is: 'unknown',
    },
  ])('of class I with $name: $is', ({ changes, is }) => {
    expect(outcome(changes)).toBe(is)
  })

  it('says at which link the earth is lost, and who may work on it', () => {
    const finding = onlyFinding('earthing', changed({ cord: { earthed: false } }, classOne))
    expect(finding.title).toMatch(/cord \(not earthed\)/)
    expect(finding.action).toMatch(/licensed electrician/)
  })

  it('is clear for class II, and forbids an earth added by hand', () => {
    const finding = onlyFinding('earthing', changed({}))
    expect(finding.outcome).toBe('clear')
    expect(finding.action).toMatch(/Never add an earth/)
  })

  it.each<{ inlet: string; is: RegExp }>([
    { inlet: 'C8', is: /Class II \(taken from its C8 inlet\)/ },
    { inlet: 'C18', is: /Class II \(taken from its C18 inlet\)/ },
    { inlet: 'C6', is: /Class I \(taken from its C6 inlet\)/ },
    { inlet: 'C14', is: /Class I \(taken from its C14 inlet\)/ },
    { inlet: 'C16', is: /Class I \(taken from its C16 inlet\)/ },
    { inlet: 'C20', is: /Class I \(taken from its C20 inlet\)/ },
  ])('takes the class from a $inlet inlet where none is stated, and says so', ({ inlet, is }) => {
    expect(onlyFinding('earthing', changed({ supply: { protectionClass: null, inlet } })).title).toMatch(is)
  })

  it('does not know the class of a captive, unmarked supply, nor of one of which nothing is entered', () => {
    expect(onlyFinding('earthing', changed({ supply: { protectionClass: null, inlet: 'captive' } })).outcome).toBe(
      'unknown',
    )
    const nothing: CheckRequest = { site: {}, supply: {}, device: {} }
    expect(onlyFinding('earthing', nothing).outcome).toBe('unknown')
  })

  it('stops class III where a mains input is claimed', () => {
    expect(onlyFinding('earthing', changed({ supply: { protectionClass: 'III' } })).outcome).toBe('stop')
    // extra-low voltage ends at 50 V (IEC 61140)
    const on = (voltageV: number) =>
      onlyFinding(
        'earthing',
        changed({ supply: { protectionClass: 'III', input: { voltages: [{ min: voltageV, max: voltageV }] } } }),
      ).outcome
    expect([on(50), on(50.1)]).toEqual(['clear', 'stop'])
    expect(onlyFinding('earthing', changed({ supply: { protectionClass: 'III', input: null } })).outcome).toBe(
      'unknown',
    )
  })

  it('takes the class that was entered before the one that is printed', () => {
    expect(
      onlyFinding('earthing', changed({ supply: { label: 'INPUT 230V~ 50Hz 0.2A ⧈', protectionClass: 'I' } })).title,
    ).toMatch(/Class I /)
    expect(
      onlyFinding(
        'earthing',
        changed({ supply: { label: 'INPUT 230V~ 50Hz 0.2A ⧈', protectionClass: null, inlet: null } }),
      ).title,
    ).toMatch(/Class II /)
  })

  const onEarthPin = changed({ supply: { protectionClass: 'II' } }, classOne)
  it.each<{ by: 'symbol' | 'words' | 'guess' | null; label?: string; earthed: boolean | null; is: Outcome }>([
    { by: 'symbol', earthed: true, is: 'clear' },
    { by: 'symbol', earthed: false, is: 'clear' },
    { by: null, label: '⧈', earthed: false, is: 'clear' },
    { by: 'words', earthed: true, is: 'caution' },
    { by: 'words', earthed: false, is: 'unknown' },
    { by: 'words', earthed: null, is: 'unknown' },
    { by: 'guess', earthed: true, is: 'caution' },
    { by: 'guess', earthed: false, is: 'unknown' },
    { by: null, earthed: true, is: 'caution' },
    { by: null, earthed: false, is: 'unknown' },
  ])(
    'of class II by $by $label on an inlet with an earth pin, cord earthed $earthed: $is',
    ({ by, label, earthed, is }) => {
      const request = changed(
        { supply: { protectionClassBy: by, label: label ?? null }, cord: { earthed } },
        onEarthPin,
      )
      expect(onlyFinding('earthing', request).outcome).toBe(is)
    },
  )

  it.each<{ protectionClass: 'I' | 'II'; inlet: string; is: Outcome; why: string }>([
    { protectionClass: 'II', inlet: 'captive', is: 'unknown', why: 'a captive flex tells nothing' },
    { protectionClass: 'I', inlet: 'captive', is: 'unknown', why: 'nor of class I' },
    { protectionClass: 'II', inlet: 'C8', is: 'clear', why: 'the inlet alone says class II' },
    { protectionClass: 'I', inlet: 'C8', is: 'clear', why: 'the inlet says class II' },
  ])('counts a guess of class $protectionClass as not known, $inlet: $why', ({ protectionClass, inlet, is }) => {
    expect(
      onlyFinding('earthing', changed({ supply: { protectionClass, inlet, protectionClassBy: 'guess' } })).outcome,
    ).toBe(is)
  })
})
