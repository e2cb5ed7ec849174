import { type MinimumAreaRow, minimumAreaRows, type PlugFuseRow, plugFuseRows } from './cordRows.js'
import type { Source } from './source.js'

/** The largest listed size not over what is given. */
const notOver = <Row extends { areaMm2: number | null }>(rows: readonly Row[], areaMm2: number): Row[] => {
  const sizes = rows.flatMap((row) => (row.areaMm2 !== null && row.areaMm2 <= areaMm2 ? [row.areaMm2] : []))
  const size = Math.max(...sizes)
  return rows.filter((row) => row.areaMm2 === size)
}

export interface MinimumArea {
  readonly areaMm2: number
  readonly row: MinimumAreaRow
  readonly sources: readonly Source[]
}

/**
 * The smallest conductor area for an appliance's rated current and its cord's length; a length not known counts as long.
 *
 * @param currentA  rated current [A], 0 or more
 * @param lengthM   length of the cord [m], or null
 * @returns undefined above 16 A
 * @source IEC 60335-1 table 11
 */
export function minimumAreaFor(currentA: number, lengthM: number | null): MinimumArea | undefined {
  if (!(currentA >= 0)) throw new RangeError(`currentA must be 0 A or more, got ${currentA}`)
  const row = minimumAreaRows.find(({ toA }) => currentA <= toA)
  if (!row) return undefined
  const short = row.shortAreaMm2 !== null && row.shortM !== null && lengthM !== null && lengthM <= row.shortM
  return { areaMm2: short && row.shortAreaMm2 !== null ? row.shortAreaMm2 : row.areaMm2, row, sources: row.sources }
}

/** The row for the largest plug fuse-link of a cord: the largest listed size not over the area [mm²]; undefined below 0.5 mm². */
export const largestPlugFuseFor = (areaMm2: number): PlugFuseRow | undefined => notOver(plugFuseRows, areaMm2)[0]
