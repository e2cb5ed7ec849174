/** y(t) = flat + ramp t + fade exp(−t / τ): every voltage and current of a circuit with one capacitor. */
export interface FadingCourse {
  readonly flat: number
  readonly ramp: number
  readonly fade: number
}

/** How e = exp(−t / τ) runs over a step. */
export interface Fading {
  readonly stepS: number
  /** longer than half of τ: integrals are exact. Over a shorter step their terms would cancel, and Simpson's rule is as good. */
  readonly long: boolean
  /** e in the middle of the step and at its end */
  readonly half: number
  readonly end: number
  /** ∫ e dt, ∫ t e dt and ∫ e² dt, for a long step */
  readonly once: number
  readonly timed: number
  readonly square: number
}

/**
 * exp(−t / τ) over a step, and its integrals.
 *
 * @param tauS   [s], more than 0; infinity where nothing fades
 * @param stepS  [s], more than 0
 * @source arithmetic
 */
export function fadingOver(tauS: number, stepS: number): Fading {
  const half = tauS === Number.POSITIVE_INFINITY ? 1 : Math.exp(-stepS / (2 * tauS))
  const end = half * half
  if (!(stepS > tauS / 2)) return { stepS, long: false, half, end, once: 0, timed: 0, square: 0 }
  const once = tauS * (1 - end)
  const timed = tauS * (once - stepS * end)
  return { stepS, long: true, half, end, once, timed, square: (tauS / 2) * (1 - end * end) }
}

const squared = (x: number): number => x * x
const cubed = (x: number): number => x * x * x

const startOf = ({ flat, fade }: FadingCourse): number => flat + fade
const middleOf = ({ flat, ramp, fade }: FadingCourse, { stepS, half }: Fading): number =>
  flat + (ramp * stepS) / 2 + fade * half

/**
 * The course at the end of a step.
 *
 * @source {@link FadingCourse}
 */
export const endOf = ({ flat, ramp, fade }: FadingCourse, { stepS, end }: Fading): number =>
  flat + ramp * stepS + fade * end

/**
 * ∫ y dt over a step.
 *
 * @source integral of {@link FadingCourse}, or Simpson's rule
 */
export function integral(course: FadingCourse, over: Fading): number {
  const { flat, ramp, fade } = course
  const { stepS } = over
  if (over.long) return flat * stepS + (ramp * stepS * stepS) / 2 + fade * over.once
  return (stepS / 6) * (startOf(course) + 4 * middleOf(course, over) + endOf(course, over))
}

/**
 * ∫ y² dt over a step.
 *
 * @source integral of {@link FadingCourse} squared, or Simpson's rule
 */
export function squareIntegral(course: FadingCourse, over: Fading): number {
  const { flat, ramp, fade } = course
  const { stepS } = over
  if (over.long)
    return (
      flat * flat * stepS +
      flat * ramp * stepS * stepS +
      (ramp * ramp * cubed(stepS)) / 3 +
      2 * fade * (flat * over.once + ramp * over.timed) +
      fade * fade * over.square
    )
  return (stepS / 6) * (squared(startOf(course)) + 4 * squared(middleOf(course, over)) + squared(endOf(course, over)))
}

/**
 * ∫ t y dt over a step, with t from 0 at its start.
 *
 * @source integral of t times {@link FadingCourse}, or Simpson's rule
 */
export function timedIntegral(course: FadingCourse, over: Fading): number {
  const { flat, ramp, fade } = course
  const { stepS } = over
  if (over.long) return (flat * stepS * stepS) / 2 + (ramp * cubed(stepS)) / 3 + fade * over.timed
  return (stepS / 6) * stepS * (2 * middleOf(course, over) + endOf(course, over))
}

/**
 * Where a course that is 0 or more at the start of a step and negative at its end crosses zero.
 *
 * @returns the first time, of 2⁴⁰ in the step, at which it is negative [s]
 * @source halving the interval
 */
export function crossingS({ flat, ramp, fade }: FadingCourse, tauS: number, stepS: number): number {
  let low = 0
  let high = stepS
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2
    if (flat + ramp * middle + (fade === 0 ? 0 : fade * Math.exp(-middle / tauS)) >= 0) low = middle
    else high = middle
  }
  return high
}
