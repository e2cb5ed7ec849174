import { regulation, windingVoltage } from '../../physics/offLoad.js'
import { atMost } from '../../physics/tolerance.js'
import { type Threshold, unregulatedMadeFor, unregulatedMost, unregulatedNotKnown } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes, decimal, volts } from '../../words/quantity.js'
import type { DeviceRail, PairSituation, PreparedDevice, RailPair } from '../case/situation.js'
import type { Outcome } from '../finding.js'
import { drawnA, ends, ratedA } from './matchRails.js'
import { offLoadEstimate } from './offLoadEstimate.js'

/** What an unregulated output stands at where the machine is. */
export interface Standing {
  voltageV: number
  /** what is drawn of the output [A]; null where not known, and with nothing drawn is meant */
  currentA: number | null
  /** over the machine's voltage [1] */
  over: number
  readonly working: readonly Phrase[]
}

/**
 * What an unregulated output stands at with the current of the machine, on a straight line between no load and full load.
 *
 *   V = V_off − (V_off − V_full) · I / I_rated, I at most I_rated; V_off the middle of its estimate
 *
 * Where either current is not known, at no load. Null where neither size nor reading tells V_off.
 */
export function atMachineCurrent(
  situation: PairSituation,
  { device, supply: rail, sharedWith }: RailPair,
): Standing | null {
  const estimate = rail && offLoadEstimate(situation, rail)
  const wantedV = Math.min(
    ...ends(device)
      .map(Math.abs)
      .filter((endV) => endV > 0),
  )
  if (!rail || !estimate || !Number.isFinite(wantedV)) return null
  const fullV = Math.abs(rail.voltageV) * (situation.mainsRatio ?? 1)
  const offLoadV = Math.max(fullV, (estimate.lowV + estimate.highV) / 2)
  const rated = ratedA(rail)
  const currentA = sum(sharedWith.map(drawnA))
  const load = rated === null || currentA === null ? 0 : Math.min(1, currentA / rated)
  const voltageV = windingVoltage(fullV, regulation(offLoadV, fullV), load, 1)
  const over = voltageV / wantedV
  return {
    voltageV,
    currentA,
    over,
    get working() {
      const ratio = say`${volts(voltageV, 3)} / ${volts(wantedV)} = ${decimal(over, 3)}`
      if (load === 0) return [ratio]
      return [
        say`at ${amperes(currentA ?? 0)} of ${amperes(rated ?? 0)}: ${volts(offLoadV, 3)} − (${volts(offLoadV, 3)} − ${volts(fullV, 3)}) × ${decimal(load, 3)} = ${volts(voltageV, 3)}`,
        ratio,
      ]
    },
  }
}

const sum = (currents: readonly (number | null)[]): number | null =>
  currents.reduce<number | null>((total, one) => (total === null || one === null ? null : total + one), 0)

/** What a machine bears of an unregulated output, and what it comes to beyond. */
export interface Bearing {
  outcome: Outcome
  limit: Threshold
}

/** Whether the machine regulates what this rail brings: as entered of that input, else of the whole machine. */
export const regulatesInside = (device: PreparedDevice, rail: DeviceRail): boolean | null =>
  rail.regulatesInside ?? device.facts.regulatesInside ?? null

/**
 * How a machine bears what an unregulated output stands at. A printed maximum that is not exceeded is borne, save where the machine
 * needs a regulated supply; with its current not known nothing is better than unknown.
 */
export function bearing({ device }: PairSituation, pair: RailPair, { voltageV, over, currentA }: Standing): Bearing {
  const printedMostV = Math.max(...ends(pair.device).map(Math.abs))
  const borne = pair.device.voltageMaxV !== null && atMost(voltageV, printedMostV)
  const known = (outcome: Outcome, limit: Threshold): Bearing => ({
    outcome: currentA === null ? 'unknown' : outcome,
    limit,
  })
  if (device.regulatedNeeded === true) return { outcome: 'stop', limit: unregulatedMost }
  if (borne) return known('clear', unregulatedMost)
  const upTo = (limit: Threshold): boolean => atMost(over, limit.value)
  if (regulatesInside(device, pair.device) === true)
    return known(upTo(unregulatedMost) ? 'clear' : 'unknown', unregulatedMost)
  if (device.regulatedNeeded === null)
    return known(upTo(unregulatedNotKnown) ? 'caution' : 'unknown', unregulatedNotKnown)
  if (upTo(unregulatedMadeFor)) return known('clear', unregulatedMadeFor)
  return upTo(unregulatedMost) ? known('caution', unregulatedMadeFor) : known('stop', unregulatedMost)
}
