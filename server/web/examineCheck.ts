import type { z } from 'zod'
import { assessCase } from '../chain/assess.js'
import { prepareCase } from '../chain/case/case.js'
import { mainsSideOpen } from '../chain/silenced.js'
import type { LampCurrent } from '../examine/around.js'
import { type Examined, examine, type Stop } from '../examine/examine.js'
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

/**
 * What to examine, for a check with what was seen, read and found. What the check says against power stands before it: its stops, and what
 * is not known of the mains side.
 *
 * @param held  what else stands before power: the open stops of a job
 */
export function examineCheck({ check, lamps, ...asked }: Asked, held: readonly Stop[] = []): Examined {
  const of = prepareCase(check)
  const { findings } = assessCase(of)
  const stops = findings.filter((finding) => finding.outcome === 'stop' || mainsSideOpen([finding]))
  return examine(of, asked, [...stops, ...held], lamps ? passing(lamps) : null)
}
