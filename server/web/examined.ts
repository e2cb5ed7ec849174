import type { z } from 'zod'
import { assessCase } from '../chain/assess.js'
import { prepareCase } from '../chain/case/case.js'
import type { LampCurrent } from '../examine/around.js'
import { type Examined, examine } from '../examine/examine.js'
import { lampReading } from '../plan/firstPower/lampReading.js'
import { type LampSetup, lampsFault } from '../plan/firstPower/lamps.js'
import type { examineSchema } from './schemas/examine.js'

/** Lamps before the unit. */
export type LampsBefore = Pick<LampSetup, 'lamps' | 'arrangement'>

/** What lamps pass; nothing is told of lamps that melt on the mains of the place. */
const passing =
  (lamps: LampsBefore): LampCurrent =>
  (lampV, voltageV) => {
    const setup = { mains: { voltageV }, ...lamps }
    return lampsFault(setup) ? null : lampReading(setup, lampV).currentA
  }

type Asked = Omit<z.output<typeof examineSchema>, 'lamps'> & { lamps: LampsBefore | null }

/** What to examine, for a check with what was seen, read and found. */
export function examineCheck({ check, lamps, ...asked }: Asked): Examined {
  const of = prepareCase(check)
  const stops = assessCase(of).findings.filter(({ outcome }) => outcome === 'stop')
  return examine(of, asked, stops, lamps ? passing(lamps) : null)
}
