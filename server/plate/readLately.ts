import { frozen } from '../reference/frozen.js'
import type { LabelReading, PlateOf } from './labelReading.js'
import { readPlate } from './readPlate.js'

/** Plates that are kept, and the longest text of one [characters]. */
const most = 200
const longest = 2000

const readings = new Map<string, LabelReading>()

/**
 * Reads as `readPlate` does, and keeps the readings of the plates that came last: while a form is filled in, the same
 * two plates come again with every box. A reading is frozen, as several may hold it.
 */
export function readLately(text: string, of: PlateOf): LabelReading {
  if (text.length > longest) return readPlate(text, of)
  const key = `${of} ${text}`
  const reading = readings.get(key) ?? frozen(readPlate(text, of))
  // the one asked for last stands last
  readings.delete(key)
  readings.set(key, reading)
  if (readings.size > most) readings.delete(readings.keys().next().value as string)
  return reading
}
