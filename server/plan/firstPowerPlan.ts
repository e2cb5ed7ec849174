import type { Source } from '../tables/source.js'

/** Signal words with their ANSI Z535.4 meanings: will kill, could kill, minor injury, property only. */
export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE'

/** A caution that stands before the step it concerns: hazard, what happens, how to avoid it. */
export interface Caution {
  signal: SignalWord
  hazard: string
  consequence: string
  avoid: string
  /** true only where a person can get a shock */
  electric: boolean
}

/** One action a line, read and done, with the value to read and when to stop. */
export interface Step {
  /** stable name under which a reading is kept: "supply-alone.lamp-volts" */
  key: string
  text: string
  /** what should be read or seen, in words with its range; null where nothing is read */
  expect: string | null
  /** unit of the reading, "V" or "A" or "Ω" …; null where it is a tick only */
  unit: string | null
  low: number | null
  high: number | null
  stopIf: string | null
  who: 'you' | 'a licensed electrician or other qualified person'
  caution: Caution | null
  /** on the first line of what is done without the lamp: the pause before full mains comes here */
  lampOut?: true
}

/** A number worked out for a stage, with its formula and the numbers in it. */
export interface Figure {
  label: string
  /** formatted with its unit */
  value: string
  working: string
}

export const stageNames = ['supply-alone', 'dummy-load', 'bench-supply', 'together'] as const

export type StageName = (typeof stageNames)[number]

export interface FirstPowerStage {
  name: StageName
  title: string
  /** null where the stage applies; else why it is left out */
  leftOut: string | null
  figures: Figure[]
  steps: Step[]
  sources: Source[]
}

/** The bring-up in four stages for one supply and one machine, worked out from one check. */
export interface FirstPowerPlan {
  mains: { voltageV: number; frequencyHz: number } | null
  /** what the supply is plugged into: through a converter, the wall is not what it may meet */
  through: 'mains' | 'converter' | null
  lamps: { ratedV: number; ratedW: number; count: number; arrangement: 'series' | 'parallel' }[]
  /** facts that were missing and what each keeps from being worked out */
  missing: string[]
  stages: FirstPowerStage[]
}
