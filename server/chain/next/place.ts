import { facts } from '../../facts/boxes.js'
import type { Arrangement } from '../case/arrangement.js'

const keys = new Set(facts.map(({ key }) => key))

/**
 * Where a fact of a topic is entered in an arrangement: that of a supply at the machine's own mains side where the supply is inside, nowhere
 * where there is no such thing.
 *
 * @param key  as a topic names it: "supply.inlet"
 * @returns the key as GET /api/facts has it, "device.mains.inlet"; null where the arrangement has nothing of the kind
 */
export function placeOf(key: string, arrangement: Arrangement): string | null {
  const [thing, ...rest] = key.split('.')
  if (thing === 'supply') {
    if (arrangement === 'machine-only') return null
    if (arrangement !== 'built-in') return key
    const own = ['device', 'mains', ...rest].join('.')
    return keys.has(own) ? own : null
  }
  if (thing === 'device') return arrangement === 'supply-only' || arrangement === 'built-in' ? null : key
  return arrangement === 'machine-only' && thing === 'cord' ? null : key
}
