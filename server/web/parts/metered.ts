import { readMeter } from '../meter.js'
import type { FormReader } from './formState.js'

/** What was typed of a meter, in the unit of its step; what cannot be used becomes a fault. Null: nothing, or over its range. */
export function metered(
  read: FormReader,
  name: string,
  unit: string,
  chosen: string | null,
  required = false,
): number | null {
  const typed = read.state.values[name] ?? ''
  if (typed.trim() === '' && !required) return null
  const found = readMeter(typed, unit, chosen)
  if (!('message' in found)) return found.value
  read.fault(name, found.message)
  return null
}
