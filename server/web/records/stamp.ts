import type { Stamp } from '../../store/store.js'

/** Times in JSON are ISO 8601 in UTC. */
export const isoTime = (ms: number): string => new Date(ms).toISOString()

/** What every record begins with. */
export const stampJson = ({ id, version, createdAt, updatedAt }: Stamp) => ({
  id,
  version,
  createdAt: isoTime(createdAt),
  updatedAt: isoTime(updatedAt),
})
