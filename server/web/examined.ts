import type { z } from 'zod'
import { assessCase } from '../chain/assess.js'
import { prepareCase } from '../chain/case/case.js'
import type { LampCurrent } from '../examine/around.js'
import { type Examined, examine } from '../examine/examine.js'
import { lampReading } from '../plan/firstPower/lampReading.js'
import type { LampSetup } from '../plan/firstPower/lamps.js'
import type { examineSchema } from './schemas/examine.js'

/** What lamps pass one behind the other. */
const passing =
  (lamps: LampSetup['lamps']): LampCurrent =>
  (lampV, voltageV) =>
    lampReading({ mains: { voltageV }, lamps, arrangement: 'series' }, lampV).currentA

/** What to examine, for a check with what was seen, read and found. */
export function examineCheck({ check, lamps, ...asked }: z.output<typeof examineSchema>): Examined {
  const of = prepareCase(check)
  const stops = assessCase(of).findings.filter(({ outcome }) => outcome === 'stop')
  return examine(of, asked, stops, lamps ? passing(lamps) : null)
}
