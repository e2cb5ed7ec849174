import type { FittedFuse } from '../../plate/fuseMarking.js'
import { meltingTables } from '../../tables/fuseMelting.js'
import type { Source } from '../../tables/source.js'

interface MeltingRange {
  lowI2t: number
  highI2t: number
  sources: Source[]
}

/**
 * Typical melting I²t of a 5 x 20 mm link, as a range over the data sheets that give one.
 *
 * @returns [A²s]; null unless two data sheets give the rating
 * @source data sheets of makers; no tolerance is stated in any
 */
export function meltingRange(
  link: Pick<FittedFuse, 'ratedA' | 'characteristic' | 'breaking' | 'scheme'>,
): MeltingRange | null {
  const { ratedA, characteristic, breaking, scheme } = link
  if (ratedA === null || (scheme !== null && scheme !== 'IEC')) return null
  const found = meltingTables.flatMap((table) => {
    const i2t =
      table.characteristic === characteristic && table.breaking === breaking ? table.i2tByRatedA[ratedA] : undefined
    return i2t === undefined ? [] : [{ i2t, source: table.source }]
  })
  if (found.length < 2) return null
  const values = found.map(({ i2t }) => i2t)
  return { lowI2t: Math.min(...values), highI2t: Math.max(...values), sources: found.map(({ source }) => source) }
}
