import { describe, expect, it } from 'vitest'
import { type NumberAsked, readNumber } from '../../server/web/readNumber.js'
import { tell } from '../../server/words/tell.js'

const current: NumberAsked = { label: 'Rated current', unit: 'A', above: 0, max: 100 }

describe('a number as people type it', () => {
  it.each([
    ['12.5', 12.5],
    ['12,5', 12.5],
    ['12,5 A', 12.5],
    ['12.5A', 12.5],
    [' .5 ', 0.5],
    [',5', 0.5],
    ['0.500', 0.5],
    ['0,125', 0.125],
    ['1.1250', 1.125],
    ['500 mA', 0.5],
    ['500\u00a0mA', 0.5],
    ['500\u202fmA', 0.5],
    ['1.5 amps', 1.5],
    ['800 µA', 0.0008],
    ['800 μA', 0.0008],
    ['800 uA', 0.0008],
  ])('%j reads as %d A', (typed, value) => {
    const read = readNumber(typed, current)
    expect(read).toHaveProperty('value')
    expect('value' in read && read.value).toBeCloseTo(value, 12)
  })

  it.each([
    ['1 500', 'Ω', 1500],
    ['1\u00a0500 Ω', 'Ω', 1500],
    ['12 345.5', 'V', 12345.5],
    ['1.5 kΩ', 'Ω', 1500],
    ['1.5kΩ', 'Ω', 1500],
    ['2 Mohm', 'Ω', 2e6],
    ['220 µF', 'F', 220e-6],
    ['4,7 nF', 'F', 4.7e-9],
    ['-12 V', 'V', -12],
    ['−12', 'V', -12],
    ['60 Hz', 'Hz', 60],
    ['50 va', 'VA', 50],
    ['0.75 mm2', 'mm²', 0.75],
    ['5.5mm', 'mm', 5.5],
    ['180 cm', 'm', 1.8],
    ['5 %', '%', 5],
    ['220', 'µF', 220],
    ['220 uF', 'µF', 220],
    ['220 μF', 'µF', 220],
    ['470 nF', 'µF', 0.47],
    ['2 MΩ', 'MΩ', 2],
    ['500 kΩ', 'MΩ', 0.5],
    ['0.25 mA', 'mA', 0.25],
    ['0.1 A', 'mA', 100],
    ['30 years', 'years', 30],
  ])('%j reads in %s as %d', (typed, unit, value) => {
    const read = readNumber(typed, { label: 'Value', unit })
    expect('value' in read ? read.value : Number.NaN).toBeCloseTo(value, 9)
  })

  it('nothing typed is null, not 0', () => {
    expect(tell(readNumber('', current))).toEqual({ value: null })
    expect(tell(readNumber(' \u00a0 ', current))).toEqual({ value: null })
  })

  it.each(['1,500', '1.500', '12,345', '-1.500', '1,500 A'])(
    '%j is refused because it can be read two ways',
    (typed) => {
      expect(tell(readNumber(typed, current))).toHaveProperty(
        'message',
        expect.stringContaining('can be read two ways: write '),
      )
    },
  )

  it('says both readings of an ambiguous number', () => {
    expect(tell(readNumber('1,500', current))).toEqual({
      message: 'Rated current “1,500” can be read two ways: write 1500 or 1.5.',
    })
  })

  it.each([
    '1e3',
    '0x10',
    '12-15',
    '12–15',
    '1.2.3',
    '1,2,3',
    '1 5',
    '1 50 0',
    '12 V',
    'twelve',
    'NaN',
    'Infinity',
    '٣',
    '1\u0000',
    '--5',
    '5 5 A',
    '12 m',
    '__proto__',
    '5 constructor',
  ])('%j is refused', (typed) => {
    expect(tell(readNumber(typed, current))).toHaveProperty('message', expect.stringMatching(/^Rated current must be /))
  })

  it.each([
    ['0', current, 'Rated current must be a number more than 0 A and at most 100 A.'],
    ['-1', current, 'Rated current must be a number more than 0 A and at most 100 A.'],
    ['100.1', current, 'Rated current must be a number more than 0 A and at most 100 A.'],
    ['51', { label: 'Share', unit: '%', min: 0, max: 50 }, 'Share must be a number from 0 % to 50 %.'],
    ['-1', { label: 'Length', unit: 'm', min: 0 }, 'Length must be a number, 0 m or more.'],
    [
      '1.5',
      { label: 'Gauge', unit: 'AWG', whole: true, min: 0, max: 40 },
      'Gauge must be a whole number from 0 AWG to 40 AWG.',
    ],
    ['', { label: 'Rated current', required: true }, 'Enter the rated current.'],
    ['', { label: 'AWG', required: true }, 'Enter the AWG.'],
  ] satisfies [string, NumberAsked, string][])(
    '%j, out of its range or missing, gets a sentence',
    (typed, asked, message) => {
      const read = readNumber(typed, asked)
      expect('message' in read && tell(read.message).replaceAll('\u00a0', ' ')).toBe(message)
    },
  )

  it.each([
    ['100', 100],
    ['0.0001', 0.0001],
  ])('the ends of a range belong to it: %s', (typed, value) => {
    expect(tell(readNumber(typed, current))).toEqual({ value })
  })

  it('a long run of figures is refused in no time rather than turned into infinity', () => {
    const started = performance.now()
    expect(tell(readNumber('9'.repeat(100_000), { label: 'Value' }))).toHaveProperty('message')
    expect(tell(readNumber(`${'1 '.repeat(50_000)}x`, { label: 'Value' }))).toHaveProperty('message')
    expect(performance.now() - started).toBeLessThan(500)
  })
})
