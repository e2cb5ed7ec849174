import { commonPractice, type Source } from '../tables/source.js'
import { joined, type Phrase, say } from '../words/phrase.js'
import { hertz, volts } from '../words/quantity.js'
import type { Mains } from './case/situation.js'

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
export const windowText = ({ min, max }: { min: number; max: number }): Phrase =>
  min === max ? volts(min) : say`${volts(min)} to ${volts(max)}`

/** A mains system: "230 V 50 Hz". */
export function mainsText({ voltageV, frequencyHz }: Pick<Mains, 'voltageV' | 'frequencyHz'>): Phrase {
  const known = [...(voltageV === null ? [] : [volts(voltageV)]), ...(frequencyHz === null ? [] : [hertz(frequencyHz)])]
  return known.length > 0 ? joined(known) : say`mains not known`
}

/** "a CEE 7/7 plug", "an AS/NZS 3112 plug". */
export const aPlug = (name: string): Phrase => (/^[AEIO]/.test(name) ? say`an ${name} plug` : say`a ${name} plug`)
