import { type Phrase, say, type Words, within } from '../words/phrase.js'
import { decimal, plain } from '../words/quantity.js'

/** What was typed, as a number in the base unit; or the sentence to show beside the box. Nothing typed is `null`. */
export type NumberRead = { value: number | null } | { message: Phrase }

export interface NumberAsked {
  /** the field's label as it stands on the page, used in the message: "Rated current" */
  label: Words
  /** base unit the value is returned in: "V", "A", "Ω", "F", "mm", "%"; absent for a bare number */
  unit?: string
  /** least accepted, itself included, in the base unit */
  min?: number
  /** least accepted, itself not included */
  above?: number
  /** most accepted, itself included */
  max?: number
  /** true: whole numbers only */
  whole?: boolean
  /** true: an empty box is an error ("Enter …") */
  required?: boolean
}

const prefixFactors: Record<string, number> = {
  '': 1,
  p: 1e-12,
  n: 1e-9,
  u: 1e-6,
  µ: 1e-6,
  μ: 1e-6,
  m: 1e-3,
  k: 1e3,
  K: 1e3,
  M: 1e6,
  G: 1e9,
}

/** Units that take a prefix in what people type, with the spellings read; compared without regard to case. */
const prefixed: Record<string, string[]> = {
  V: ['v', 'volt', 'volts'],
  A: ['a', 'amp', 'amps', 'ampere', 'amperes'],
  W: ['w', 'watt', 'watts'],
  VA: ['va'],
  Ω: ['ω', 'ohm', 'ohms', 'r'],
  F: ['f', 'farad', 'farads'],
  Hz: ['hz', 'c/s'],
  J: ['j'],
  s: ['s', 'sec', 'second', 'seconds'],
}

/** Units with fixed spellings and their factors to the base unit. */
const fixed: Record<string, Record<string, number>> = {
  m: { m: 1, metre: 1, metres: 1, meter: 1, meters: 1, cm: 0.01, mm: 0.001 },
  mm: { mm: 1, millimetre: 1, millimetres: 1, cm: 10 },
  'mm²': { 'mm²': 1, mm2: 1, 'mm^2': 1, 'sq mm': 1 },
  '%': { '%': 1, percent: 1 },
  '°C': { '°c': 1, c: 1, '℃': 1 },
  AWG: { awg: 1 },
  h: { h: 1, hour: 1, hours: 1 },
  min: { min: 1, minute: 1, minutes: 1 },
  years: { years: 1, year: 1, y: 1, yr: 1 },
}

/** Factor from what stands behind the number to the base unit; `null` when it is not that unit. */
function unitFactor(suffix: string, unit: string | undefined): number | null {
  if (suffix === '') return 1
  if (unit === undefined) return null
  const table = fixed[unit]
  if (table) return table[suffix.toLowerCase()] ?? null
  const spellings = prefixed[unit]
  if (!spellings) {
    // a field in "µF" or "MΩ" reads every prefix of its base unit
    const [prefix = '', base] = [unit.charAt(0), unit.slice(1)]
    const own = prefixFactors[prefix]
    if (own === undefined || !prefixed[base]) return suffix.toLowerCase() === unit.toLowerCase() ? 1 : null
    const factor = unitFactor(suffix, base)
    return factor === null ? null : factor / own
  }
  // "m" and "M" differ, so the prefix is compared as typed and only the unit's name without regard to case
  for (const [prefix, factor] of Object.entries(prefixFactors)) {
    if (!suffix.startsWith(prefix)) continue
    if (spellings.includes(suffix.slice(prefix.length).trim().toLowerCase())) return factor
  }
  return null
}

const withUnit = (value: number, unit: string | undefined): Phrase =>
  unit ? plain(value, unit, 15) : decimal(value, 15)

/** The range in words: "more than 0 V and 1000 V or less". */
function range({ min, above, max, unit, whole }: NumberAsked): Phrase {
  const low =
    above !== undefined ? say`more than ${withUnit(above, unit)}` : min !== undefined ? withUnit(min, unit) : null
  const high = max !== undefined ? withUnit(max, unit) : null
  const kind = whole ? say`a whole number` : say`a number`
  if (low !== null && high !== null)
    return above !== undefined ? say`${kind} ${low} and at most ${high}` : say`${kind} from ${low} to ${high}`
  if (low !== null) return above !== undefined ? say`${kind} ${low}` : say`${kind}, ${low} or more`
  if (high !== null) return say`${kind}, ${high} or less`
  return unit ? say`${kind} in ${unit}` : kind
}

/**
 * Reads a number as people type it: "12.5", "12,5", "12,5 V", "1 500", ".5", "500 mA", "1.5 kΩ", "220 µF".
 *
 * Both decimal signs are read; a group of exactly three figures behind one sign ("1,500", "1.500") can be read two ways
 * and is refused, unless the figure before the sign is 0. Powers ("1e3"), other bases ("0x10") and ranges ("12-15") are
 * refused. Control characters and direction marks are not part of a number.
 *
 * @returns the value in the base unit, `null` for an empty box, or the sentence to show
 */
export function readNumber(typed: string, asked: NumberAsked): NumberRead {
  const { label, min, above, max, whole } = asked
  const read = plainly.test(typed) ? { value: Number(typed) } : takenApart(typed, asked)
  if ('message' in read || read.value === null) return read
  const { value } = read
  const fits =
    Number.isFinite(value) &&
    !(min !== undefined && value < min) &&
    !(above !== undefined && value <= above) &&
    !(max !== undefined && value > max) &&
    !(whole && !Number.isInteger(value))
  return fits ? { value: value === 0 ? 0 : value } : { message: say`${label} must be ${range(asked)}.` }
}

/** A number that has one reading alone and nothing around it, as most are written. */
const plainly = /^\d{1,6}(?:\.\d{1,2})?$/

/** Any other way to write one, range not yet looked at. */
function takenApart(typed: string, { label, unit, required }: NumberAsked): NumberRead {
  const text = typed
    .normalize('NFC')
    .replace(/[\u00a0\u2007\u2009\u202f]/g, ' ')
    .trim()
  if (text === '') return required ? { message: say`Enter the ${within(label)}.` } : { value: null }
  const example = say`; write it like ${12.5}${unit ? say` or ${12.5} ${unit}` : ''}.`
  const match = /^([-−+]?)\s*(\d[\d ]*)?(?:([.,])(\d+))?\s*(.*)$/.exec(text)
  const [, sign = '', whole1 = '', mark = '', fraction = '', suffix = ''] = match ?? []
  const integer = whole1.trim()
  if (!match || (integer === '' && fraction === '')) return { message: say`${label} must be a number${example}` }
  if (/^[.,]\d/.test(suffix.trim())) return { message: say`${label} must be a number with one decimal sign${example}` }
  const grouped = /^\d{1,3}( \d{3})+$/.test(integer)
  if (integer.includes(' ') && !grouped)
    return { message: say`${label} must be one number; “${integer}” reads as several. Write it without spaces.` }
  const digits = integer.replace(/ /g, '')
  // "0.500" and "1 500.250" have one reading only
  if (mark && fraction.length === 3 && !grouped && /^[1-9]\d{0,2}$/.test(digits))
    return {
      message: say`${label} “${digits}${mark}${fraction}” can be read two ways: write ${digits}${fraction} or ${decimal(Number(`${digits}.${fraction}`), 15)}.`,
    }
  const factor = unitFactor(suffix.trim(), unit)
  if (factor === null)
    return {
      message: unit
        ? say`${label} must be one number in ${unit}; “${suffix.trim().slice(0, 20)}” behind it is not understood.`
        : say`${label} must be one number alone; “${suffix.trim().slice(0, 20)}” behind it is not understood.`,
    }
  // 15 figures: 350 mA is 0.35 A, not 0.35000000000000003 A
  const magnitude = Number((Number(`${digits || '0'}.${fraction || '0'}`) * factor).toPrecision(15))
  return { value: sign === '-' || sign === '−' ? -magnitude : magnitude }
}
