import type { LabelReading } from '../../plate/labelReading.js'

type Side = 'supply' | 'device'

/** What was read at a path of the reading, without spaces: "0.5", "50,60", "100-240", "dc"; empty where nothing was. */
function figureAt(reading: LabelReading, field: string): string {
  let value: unknown = reading
  for (const key of field.split('.'))
    value = typeof value === 'object' && value !== null && Object.hasOwn(value, key) ? Reflect.get(value, key) : null
  const all = Array.isArray(value) ? value : [value]
  return all
    .map((one) => (typeof one === 'object' && one !== null ? Object.values(one).join('-') : String(one ?? '')))
    .join(',')
    .replace(/\s+/g, '')
}

/** What a person confirms: the key of a figure and what was read there, "supply.outputs.0.currentA=0.5". */
export const confirmationOf = (reading: LabelReading, of: Side, field: string): string =>
  `${of}.${field}=${figureAt(reading, field)}`

/**
 * Whether a person confirmed a figure. A confirmation that names a value holds for that value alone: where the words of the plate were
 * changed since and read otherwise, it is none. A bare key is for words that are sent along with it.
 */
export const isConfirmed = (
  confirmed: readonly string[] | null | undefined,
  reading: LabelReading,
  of: Side,
  field: string,
): boolean => confirmed?.some((one) => one === `${of}.${field}` || one === confirmationOf(reading, of, field)) ?? false
