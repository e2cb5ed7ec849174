import { isStage, type Step } from '../../plan/firstPowerPlan.js'
import { type GateResult, gateState, gatesBefore, stagesBefore } from '../../plan/gateResults.js'
import { namesTester } from '../../plan/namesTester.js'
import type { Told } from '../../words/tell.js'
import { inUnit } from '../../words/unit.js'
import type { Job } from './job.js'
import { limitsFor, limitsOfJob } from './laterLimits.js'
import { lastAt } from './when.js'

/** The line on which it is written who tested: what is for qualified hands has no result before. */
export const testedBy = 'gate.tested-by'

type Gate = Told<Step>

/** The gates of the plan that a job keeps; none where it is older than they are. */
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

/** Whether a step may put power on something: one that does not say, and one that the plan does not have, may. */
export function mayPower(job: Pick<Job, 'limits'>, key: string): boolean {
  const step = limitsFor(job, key)
  return step ? step.power !== 'none' : stepKey.test(key)
}

/** A name as plans give it to their steps: "supply-alone.off-load-1". */
export const stepKey = /^\S+\.\S+$/

const stageOf = (key: string): string => key.split('.', 1)[0] ?? ''

/** What is measured before the plug is touched comes before the gates; a stage that no plan has is held by all of them. */
const gatesHolding = (gates: readonly Gate[], stage: string): readonly Gate[] =>
  stage === 'before' ? [] : stage === 'full' || isStage(stage) ? gatesBefore(gates, stage) : gates

/** The lines under power of the stages before one that have no result to go on with. */
function openBefore(job: Pick<Job, 'limits' | 'readings' | 'ticks'>, stage: string): string[] {
  const stages: readonly string[] = stagesBefore(stage)
  return limitsOfJob(job)
    .filter((step) => !step.sent && stages.includes(stageOf(step.key)) && step.power !== 'none')
    .filter(({ key }) => {
      const last = lastAt([...job.readings, ...(job.ticks ?? [])], key)
      return last === undefined || last.finding.outcome === 'stop'
    })
    .map(({ key }) => key)
}

/**
 * The steps before one under power whose last reading is a stop, cause or not: they are read within limits again first.
 *
 * @returns their keys, in the order of the paper
 */
export function readAgain(job: Pick<Job, 'limits' | 'readings' | 'ticks'>, key: string): string[] {
  if (!mayPower(job, key)) return []
  const steps = limitsOfJob(job)
  const at = steps.findIndex((step) => step.key === key)
  const entries = [...job.readings, ...(job.ticks ?? [])]
  return (at < 0 ? steps : steps.slice(0, at))
    .filter((step) => step.unit !== null && lastAt(entries, step.key)?.finding.outcome === 'stop')
    .map((step) => step.key)
}

/**
 * What a step under power waits for, in the order of the paper: gates without a result, and those whose last is none to go on with;
 * behind them the line on which it is written who tested, and the lines under power of the stages before.
 *
 * @returns their keys; none for a step without power, and for one of a plan that has no gates
 */
export function openGates(job: Pick<Job, 'plan' | 'limits' | 'readings' | 'ticks'>, key: string): string[] {
  if (!mayPower(job, key)) return []
  const stage = stageOf(key)
  const held = gatesHolding(gatesOf(job), stage)
  const open = held.filter((gate) => gateState({ ...gate, who: 'you' }, resultOf(job, gate)) !== 'passed')
  const signed = namesTester(lastAt(job.ticks ?? [], testedBy)?.words)
  const unsigned = held.some(({ who }) => who === 'qualified') && !signed
  return [
    ...open.map((gate) => gate.key),
    ...(unsigned ? [testedBy] : []),
    ...(held.length > 0 ? openBefore(job, stage) : []),
  ]
}
