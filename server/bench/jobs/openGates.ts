import type { Step } from '../../plan/firstPowerPlan.js'
import { type GateResult, gateState, gatesBefore } from '../../plan/gateResults.js'
import type { Told } from '../../words/tell.js'
import type { Job } from './job.js'
import { limitsFor } from './laterLimits.js'
import { inUnit } from './readingFinding.js'
import { lastAt } from './when.js'

/** The line on which it is written who tested: what is for qualified hands has no result before. */
export const testedBy = 'gate.tested-by'

type Gate = Told<Step>

/** The gates of the plan that a job keeps; none where the plan was sent without, or is older than they are. */
const gatesOf = ({ plan }: Pick<Job, 'plan'>): readonly Gate[] =>
  (plan as { gates?: readonly Gate[] } | null)?.gates ?? []

/** What came of a gate at the bench: the last that counts, a reading or a step that was looked at. */
function resultOf(
  { readings, ticks = [] }: Pick<Job, 'readings' | 'ticks'>,
  { key, unit }: Gate,
): GateResult | undefined {
  const reading = lastAt(readings, key)
  const tick = lastAt(ticks, key)
  const last = lastAt(
    [reading, tick].flatMap((one) => one ?? []),
    key,
  )
  if (!last) return undefined
  const passed = last.finding.outcome !== 'stop' && last.finding.outcome !== 'caution'
  if (last === tick || !reading) return { key, passed }
  const value = reading.value ?? Number.POSITIVE_INFINITY
  return { key, passed, value: unit === null ? null : inUnit(value, reading.unit, unit) }
}

/**
 * The gates that a step under power waits for, in the order of the paper: those without a result, and those whose last is none to go
 * on with; behind them the line on which it is written who tested.
 *
 * @returns their keys; none for a step without power, and for one of a plan that has no gates
 */
export function openGates(job: Pick<Job, 'plan' | 'limits' | 'readings' | 'ticks'>, key: string): string[] {
  const power = limitsFor(job, key)?.power
  if (power === undefined || power === 'none') return []
  const held = gatesBefore(gatesOf(job), key.split('.', 1)[0] ?? '')
  const open = held.filter((gate) => gateState({ ...gate, who: 'you' }, resultOf(job, gate)) !== 'passed')
  const signed = (lastAt(job.ticks ?? [], testedBy)?.words ?? '').trim() !== ''
  const unsigned = held.some(({ who }) => who === 'qualified') && !signed
  return [...open.map((gate) => gate.key), ...(unsigned ? [testedBy] : [])]
}
