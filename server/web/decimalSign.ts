import type { DecimalSign } from '../words/reader.js'

/**
 * The decimal sign of the language and region that a browser asks for first.
 *
 * @param languages  tags in the order of preference, as of the header Accept-Language: "de-CH", "en"
 * @returns the point where the platform does not know the first tag, or knows a third sign for it
 * @source Unicode CLDR, as the platform carries it
 */
export function decimalSign([first = 'en']: readonly string[]): DecimalSign {
  try {
    if (Intl.NumberFormat.supportedLocalesOf(first).length === 0) return '.'
    const parts = new Intl.NumberFormat(first).formatToParts(1.5)
    return parts.some(({ type, value }) => type === 'decimal' && value === ',') ? ',' : '.'
  } catch {
    // not a language tag
    return '.'
  }
}
