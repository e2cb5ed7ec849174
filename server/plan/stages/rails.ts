import { overWindow, windowsInUse } from '../../chain/case/plateWindow.js'
import type { DeviceRail, Rail } from '../../chain/case/situation.js'
import { ratedWindingV, transformerSizeVA } from '../../physics/adaptorTransformer.js'
import { largestRise, otherTolerance, unregulatedBand } from '../../tables/dummyLoad.js'
import { nominalMatch } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import { volts } from '../../words/quantity.js'
import { bandOf, type DummyLoadAnswer, dummyLoad } from '../bench/dummyLoad.js'
import { type OffLoadAnswer, offLoad, regulationKnown } from '../bench/offLoad.js'
import type { PlanFacts } from './facts.js'

/** One output of the supply with what should be read on it. */
export interface RailPlan {
  rail: Rail
  /** "output 1, 5 V d.c." */
  name: Phrase
  tolerance: number
  unregulated: boolean
  /** false where nobody knows whether it is regulated */
  known: boolean
  /** with nothing connected [V]; null where it cannot be told */
  offLoad: { low: number; high: number; working: Phrase } | null
  /** null where its current is not known */
  load: DummyLoadAnswer | null
}

/** What is accepted of a rail: the machine's own, else the published band, else the usual one [1]. */
export const toleranceOf = (voltageV: number, device: DeviceRail | undefined): number =>
  device?.tolerance ?? (bandOf(voltageV) ?? otherTolerance).tolerance

const railName = (rail: Rail, index: number, count: number): Phrase =>
  say`${count > 1 ? say`output ${index + 1}, ` : say`the output, `}${volts(rail.voltageV)}${rail.kind === 'ac' ? say` AC` : rail.kind === 'dc' ? say` DC` : say``}`

/** The rating of the transformer inside an unregulated supply, and its winding. */
function transformerOf(rail: Rail): { acV: number; ratedVA: number } | null {
  if (rail.currentA === null) return null
  const size = Math.abs(rail.voltageV)
  return rail.kind === 'ac'
    ? { acV: size, ratedVA: size * rail.currentA }
    : { acV: ratedWindingV(size), ratedVA: transformerSizeVA(size, rail.currentA) }
}

/** What reaches the supply over its plate [1]: an unregulated output follows it; 1 where that is not known. */
function mainsRatio({ reach, supply }: PlanFacts): number {
  const { windows, decidedBy } = windowsInUse(supply.input)
  const [window] = windows
  if (!reach || !window || windows.length !== 1 || decidedBy === 'nothing') return 1
  const ratio = overWindow(window, reach.voltageV)
  return Math.abs(ratio - 1) <= nominalMatch.value ? 1 : ratio
}

function unregulatedOffLoad(rail: Rail, facts: PlanFacts): OffLoadAnswer | null {
  const inside = transformerOf(rail)
  if (!inside || !regulationKnown(inside.ratedVA)) return null
  return offLoad({
    ...inside,
    mainsV: mainsRatio(facts),
    ratedMainsV: 1,
    rectifier: rail.kind === 'ac' ? 'none' : 'bridge',
    frequencyHz: facts.reach?.frequencyHz ?? null,
  })
}

/** The outputs of the supply, each with its bands and loads. */
export function railPlans(facts: PlanFacts): RailPlan[] {
  const { supply, device } = facts
  const { rails } = supply
  return rails.map((rail, index): RailPlan => {
    const wanted = device.rails.find(({ voltageV }) => voltageV === rail.voltageV)
    const tolerance = toleranceOf(rail.voltageV, wanted)
    const regulated = rail.regulated ?? facts.regulated
    // an a.c. output comes from a winding, with nothing that could regulate it
    const unregulated = rail.kind === 'ac' || regulated === false
    const off = unregulated || regulated === null ? unregulatedOffLoad(rail, facts) : null
    const edges = [rail.voltageV * (1 - tolerance), rail.voltageV * (1 + tolerance)]
    const band = { low: Math.min(...edges), high: Math.max(...edges) }
    return {
      rail,
      name: railName(rail, index, rails.length),
      tolerance,
      unregulated,
      known: unregulated || regulated !== null,
      offLoad: unregulated
        ? off && unregulatedBandOf(rail, off, facts)
        : regulated === true
          ? { ...band, working: say`${volts(rail.voltageV)} ± ${tolerance * 100} %` }
          : off
            ? openBand(rail, off, band, facts)
            : null,
      load:
        rail.currentA === null
          ? null
          : dummyLoad({
              voltageV: unregulated ? rail.voltageV * mainsRatio(facts) : rail.voltageV,
              currentA: rail.currentA,
              ...(unregulated ? { regulationPercent: 100 * riseOf(rail, off) } : { tolerancePercent: tolerance * 100 }),
            }),
    }
  })
}

/**
 * How far an unregulated output may stand above its plate with nothing connected [1]. A reservoir capacitor charges to
 * the crest at light load, so this is more than the transformer's own regulation; taken as a straight line down to full
 * load it is an upper bound in between.
 */
function riseOf(rail: Rail, off: OffLoadAnswer | null): number {
  if (!off) return largestRise.rise
  return Math.max(0, off.offLoadRangeV.high / Math.abs(rail.voltageV) - 1)
}

/** The mains band over its nominal voltage [1]: an unregulated output follows it. */
function mainsSpread(facts: PlanFacts): { low: number; high: number } {
  const { reach } = facts
  if (!reach || reach.minV === null || reach.maxV === null)
    return { low: 1 - unregulatedBand.tolerance, high: 1 + unregulatedBand.tolerance }
  return { low: reach.minV / reach.voltageV, high: reach.maxV / reach.voltageV }
}

function unregulatedBandOf(rail: Rail, off: OffLoadAnswer, facts: PlanFacts): NonNullable<RailPlan['offLoad']> {
  const spread = mainsSpread(facts)
  const sign = Math.sign(rail.voltageV)
  const ends = [sign * off.offLoadRangeV.low * spread.low, sign * off.offLoadRangeV.high * spread.high]
  return {
    low: Math.min(...ends),
    high: Math.max(...ends),
    working: say`${volts(off.offLoadRangeV.low)} to ${volts(off.offLoadRangeV.high)} at nominal mains, and the mains band on top; a high reading off load condemns nothing`,
  }
}

/** Where nobody knows whether it is regulated: from the regulated band up to the unregulated one. */
function openBand(
  rail: Rail,
  off: OffLoadAnswer,
  band: { low: number; high: number },
  facts: PlanFacts,
): NonNullable<RailPlan['offLoad']> {
  const wide = unregulatedBandOf(rail, off, facts)
  return {
    low: Math.min(band.low, wide.low),
    high: Math.max(band.high, wide.high),
    working: say`within ${volts(band.low)} to ${volts(band.high)} it looks regulated; up to ${volts(Math.max(Math.abs(wide.high), Math.abs(wide.low)))} it may be an unregulated one`,
  }
}
