import { amperes, voltAmperes, volts } from '../physics/quantity.js'
import type { Source } from '../reference/source.js'
import { inputPower } from './inputPower.js'
import type { MainsSituation } from './situation.js'

/** The current a supply draws at the voltage that reaches it. */
export interface LoadCurrent {
  currentA: number
  working: string[]
  sources: Source[]
}

/**
 * The current a supply draws at the voltage that reaches it.
 *
 *   I = S / V
 *
 * Null where voltage or power is not known.
 */
export function loadAtReach({ supply, reach }: Pick<MainsSituation, 'supply' | 'reach'>): LoadCurrent | null {
  const power = inputPower(supply)
  if (!power || reach.voltageV === null) return null
  const currentA = power.powerVA / reach.voltageV
  return {
    currentA,
    working: [
      ...power.working,
      `${voltAmperes(power.powerVA, 4, 'up')} / ${volts(reach.voltageV)} = ${amperes(currentA, 4, 'up')} (from ${power.basis})`,
    ],
    sources: power.sources,
  }
}
