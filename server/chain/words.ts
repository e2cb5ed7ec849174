import { hertz, volts } from '../physics/quantity.js'
import { commonPractice, type Source } from '../tables/source.js'
import type { Mains } from './situation.js'

/** Stands in every action that touches mains wiring. */
export const qualifiedHands =
  'Mains wiring, plugs on captive flex and anything inside a mains enclosure fall under local codes: leave them to a licensed electrician or another competent, qualified person.'

/** Source of a figure that stands on the supply's or the machine's own plate. */
export const ratingPlate: Source = commonPractice(
  'Rating plate',
  'what the maker printed on the unit, or what was entered from it',
)

/** Source of a figure the person at the bench measured. */
export const measuredThere: Source = commonPractice('Measured', 'as entered by the person at the bench')

/** A plate's window: "230 V" or "100 V to 240 V". */
export const windowText = ({ min, max }: { min: number; max: number }): string =>
  min === max ? volts(min) : `${volts(min)} to ${volts(max)}`

/** A mains system: "230 V 50 Hz". */
export function mainsText({ voltageV, frequencyHz }: Pick<Mains, 'voltageV' | 'frequencyHz'>): string {
  const parts = [voltageV === null ? null : volts(voltageV), frequencyHz === null ? null : hertz(frequencyHz)]
  return parts.filter((part) => part !== null).join(' ') || 'mains not known'
}

/** "a CEE 7/7 plug", "an AS/NZS 3112 plug". */
export const aPlug = (name: string): string => `${/^[AEIO]/.test(name) ? 'an' : 'a'} ${name} plug`

/** The same at the beginning of a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** "a", "a and b", "a, b and c". */
export function listText(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items.join('')
  return `${items.slice(0, -1).join(', ')} ${last} ${items[items.length - 1]}`
}
