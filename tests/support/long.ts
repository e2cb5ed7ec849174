import { it } from 'vitest'

/** Whether this is the long run, which looks at all that the short one has a part of. */
export const isLong = Boolean(process.env.LONG_RUN)

/** How many random cases are tried: all in the long run, a quarter in the short one. */
export const runs = (many: number): number => (isLong ? many : Math.ceil(many / 4))

/** One in how many pairs of a long list is tried. */
export const oneIn = (few: number): number => (isLong ? few : 4 * few + 1)

/** Widths of a window [px]: a desk and a phone in the long run, a phone in the short one. */
export const widths: readonly number[] = isLong ? [1280, 360] : [360]

/** What a text-heavy test takes of a list: all in the long run, one in four in the short one. */
export const some = <Item>(all: readonly Item[]): Item[] => all.filter((_, at) => isLong || at % 4 === 0)

/** With scripts and without in the long run, without in the short one. */
export const scripting: readonly boolean[] = isLong ? [true, false] : [false]

/** A case for the long run alone: its promise has another in the short one. */
export const inLongRun = it.skipIf(!isLong)
