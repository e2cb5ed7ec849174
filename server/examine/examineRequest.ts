/** Something read on a meter, at a step of the plan or by itself. */
export interface ReadingSeen {
  key: string
  /** null: over the range of the meter, "OL" */
  value: number | null
  unit: string
  /** with nothing connected, with a load, with a load for half an hour */
  state?: 'open' | 'loaded' | 'warm' | null
}

/** What an examination came to. Under the key of a cause with ".mended" behind it: renewed, and what it may have taken looked at. */
export interface Found {
  cause: string
  result: 'confirmed' | 'excluded'
  value?: number | null
  unit?: string | null
  /** who tested, of a test for a qualified person: without it the result excludes, and still holds power */
  by?: string | null
}

export interface ExamineRequest {
  /** keys of what was seen */
  observations: readonly string[]
  readings: readonly ReadingSeen[]
  found: readonly Found[]
}

/** The key under which it is told that a confirmed cause is mended. */
export const mendedKey = (cause: string): string => `${cause}.mended`

/** The cause that a key tells to be mended; null for a key that tells no such thing. */
export const mendedOf = (key: string): string | null =>
  key.endsWith(mendedKey('')) ? key.slice(0, -mendedKey('').length) : null
