import { describe, expect, it } from 'vitest'
import { bandFor, mainsOf } from '../../server/tables/mains.js'
import { ratingTestFor } from '../../server/tables/ratingTests.js'

describe('the band of the mains', () => {
  it.each([
    { country: 'GB', voltageV: 230, frequencyHz: 50, minV: 216.2, maxV: 253, source: 'S.I. 1994/3021: 230 V +10/−6 %' },
    { country: 'DE', voltageV: 230, frequencyHz: 50, minV: 207, maxV: 253, source: 'EN 50160: 230 V ±10 %' },
    { country: 'FR', voltageV: 230, frequencyHz: 50, minV: 207, maxV: 253, source: 'EN 50160: 230 V ±10 %' },
    { country: 'US', voltageV: 120, frequencyHz: 60, minV: 114, maxV: 126, source: 'ANSI C84.1 range A: 120 V ±5 %' },
    { country: 'US', voltageV: 240, frequencyHz: 60, minV: 228, maxV: 252, source: 'COMAR 20.50.07.02: 240 V ±5 %' },
    {
      country: 'JP',
      voltageV: 100,
      frequencyHz: 50,
      minV: 95,
      maxV: 107,
      source: 'Enforcement Regulations art. 38: 101 ± 6 V',
    },
    {
      country: 'JP',
      voltageV: 100,
      frequencyHz: 60,
      minV: 95,
      maxV: 107,
      source: 'Enforcement Regulations art. 38: 101 ± 6 V',
    },
    { country: 'AU', voltageV: 230, frequencyHz: 50, minV: 216.2, maxV: 253, source: 'AS 60038:2000: 230 V +10/−6 %' },
    {
      country: 'NZ',
      voltageV: 230,
      frequencyHz: 50,
      minV: 216.2,
      maxV: 243.8,
      source: 'Electricity (Safety) Regulations 2010: ±6 %',
    },
    { country: 'IN', voltageV: 230, frequencyHz: 50, minV: 216, maxV: 244, source: 'state regulations: 230 V ±6 %' },
    {
      country: 'CN',
      voltageV: 220,
      frequencyHz: 50,
      minV: 198,
      maxV: 235.4,
      source: 'GB/T 12325-2008: 220 V +7/−10 %',
    },
    {
      country: 'HK',
      voltageV: 220,
      frequencyHz: 50,
      minV: 206.8,
      maxV: 233.2,
      source: 'Supply Rules, rule 202: 220 V ±6 %',
    },
    { country: 'BR', voltageV: 127, frequencyHz: 60, minV: 117, maxV: 133, source: 'PRODIST module 8, adequate' },
    { country: 'BR', voltageV: 220, frequencyHz: 60, minV: 202, maxV: 231, source: 'PRODIST module 8, adequate' },
    {
      country: 'CA',
      voltageV: 120,
      frequencyHz: 60,
      minV: 110,
      maxV: 126,
      source: 'the widest of two readings of CAN3-C235-83',
    },
    {
      country: 'KR',
      voltageV: 220,
      frequencyHz: 60,
      minV: 198,
      maxV: 242,
      source: 'the widest of 220 ± 13 V and 220 ± 22 V',
    },
    { country: 'KE', voltageV: 240, frequencyHz: 50, minV: 216, maxV: 264, source: 'no row: ±10 %' },
    { country: 'SA', voltageV: 127, frequencyHz: 60, minV: 114.3, maxV: 139.7, source: 'the row is in doubt: ±10 %' },
  ])('$country, $voltageV V $frequencyHz Hz, is $minV to $maxV V ($source)', (row) => {
    const { minV, maxV, sources } = bandFor(row.voltageV, row.frequencyHz, row.country)
    expect(minV).toBeCloseTo(row.minV, 6)
    expect(maxV).toBeCloseTo(row.maxV, 6)
    expect(sources.length).toBeGreaterThan(0)
  })

  it('without a country is IEC 60038 at 230 V 50 Hz (207 to 253 V), else ±10 %', () => {
    expect(bandFor(230, 50)).toMatchObject({ minV: 207, maxV: 253 })
    expect(bandFor(120, 60)).toMatchObject({ minV: 108, maxV: 132 })
  })
})

/** World Standards, "Plug, socket & voltage by country"; IEC World Plugs. */
describe('the mains of a country', () => {
  it.each([
    { country: 'JP', systems: ['100 V 50 Hz', '100 V 60 Hz'], sockets: ['A', 'B'] },
    { country: 'US', systems: ['120 V 60 Hz'], sockets: ['A', 'B'] },
    { country: 'GB', systems: ['230 V 50 Hz'], sockets: ['G'] },
    { country: 'DE', systems: ['230 V 50 Hz'], sockets: ['C', 'F'] },
    { country: 'FR', systems: ['230 V 50 Hz'], sockets: ['C', 'E'] },
    { country: 'AU', systems: ['230 V 50 Hz'], sockets: ['I'] },
    { country: 'CH', systems: ['230 V 50 Hz'], sockets: ['C', 'J'] },
    { country: 'IT', systems: ['230 V 50 Hz'], sockets: ['C', 'F', 'L'] },
    { country: 'BR', systems: ['127 V 60 Hz', '220 V 60 Hz'], sockets: ['C', 'N'] },
    { country: 'KR', systems: ['220 V 60 Hz'], sockets: ['C', 'F'] },
    { country: 'PH', systems: ['230 V 60 Hz'], sockets: ['A', 'B', 'C'] },
    { country: 'BB', systems: ['115 V 50 Hz'], sockets: ['A', 'B'] },
    // the islands differ: no 110 V 50 Hz and no 220 V 60 Hz among them
    { country: 'BQ', systems: ['110 V 60 Hz', '127 V 50 Hz', '220 V 50 Hz'], sockets: ['A', 'B', 'C', 'F'] },
  ])('$country has $systems and sockets $sockets', ({ country, systems, sockets }) => {
    const found = mainsOf(country)
    expect(found?.systems.map(({ voltageV, frequencyHz }) => `${voltageV} V ${frequencyHz} Hz`)).toEqual(systems)
    expect(found?.sockets).toEqual(sockets)
  })
})

/** IEC 950 / 60950 clauses 1.4.4 and 1.4.5 as quoted in the emc-pstc list, messages 12450 and 12477; a test report to IEC 62368-1. */
describe('what a plate was tested at', () => {
  it.each([
    { plate: '230 V', min: 230, max: 230, lowV: 207, highV: 253 },
    { plate: '220 V', min: 220, max: 220, lowV: 198, highV: 233.2 },
    { plate: '240 V', min: 240, max: 240, lowV: 216, highV: 254.4 },
    { plate: '120 V', min: 120, max: 120, lowV: 108, highV: 127.2 },
    { plate: '100 V', min: 100, max: 100, lowV: 90, highV: 106 },
    { plate: '220-240 V', min: 220, max: 240, lowV: 198, highV: 254.4 },
    { plate: '100-240 V', min: 100, max: 240, lowV: 90, highV: 264 },
  ])('$plate: $lowV to $highV V', ({ min, max, lowV, highV }) => {
    const test = ratingTestFor({ min, max })
    expect(min * (1 - test.below)).toBeCloseTo(lowV, 6)
    expect(max * (1 + test.above)).toBeCloseTo(highV, 6)
    expect(test.sources.length).toBeGreaterThan(0)
  })
})
