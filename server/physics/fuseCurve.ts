import { mustBePositive } from './range.js'

/** One point of a gate: at `multiple` times its rating a link melts after `minS` and before `maxS`; null sets no limit. */
export interface GatePoint {
  readonly multiple: number
  readonly minS: number | null
  readonly maxS: number | null
}

/** A point of the merged band; `disagree` where the rows that went into it differ. */
export interface BandPoint extends GatePoint {
  readonly disagree: boolean
}

/**
 * Merges gate rows into one band [s], point by point. Where rows differ at one multiple the wider limits are taken.
 *
 *   min = least of the minima, max = greatest of the maxima; a limit that one row does not set stays set by the others
 *
 * @param rows  any order, one or more sources
 * @returns rising by multiple, each once
 * @source arithmetic
 */
export function mergeGates(rows: readonly GatePoint[]): BandPoint[] {
  const multiples = [...new Set(rows.map((row) => row.multiple))].sort((a, b) => a - b)
  return multiples.map((multiple) => {
    const here = rows.filter((row) => row.multiple === multiple)
    const minima = here.flatMap((row) => row.minS ?? [])
    const maxima = here.flatMap((row) => row.maxS ?? [])
    return {
      multiple,
      minS: minima.length > 0 ? Math.min(...minima) : null,
      maxS: maxima.length > 0 ? Math.max(...maxima) : null,
      disagree: new Set(minima).size > 1 || new Set(maxima).size > 1,
    }
  })
}

/**
 * The band [s] that holds for every one of several links, when it is not known which of them is fitted.
 *
 *   min = least of the minima, none where one link has none; max likewise
 *
 * @param bands  one for each link
 * @returns rising by multiple; only multiples that every link has
 * @source arithmetic
 */
export function widestBand(bands: readonly (readonly BandPoint[])[]): BandPoint[] {
  const [first = [], ...others] = bands
  return first.flatMap((point) => {
    const same = others.map((band) => band.find((other) => other.multiple === point.multiple))
    if (same.some((other) => other === undefined)) return []
    const all = [point, ...same.flatMap((other) => other ?? [])]
    const minima = all.map((other) => other.minS)
    const maxima = all.map((other) => other.maxS)
    return {
      multiple: point.multiple,
      minS: minima.includes(null) ? null : Math.min(...minima.flatMap((value) => value ?? [])),
      maxS: maxima.includes(null) ? null : Math.max(...maxima.flatMap((value) => value ?? [])),
      disagree: all.some((other) => other.disagree) || new Set(minima).size > 1 || new Set(maxima).size > 1,
    }
  })
}

const between = (x: number, [x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]): number =>
  Math.exp(
    Math.log(y1) + ((Math.log(y2) - Math.log(y1)) * (Math.log(x) - Math.log(x1))) / (Math.log(x2) - Math.log(x1)),
  )

/**
 * Time limits between two gates: a straight line on logarithmic axes. The standard sets limits at the gates alone; what
 * lies between them is drawn for the eye and decides nothing.
 *
 * @param band      rising by multiple
 * @param multiple  current over rated current [1], more than 0
 * @returns null for a limit outside the gates that set it
 * @throws RangeError at 0 or below, NaN included
 * @source arithmetic
 */
export function gateTimes(band: readonly GatePoint[], multiple: number): { minS: number | null; maxS: number | null } {
  mustBePositive({ multiple })
  const limit = (of: 'minS' | 'maxS'): number | null => {
    const points = band.flatMap((point) => (point[of] === null ? [] : [[point.multiple, point[of]] as const]))
    const exact = points.find(([at]) => at === multiple)
    if (exact) return exact[1]
    const after = points.findIndex(([at]) => at > multiple)
    const [left, right] = [points[after - 1], points[after]]
    return left && right ? between(multiple, left, right) : null
  }
  return { minS: limit('minS'), maxS: limit('maxS') }
}
