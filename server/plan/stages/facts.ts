import type { Arrangement } from '../../chain/case/arrangement.js'
import type { Case } from '../../chain/case/case.js'
import type { CheckRequest } from '../../chain/case/request.js'
import type { PreparedDevice, PreparedSite, PreparedSupply, Rail, Reach } from '../../chain/case/situation.js'
import type { CheckResponse, Finding, TopicName } from '../../chain/finding.js'
import { protectionClassOf } from '../../chain/protectionClass.js'
import { reachOf } from '../../chain/reach.js'
import { leastFigures, plannedMains } from '../../tables/firstPower.js'
import { usualBand } from '../../tables/mains.js'
import { extraLowVoltageMostV } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import { watts } from '../../words/quantity.js'
import { askWhatLamp, type LampChoice, type LampOnHand, lampChoice, mayBeTungsten } from '../firstPower/lampChoice.js'
import { type LampSetup, lampsFault } from '../firstPower/lamps.js'
import type { GateResult } from '../gateResults.js'
import { isLive, markedUnfit, noSupply, says, unfit } from './noSupply.js'
import { type IdleFact, idlePowerOf, minimumOf, type PowerFact, ratedPower } from './supplyPower.js'

/** What a person may add to a check for its first power-up. Unknown is null or absent. */
export interface FirstPowerOptions {
  lampsOnHand?: LampOnHand[] | null
  /** what the supply takes with nothing connected, measured [W] */
  idleW?: number | null
  /** reservoir capacitor of the supply's mains side, and its rating */
  bulkF?: number | null
  bulkRatedV?: number | null
  /** how long supply or machine stood without power [years] */
  yearsUnused?: number | null
  /** lower reading across the machine's first input, power off [Ω] */
  measuredOhm?: number | null
  /** what the machine does with its input */
  machineInput?: 'constant-power' | 'plain' | 'unknown' | null
  /** what came of the gates; the last of each counts */
  gateResults?: readonly GateResult[] | null
}

export interface LampUse {
  ratedV: number
  ratedW: number
  count: number
  arrangement: 'series' | 'parallel'
}

/** Everything the stages are worked out from. */
export interface PlanFacts {
  arrangement: Arrangement
  check: CheckRequest
  assessment: CheckResponse
  options: FirstPowerOptions
  supply: PreparedSupply
  device: PreparedDevice
  /** what stands behind the socket; null: not stated, taken as the wall */
  source: PreparedSite['source']
  /** what reaches the supply; null where it is not known or not one system */
  reach: (Reach & { voltageV: number; frequencyHz: number }) | null
  technology: 'switch-mode' | 'transformer' | null
  /** null: not known */
  regulated: boolean | null
  classI: boolean | null
  /** fed with a low DC voltage, not from the mains */
  fedLow: boolean
  /** the output is joined to the mains */
  notIsolated: boolean
  /** why this unit is put on no mains; null where it is a supply like any other */
  noSupply: Phrase | null
  /** a picture tube is named */
  tube: boolean
  rated: PowerFact | null
  idle: IdleFact | null
  /** least mains the supply must run at [V]; null where its plate does not say, or it is a transformer */
  minimumV: number | null
  choice: LampChoice | null
  /** lamp for the supply alone, and for a load */
  firstLamp: LampUse | null
  loadLamp: LampUse | null
  missing: Phrase[]
}

/** The findings on these topics that are stops, or where `open` those that are unknown too. */
export function standing(facts: PlanFacts, topics: readonly TopicName[], open: boolean): Finding[] {
  return facts.assessment.findings.filter(
    ({ topic, outcome }) => topics.includes(topic) && (outcome === 'stop' || (open && outcome === 'unknown')),
  )
}

/** The band of a mains: its own, else the one that counts where none is known [V]. */
export const mainsBand = ({
  voltageV,
  minV,
  maxV,
}: {
  voltageV: number
  minV: number | null
  maxV: number | null
}): { low: number; high: number } => ({
  low: minV ?? voltageV * (1 - usualBand),
  high: maxV ?? voltageV * (1 + usualBand),
})

export function factsOf(of: Case, assessment: CheckResponse, options: FirstPowerOptions): PlanFacts {
  const { request: check } = of
  const supply = withUsableRails(of.supply)
  const device = withUsableRails(of.device)
  const missing: Phrase[] = []
  const reach = reachKnown(of.site, check, missing)
  const technology = supply.technology
  if (technology === null)
    missing.push(say`Kind of supply (switch-mode or transformer): the lamp shows something else for each.`)
  const regulated =
    supply.regulated ?? (technology === 'switch-mode' ? true : technology === 'transformer' ? false : null)
  const known = protectionClassOf(supply)
  const rated = ratedPower(supply)
  if (!rated)
    missing.push(
      say`What the ${supply.called} takes from the mains (A, VA or W on its plate): it decides which lamp suits.`,
    )
  const idle = idlePowerOf(options.idleW ?? null, supply, rated)
  const minimumV = technology === 'transformer' ? null : minimumOf(supply, reach?.voltageV ?? null)
  const base = {
    arrangement: of.arrangement,
    check,
    assessment,
    options,
    supply,
    device,
    source: of.site.source,
    reach,
    technology,
    regulated,
    rated,
    idle,
    minimumV,
    missing,
  }
  const lamps = lampsFor(base)
  const { kind, windows } = supply.input
  return {
    ...base,
    classI: known && !known.doubted ? known.protectionClass === 'I' : null,
    fedLow: kind === 'dc' && windows.length > 0 && windows.every(({ max }) => max <= extraLowVoltageMostV.value),
    notIsolated: isLive(supply, assessment.findings),
    noSupply:
      noSupply(supply, assessment.findings) ??
      (supply.called === 'machine' && says(device, unfit) ? markedUnfit : null),
    tube: check.device.mains?.pictureTube ?? (says(supply, ['picture tube']) || says(device, ['picture tube'])),
    ...lamps,
  }
}

function withUsableRails<Of extends { rails: readonly Rail[] }>(of: Of): Of {
  const rails = of.rails
    .filter(({ voltageV }) => Math.abs(voltageV) >= leastFigures.voltageV)
    .map((rail) =>
      rail.currentA !== null && rail.currentA < leastFigures.currentA ? { ...rail, currentA: null } : rail,
    )
  return { ...of, rails }
}

function reachKnown({ systems }: PreparedSite, check: CheckRequest, missing: Phrase[]): PlanFacts['reach'] {
  const [mains, ...others] = systems
  const reach = mains && others.length === 0 ? reachOf(mains, check.converter ?? null) : null
  const { minV, maxV, minHz, maxHz } = plannedMains
  if (
    reach?.voltageV != null &&
    reach.frequencyHz != null &&
    reach.voltageV >= minV &&
    reach.voltageV <= maxV &&
    reach.frequencyHz >= minHz &&
    reach.frequencyHz <= maxHz
  )
    return { ...reach, voltageV: reach.voltageV, frequencyHz: reach.frequencyHz }
  missing.push(
    say`The mains voltage and frequency at the place (one system): every figure of the stages behind the lamp hangs on them.`,
  )
  return null
}

type Base = Omit<
  PlanFacts,
  'classI' | 'fedLow' | 'notIsolated' | 'noSupply' | 'tube' | 'choice' | 'firstLamp' | 'loadLamp'
>

function lampsFor(base: Base): Pick<PlanFacts, 'choice' | 'firstLamp' | 'loadLamp'> {
  const { reach, rated, idle, minimumV, options, missing } = base
  const none = { choice: null, firstLamp: null, loadLamp: null }
  const onHand = options.lampsOnHand?.length ? options.lampsOnHand : null
  if (!onHand)
    missing.push(say`Rated voltage and wattage of the lamps at hand: no lamp figure is worked out without them.`)
  missing.push(...(onHand ?? []).filter((lamp) => !mayBeTungsten(lamp)).map(askWhatLamp))
  if (!reach || !rated || !idle) return none
  const { voltageV, frequencyHz } = reach
  if (idle.powerW > rated.powerW)
    missing.push(
      say`${watts(idle.powerW)} with nothing connected is more than the ${watts(rated.powerW)} of its rating: one of the two is wrong.`,
    )
  // a supply that takes more idle than it is rated for is planned for what it takes
  const ratedW = Math.max(rated.powerW, idle.powerW)
  const idleW = Math.min(Math.max(idle.powerW, idle.reactiveVA ?? 0), ratedW)
  const choice = lampChoice({ voltageV, frequencyHz }, { idleW, ratedW, minimumV }, onHand)
  if (!onHand) return { ...none, choice }
  const ordered = choice.order.map(asUse)
  // where none is relied on to start the supply, the one that passes most is left
  const largest = choice.options.at(-1)
  const fallback = largest ? asUse(largest) : null
  const usable = (lamp: LampUse | null): LampUse | null =>
    lamp && lampsFault(setupOf(lamp, voltageV, frequencyHz)) === null ? lamp : null
  const next = choice.order.find(({ use }) => use === 'next') ?? choice.order.at(-1)
  const firstLamp = usable(ordered[0] ?? fallback)
  if (!firstLamp)
    missing.push(say`A lamp, or two equal ones in series, rated for this mains: none of those entered serves.`)
  const loadLamp = usable(next ? asUse(next) : fallback) ?? firstLamp
  return { choice, firstLamp, loadLamp: same(firstLamp, loadLamp) ? firstLamp : loadLamp }
}

const same = (a: LampUse | null, b: LampUse | null): boolean =>
  a !== null &&
  b !== null &&
  a.ratedV === b.ratedV &&
  a.ratedW === b.ratedW &&
  a.count === b.count &&
  a.arrangement === b.arrangement

const asUse = ({ ratedV, ratedW, count, arrangement }: LampUse): LampUse => ({ ratedV, ratedW, count, arrangement })

/** The lamps as the lamp functions take them. */
export const setupOf = (
  lamp: LampUse,
  voltageV: number,
  frequencyHz: number,
): LampSetup & { mains: { frequencyHz: number } } => ({
  mains: { voltageV, frequencyHz },
  lamps: Array.from({ length: lamp.count }, () => ({ ratedV: lamp.ratedV, ratedW: lamp.ratedW })),
  arrangement: lamp.arrangement,
})
