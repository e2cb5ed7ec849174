import { it } from 'vitest'
import { switchOnAgrees } from '../support/switchOnAgrees.js'
import { circuits } from '../support/switchOnCircuits.js'

it.each(circuits.filter(({ name }) => /nothing drawn|shorted/.test(name)))(
  'the switch-on agrees with ngspice within 1 %: $name',
  async (circuit) => {
    await switchOnAgrees(circuit)
  },
  60_000,
)
