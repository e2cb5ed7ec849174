import {
  capacityOf,
  type FittedFuse,
  type FuseMarking,
  nothingRead,
  printedCapacity,
  readFuseMarking,
  slowness,
} from '../../plate/fuseMarking.js'
import { splitPrescription } from '../../plate/fusePrescription.js'
import type { Characteristic } from '../../tables/fuseMarks.js'
import {
  bs1362LargestA,
  bs1362RatedV,
  ulInterruptingAt125V,
  ulInterruptingAt250V,
  ulRatedV,
} from '../../tables/fuseRatings.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { amperes, volts } from '../../words/quantity.js'
import { isFor } from '../case/plateWindow.js'
import type { FuseRequest } from './fuseRequest.js'

/** A link with everything that was read of it. */
export type FuseLink = FuseMarking

/**
 * Interrupting rating of a UL Listed link in a circuit [A]; null where rating or voltage is not known, or the circuit's is
 * above the link's. It belongs to the voltage of the circuit: a link for 250 V breaks 10 kA at 125 V.
 *
 * @param circuitV  voltage of the circuit [V]; the link's own rated voltage where it is not given
 * @source UL 248-14 as in the Littelfuse Fuseology Selection Guide 2014, p. 12
 */
function ulInterrupting(
  { ratedA, ratedV }: Pick<FittedFuse, 'ratedA' | 'ratedV'>,
  circuitV: number | undefined,
): number | null {
  if (ratedA === null || ratedV === null) return null
  const atV = circuitV ?? ratedV
  if (atV > ratedV || atV > ulRatedV.high || ratedV < ulRatedV.low) return null
  if (atV <= ulRatedV.low) return ulInterruptingAt125V.value
  return ulInterruptingAt250V.find((row) => ratedA <= row.uptoA)?.breakingA ?? null
}

/** A link that names BS 1362 and a rating beyond it: nothing it claims is believed. */
const unbelieved = (link: FuseLink): FuseLink => ({
  ...link,
  ratedA: null,
  ratedV: null,
  breakingCapacityA: null,
  notes: [
    `${link.ratedA} A is not a rating of BS 1362, which stops at ${bs1362LargestA.value} A: a link with this mark is not what it claims to be and must not be used.`,
  ],
})

/** True for a link whose marking cannot be true by the standard it names. */
export const isCounterfeit = (link: FuseLink): boolean =>
  link.scheme === 'BS1362' &&
  link.ratedA === null &&
  link.notes.some((note) => note.includes('not what it claims to be'))

/**
 * The fitted link: its marking, with the fields that were entered by hand laid over it.
 *
 * @param circuitV  voltage of the circuit [V], which the breaking capacity belongs to; without it, the link's rated voltage
 */
export function fittedLink({ marking, fuse }: Pick<FuseRequest, 'marking' | 'fuse'>, circuitV?: number): FuseLink {
  const read = marking?.trim() ? readFuseMarking(marking) : nothingRead
  const scheme = fuse?.scheme ?? read.scheme
  const link: FuseLink = {
    ...read,
    ratedA: fuse?.ratedA ?? read.ratedA,
    ratedV: fuse?.ratedV ?? read.ratedV,
    characteristic: fuse?.characteristic ?? read.characteristic,
    breaking: fuse?.breaking ?? read.breaking,
    scheme,
  }
  if (isCounterfeit(link)) return link
  if (scheme === 'BS1362' && link.ratedA !== null && link.ratedA > bs1362LargestA.value) return unbelieved(link)
  const overridden = [fuse?.ratedA, fuse?.breaking, fuse?.scheme].some((value) => value != null)
  const printedA = circuitV === undefined ? null : printedCapacity(link.printedBreaking, circuitV)
  const breakingCapacityA = overridden ? capacityOf(link) : (printedA ?? read.breakingCapacityA)
  return {
    ...link,
    ratedV: link.ratedV ?? (scheme === 'BS1362' ? bs1362RatedV.value : null),
    breakingCapacityA: breakingCapacityA ?? (scheme === 'UL' ? ulInterrupting(link, circuitV) : null),
  }
}

export interface Prescription {
  link: FuseLink
  /** as printed, or the part of it that stands for the voltage in use */
  text: string
  /** true where it was chosen from several by the voltage in use */
  chosenByVoltage: boolean
}

/** What is prescribed at the voltage in use; null where nothing is printed. */
export function prescriptionAt(text: string | null | undefined, voltageV: number): Prescription | null {
  const printed = text?.trim()
  if (!printed) return null
  const several = splitPrescription(printed)
  const fits = several.filter(({ mains }) => isFor(mains, voltageV))
  const [one] = fits
  const chosen = fits.length === 1 && one ? one.text : printed
  return { link: readFuseMarking(chosen), text: chosen, chosenByVoltage: fits.length === 1 }
}

const ulSpeed = (characteristic: Characteristic | null): string | null =>
  characteristic === null || characteristic === 'M'
    ? characteristic
    : slowness(characteristic) > slowness('M')
      ? 'time-delay'
      : 'fast-acting'

/** "T 1.6 A L 250 V, 5x20 mm": what is known of a link, in the order of IEC 60127. */
export function describe(link: FuseLink): Phrase {
  const parts = [
    link.scheme === 'UL' ? ulSpeed(link.characteristic) : link.characteristic,
    link.ratedA === null ? null : amperes(link.ratedA),
    link.breaking,
    link.ratedV === null ? null : volts(link.ratedV),
    link.scheme === 'BS1362' ? 'BS 1362' : link.scheme === 'UL' ? '(UL)' : null,
  ].filter((part) => part !== null)
  const size = link.sizeMm === null ? [] : [`${link.sizeMm.replace('x', ' × ')} mm`]
  return joined([parts.length > 0 ? joined(parts) : say`a link of which nothing is known`, ...size], say`, `)
}
