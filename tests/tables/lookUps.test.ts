import { describe, expect, it } from 'vitest'
import { colourProvesNothing, conductorColours } from '../../server/tables/conductorColours.js'
import { largestPlugFuseFor, minimumAreaFor } from '../../server/tables/cords.js'
import { dcPlugByName, dcPlugsBySize } from '../../server/tables/dcPlugs.js'
import { connectorByName, connectorFits, inletByName } from '../../server/tables/inlets.js'
import { bandFor, countries, mainsOf } from '../../server/tables/mains.js'
import { socketLetters } from '../../server/tables/socketLetters.js'
import { fits, plugByName, plugsFor } from '../../server/tables/sockets.js'
import { regulationFor } from '../../server/tables/transformerRegulation.js'

describe('plug names', () => {
  it.each([
    { text: 'CEE 7/16', name: 'CEE 7/16' },
    { text: 'cee7/16', name: 'CEE 7/16' },
    { text: 'Europlug', name: 'CEE 7/16' },
    { text: 'BS1363', name: 'BS 1363' },
    { text: 'BS 1363-1', name: 'BS 1363' },
    { text: 'NEMA 5-15P', name: 'NEMA 5-15P' },
    { text: 'nema 1-15', name: 'NEMA 1-15P' },
    { text: 'NEMA 1-15P unpolarized', name: 'NEMA 1-15P unpolarised' },
    { text: 'AS/NZS 3112', name: 'AS/NZS 3112 10 A' },
    { text: 'Type G', name: 'BS 1363' },
    { text: 'g', name: 'BS 1363' },
    { text: 'Type K', name: 'DS 60884-2-D1' },
  ])('"$text" is $name', ({ text, name }) => {
    expect(plugByName(text)?.name).toBe(name)
  })

  it.each(['Type C', 'F', 'type I', 'A', '', 'CEE 7', 'NEMA 99-99', 'banana'])(
    '"%s" names none, or several, and is undefined',
    (text) => {
      expect(plugByName(text)).toBeUndefined()
    },
  )
})

describe('plugs in sockets', () => {
  it('takes the letter in either case', () => {
    expect(fits('CEE 7/7', 'f')).toEqual(fits('CEE 7/7', 'F'))
    expect(fits('CEE 7/7', 'f')?.fits).toBe('yes')
  })

  it('is undefined for a plug or a letter that is not known', () => {
    expect(fits('banana', 'F')).toBeUndefined()
    expect(fits('CEE 7/7', 'Z')).toBeUndefined()
    expect(fits('CEE 7/7', '')).toBeUndefined()
  })

  it('gives back rows of rare sockets without letting them decide', () => {
    const found = fits('CEE 7/16', 'L')
    expect(found?.fits).toBe('yes')
    expect(found?.rows.map((row) => row.fits)).toContain('no')
  })

  it('never speaks of an earth for a plug without one', () => {
    for (const letter of socketLetters) expect(fits('CEE 7/16', letter)?.earth).toBe('not applicable')
  })

  it('knows an answer for a British plug in every socket', () => {
    for (const letter of socketLetters) expect(fits('BS 1363', letter)?.fits).toBe(letter === 'G' ? 'yes' : 'no')
  })
})

describe('what cord set to buy', () => {
  it.each([
    { letter: 'F', earthed: true, holds: 'CEE 7/7', lacks: 'CEE 7/16' },
    { letter: 'E', earthed: true, holds: 'CEE 7/7', lacks: 'CEE 7/4' },
    { letter: 'F', earthed: false, holds: 'CEE 7/16', lacks: 'CEE 7/7' },
    { letter: 'G', earthed: true, holds: 'BS 1363', lacks: 'CEE 7/16' },
    { letter: 'G', earthed: false, holds: 'BS 1363', lacks: 'CEE 7/16' },
    { letter: 'B', earthed: true, holds: 'NEMA 5-15P', lacks: 'NEMA 1-15P' },
    { letter: 'A', earthed: false, holds: 'NEMA 1-15P', lacks: 'NEMA 5-15P' },
    { letter: 'K', earthed: true, holds: 'DS 60884-2-D1', lacks: 'CEE 7/7' },
    { letter: 'I', earthed: true, holds: 'AS/NZS 3112 10 A', lacks: 'AS/NZS 3112 15 A' },
    { letter: 'J', earthed: true, holds: 'SN 441011 T12', lacks: 'CEE 7/7' },
    { letter: 'H', earthed: true, holds: 'SI 32', lacks: 'CEE 7/7' },
    { letter: 'O', earthed: true, holds: 'TIS 166-2549', lacks: 'CEE 7/7' },
  ])('for $letter, earthed $earthed: $holds and not $lacks', ({ letter, earthed, holds, lacks }) => {
    const names = plugsFor(letter, earthed).map((plug) => plug.name)
    expect(names).toContain(holds)
    expect(names).not.toContain(lacks)
  })

  it.each([
    { country: 'AU', earthed: true, plugs: ['AS/NZS 3112 10 A'] },
    { country: 'AR', earthed: true, plugs: ['IRAM 2073 10 A'] },
    { country: 'CN', earthed: true, plugs: ['GB 1002 three-pin'] },
  ])('for socket I of $country names $plugs, not the look-alikes', ({ country, earthed, plugs }) => {
    expect(plugsFor('I', earthed, country).map((plug) => plug.name)).toEqual(plugs)
  })

  it('for an American socket names no Japanese or Chinese plug', () => {
    expect(plugsFor('A', false, 'US').map((plug) => plug.name)).toEqual(['NEMA 1-15P', 'NEMA 1-15P unpolarised'])
    expect(plugsFor('B', true, 'US').map((plug) => plug.name)).toEqual(['NEMA 5-15P'])
  })

  it('is empty for an earth from a socket without one', () => {
    expect(plugsFor('A', true)).toEqual([])
    expect(plugsFor('C', true)).toEqual([])
  })
})

describe('names of couplers', () => {
  it.each(['C14', 'c14', 'IEC C14', 'IEC 60320 C14', 'IEC 60320-1 C14 inlet', 'IEC320-C14'])(
    '"%s" is the C14 inlet',
    (name) => {
      expect(inletByName(name)?.inlet).toBe('C14')
    },
  )

  it('tells connectors from inlets', () => {
    expect(inletByName('C13')).toBeUndefined()
    expect(connectorByName('C14')).toBeUndefined()
    expect(inletByName('captive')).toBeUndefined()
  })

  it('takes the outline variant C8B for a C8 and keeps the squared C8A apart', () => {
    expect(inletByName('C8B')?.inlet).toBe('C8')
    expect(inletByName('C8A')?.inlet).toBe('C8A')
    expect(connectorFits('C7', 'C8A')?.fits).toBe(true)
    expect(connectorFits('C7 polarised', 'C8')?.fits).toBe(false)
  })

  it('is undefined where either is not of IEC 60320', () => {
    expect(connectorFits('C13', 'captive')).toBeUndefined()
    expect(connectorFits('captive', 'C14')).toBeUndefined()
  })

  it('says why a pair does not mate, with a source', () => {
    const mating = connectorFits('C7', 'C14')
    expect(mating?.why).toBe('C7 belongs to a C8 inlet; a C14 inlet takes a C13.')
    expect(mating?.sources.length).toBeGreaterThan(0)
  })
})

describe('mains', () => {
  it('takes the country in either case and is undefined for one not listed', () => {
    expect(mainsOf('gb')).toBe(mainsOf('GB'))
    expect(mainsOf('GB')?.name).toBe('United Kingdom')
    expect(mainsOf('ZZ')).toBeUndefined()
    expect(mainsOf('')).toBeUndefined()
  })

  it('gives every system of every country a band around its nominal voltage', () => {
    for (const { country, systems } of countries)
      for (const { voltageV, minV, maxV } of systems) {
        expect(minV, country).toBeLessThan(voltageV)
        expect(maxV, country).toBeGreaterThan(voltageV)
      }
  })

  it.each([0, -230, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d V and %d Hz', (value) => {
    expect(() => bandFor(value, 50)).toThrow(RangeError)
    expect(() => bandFor(230, value)).toThrow(RangeError)
  })
})

describe('cords', () => {
  it('takes the largest listed size not over an odd one', () => {
    expect(largestPlugFuseFor(0.7)?.areaMm2).toBe(0.5)
  })

  it.each([0.49, 0, -1, Number.NaN])('is undefined for %d mm²', (areaMm2) => {
    expect(largestPlugFuseFor(areaMm2)).toBeUndefined()
  })

  it.each([-1, Number.NaN])('refuses %d A', (currentA) => {
    expect(() => minimumAreaFor(currentA, 1)).toThrow(RangeError)
  })
})

/** JEITA RC-5320A as given by Wikipedia, "EIAJ connector". */
describe('low-voltage plugs', () => {
  it.each([
    { name: 'EIAJ-01', outerMm: 2.35, innerMm: 0.7, voltageMinV: 0, voltageMaxV: 3.15 },
    { name: 'EIAJ-02', outerMm: 4, innerMm: 1.7, voltageMinV: 3.15, voltageMaxV: 6.3 },
    { name: 'EIAJ-03', outerMm: 4.75, innerMm: 1.7, voltageMinV: 6.3, voltageMaxV: 10.5 },
    { name: 'EIAJ-04', outerMm: 5.5, innerMm: 3.3, voltageMinV: 10.5, voltageMaxV: 13.5 },
    { name: 'EIAJ-05', outerMm: 6.5, innerMm: 4.4, voltageMinV: 13.5, voltageMaxV: 18 },
  ])('$name is $outerMm × $innerMm mm for $voltageMinV to $voltageMaxV V', (row) => {
    expect(dcPlugByName(row.name)).toMatchObject(row)
    expect(dcPlugsBySize(row.outerMm, row.innerMm).map(({ name }) => name)).toContain(row.name)
  })

  it.each(['5.5 x 2.1', '5.5×2.1', '5.5 × 2.1 mm', '5.5mm x 2.1mm', '5,5x2,1', '5.5 x 2.0'])(
    '"%s" is 5.5 × 2.1',
    (text) => {
      expect(dcPlugByName(text)?.name).toBe('5.5 x 2.1')
    },
  )

  it('reads 2.0 as 2.1 by size, and never as 2.5', () => {
    expect(dcPlugsBySize(5.5, 2).map(({ name }) => name)).toEqual(['5.5 x 2.1'])
    expect(dcPlugsBySize(5.5, 2.5).map(({ name }) => name)).toEqual(['5.5 x 2.5'])
  })

  it('gives both the classed plug and its look-alike for one size', () => {
    expect(dcPlugsBySize(4.75, 1.7).map(({ name }) => name)).toEqual(['EIAJ-03', '4.8 x 1.7'])
    expect(dcPlugsBySize(4, 1.7).map(({ name }) => name)).toEqual(['EIAJ-02', '4.0 x 1.7'])
  })

  it('gives nothing for a size that is not listed', () => {
    expect(dcPlugsBySize(9, 1)).toEqual([])
    expect(dcPlugsBySize(Number.NaN, 2.1)).toEqual([])
    expect(dcPlugByName('9.0 x 1.0')).toBeUndefined()
  })
})

describe('conductor colours', () => {
  it('come with the warning that colour proves nothing', () => {
    expect(colourProvesNothing.detail).toContain('test each conductor')
  })

  /** electrical-contractor.net, post 133586: old German earth is red, old Dutch neutral is red, old British line is red. */
  it('hold the case that red is an earth, a neutral and a line', () => {
    const red = (part: 'line' | 'neutral' | 'earth') =>
      conductorColours.filter((row) => row[part] === 'red').map((row) => row.region)
    expect(red('earth')).toContain('Germany, Austria, old')
    expect(red('neutral')).toContain('Netherlands, old')
    expect(red('line')).toContain('UK, old: flexible cord')
  })
})

describe('regulation', () => {
  it('between two listed sizes spans both', () => {
    const between = regulationFor(40)
    expect(between?.low).toBe(regulationFor(50)?.low)
    expect(between?.high).toBe(regulationFor(30)?.high)
  })

  it('at a listed size is that size alone', () => {
    expect(regulationFor(50)).toMatchObject({ low: 0.1, high: 0.13 })
  })

  it.each([0.9, 0, -5, 501, Number.NaN, Number.POSITIVE_INFINITY])('is undefined for %d VA', (ratedVA) => {
    expect(regulationFor(ratedVA)).toBeUndefined()
  })
})
