import type { FittedFuse } from '../../plate/fuseMarking.js'
import type { BreakingLetter, Characteristic } from '../../tables/fuseMarks.js'
import type { Phrase } from '../../words/phrase.js'
import type { Finding } from '../finding.js'

export const fusePositions = ['mains', 'plug', 'low-voltage'] as const

export type FusePosition = (typeof fusePositions)[number]

export const fuseSchemes = ['IEC', 'UL', 'BS1362'] as const

export const circuitKinds = ['ac', 'dc'] as const

export const inrushShapes = ['exponential', 'half-sine', 'triangle', 'rectangle'] as const

/** What is known of the circuit behind the link. Unknown is null or absent, never 0. */
export interface FuseCircuit {
  voltageV: number
  /** alternating or direct current; where it is not given, mains and plugs are ac, the low-voltage side is not known */
  kind?: (typeof circuitKinds)[number] | null
  currentA?: number | null
  powerW?: number | null
  powerFactor?: number | null
  inrushPeakA?: number | null
  /** the time constant of an exponential, else the length of the pulse [s] */
  inrushTimeS?: number | null
  inrushShape?: (typeof inrushShapes)[number] | null
  /** how often it is switched on in its life */
  pulses?: number | null
  ambientC?: number | null
  /** current a short circuit behind the link would draw [A] */
  prospectiveFaultA?: number | null
}

export interface FuseRequest {
  /** printed on the link that is fitted */
  marking?: string | null
  /** printed beside the holder or in the manual */
  prescribed?: string | null
  /** overrides what the marking says */
  fuse?: {
    ratedA?: number | null
    ratedV?: number | null
    characteristic?: Characteristic | null
    breaking?: BreakingLetter | null
    scheme?: (typeof fuseSchemes)[number] | null
  } | null
  position: FusePosition
  circuit: FuseCircuit
  /** the mains it was rated for, when the unit changes region [V] */
  formerVoltageV?: number | null
  /** which conductors of the mains can be live: one that is known, either (a plug that goes in both ways round), or both */
  live?: 'one' | 'either' | 'both' | null
  /** the link was found open */
  blown?: boolean | null
  /** current a short circuit draws behind the series lamp that is planned [A] */
  seriesLampA?: number | null
}

export interface FuseRequired {
  /** operating current [A]; null where neither current nor power is known */
  currentA: number | null
  minimumRatedA: number | null
  /** of the calculation, never above the prescription */
  recommendedRatedA: number | null
  scheme: string
  /** [A²s] */
  inrushI2t: number | null
  minimumMeltingI2t: number | null
}

export interface FuseCurvePoint {
  multiple: number
  currentA: number
  minTimeS: number | null
  maxTimeS: number | null
}

export type FuseOutcome = 'keep' | 'replace' | 'find-out-first'

export interface FuseResponse {
  /** one sentence: the outcome and what decides it */
  answer: Phrase
  outcome: FuseOutcome
  fitted: FittedFuse
  /** what is prescribed at the voltage in use; null where nothing is printed or it cannot be read */
  prescribed: FittedFuse | null
  required: FuseRequired
  /** worst first */
  findings: Finding[]
  /** time-current gates of the fitted link, or of the prescribed one where the fitted is not known */
  curve: FuseCurvePoint[]
  /** what the reader of the curve must know: which sheet, where sources disagree */
  curveNotes: Phrase[]
}
