import { createHash } from 'node:crypto'
import * as values from '../tables/values.js'

/**
 * Stands for the rules that read the tables. One more wherever a change of code changes an outcome or a limit;
 * `tests/web/dataVersion.test.ts` tells when.
 */
export const rulesVersion = 7

/**
 * Names the tables and rules that judge: equal names judge alike. Twelve hexadecimal figures of a digest over the values
 * of all tables, thresholds and limits, and the version of the rules.
 */
export const dataVersion = (): string => (known ??= digestOf({ rulesVersion, values }))

let known: string | undefined

/** Beside functions, what does not decide: where a value comes from, and how its table is headed. */
const notCounted = new Set(['source', 'sources', 'columns'])

/** Twelve hexadecimal figures that stand for values; functions, sources, and the order in which fields are written do not count. */
export const digestOf = (value: object): string => createHash('sha256').update(textOf(value)).digest('hex').slice(0, 12)

function textOf(value: unknown): string {
  if (value instanceof RegExp) return String(value)
  if (value instanceof Map || value instanceof Set) return textOf([...value])
  if (Array.isArray(value)) return `[${value.map(textOf).join()}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? ''
  const counted = Object.entries(value).filter(([name, inner]) => typeof inner !== 'function' && !notCounted.has(name))
  const fields = counted.map(([name, inner]) => `${JSON.stringify(name)}:${textOf(inner)}`)
  return `{${fields.sort().join()}}`
}
