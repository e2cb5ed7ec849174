import type { Phrase } from './phrase.js'
import { plain, quantity } from './quantity.js'

const prefixes: Record<string, number> = { '': 1, n: 1e-9, µ: 1e-6, μ: 1e-6, u: 1e-6, m: 1e-3, k: 1e3, M: 1e6, G: 1e9 }

/** Spellings of one unit that differ by keyboard only: the Greek letter and the ohm sign, written out, in ASCII. */
export const spelling = (unit: string): string =>
  unit
    .trim()
    .normalize('NFKC')
    .replace(/(ohms?|Ohms?)$/, 'Ω')
    .replace(/^deg ?C$/, '°C')

/**
 * A value in another unit: 350 mA in A is 0.35.
 *
 * @returns the value [wanted]; null where the units measure different things
 */
export function inUnit(value: number, given: string, wanted: string): number | null {
  const from = spelling(given)
  const to = spelling(wanted)
  if (from === to) return value
  for (const [toPrefix, toFactor] of Object.entries(prefixes)) {
    if (!to.startsWith(toPrefix)) continue
    const base = to.slice(toPrefix.length)
    if (!/^(V|A|W|VA|Ω|F|Hz|J|s)$/.test(base)) continue
    const prefix = from.endsWith(base) ? from.slice(0, from.length - base.length) : null
    const factor = prefix === null ? undefined : prefixes[prefix]
    if (factor !== undefined) return (value * factor) / toFactor
  }
  return null
}

/** Whether a unit is shown with prefixes: "350 mA". */
export const takesPrefix = (unit: string): boolean => /^(V|A|W|Ω|F|Hz|J|s)$/.test(unit)

/** A reading as it is shown: "350 mA", "−3 °C". */
export const readingText = (value: number, unit: string): Phrase =>
  takesPrefix(unit) ? quantity(value, unit) : plain(value, unit, 15)
