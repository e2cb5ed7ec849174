import { atMost } from '../physics/tolerance.js'
import { largestRise } from '../tables/dummyLoad.js'
import { commonPractice } from '../tables/source.js'
import { nominalMatch, outputToleranceWidest } from '../tables/thresholds.js'
import { say } from '../words/phrase.js'
import { decimal, volts } from '../words/quantity.js'
import { caution, clear, type Judgement, stop, type Text, unknown } from './judgement.js'
import { ends } from './matchRails.js'
import type { MeasuredAs } from './measuredOutput.js'
import { offLoadEstimate, ratingEstimate } from './offLoadEstimate.js'
import { isWide } from './plateWindow.js'
import { railText } from './railText.js'
import type { DeviceRail, PairSituation, Rail } from './situation.js'
import { measuredThere } from './words.js'

const plateAtFullLoad = commonPractice(
  'Unregulated supplies',
  'the plate names the voltage at full load; with less load it stands higher, with none half as high again',
)

/**
 * Unregulated: stated; or a transformer type without the word "regulated"; or, where nothing is stated,
 * an output that stands more than 10 % above its plate off load.
 */
export function isUnregulated({ supply }: PairSituation, rail: Rail): boolean {
  if (supply.regulated !== null) return !supply.regulated
  if (supply.technology === 'transformer') return true
  if (supply.technology === 'switch-mode') return false
  const { offLoadV } = supply.measured
  if (offLoadV == null || supply.rails.length !== 1) return false
  const [, high] = ends(rail)
  return !atMost(Math.abs(offLoadV), Math.abs(high) * (1 + outputToleranceWidest.value))
}

export function judgeUnregulated(situation: PairSituation, rail: Rail, device: DeviceRail): Judgement {
  const { regulatedNeeded } = situation.device
  if (regulatedNeeded === true) return stop(() => unregulatedWords(situation, rail, device, 'stop'))
  if (regulatedNeeded === null) return unknown(() => unregulatedWords(situation, rail, device, 'unknown'))
  return offLoadEstimate(situation, rail)
    ? clear(() => unregulatedWords(situation, rail, device, 'clear'))
    : unknown(() => sizeMissing(rail))
}

/**
 * What an unregulated output comes down to at full load: its plate's voltage, in proportion to the mains where that is not the
 * plate's.
 *
 *   V = V_plate · m, m the mains over the plate's window
 */
export function atFullLoad(
  { mainsRatio }: PairSituation,
  rail: Rail,
): { value: Rail; what: 'plate' | 'on this mains' } {
  if (mainsRatio === null || Math.abs(mainsRatio - 1) <= nominalMatch.value) return { value: rail, what: 'plate' }
  const { voltageV, voltageMaxV } = rail
  const value = {
    ...rail,
    voltageV: voltageV * mainsRatio,
    voltageMaxV: voltageMaxV === null ? null : voltageMaxV * mainsRatio,
  }
  return { value, what: 'on this mains' }
}

/**
 * Nothing tells whether the supply is regulated, and it would matter: neither words nor kind, no wide input range, which no
 * plain transformer takes, and no reading off load.
 */
export function regulationOpen({ supply, device }: PairSituation, rail: Rail): boolean {
  if (supply.regulated !== null || supply.technology !== null || device.regulatedNeeded === false) return false
  if (rail.kind === 'ac' || (supply.input.windows.length === 1 && supply.input.windows.every(isWide))) return false
  return supply.measured.offLoadV == null || supply.rails.length !== 1
}

export const regulationNotKnown = (rail: Rail, device: DeviceRail): Text => ({
  title: say`Whether the supply’s ${railText(rail)} is regulated is not known; the machine wants ${railText(device)}`,
  why: say`An unregulated supply stands far above its plate with little load, and a machine without a regulator of its own gets all of it.`,
  working: [say`neither a transformer type, a switch-mode type, “regulated” nor “unregulated” is stated`],
  action: say`Measure it with nothing connected before the machine is, and enter the reading: well above the plate means an unregulated supply. A heavy unit for one mains voltage is a transformer; a light one is switch-mode.`,
  sources: [plateAtFullLoad],
})

/**
 * Readings no sound unregulated supply of this plate gives: below the plate less the widest tolerance, or above what it
 * may reach off load, on mains that stands high.
 */
export function implausible(situation: PairSituation, rail: Rail, measured: readonly MeasuredAs[]): Judgement[] {
  const plateV = Math.abs(rail.voltageV)
  const mostV =
    (ratingEstimate(situation, rail)?.highV ?? plateV * (1 + largestRise.rise)) * (1 + outputToleranceWidest.value)
  const leastV = plateV * (1 - outputToleranceWidest.value)
  return measured.flatMap(({ value, what }) => {
    const readV = Math.abs(value.voltageV)
    const high = !atMost(readV, mostV)
    if (!high && atMost(leastV, readV)) return what === 'loaded' ? lightlyLoaded(rail, plateV, readV) : []
    return [
      stop(() => ({
        title: high
          ? say`${volts(readV)} measured ${what} is more than an unregulated ${railText(rail)} gives: ${volts(mostV, 3)} at most`
          : say`${volts(readV)} measured ${what} is less than an unregulated ${railText(rail)} gives: ${volts(leastV, 3)} at least`,
        why: say`The plate is another unit’s, a switch stands wrong, or the supply is faulty.`,
        working: [say`plausible: ${volts(leastV, 3)} to ${volts(mostV, 3)}`],
        action: say`Do not connect the machine. Measure again with nothing connected, at the right mains; look for a voltage switch on the supply; find out what it really gives.`,
        sources: [measuredThere, plateAtFullLoad, outputToleranceWidest.source, largestRise.source],
      })),
    ]
  })
}

/** Under full load an unregulated output comes down to its plate; a reading well above means it was hardly loaded. */
function lightlyLoaded(rail: Rail, plateV: number, readV: number): Judgement[] {
  if (atMost(readV, plateV * (1 + outputToleranceWidest.value))) return []
  return [
    caution(() => ({
      title: say`${volts(readV)} measured loaded is well above the ${railText(rail)} of the plate`,
      why: say`The load was small, or the supply gives more than its plate says; the machine gets what was measured.`,
      working: [say`${volts(readV)} / ${volts(plateV)} = ${decimal(readV / plateV, 3)}`],
      action: say`Measure it again with a load that draws what the machine draws, and compare that with what the machine bears.`,
      sources: [measuredThere, plateAtFullLoad, outputToleranceWidest.source],
    })),
  ]
}

function unregulatedWords(
  situation: PairSituation,
  rail: Rail,
  device: DeviceRail,
  outcome: 'stop' | 'unknown' | 'clear',
): Text {
  const estimate = offLoadEstimate(situation, rail)
  const reads = estimate
    ? estimate.lowV === estimate.highV
      ? say`about ${volts(estimate.highV, 3)}`
      : say`about ${volts(estimate.lowV, 3)} to ${volts(estimate.highV, 3)}`
    : 'well above its plate'
  const because =
    situation.supply.regulated === false
      ? 'stated'
      : situation.supply.technology === 'transformer'
        ? 'a transformer type with no “regulated” on it'
        : 'it stands that high off load'
  const working = estimate?.working ?? [say`its size is not known, so its voltage off load cannot be estimated`]
  const sources = [plateAtFullLoad, ...(estimate?.sources ?? [])]
  const title = say`The supply’s ${railText(rail)} is unregulated (${because}): ${reads} with nothing connected`
  if (outcome === 'stop')
    return {
      title: say`${title}; the machine needs a regulated ${railText(device)}`,
      why: say`At light load the machine gets the off-load voltage, far above its limit.`,
      working,
      action: say`Use a regulated supply of ${railText(device)}.`,
      sources,
    }
  if (outcome === 'unknown')
    return {
      title: say`${title}; whether the machine regulates inside is not known`,
      why: say`A machine without a regulator of its own gets the off-load voltage, far above its limit.`,
      working,
      action: say`Find out whether the machine has a regulator or converter behind its power socket: the service manual, a three-legged part on a heat sink, or a maker’s supply that was unregulated itself. Until then use a regulated supply.`,
      sources,
    }
  return {
    title: say`${title}; the machine needs no regulated supply`,
    why: say`Such a machine regulates inside; reading high with nothing connected is normal.`,
    working,
    action: null,
    sources,
  }
}

const sizeMissing = (rail: Rail): Text => ({
  title: say`The supply’s ${railText(rail)} is unregulated; how high it stands off load cannot be estimated`,
  why: say`It may stand half as high again, or more, above its plate.`,
  working: [],
  action: say`Measure the output with nothing connected and enter it; or enter the output amperes on its plate.`,
  sources: [plateAtFullLoad],
})
