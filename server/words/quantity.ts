import { decimalText, plainText, prefixedText, type Rounding, rangeTexts } from './number.js'
import { Phrase, say } from './phrase.js'
import type { DecimalSign } from './reader.js'

export type { Rounding }

/** A number's phrase; whatever is no number is refused here, where it came from can still be seen. */
function numbers(values: readonly number[], toText: (sign: DecimalSign) => string): Phrase {
  for (const value of values) if (!Number.isFinite(value)) throw new RangeError(`value must be finite, got ${value}`)
  return new Phrase(({ decimal: sign }) => toText(sign))
}

/** A plain decimal with at most `digits` significant digits. */
export const decimal = (value: number, digits = 4, rounding: Rounding = 'nearest'): Phrase =>
  numbers([value], (sign) => decimalText(value, sign, digits, rounding))

/**
 * A number with its unit in our one form: "12.5 V", "830 mA", "1.5 kΩ".
 * The prefix steps by 1000 and keeps the number between 1 and 1000.
 *
 * @source NIST SP 811, 7.9 (choice of prefix), 7.2 (space)
 */
export const quantity = (value: number, unit: string, digits = 4, rounding: Rounding = 'nearest'): Phrase =>
  numbers([value], (sign) => prefixedText(value, unit, sign, digits, rounding))

/**
 * Two numbers of one unit in the form "0 mA to 120 mA", "0.1 A to 2 A": both with the prefix of the larger.
 *
 * @source NIST SP 811, 7.9 (one prefix for values that are compared), 7.7 (the unit with each value)
 */
export function quantityRange(low: number, high: number, unit: string, digits = 4): Phrase {
  const bound = (at: 0 | 1): Phrase => numbers([low, high], (sign) => rangeTexts(low, high, unit, sign, digits)[at])
  return say`${bound(0)} to ${bound(1)}`
}

/** A number with a unit that takes no prefix here: "2.5 mm", "1.5 m", "25 °C", "60 s". */
export const plain = (value: number, unit: string, digits = 4, rounding: Rounding = 'nearest'): Phrase =>
  numbers([value], (sign) => plainText(value, unit, sign, digits, rounding))

/** Volts are never prefixed below a kilovolt: "0.5 V", "230 V", and millivolts under 0.1 V. */
export const volts = (value: number, digits = 4, rounding: Rounding = 'nearest'): Phrase =>
  Math.abs(value) >= 0.1 || value === 0 ? plain(value, 'V', digits, rounding) : quantity(value, 'V', digits, rounding)

export const amperes = (value: number, digits = 4, rounding: Rounding = 'nearest'): Phrase =>
  quantity(value, 'A', digits, rounding)
export const watts = (value: number, digits = 4, rounding: Rounding = 'nearest'): Phrase =>
  quantity(value, 'W', digits, rounding)
export const voltAmperes = (value: number, digits = 4, rounding: Rounding = 'nearest'): Phrase =>
  plain(value, 'VA', digits, rounding)
export const ohms = (value: number, digits = 4, rounding: Rounding = 'nearest'): Phrase =>
  quantity(value, 'Ω', digits, rounding)
/** Capacitance as the trade writes it, in pF, nF and µF only: "10 000 µF", never "10 mF". */
export const farads = (value: number, digits = 4, rounding: Rounding = 'nearest'): Phrase =>
  Math.abs(value) >= 1e-3 ? plain(value * 1e6, 'µF', digits, rounding) : quantity(value, 'F', digits, rounding)
export const joules = (value: number, digits = 4, rounding: Rounding = 'nearest'): Phrase =>
  quantity(value, 'J', digits, rounding)
export const hertz = (value: number, digits = 4): Phrase => plain(value, 'Hz', digits)
export const seconds = (value: number, digits = 3, rounding: Rounding = 'nearest'): Phrase =>
  quantity(value, 's', digits, rounding)
export const millimetres = (value: number, digits = 4): Phrase => plain(value, 'mm', digits)
/** A fraction as a percentage: 0.125 is "12.5 %". */
export const percent = (fraction: number, digits = 3, rounding: Rounding = 'nearest'): Phrase =>
  plain(fraction * 100, '%', digits, rounding)
/** A wait as people say it: "10 s", "5 min", "4 h". */
export const duration = (value: number, digits = 3, rounding: Rounding = 'nearest'): Phrase =>
  value < 120
    ? seconds(value, digits, rounding)
    : value < 7200
      ? plain(value / 60, 'min', digits, rounding)
      : plain(value / 3600, 'h', digits, rounding)
