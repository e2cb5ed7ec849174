/**
 * The piece of a rising list that x lies on, found by halving.
 *
 * @param list  rising, two entries or more
 * @returns index of the last entry not above x, from 0 to length − 2
 * @source arithmetic
 */
export function below(list: ArrayLike<number>, x: number): number {
  let low = 0
  let high = list.length - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((list[middle] as number) <= x) low = middle
    else high = middle
  }
  return low
}

/**
 * Straight line between the two points that x lies between.
 *
 *   y = y1 + (x − x1) / (x2 − x1) · (y2 − y1)
 *
 * @param xs  rising, two entries or more
 * @param ys  one for each
 * @returns undefined outside the list, and for NaN
 * @source arithmetic
 */
export function along(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number | undefined {
  const first = xs[0] as number
  const last = xs[xs.length - 1] as number
  if (!(x >= first && x <= last)) return undefined
  const at = below(xs, x)
  const left = xs[at] as number
  const right = xs[at + 1] as number
  const low = ys[at] as number
  return low + ((x - left) / (right - left)) * ((ys[at + 1] as number) - low)
}
