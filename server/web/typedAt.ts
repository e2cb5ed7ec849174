import { Unprocessable } from './errors.js'

/** Longest that an entry may have waited on a device [ms]: half a year. */
const longest = 183 * 24 * 3600 * 1000
/** How far the clock of a device may be ahead [ms]. */
const ahead = 5 * 60 * 1000

/**
 * When something was typed, where a device says so; refused where that cannot be true.
 *
 * @param typedAt  milliseconds since 1970; undefined where the device did not say
 * @throws Unprocessable for a time to come, or more than half a year ago
 */
export function typedAtOf(typedAt: number | undefined, now: number): number | undefined {
  if (typedAt === undefined) return undefined
  if (Number.isFinite(typedAt) && typedAt <= now + ahead && typedAt >= now - longest) return Math.min(typedAt, now)
  throw new Unprocessable([
    {
      path: 'typedAt',
      message:
        'typedAt must be a time within the last half year, and not one to come: the clock of the device is wrong.',
    },
  ])
}

/** The same from how long ago a form says it was filled in [ms], which needs no clock that is right. */
export function typedBefore(age: unknown, now: number): number | undefined {
  if (typeof age !== 'string' || age === '') return undefined
  return typedAtOf(/^\d{1,12}$/.test(age) ? now - Number(age) : Number.NaN, now)
}
