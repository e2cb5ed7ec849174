/** An entry at a step: what was typed at the bench without the network arrives later than it was typed. */
interface Timed {
  key: string
  at: number
  typedAt?: number
  withdrawn?: unknown
}

/** When it was read or seen [ms since 1970]. */
export const whenRead = ({ at, typedAt }: Pick<Timed, 'at' | 'typedAt'>): number => typedAt ?? at

/** In the order in which they were read, whatever the order in which they arrived. */
export const inTime = <Of extends Timed>(entries: readonly Of[]): Of[] =>
  entries.toSorted((one, other) => whenRead(one) - whenRead(other))

/**
 * What was read or seen last at a step, without what was taken back.
 *
 * @param until  nothing later than this [ms since 1970]
 */
export const lastAt = <Of extends Timed>(
  entries: readonly Of[],
  key: string,
  until = Number.POSITIVE_INFINITY,
): Of | undefined =>
  inTime(entries).findLast((entry) => entry.key === key && !entry.withdrawn && whenRead(entry) <= until)
