import { readFuseMarking } from './fuseMarking.js'
import { distinct, tidy } from './fuseMarkingScan.js'

/** One of several prescriptions printed together, each for its own mains voltage. */
export interface PrescribedFor {
  text: string
  /** mains voltages it stands for [V]; a single one has min equal to max */
  mains: { min: number; max: number }
}

/**
 * Splits "115V T1.6A / 230V T800mA" into what applies at each mains voltage.
 *
 * @param text  what is printed beside the holder
 * @returns an empty list where the text is one prescription only
 */
export function splitPrescription(text: string): PrescribedFor[] {
  if (text.length > 400) return []
  const pieces = tidy(text)
    .split(/\s\/\s|[;\n|]|,\s|\s(?:und|and|et|e|y)\s/)
    .map((piece) => piece.trim())
    .filter(Boolean)
  const read = pieces.map((piece) => ({ piece, marking: readFuseMarking(piece), mains: mainsOf(piece) }))
  const distinctRatings = distinct(read.map(({ marking }) => marking.ratedA))
  if (pieces.length < 2 || distinctRatings.includes(null) || distinctRatings.length < 2) return []
  return read.flatMap(({ piece, mains }) => (mains ? [{ text: withoutMains(piece), mains }] : []))
}

const mainsPattern = /(\d{2,3})\s?V?\s?(?:-|to|\.\.\.?)\s?(\d{2,3})\s?V(?:\s?(?:AC|~))?|(\d{2,3})\s?V(?:\s?(?:AC|~))?/i

const mainsOf = (piece: string): { min: number; max: number } | null => {
  const match = mainsPattern.exec(piece)
  if (!match) return null
  const [min, max] = match[3] ? [Number(match[3]), Number(match[3])] : [Number(match[1]), Number(match[2])]
  return min > 0 && max >= min ? { min, max } : null
}

const withoutMains = (piece: string): string => piece.replace(mainsPattern, ' ').trim()
