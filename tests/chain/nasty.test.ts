import { describe, expect, it } from 'vitest'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { assess } from '../support/told.js'
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

describe('what a plate says in words counts', () => {
  const silent = { regulated: null, technology: null }
  const plate = (words: string) => `${words} INPUT 230V 50Hz OUTPUT 12V DC 2A`
  it.each([
    'UNREGULATED',
    'UNSTABILISIERT',
    'NON REGULATED',
    'PLUG-IN TRANSFORMER',
    'CLASS 2 TRANSFORMER',
    'STECKERTRANSFORMATOR',
    'TRANSFORMATEUR',
    'BATTERY CHARGER',
    'CONSTANT CURRENT LED DRIVER',
  ])('“%s” is no supply for a machine that needs a regulated one', (words) => {
    const request = changed({ supply: { ...silent, label: plate(words) } })
    expect(outcomesOn('output-voltage', request)).toEqual(['stop'])
  })
  it.each(['REGULATED', 'SWITCHING POWER SUPPLY', 'SCHALTNETZTEIL', 'STABILISIERT', 'REGULATED TRANSFORMER SUPPLY'])(
    '“%s” is taken at its word',
    (words) => {
      expect(outcomesOn('output-voltage', changed({ supply: { ...silent, label: plate(words) } }))).toEqual(['clear'])
    },
  )
  it.each(['ELECTRONIC TRANSFORMER', 'REGULATED UNREGULATED', 'REG. NO. 12345'])('“%s” settles nothing', (words) => {
    expect(outcomesOn('output-voltage', changed({ supply: { ...silent, label: plate(words) } }))).toEqual(['unknown'])
  })
  it('does not take a unit of a wide range for a plain transformer', () => {
    const label = 'CLASS 2 TRANSFORMER INPUT 100-240V 50/60Hz OUTPUT 12V DC 2A'
    expect(outcomesOn('output-voltage', changed({ supply: { ...silent, input: null, label } }))).toEqual(['clear'])
  })
})

describe('whether a supply is regulated', () => {
  const silent = { regulated: null, technology: null }
  it.each([true, null])('is to be found out where nothing tells it and the machine may need it (%s)', (needed) => {
    const request = changed({ supply: silent, device: { regulatedNeeded: needed } })
    expect(onlyFinding('output-voltage', request)).toMatchObject({
      outcome: 'unknown',
      action: expect.stringMatching(/Measure it with nothing connected/),
    })
  })
  it('is told by a reading off load, by a wide input range, or does not matter', () => {
    const of = (changes: Changes) => outcomesOn('output-voltage', changed(changes))
    expect(of({ supply: { ...silent, measured: { offLoadV: 12.1 } } })).toEqual(['clear'])
    expect(of({ supply: { ...silent, input: { voltages: [{ min: 100, max: 240 }] } } })).toEqual(['clear'])
    expect(of({ supply: silent, device: { regulatedNeeded: false } })).toEqual(['clear'])
  })
  it('never gets better by leaving out that it is a transformer', () => {
    for (const needed of [true, null])
      expect(assess(changed({ supply: silent, device: { regulatedNeeded: needed } })).verdict).toBe('find-out-first')
  })
})

describe('a reading that contradicts the plate', () => {
  const unregulated = { regulated: false, technology: 'transformer' as const }
  const of = (measured: NonNullable<CheckRequest['supply']['measured']>, supply: Changes['supply'] = unregulated) =>
    outcomesOn('output-voltage', changed({ supply: { ...supply, measured }, device: { regulatedNeeded: false } }))
  it.each([
    // 12 V 2 A: 16 V to 17.3 V off load are typical
    { measured: { offLoadV: 30 }, is: 'stop' },
    { measured: { offLoadV: 0.5 }, is: 'stop' },
    { measured: { loadedV: 5 }, is: 'stop' },
    { measured: { loadedV: 18 }, is: 'caution' },
    { measured: { offLoadV: 17 }, is: 'clear' },
    { measured: { loadedV: 12 }, is: 'clear' },
  ])('of an unregulated 12 V supply: $measured is $is', ({ measured, is }) => {
    expect(of(measured)).toEqual([is])
  })
  it('is not passed over because the supply has several outputs', () => {
    const outputs = [
      { kind: 'dc' as const, voltageV: 12, currentA: 2 },
      { kind: 'dc' as const, voltageV: 5, currentA: 2 },
    ]
    expect(of({ offLoadV: 30 }, { outputs })).toContain('unknown')
    // it fits the other output: on a plug of two contacts nobody knows which of them is there
    expect(of({ offLoadV: 5.1 }, { outputs })).toContain('unknown')
    expect(of({ offLoadV: 5.1 }, { outputs, plug: null })).toEqual(['clear'])
  })
  it('with a minus sign leaves a printed polarity to be measured again', () => {
    expect(outcomesOn('polarity', changed({ supply: { measured: { offLoadV: -12 } } }))).toEqual(['unknown'])
    expect(
      outcomesOn('polarity', changed({ supply: { measured: { offLoadV: -12, polarity: 'centre-positive' } } })),
    ).toEqual(['clear'])
  })
})

describe('an input below what the only output gives', () => {
  const misread = { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60], currentA: 0.04 }
  it('makes no converter large enough: 4.8 VA in, 24 W out', () => {
    const request = changed({
      supply: { input: misread },
      converter: { kind: 'autotransformer', outputV: 120, ratedVA: 10 },
    })
    expect(outcomesOn('converter', request)).toEqual(['stop'])
  })
  it('makes no cord strong enough: 2.3 VA in, 24 W out', () => {
    const request = changed({ supply: { input: { currentA: 0.01 } }, cord: { ratedA: 0.1 } })
    expect(outcomesOn('cord', request)).toEqual(['stop'])
  })
})

describe('a plug behind a converter', () => {
  it('that fits the wall as well is a caution, as the supply does not bear the wall', () => {
    const request = changed({
      supply: { input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60] } },
      converter: { kind: 'isolating', outputV: 120, ratedVA: 200 },
    })
    expect(onlyFinding('socket', request)).toMatchObject({
      outcome: 'caution',
      title: expect.stringMatching(/not into the wall, which it fits too/),
    })
  })
})

describe('a plate that lists output voltages', () => {
  const of = (output: string, voltageV = 9, outputs: CheckRequest['supply']['outputs'] = null) =>
    outcomesOn(
      'output-voltage',
      changed({
        // of as many contacts as it needs: two outputs on a barrel are another question
        supply: { label: `INPUT 230V 50Hz OUTPUT ${output}`, input: null, outputs, plug: null },
        device: { inputs: [{ kind: 'dc', voltageV, currentA: 0.5 }] },
      }),
    )
  it.each(['3/4.5/6/7.5/9/12V DC 1A', '9/12V DC 1A', '9V⎓/12V⎓ 2A', '9 or 12V DC 1A'])(
    'may mean the positions of a switch, so “%s” never passes for 9 V',
    (output) => {
      expect(of(output)).toContain('unknown')
    },
  )
  it('is settled by entering what it gives', () => {
    expect(of('9/12V DC 1A', 9, [{ kind: 'dc', voltageV: 9, currentA: 1 }])).toEqual(['clear'])
  })
  it.each(['+5V 2A, +12V 1A DC', '5V⎓2A 12V⎓1A', '+5V/2A +12V/1A DC', '+5V/+12V DC 2A', '12V DC 2A'])(
    'of outputs side by side is no list of positions: “%s”',
    (output) => {
      expect(of(output, 12).filter((outcome) => outcome === 'unknown')).toEqual([])
    },
  )
})

describe('a list that is no choice, and a choice that looks like a list', () => {
  it('one window printed twice is no selector', () => {
    const twice = { voltages: [230, 230].map((voltageV) => ({ min: voltageV, max: voltageV })) }
    expect(outcomesOn('mains-voltage', changed({ supply: { input: twice } }))).toEqual(['clear'])
  })
  const of = (output: string) =>
    outcomesOn(
      'output-voltage',
      changed({
        supply: { label: `INPUT 100-240V~ 50/60Hz 1.5A OUTPUT ${output}`, input: null, outputs: null, plug: null },
      }),
    )
  it.each([
    '5V⎓3A, 9V⎓3A, 12V⎓3A, 15V⎓3A, 20V⎓3.25A',
    '5V⎓3A or 9V⎓2A or 12V⎓1.5A',
    '5V⎓3A/9V⎓2A/12V⎓1.5A',
    '9V⎓2A or 12V⎓1.5A',
  ])('a USB source gives one of “%s”, and which is to be found out', (output) => {
    expect(of(output)).toContain('unknown')
  })
  it.each(['5V⎓2A, 12V⎓2A', '+5V 2A +12V 2A +24V 1A', '+5V/2A +12V/2A', '5V⎓2A, 12V⎓2A, -12V⎓0.5A'])(
    '“%s” are outputs side by side',
    (output) => {
      expect(of(output)).not.toContain('unknown')
    },
  )
})

describe('a converter', () => {
  const american = { input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60] } }
  const to120 = { kind: 'isolating' as const, outputV: 120, ratedVA: 200 }
  const brazil = { country: 'BR', socket: 'N' }
  it('gives its output on one mains only, so it is open where 127 V or 220 V may be met', () => {
    expect(onlyFinding('converter', changed({ site: brazil, supply: american, converter: to120 }))).toMatchObject({
      outcome: 'unknown',
      title: expect.stringMatching(/depends on which mains it meets: 127.V or 220.V/),
    })
    const stated = changed({ site: { ...brazil, voltageV: 220 }, supply: american, converter: to120 })
    expect(outcomesOn('converter', stated)).toEqual(['clear'])
  })
  it('is not asked for by a plate of extra-low voltage', () => {
    for (const voltageV of [12, 24, 48]) {
      const request = changed({ supply: { input: { voltages: [{ min: voltageV, max: voltageV }] } } })
      expect(onlyFinding('mains-voltage', request).action).not.toMatch(/converter/)
      expect(outcomesOn('converter', request)).toEqual([])
    }
  })
  it('of unknown output is what the cord waits for, not the place', () => {
    const request = changed({ supply: american, converter: { ...to120, outputV: null } })
    expect(onlyFinding('cord', request).action).toMatch(/converter’s plate/)
    expect(onlyFinding('cord', request).action).not.toMatch(/Enter the country/)
  })
})

describe('what to buy', () => {
  it('is no cord set where no plug brings an earth from the socket', () => {
    const request = with1({ site: { country: 'US', socket: 'A' }, cord: { plug: 'NEMA 5-15' } })
    expect(onlyFinding('socket', request).action).toMatch(/No plug brings an earth from socket A.*electrician/)
  })
  it('reads as a sentence where no socket is known', () => {
    const request = with1({
      site: { country: null, socket: null, voltageV: 230 },
      cord: { adapter: { earthed: true } },
    })
    expect(onlyFinding('socket', request).action).toMatch(/a whole cord set with connector C13, rated 250.V/)
  })
})

describe('a socket that the country’s list does not have', () => {
  it('counts as entered, and the finding names the list', () => {
    const british = changed({ site: { socket: 'G' }, cord: { plug: 'BS 1363', ratedA: 3 } })
    expect(onlyFinding('socket', british)).toMatchObject({
      outcome: 'clear',
      title: expect.stringMatching(/the tables list socket C or F for DE, G was entered/),
    })
  })
})
