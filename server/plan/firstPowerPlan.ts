import type { Hands, Power } from '../chain/action.js'
import type { Link } from '../facts/fact.js'
import type { Source } from '../tables/source.js'
import type { Words } from '../words/phrase.js'
import type { Told } from '../words/tell.js'
import type { Limits } from './limits.js'

/** Signal words with their ANSI Z535.4 meanings: will kill, could kill, minor injury, property only. */
export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE'

/** A caution that stands before the step it concerns: hazard, what happens, how to avoid it. */
export interface Caution {
  signal: SignalWord
  hazard: Words
  consequence: Words
  avoid: Words
  /** true only where a person can get a shock */
  electric: boolean
}

/** One action a line, read and done, with the value to read and when to stop. */
export interface Step extends Limits {
  /** stable name under which a reading is kept: "supply-alone.lamp-volts" */
  key: string
  text: Words
  /** the part of the chain it is about */
  link: Link
  /** what should be read or seen, in words with its range; null where nothing is read */
  expect: Words | null
  /** unit of the reading, "V" or "A" or "Ω" …; null where it is a tick only */
  unit: string | null
  stopIf: Words | null
  /** `qualified`: a licensed electrician or other qualified person */
  who: Hands
  /** what stands under power while it is done; `low-voltage` is a bench source, whatever it is set to */
  power: Power
  caution: Caution | null
  /** on the first line of what is done without the lamp: the pause before full mains comes here */
  lampOut?: true
}

/** A number worked out for a stage, with its formula and the numbers in it. */
export interface Figure {
  label: Words
  /** formatted with its unit */
  value: Words
  working: Words
}

export const stageNames = [
  'supply-alone',
  'dummy-load',
  'bench-supply',
  'together',
  // of a machine with its supply inside
  'inside-stripped',
  'inside-whole',
  'inside-full',
] as const

export type StageName = (typeof stageNames)[number]

export const isStage = (name: string): name is StageName => stageNames.some((one) => one === name)

export interface FirstPowerStage {
  name: StageName
  title: Words
  /** null where the stage applies; else why it is left out */
  leftOut: Words | null
  /** gates that must have their result before it; null where none is open */
  waits: Words | null
  figures: Figure[]
  steps: Step[]
  sources: Source[]
}

/** The bring-up, gates and the stages that its arrangement has, worked out from one check. */
export interface FirstPowerPlan {
  mains: { voltageV: number; frequencyHz: number } | null
  /** what the supply is plugged into: through a converter, the wall is not what it may meet */
  through: 'mains' | 'converter' | null
  lamps: { ratedV: number; ratedW: number; count: number; arrangement: 'series' | 'parallel' }[]
  /** facts that were missing and what each keeps from being worked out */
  missing: Words[]
  /** before any power: each with its result and who found it, or nothing is plugged in */
  gates: Step[]
  stages: FirstPowerStage[]
}

/** A plan once its words are text: what pages, JSON and kept records hold. */
export type ToldPlan = Told<FirstPowerPlan>
