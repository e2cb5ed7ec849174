import { describe, expect, it } from 'vitest'
import type { Phrase } from '../../server/words/phrase.js'
import {
  amperes,
  decimal,
  farads,
  ohms,
  percent,
  plain,
  quantity,
  quantityRange,
  seconds,
  volts,
  watts,
} from '../../server/words/quantity.js'
import { tell } from '../../server/words/tell.js'

/** Shows the non-breaking space as a low line, so that the rows can be read. */
const seen = (phrase: Phrase): string => tell(phrase).replaceAll('\u00a0', '_')

describe('a number with its unit', () => {
  it.each([
    { shown: volts(12.5), is: '12.5_V' },
    { shown: volts(0.05), is: '50_mV' },
    { shown: volts(-12), is: '−12_V' },
    { shown: volts(0), is: '0_V' },
    { shown: amperes(0.83), is: '830_mA' },
    { shown: amperes(0.999), is: '999_mA' },
    { shown: amperes(1), is: '1_A' },
    { shown: ohms(1500), is: '1.5_kΩ' },
    { shown: ohms(732200), is: '732.2_kΩ' },
    { shown: farads(220e-6), is: '220_µF' },
    { shown: farads(2.2e-9), is: '2.2_nF' },
    { shown: farads(1e-6), is: '1_µF' },
    { shown: watts(0.0529), is: '52.9_mW' },
    { shown: seconds(0.4), is: '400_ms' },
    { shown: percent(0.125), is: '12.5_%' },
    { shown: plain(25, '°C'), is: '25_°C' },
  ])('$is', ({ shown, is }) => {
    expect(seen(shown)).toBe(is)
  })

  it('keeps the number between 1 and 1000 when rounding carries it to the next prefix', () => {
    expect(seen(quantity(999.96, 'Ω', 4))).toBe('1_kΩ')
    expect(seen(quantity(0.99999, 'A', 4))).toBe('1_A')
  })
})

describe('a plain decimal', () => {
  it.each([
    [0, 0.12, 'A', '0_mA to 120_mA'],
    [0.1, 2, 'A', '0.1_A to 2_A'],
    [-0.5, 0.02, 'V', '−500_mV to 20_mV'],
    [900, 1100, 'Ω', '0.9_kΩ to 1.1_kΩ'],
    [0, 0, 'V', '0_V to 0_V'],
    // NIST SP 811, 7.9: one prefix for the values that are compared
  ])('writes %d to %d %s with one prefix, that of the larger', (low, high, unit, text) => {
    expect(seen(quantityRange(low, high, unit))).toBe(text)
  })

  // by hand: 15 digits are more than these have
  it('keeps a number as it is where it may have more digits than it has', () => {
    expect(seen(decimal(1.5, 15))).toBe('1.5')
    expect(seen(decimal(100_000, 10))).toBe('100_000')
  })

  it('groups from five digits on with a space and keeps four together', () => {
    expect(seen(decimal(12345.6, 6))).toBe('12_345.6')
    expect(tell(decimal(1234.5, 5))).toBe('1234.5')
    expect(seen(decimal(1234567, 7))).toBe('1_234_567')
  })

  it('rounds up or down when told to, and leaves exact values alone', () => {
    expect(tell(decimal(2.2556, 3, 'up'))).toBe('2.26')
    expect(tell(decimal(2.2556, 3, 'down'))).toBe('2.25')
    expect(tell(decimal(0.1 + 0.2, 3, 'up'))).toBe('0.3')
    expect(tell(decimal(0.3, 3, 'down'))).toBe('0.3')
    expect(tell(decimal(-2.2556, 3, 'up'))).toBe('−2.25')
  })

  it('rounds halves away from zero, also those binary fractions fall short of', () => {
    expect(tell(decimal(1.005, 3))).toBe('1.01')
    expect(tell(decimal(-2.5, 1))).toBe('−3')
  })

  it('drops trailing zeros, never leading ones', () => {
    expect(tell(decimal(0.5, 4))).toBe('0.5')
    expect(tell(decimal(100, 4))).toBe('100')
    expect(tell(decimal(54321, 2))).toBe('54\u00a0321')
  })

  it('refuses what is not a number', () => {
    expect(() => decimal(Number.NaN)).toThrow(RangeError)
    expect(() => decimal(Number.POSITIVE_INFINITY)).toThrow(RangeError)
  })
})
