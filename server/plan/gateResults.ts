import { joined, listed, type Phrase, say } from '../words/phrase.js'
import { quantity } from '../words/quantity.js'
import { gatesStage } from './checklist.js'
import { type FirstPowerStage, type StageName, type Step, stageNames } from './firstPowerPlan.js'
import { heldAgainst, type Limits } from './limits.js'
import { namesTester } from './namesTester.js'

/** What came of a gate, and who found it. */
export interface GateResult {
  key: string
  /** as read [unit of the gate] */
  value?: number | null
  /** what was seen, where nothing is read or no limit is known */
  passed?: boolean | null
  testedBy?: string | null
}

export type GateState = 'passed' | 'failed' | 'open'

/**
 * Where a gate stands. One that is for qualified hands stays open until it is known who tested; a reading outside its limits fails
 * whatever was said of it.
 */
export function gateState(gate: Pick<Step, keyof Limits | 'unit' | 'who'>, result: GateResult | undefined): GateState {
  if (!result) return 'open'
  const { value = null, passed = null, testedBy = null } = result
  if (passed === false || (value !== null && outside(gate, value))) return 'failed'
  if (gate.who === 'qualified' && !namesTester(testedBy)) return 'open'
  const limited = gate.low !== null || gate.high !== null
  return limited ? (value === null ? 'open' : 'passed') : passed === true ? 'passed' : 'open'
}

const outside = (gate: Limits, value: number): boolean =>
  !['within', 'no limit', 'nothing before'].includes(heldAgainst(value, gate, null).as)

/** A gate on the machine holds what powers the machine; every other holds what meets the mains. */
const holds = ({ link }: Pick<Step, 'link'>, stage: StageName): boolean =>
  stage === 'together' || stage.startsWith('inside-') || (link === 'machine') === (stage === 'bench-supply')

/** The gates that hold a stage of the list, by its name; full mains is held as machine and supply together are. */
export const gatesBefore = <Gate extends Pick<Step, 'link'>>(gates: readonly Gate[], stage: string): Gate[] => {
  const name = stageNames.find((one) => one === (stage === 'full' ? 'together' : stage))
  return name === undefined ? [] : gates.filter((gate) => holds(gate, name))
}

const earlier: Readonly<Record<string, readonly StageName[]>> = {
  together: ['supply-alone'],
  full: ['supply-alone', 'together'],
  'inside-whole': ['inside-stripped'],
  'inside-full': ['inside-stripped', 'inside-whole'],
}

/**
 * The stages whose lines under power have their results before one begins: the supply proved alone before a machine hangs on it, what
 * is done behind the lamp before the mains without it.
 */
export const stagesBefore = (stage: string): readonly StageName[] => earlier[stage] ?? []

/** The stages before one that have a line under power without a result to go on with. */
const unproved = (
  { name }: FirstPowerStage,
  stages: readonly FirstPowerStage[],
  results: readonly GateResult[],
): FirstPowerStage[] => {
  const resultOf = (key: string) => results.findLast((result) => result.key === key)
  return stages.filter(
    (before) =>
      stagesBefore(name).includes(before.name) &&
      before.steps.some(
        (step) => step.power !== 'none' && gateState({ ...step, who: 'you' }, resultOf(step.key)) !== 'passed',
      ),
  )
}

/** The stages with what their gates make of them: one that failed leaves its stages out, one without a result makes them wait. */
export const behindGates = (
  stages: readonly FirstPowerStage[],
  gates: readonly Step[],
  results: readonly GateResult[],
): FirstPowerStage[] =>
  stages.map((stage) => {
    if (stage.leftOut !== null) return stage
    const held = gates.flatMap((gate, index) => {
      const result = results.findLast(({ key }) => key === gate.key)
      return holds(gate, stage.name) ? [{ gate, result, number: index + 1, state: gateState(gate, result) }] : []
    })
    const failed = held.filter(({ state }) => state === 'failed')
    if (failed.length > 0)
      return {
        ...stage,
        leftOut: say`A gate failed: ${listed(failed.map(({ gate, result }) => failedText(gate, result?.value ?? null)))}. Nothing of this stage is done before its cause is found and mended, and the gate passed.`,
        figures: [],
        steps: [],
        sources: [],
      }
    const open = held.filter(({ state }) => state === 'open').map(({ number }) => `${gatesStage}.${number}`)
    const waits = [
      ...(open.length === 0 ? [] : [waitsFor(open)]),
      ...unproved(stage, stages, results).map(waitsForStage),
    ]
    return { ...stage, waits: waits.length === 0 ? null : joined(waits) }
  })

/** Why a step waits for its gates. */
export const noResultYet = 'no result yet, or nobody who tested.'

const waitsFor = (open: readonly string[]): Phrase =>
  say`Waits for gate${open.length === 1 ? '' : 's'} ${listed(open)}: ${noResultYet}`

const waitsForStage = ({ title }: FirstPowerStage): Phrase =>
  say`Waits for “${title}”: not every line under power has its result.`

const failedText = ({ text, unit }: Step, value: number | null): Phrase =>
  value === null || unit === null ? say`“${text}”` : say`“${text}”, ${quantity(value, unit)} read`
