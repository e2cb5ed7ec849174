import type { Hands, Power } from '../chain/action.js'
import type { Link } from '../facts/fact.js'
import type { FirstPowerPlan, Step, ToldPlan } from './firstPowerPlan.js'

/** Who did what a step says, as it was written before hands were a field of their own. */
const oldHands: Record<string, Hands> = { 'a licensed electrician or other qualified person': 'qualified' }

/** What stood under power at steps that were kept before that was a field: the ends of their keys, under the stage. */
const oldPower: readonly (readonly [RegExp, Power])[] = [
  [/^bench-supply\.(set-|polarity$|step-|at-machine-)/, 'low-voltage'],
  [
    /^(supply-alone|dummy-load|together)\.(converter$|switch-on$|lamp-volts$|off-load-|polarity$|hold$|on-|rail-|ripple-|lamps$|moves$|sounds$|smells$|drawn)/,
    'mains',
  ],
  [/^(before\.mains-volts$|full\.(on$|watch$|drawn))/, 'mains'],
]

/** What stands under power at a step, by its key: for steps that were kept before that was a field; undefined where the key does not tell. */
export const powerAt = (key: string): Power | undefined =>
  oldPower.find(([keys]) => keys.test(key))?.[1] ?? (known.test(key) ? 'none' : undefined)

/** The part of the chain that a step is about, by its key: for steps that were kept before that was a field. */
export function linkAt(key: string): Link {
  if (key.includes('earth')) return 'cord'
  if (/mains|lamp|selector/.test(key)) return 'source'
  return key.startsWith('bench-supply.') ? 'machine' : 'supply'
}

/** Keys of the plans and lists of this program. */
const known = /^(before|look|gate|supply-alone|dummy-load|bench-supply|together|full|done)\./

type ToldStep = ToldPlan['stages'][number]['steps'][number]
type OldStep = Omit<ToldStep, 'link' | 'power' | 'who'> & Partial<Pick<Step, 'link' | 'power'>> & { who: string }

const broughtUp = (step: OldStep): ToldStep => ({
  ...step,
  link: step.link ?? linkAt(step.key),
  who: oldHands[step.who] ?? (step.who === 'qualified' ? 'qualified' : 'you'),
  power: step.power ?? powerAt(step.key) ?? 'none',
})

/**
 * A plan as any version of the program kept it, with the fields that came later. Keys stay as they are: readings hang on them.
 *
 * @param gates  for a plan that was kept before there were gates
 */
export const keptPlan = (plan: ToldPlan, gates: () => FirstPowerPlan['gates']): FirstPowerPlan => ({
  ...plan,
  gates: (plan.gates as ToldPlan['gates'] | undefined) ?? gates(),
  stages: plan.stages.map((stage) => ({ ...stage, waits: stage.waits ?? null, steps: stage.steps.map(broughtUp) })),
})
