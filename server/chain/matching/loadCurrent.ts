import type { Source } from '../../tables/source.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes, voltAmperes, volts } from '../../words/quantity.js'
import type { MainsSituation } from '../case/situation.js'
import { inputPower } from '../inputPower.js'

/** The current a supply draws at the voltage that reaches it. */
export interface LoadCurrent {
  currentA: number
  /** put into words when it is asked for */
  readonly working: Phrase[]
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
  const { voltageV } = reach
  if (!power || voltageV === null) return null
  const currentA = power.powerVA / voltageV
  return {
    currentA,
    get working() {
      return [
        ...power.working,
        say`${voltAmperes(power.powerVA, 4, 'up')} / ${volts(voltageV)} = ${amperes(currentA, 4, 'up')} (from ${power.basis})`,
      ]
    },
    sources: power.sources,
  }
}
