import type { HazardDecides, HazardLanguage, HazardMeaning } from '../tables/hazardWords.js'

/** Kind of current as printed; null where the plate does not say. Never assumed. */
export type PrintedKind = 'ac' | 'dc' | null

export type Polarity = 'centre-positive' | 'centre-negative'

export type ProtectionClass = 'I' | 'II' | 'III'

/** A window of voltages [V]; a single printed value has min equal to max. */
export interface VoltageWindow {
  min: number
  max: number
}

export interface LabelInput {
  kind: PrintedKind
  voltages: VoltageWindow[]
  frequenciesHz: number[]
  /** the largest one printed [A] */
  currentA: number | null
  powerVA: number | null
  powerW: number | null
}

export interface LabelRail {
  kind: PrintedKind
  /** signed [V]: "-12V" is -12 */
  voltageV: number
  /** only for a printed range [V]: "5V-11V" is 5 and 11 */
  voltageMaxV: number | null
  currentA: number | null
  powerVA: number | null
  powerW: number | null
}

/** A word of hazard that stands on a plate. */
export interface Hazard {
  meaning: HazardMeaning
  /** as printed */
  words: string
  language: HazardLanguage
  decides: HazardDecides
}

/** What a rating plate says. Anything it does not say is null; what found no place stands in `unread`. */
export interface LabelReading {
  input: LabelInput | null
  outputs: LabelRail[]
  /** printed power of all outputs together [W]; null where the plate names none, or only that of some of them */
  outputsTotalW: number | null
  /** of a device: the rails it wants */
  takes: LabelRail[]
  polarity: Polarity | null
  protectionClass: ProtectionClass | null
  /** the marking as printed */
  fuse: string | null
  /** of the lead to the machine: sizes [mm] and polarity, as far as they are printed */
  plug: LabelPlug | null
  hazards: Hazard[]
  unread: string[]
  /** for every field that has a value, the words it was read from */
  from: { field: string; words: string }[]
  /** fields whose figure was read through damaged print or is none that a mains has: they decide nothing until confirmed */
  unsure: string[]
  /** pieces of damaged print, and what each is taken for */
  proposals: { was: string; reads: string }[]
}

export interface LabelPlug {
  outerMm: number | null
  innerMm: number | null
  polarity: Polarity | null
  name: string | null
}

export type PlateOf = 'supply' | 'device'
