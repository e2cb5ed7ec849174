import type { DecimalSign } from './reader.js'

/** Non-breaking space, as the SI Brochure wants it between number and unit. */
const nbsp = '\u00a0'

const prefixes = [
  { factor: 1e9, sign: 'G' },
  { factor: 1e6, sign: 'M' },
  { factor: 1e3, sign: 'k' },
  { factor: 1, sign: '' },
  { factor: 1e-3, sign: 'm' },
  { factor: 1e-6, sign: 'µ' },
  { factor: 1e-9, sign: 'n' },
  { factor: 1e-12, sign: 'p' },
] as const

type Prefix = Pick<(typeof prefixes)[number], 'factor' | 'sign'>
const unprefixed: Prefix = { factor: 1, sign: '' }

/** Which way to round when a limit is near: the needed quantity up, the available one down. */
export type Rounding = 'nearest' | 'up' | 'down'

/**
 * A plain decimal with at most `digits` significant digits, trailing zeros dropped, thousands grouped with a space.
 *
 * @param value     any finite number
 * @param sign      the reader's decimal sign
 * @param digits    significant digits, 1 to 15
 * @param rounding  towards which side
 * @throws RangeError on NaN and infinities
 * @source SI Brochure, 5.4.4 (grouping), 5.4.3 (space before the unit)
 */
export function decimalText(value: number, sign: DecimalSign, digits = 4, rounding: Rounding = 'nearest'): string {
  // the usual numbers, 230 and 0.75, are written without the long way round
  if (Number.isInteger(value) && Math.abs(value) < 10_000 && digits >= 4) return withMinus(value, sign)
  const { rounded, places } = significant(value, digits, rounding)
  if (Math.abs(rounded) < 10_000 && Math.abs(rounded) >= 1e-6) return withMinus(rounded, sign)
  const text = rounded.toFixed(places)
  const [integer = '0', fraction = ''] = text.split('.')
  const trimmed = fraction.replace(/0+$/, '')
  const bare = integer.replace('-', '')
  const grouped = bare.length > 4 ? bare.replace(/\B(?=(\d{3})+$)/g, nbsp) : bare
  const shown = trimmed ? `${grouped}${sign}${trimmed}` : grouped
  return integer.startsWith('-') && shown !== '0' ? `−${shown}` : shown
}

/** The shortest decimal of a number between 1e-6 and 1e21 in size, or of 0. */
const withMinus = (value: number, sign: DecimalSign): string =>
  (value < 0 ? `−${-value}` : String(Math.abs(value))).replace('.', sign)

/** The value at so many significant digits (digits before the decimal sign are all kept), and its decimal places. */
function significant(value: number, digits: number, rounding: Rounding): { rounded: number; places: number } {
  if (!Number.isFinite(value)) throw new RangeError(`value must be finite, got ${value}`)
  if (value === 0) return { rounded: 0, places: 0 }
  const exponent = Math.floor(Math.log10(Math.abs(value)))
  const places = Math.min(Math.max(digits - 1 - exponent, 0), 20)
  const scaled = value * 10 ** places
  // 1e-9 relative: keeps 0.1 + 0.2 from being rounded up to 0.301; a thousandth at most, or many digits would change
  const slack = Math.min(Math.abs(scaled) * 1e-9, 1e-3)
  const whole = { up: Math.ceil(scaled - slack), down: Math.floor(scaled + slack), nearest: nearest(scaled, slack) }
  return { rounded: whole[rounding] / 10 ** places, places }
}

/** Halves go away from zero, also those that binary fractions leave a hair short. */
const nearest = (scaled: number, slack: number): number => Math.sign(scaled) * Math.round(Math.abs(scaled) + slack)

/**
 * A number with its unit in our one form: "12.5 V", "830 mA", "1.5 kΩ".
 * The prefix steps by 1000 and keeps the number between 1 and 1000.
 *
 * @source NIST SP 811, 7.9 (choice of prefix), 7.2 (space)
 */
export function prefixedText(
  value: number,
  unit: string,
  sign: DecimalSign,
  digits = 4,
  rounding: Rounding = 'nearest',
): string {
  if (value === 0) return `0${nbsp}${unit}`
  return withPrefix(value, prefixFor(value, digits, rounding), unit, sign, digits, rounding)
}

/** One prefix for two numbers of one unit: that of the larger. */
export function rangeTexts(low: number, high: number, unit: string, sign: DecimalSign, digits = 4): [string, string] {
  const larger = Math.abs(low) > Math.abs(high) ? low : high
  const prefix = larger === 0 ? unprefixed : prefixFor(larger, digits, 'nearest')
  const text = (value: number): string => withPrefix(value, prefix, unit, sign, digits, 'nearest')
  return [text(low), text(high)]
}

function prefixFor(value: number, digits: number, rounding: Rounding): Prefix {
  // rounded first: 999.96 at four digits is 1 k, not 1000
  const size = Math.abs(significant(value, digits, rounding).rounded)
  const fit = prefixes.find(({ factor }) => size >= factor * 0.9999999) ?? prefixes[prefixes.length - 1]
  if (!fit) throw new RangeError('no prefix')
  return fit
}

const withPrefix = (
  value: number,
  { factor, sign: prefix }: Prefix,
  unit: string,
  sign: DecimalSign,
  digits: number,
  rounding: Rounding,
): string => `${decimalText(value / factor, sign, digits, rounding)}${nbsp}${prefix}${unit}`

/** A number with a unit that takes no prefix. */
export const plainText = (
  value: number,
  unit: string,
  sign: DecimalSign,
  digits = 4,
  rounding: Rounding = 'nearest',
): string => `${decimalText(value, sign, digits, rounding)}${nbsp}${unit}`
