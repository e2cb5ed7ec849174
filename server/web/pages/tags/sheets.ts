/** A sheet of plain labels. */
export interface Sheet {
  key: 'a4' | 'letter'
  label: string
  columns: number
  rows: number
}

/** Sizes that plain label sheets come in; their measures stand in static/tags.css. */
export const sheets: readonly Sheet[] = [
  { key: 'a4', label: 'A4, 2 × 7 labels of 99.1 mm × 38.1 mm', columns: 2, rows: 7 },
  { key: 'letter', label: 'Letter, 2 × 5 labels of 4 in × 2 in', columns: 2, rows: 5 },
]

/**
 * Tags on sheets, in reading order.
 *
 * @param first  the first label that is still on the first sheet, 1 or more
 * @returns for each sheet its places; null where one stays empty
 * @throws RangeError where the first sheet has no such label
 */
export function onSheets<Tag>(tags: readonly Tag[], { columns, rows }: Sheet, first: number): (Tag | null)[][] {
  const each = columns * rows
  if (!(first >= 1 && first <= each)) throw new RangeError(`first must be 1 to ${each}, got ${first}`)
  const places = [...Array.from({ length: first - 1 }, () => null), ...tags]
  return Array.from({ length: Math.ceil(places.length / each) }, (_, sheet) =>
    places.slice(sheet * each, (sheet + 1) * each),
  )
}
