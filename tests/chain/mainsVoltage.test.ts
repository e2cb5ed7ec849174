import { describe, expect, it } from 'vitest'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, findingsOn, onlyFinding } from './cases.js'

type Window = [min: number, max: number]

const at = (site: { country?: string; voltageV?: number }, windows: Window[], selectorV: number | null = null) =>
  onlyFinding(
    'mains-voltage',
    changed({
      site: { country: null, ...site },
      supply: { input: { voltages: windows.map(([min, max]) => ({ min, max })), selectorV } },
    }),
  )

describe('mains-voltage', () => {
  // site bands used: DE 207–253 V (IEC 60038), US 114–126 V (ANSI C84.1 range A), JP 95–107 V, AU as listed
  it.each<{ name: string; country: string; window: Window; is: Outcome }>([
    { name: 'the plate names the site’s voltage', country: 'DE', window: [230, 230], is: 'clear' },
    { name: 'a wide plate takes it in', country: 'DE', window: [100, 240], is: 'clear' },
    { name: 'a plate of 220–240 V takes it in', country: 'DE', window: [220, 240], is: 'clear' },
    {
      name: 'a plate of 220 V was tested to 233.2 V, the band reaches 253 V',
      country: 'DE',
      window: [220, 220],
      is: 'caution',
    },
    { name: 'a plate of 200 V is below 230 V / 1.10', country: 'DE', window: [200, 200], is: 'stop' },
    { name: 'a plate of 120 V', country: 'DE', window: [120, 120], is: 'stop' },
    { name: 'a plate of 100–120 V', country: 'DE', window: [100, 120], is: 'stop' },
    { name: 'a plate of 100 V on 120 V is 1.2 times', country: 'US', window: [100, 100], is: 'stop' },
    {
      name: 'a plate of 110 V was tested to 116.6 V, the band reaches 126 V',
      country: 'US',
      window: [110, 110],
      is: 'caution',
    },
    { name: 'a plate of 230 V on 120 V will not run', country: 'US', window: [230, 230], is: 'stop' },
    { name: 'a plate of 120 V on 100 V: 0.833, band bottom 95 V', country: 'JP', window: [120, 120], is: 'caution' },
  ])('$name: $is', ({ country, window, is }) => {
    expect(at({ country }, [window]).outcome).toBe(is)
  })

  // a bare site voltage has a band of ±10 % unless a general row holds for it
  it.each<{ name: string; voltageV: number; window: Window; is: Outcome }>([
    { name: '1.10 times the plate exactly is no stop', voltageV: 165, window: [150, 150], is: 'caution' },
    { name: 'just over 1.10 times the plate is a stop', voltageV: 165.01, window: [150, 150], is: 'stop' },
    { name: '2 % above the plate’s voltage is the plate’s own mains', voltageV: 150, window: [147, 147], is: 'clear' },
    {
      name: 'a little more than 2 % above is not, and the band passes the +6 % of the test',
      voltageV: 150,
      window: [146.9, 146.9],
      is: 'caution',
    },
    { name: '0.80 of the plate exactly may drop out', voltageV: 120, window: [150, 150], is: 'caution' },
    { name: 'just under 0.80 of the plate is a stop', voltageV: 119.99, window: [150, 150], is: 'stop' },
  ])('$name', ({ voltageV, window, is }) => {
    expect(at({ voltageV }, [window]).outcome).toBe(is)
  })

  it('says how many times over the mains is', () => {
    expect(at({ country: 'DE' }, [[120, 120]]).title).toContain('1.92 times')
  })

  it('says of too low a mains that it is no shock hazard of its own', () => {
    const finding = at({ country: 'US' }, [[230, 230]])
    expect(finding.why).toMatch(/no shock hazard/)
    expect(finding.title).toContain('0.522')
  })

  describe('with a selector', () => {
    const both: Window[] = [
      [115, 115],
      [230, 230],
    ]
    it('asks for its position where one position would suit', () => {
      const finding = at({ country: 'DE' }, both)
      expect(finding.outcome).toBe('unknown')
      expect(finding.action).toMatch(/unplugged.*230/s)
    })
    it('stops where no position suits', () => {
      expect(
        at({ country: 'DE' }, [
          [100, 100],
          [120, 120],
        ]).outcome,
      ).toBe('stop')
    })
    it('is clear at the right position', () => {
      expect(at({ country: 'DE' }, both, 230).outcome).toBe('clear')
    })
    it('stops at too low a position and names the doubled voltage: 2 × √2 × 230 V = 651 V', () => {
      const finding = at({ country: 'DE' }, both, 115)
      expect(finding.outcome).toBe('stop')
      expect(finding.working.join('\n')).toMatch(/2 × √2 × 230.V = 650\.5.V/)
      expect(finding.action).toMatch(/selector/)
    })
    it('stops at too high a position on a low mains', () => {
      expect(at({ country: 'US' }, both, 230).outcome).toBe('stop')
    })
    it('finds a position that is none of the plate’s a contradiction', () => {
      expect(at({ country: 'DE' }, both, 180).outcome).toBe('unknown')
    })
    it('lets a position decide within a wide window too', () => {
      expect(at({ country: 'DE' }, [[100, 240]], 115).outcome).toBe('stop')
    })
    it('takes the window the position lies in', () => {
      expect(
        at(
          { country: 'DE' },
          [
            [100, 120],
            [200, 240],
          ],
          230,
        ).outcome,
      ).toBe('clear')
      expect(
        at(
          { country: 'DE' },
          [
            [100, 120],
            [200, 240],
          ],
          115,
        ).outcome,
      ).toBe('stop')
    })
  })

  describe('with facts missing', () => {
    it('does not know without a plate', () => {
      const finding = onlyFinding('mains-voltage', changed({ supply: { input: null } }))
      expect(finding.outcome).toBe('unknown')
      expect(finding.action).toMatch(/plate/)
    })
    it('does not know without a site', () => {
      const finding = onlyFinding('mains-voltage', changed({ site: { country: null } }))
      expect(finding.outcome).toBe('unknown')
      expect(finding.action).toMatch(/country/)
    })
  })

  describe('in a country with several systems', () => {
    it('does not know where they disagree', () => {
      const finding = onlyFinding(
        'mains-voltage',
        changed({ site: { country: 'BR' }, supply: { input: { voltages: [{ min: 127, max: 127 }] } } }),
      )
      expect(finding.outcome).toBe('unknown')
      expect(finding.title).toMatch(/127.V.*220.V/)
    })
    it('is clear where the plate takes in both', () => {
      expect(at({ country: 'BR' }, [[100, 240]]).outcome).toBe('clear')
    })
    it('stops where both stop', () => {
      expect(at({ country: 'BR' }, [[24, 24]]).outcome).toBe('stop')
    })
    it('judges the one that was stated', () => {
      expect(at({ country: 'BR', voltageV: 127 }, [[127, 127]]).outcome).toBe('clear')
      expect(at({ country: 'BR', voltageV: 220 }, [[127, 127]]).outcome).toBe('stop')
    })
  })

  it('is judged on a converter’s output, with the site’s percent band', () => {
    const behind = (outputV: number | null, window: Window) =>
      onlyFinding(
        'mains-voltage',
        changed({
          supply: { input: { voltages: [{ min: window[0], max: window[1] }] } },
          converter: { kind: 'autotransformer', outputV, ratedVA: 200 },
        }),
      )
    expect(behind(120, [120, 120]).outcome).toBe('clear')
    expect(behind(110, [120, 120]).outcome).toBe('caution')
    expect(behind(230, [120, 120]).outcome).toBe('stop')
    expect(behind(null, [120, 120]).outcome).toBe('unknown')
    // 253 / 230 × 115 V = 126.5 V; a plate of 110 V was tested to 116.6 V
    expect(behind(115, [110, 110]).title).toMatch(/126\.5.V.*116\.6.V/)
  })

  it('stops a unit with a dc input, such as one for a car, on any mains', () => {
    const finding = onlyFinding(
      'mains-voltage',
      changed({ supply: { label: 'INPUT: 12V DC\nOUTPUT: 5V DC 1A', input: null } }),
    )
    expect(finding.outcome).toBe('stop')
    expect(finding.title).toMatch(/direct current/)
    expect(
      findingsOn('mains-frequency', changed({ supply: { label: 'INPUT: 12V DC\nOUTPUT: 5V DC 1A', input: null } })),
    ).toEqual([])
  })

  it('lets a mains voltage entered by hand correct a plate that was read as one for dc, and asks to look again', () => {
    const label = 'INPUT: 12V DC\nOUTPUT: 5V DC 1A'
    expect(onlyFinding('mains-voltage', changed({ supply: { label } })).outcome).toBe('unknown')
    const lower = { voltages: [{ min: 10, max: 14 }] }
    expect(onlyFinding('mains-voltage', changed({ supply: { label, input: lower } })).title).toMatch(/direct current/)
  })

  it('stops a three-phase unit and leaves it to qualified hands', () => {
    const finding = onlyFinding(
      'mains-voltage',
      changed({ supply: { label: 'INPUT: 3~ 400V 50Hz\nOUTPUT: 24V DC 10A', input: null } }),
    )
    expect(finding.outcome).toBe('stop')
    expect(finding.action).toMatch(/qualified person/)
  })

  it.each([
    'INPUT: 3~ 400V 50Hz',
    'INPUT: 3N~ 400V 50Hz',
    '3 PH 208V 60Hz',
    '3-phase 400V 50Hz',
    'three-phase 400V 50Hz',
    'Drehstrom 400V 50Hz',
    'triphasé 400V 50Hz',
    'trifásico 400V 50Hz',
    'trifase 400V 50Hz',
  ])('takes “%s” for three phases', (print) => {
    const supply = { label: `${print}\nOUTPUT: 24V DC 10A`, input: null }
    const finding = onlyFinding('mains-voltage', changed({ supply }))
    expect(finding.outcome).toBe('stop')
    expect(finding.title).toMatch(/three-phase/)
  })

  it('does not take an adjustable output for three phases', () => {
    const finding = onlyFinding('mains-voltage', changed({ supply: { label: 'OUTPUT 3 ~ 12V DC 1A, 0.3~0.4A' } }))
    expect(finding.outcome).toBe('clear')
  })
})

describe('a mains a few per cent above the plate', () => {
  // 220 V and 200 W on 240 V: 240 V − 220 V = 20 V in series; 200 W / 0.8 of a transformer is 250 VA, 1.05 A at 240 V, 20.9 VA
  const amplifier = (technology: 'transformer' | 'switch-mode', voltageV = 240, powerW: number | null = 200) =>
    onlyFinding(
      'mains-voltage',
      changed({
        site: { country: null, voltageV, frequencyHz: 50 },
        supply: {
          technology,
          outputs: null,
          input: { voltages: [{ min: 220, max: 220 }], frequenciesHz: [50], currentA: null, powerW },
        },
      }),
    )
  it('is taken off a transformer by a small one in opposition, sized, and built by a licensed electrician', () => {
    const { outcome, actions } = amplifier('transformer')
    const remedy = actions.find(({ do: what }) => /in opposition/.test(what))
    expect(outcome).toBe('caution')
    expect(remedy).toMatchObject({ who: 'qualified' })
    expect(remedy?.do.replaceAll('\u00a0', ' ')).toMatch(
      /secondary of 20 V .* for 1\.1 A at least \(21 VA\).*does not isolate.*licensed electrician/,
    )
  })
  it('is not spoken of for a switch-mode supply, without its current, or on its own mains', () => {
    for (const finding of [
      amplifier('switch-mode'),
      amplifier('transformer', 240, null),
      amplifier('transformer', 220),
    ])
      expect(finding.action ?? '').not.toMatch(/in opposition/)
  })
})
