import { type Phrase, say } from '../words/phrase.js'
import { readNumber } from './readNumber.js'

/** What a meter showed [unit of the step]; null where it was over its range. */
export type MeterRead = { value: number | null } | { message: Phrase }

/** Units of which a meter shows one range or another, as they are chosen at a step: a bare number in the first kind is asked about. */
const shownAs: Record<string, { asked: boolean; units: readonly string[] }> = {
  V: { asked: false, units: ['mV', 'V'] },
  A: { asked: true, units: ['µA', 'mA', 'A'] },
  Ω: { asked: true, units: ['Ω', 'kΩ', 'MΩ'] },
  F: { asked: true, units: ['nF', 'µF'] },
}

/** The units a meter may show at a step that is read in this unit. */
export const unitsShown = (unit: string): readonly string[] => shownAs[unit]?.units ?? [unit]

/** "OL", "0.L", "over", "∞" of meters, with a unit behind it or without. */
const overRange = /^[+−-]?\s*(?:\.?[o0]\.?\s?l\.?|over(?:load|range)?|ovld|∞|inf)\.?\s*([a-zµμΩω]{0,4})$/iu

/** "4k7", "2R2", "0R22", "R22", "4V7": the multiplier where the decimal sign stands. */
const tradeForm = /^([+−-]?)\s*(\d+|(?=R))\s?([RVAkKMmuµμn])(\d*)\s*(?:Ω|ω|ohms?|V|A|F)?$/u

/** The number and what stands behind it. */
const bare = /^[+−-]?[\d .,\u00a0\u202f]+$/u

/**
 * Reads what a person typed of a meter: "12.5", "350 mA", "4k7", "4.7k", "OL". Nothing is guessed: a bare number of amperes or ohms is
 * asked about, as meters show them in several ranges.
 *
 * @param typed   as typed
 * @param unit    of the step
 * @param chosen  one of {@link unitsShown}, where one was chosen beside the box; null where none was
 */
export function readMeter(typed: string, unit: string, chosen: string | null): MeterRead {
  const text = typed.trim()
  if (overRange.test(text)) return { value: null }
  const read = (written: string): MeterRead => {
    const found = readNumber(written, { label: say`Value read`, unit, required: true })
    return 'message' in found ? found : { value: found.value }
  }
  if (bare.test(text)) {
    if (chosen !== null) return read(`${text} ${chosen}`)
    const shown = shownAs[unit]
    const plain = read(text)
    if (!shown?.asked || 'message' in plain || plain.value === 0) return plain
    return {
      message: say`“${text}” of which unit? Choose it, or write it behind the number: ${shown.units.map((each) => `${text} ${each}`).join(', ')}.`,
    }
  }
  const [prefix = ''] = /\p{L}/u.exec(text) ?? []
  if (unit === 'Ω' && /^[nuµμ]$/.test(prefix))
    return { message: say`“${text}” is less than any meter shows of ohms: write R, k or M, as in 4k7.` }
  if (/^[VA]$/.test(unit) && /^[MG]$/.test(prefix))
    return { message: say`“${text}” is more than any meter shows: write m for a thousandth, as in 350 m${unit}.` }
  const short = inTradeForm(text, unit)
  const found = read(short ? `${short.number} ${short.unit}` : /[kKMmuµμnG]$/u.test(text) ? `${text}${unit}` : text)
  if (chosen === null || 'message' in found || (short && chosen === unit)) return found
  const number = short?.number ?? text.replace(/[^\d.,\s\u202f]+$/u, '')
  const asChosen = read(`${number} ${chosen}`)
  return 'value' in asChosen && isSame(asChosen.value, found.value)
    ? found
    : { message: say`“${text}” has its own unit, and ${chosen} was chosen: write one of them.` }
}

const isSame = (one: number | null, other: number | null): boolean =>
  one !== null && other !== null && Math.abs(one - other) <= 1e-9 * Math.abs(other)

/** "4k7" as the number and its unit; a nought behind, as "2k200" is 2.2 kΩ and not two thousand two hundred of them. */
function inTradeForm(text: string, unit: string): { number: string; unit: string } | null {
  const [, sign = '', whole, mark = '', fraction = ''] = tradeForm.exec(text) ?? []
  if (whole === undefined || fraction === '') return null
  const number = `${sign}${whole || 0}.${fraction}0`
  if (mark === unit || (mark === 'R' && unit === 'Ω')) return { number, unit }
  return /[RVA]/.test(mark) ? null : { number, unit: `${mark === 'K' ? 'k' : mark}${unit}` }
}
