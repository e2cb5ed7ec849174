import { atHandBounds } from '../schemas/atHand.js'
import type { FormState } from './formState.js'

/** How many rows of a group are shown: those that hold something and one more, `least` at least. */
export function shownRows(group: string, least: number, { values }: FormState): number {
  const used = Object.entries(values).flatMap(([name, value]) =>
    name.startsWith(group) && value.trim() !== '' ? [Number.parseInt(name.slice(group.length), 10)] : [],
  )
  return Math.min(atHandBounds.rows, Math.max(least, ...used.map((row) => row + 1)))
}
