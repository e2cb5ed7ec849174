import { variableTransformerRows } from '../../tables/variableTransformer.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { volts } from '../../words/quantity.js'
import type { Figure } from '../firstPowerPlan.js'
import type { PlanFacts } from './facts.js'
import { figure } from './step.js'

const rowOf = (input: (typeof variableTransformerRows)[number]['input']) =>
  variableTransformerRows.find((row) => row.input === input)!

/** Where this kind of input starts as the voltage is raised, at this mains. */
function starts(mainsV: number): Phrase {
  const { startsFrom, startsTo } = rowOf('switch-mode')
  return say`it may start anywhere from ${volts((startsFrom ?? 0) * mainsV, 2, 'down')} to ${volts((startsTo ?? 1) * mainsV, 2, 'up')}`
}

/** What a variable transformer does for this input beside the lamp, and what it does to it. */
export function variableTransformer({ technology, reach, device }: PlanFacts): Figure[] {
  const turns = device.turns || (device.motor !== null && device.motor !== 'none' && device.motor !== 'dc')
  const kinds = technology === null ? (['transformer', 'switch-mode'] as const) : ([technology] as const)
  const lines = [...kinds, ...(turns ? (['motor'] as const) : [])].map((input) => {
    const { helps, harms } = rowOf(input)
    const where = input === 'switch-mode' && reach ? say` (${starts(reach.voltageV)})` : say``
    return say`${input}: helps: ${helps}; harms: ${harms}${where}`
  })
  return [
    figure(
      say`A variable transformer, where there is one`,
      technology === 'switch-mode'
        ? say`in the lamp’s place never; left out, or at the full mains`
        : say`before the lamp, never in its place: it limits no current and does not isolate`,
      joined(lines, say`. `),
    ),
  ]
}
