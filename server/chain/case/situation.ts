import type { Hazard, LabelReading } from '../../plate/labelReading.js'
import type { DcPlugRow } from '../../tables/dcPlugs.js'
import type { MainsSource } from '../../tables/mainsSources.js'
import type { Source } from '../../tables/source.js'
import type { Phrase } from '../../words/phrase.js'
import type { Contradiction } from './contradiction.js'
import type {
  Converter,
  Cord,
  Device,
  Lead,
  Measured,
  Output,
  Polarity,
  ProtectionClass,
  Supply,
  VoltageWindow,
} from './request.js'
import type { Proposed } from './tellingProposed.js'

/** One mains system that may be met at the site. What is not known is null. */
export interface Mains {
  voltageV: number | null
  frequencyHz: number | null
  /** the band of the voltage [V] */
  minV: number | null
  maxV: number | null
  sources: readonly Source[]
}

export interface PreparedSite {
  /** at least one; several where the country has several and the request does not say which */
  systems: readonly Mains[]
  /** what stands behind the socket; null: not stated, taken as the wall */
  source: MainsSource | null
  /** rated residual current of the device before the socket [A] */
  residualCurrentA: number | null
  /** leakage to earth of all else that hangs on it [A] */
  othersLeakA: number | null
  /** IEC letters that may be met; empty: not known */
  sockets: readonly string[]
  /** ISO 3166-1 alpha-2, in capitals */
  country: string | null
  sources: readonly Source[]
  /** what was entered against the country's list */
  contradictions: readonly Contradiction<PreparedSite>[]
}

/** One output of a supply, or one thing a machine wants: its facts, those that are always asked for as null where not known. */
export interface Rail extends Omit<Output, 'currentA' | 'powerW'> {
  /** only for a printed range [V] */
  voltageMaxV: number | null
  currentA: number | null
  /** printed power [W] */
  powerW: number | null
}

export interface DeviceRail extends Rail {
  currentIs: 'plate' | 'measured'
  /** the machine's own tolerance as a share of its voltage [1] */
  tolerance: number | null
  /** what it draws for moments [A] */
  peakA?: number | null | undefined
  /** whether the machine regulates this voltage inside, as entered of this input alone */
  regulatesInside?: boolean | null | undefined
}

export interface PreparedInput {
  kind: 'ac' | 'dc' | null
  windows: readonly VoltageWindow[]
  frequenciesHz: readonly number[]
  currentA: number | null
  /** to earth [A] */
  earthLeakA: number | null
  powerVA: number | null
  powerW: number | null
  selectorV: number | null
  /** positions of a selector that its plate speaks of, none where it names none; null where it speaks of no selector */
  positions: readonly VoltageWindow[] | null
  threePhase: boolean
  /** its plate says that it finds the mains voltage itself */
  setsItself: boolean
}

/** What a plug is called, by a name or in print, with the sizes that this may mean [mm]. */
export interface PlugClaim {
  called: Phrase
  sizes: readonly { outerMm: number | null; innerMm: number | null }[]
  sources: readonly Source[]
}

export interface PreparedPlug {
  outerMm: number | null
  innerMm: number | null
  polarity: Polarity | null
  name: string | null
  /** names and print that its size contradicts */
  contradicted: readonly PlugClaim[]
  /** words of hazard in a name that was entered: "interchangeable tips" */
  hazards: readonly Hazard[]
  /** the table row its name stands for, else the rows of its size */
  rows: readonly DcPlugRow[]
}

/** What meets the mains: a supply, or a machine with its supply inside. */
export interface PreparedSupply {
  /** what it is called within a sentence */
  called: 'supply' | 'machine'
  /** what was entered, for a topic that needs no more */
  facts: Supply
  reading: LabelReading | null
  /** phrases of its plate that were not read and not dismissed */
  openPhrases: readonly string[]
  input: PreparedInput
  technology: 'switch-mode' | 'transformer' | null
  regulated: boolean | null
  protectionClass: ProtectionClass | null
  /** its plate bears the double square */
  classTwoDrawn: boolean
  /** its plate names class 0 or 0I, and no class was entered: its inlet proves none then */
  classZero: boolean
  inlet: string | null
  rails: readonly Rail[]
  /** the plate names them as a list that may be the positions of one switch */
  railsMayBePositions: boolean
  /** its plate calls it an electronic transformer, whose AC is chopped at tens of kilohertz */
  chopped: boolean
  /** what all outputs give together at most [W] */
  outputsTotalW: number | null
  plug: PreparedPlug
  lead: Lead | null
  /** marking of the fuse-link that is fitted, and what the plate prescribes */
  fuse: { fitted: string | null; prescribed: string | null }
  measured: Measured
  /** what was entered against the words of its plate */
  contradictions: readonly Contradiction<PreparedSupply>[]
  /** the same with the figures of its plate that nobody confirmed; null where none is in doubt */
  proposed: Proposed<PreparedSupply> | null
}

/** Kinds of motors in a machine: the first two follow the mains. */
export type Motor = 'synchronous' | 'induction' | 'universal' | 'dc' | 'none'

export interface PreparedDevice {
  /** what was entered, for a topic that needs no more */
  facts: Device
  reading: LabelReading | null
  /** phrases of its plate that were not read and not dismissed */
  openPhrases: readonly string[]
  /** its plate says that it takes AC as well as DC */
  takesEither: boolean
  /** frequencies on its plate, those of low voltage among them [Hz] */
  frequenciesHz: readonly number[]
  rails: readonly DeviceRail[]
  /** true: its plate names mains, not a low voltage */
  takesMains: boolean
  regulatedNeeded: boolean | null
  jack: PreparedPlug
  /** its plate speaks of a motor, a clock or a turntable, or one that follows the mains was entered */
  turns: boolean
  /** the motor in it; null where nothing was entered */
  motor: Motor | null
  /** what was entered against the words of its plate */
  contradictions: readonly Contradiction<PreparedDevice>[]
  /** the same with the figures of its plate that nobody confirmed; null where none is in doubt */
  proposed: Proposed<PreparedDevice> | null
}

/** What reaches the supply's input: the site's mains, or the converter's output. */
export interface Reach extends Mains {
  through: 'mains' | 'converter'
}

/** Everything the topics between wall and supply look at, for one mains system. */
export interface MainsSituation {
  site: PreparedSite
  mains: Mains
  reach: Reach
  supply: PreparedSupply
  cord: Cord | null
  converter: Converter | null
  device: PreparedDevice | null
}

/** A device rail with the supply rail it is matched to. */
export interface RailPair {
  device: DeviceRail
  supply: Rail | null
  /** device rails that share the supply rail, this one among them */
  sharedWith: readonly DeviceRail[]
}

/** Everything the topics between supply and machine look at. */
export interface PairSituation {
  supply: PreparedSupply
  device: PreparedDevice
  pairs: readonly RailPair[]
  /** mains voltage over the plate's [1], for what an unregulated output follows; null where not known */
  mainsRatio: number | null
}
