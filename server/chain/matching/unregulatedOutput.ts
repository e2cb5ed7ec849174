import { atMost } from '../../physics/tolerance.js'
import { largestRise } from '../../tables/dummyLoad.js'
import { commonPractice } from '../../tables/source.js'
import { nominalMatch, outputToleranceWidest } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes, decimal, volts } from '../../words/quantity.js'
import { underPower } from '../action.js'
import { isWide } from '../case/plateWindow.js'
import type { DeviceRail, PairSituation, PreparedDevice, PreparedSupply, Rail, RailPair } from '../case/situation.js'
import type { Outcome } from '../finding.js'
import { caution, type Judgement, stop, type Text } from '../judgement.js'
import { measuredThere } from '../words.js'
import { atMachineCurrent, bearing, regulatesInside, type Standing } from './atMachineCurrent.js'
import { ends } from './matchRails.js'
import type { MeasuredAs } from './measuredOutput.js'
import { offLoadEstimate, ratingEstimate } from './offLoadEstimate.js'
import { railText } from './railText.js'

const plateAtFullLoad = commonPractice(
  'Unregulated supplies',
  'the plate names the voltage at full load; with less load it stands higher, with none half as high again',
)

/** Whether an output is regulated, where it or its supply says so. */
export const regulatedOf = ({ regulated }: PreparedSupply, rail: Rail): boolean | null => rail.regulated ?? regulated

/**
 * Unregulated: stated; or a transformer type without the word "regulated"; or, where nothing is stated,
 * an output that stands more than 10 % above its plate off load.
 */
export function isUnregulated({ supply }: Pick<PairSituation, 'supply'>, rail: Rail): boolean {
  const regulated = regulatedOf(supply, rail)
  if (regulated !== null) return !regulated
  if (supply.technology === 'transformer') return true
  if (supply.technology === 'switch-mode') return false
  const { offLoadV } = supply.measured
  if (offLoadV == null || supply.rails.length !== 1) return false
  const [, high] = ends(rail)
  return !atMost(Math.abs(offLoadV), Math.abs(high) * (1 + outputToleranceWidest.value))
}

export function judgeUnregulated(situation: PairSituation, pair: RailPair, rail: Rail): Judgement {
  const standing = atMachineCurrent(situation, pair)
  const outcome = borneOutcome(situation, pair, standing)
  const words = (): Text =>
    standing || outcome === 'stop' ? unregulatedWords(situation, pair, rail, outcome, standing) : sizeMissing(rail)
  return { outcome, say: words }
}

/** A machine that needs a regulated supply needs no estimate. */
function borneOutcome(situation: PairSituation, pair: RailPair, standing: Standing | null): Outcome {
  if (situation.device.regulatedNeeded === true) return 'stop'
  return standing ? bearing(situation, pair, standing).outcome : 'unknown'
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
 * plain transformer takes, no reading off load, and a machine that does not bear what it gives if it is unregulated.
 */
export function regulationOpen(situation: PairSituation, pair: RailPair, rail: Rail): boolean {
  const { supply, device } = situation
  if (regulatedOf(supply, rail) !== null || supply.technology !== null) return false
  if (rail.kind === 'ac' || (supply.input.windows.length === 1 && supply.input.windows.every(isWide))) return false
  if (supply.measured.offLoadV != null && supply.rails.length === 1) return false
  const bearsMore = device.regulatedNeeded === false || regulatesInside(device, pair.device) === true
  return !bearsMore || borneOutcome(situation, pair, atMachineCurrent(situation, pair)) !== 'clear'
}

export const regulationNotKnown = (rail: Rail, device: DeviceRail): Text => ({
  title: say`Whether the supply’s ${railText(rail)} is regulated is not known; the machine wants ${railText(device)}`,
  why: say`An unregulated supply stands far above its plate with little load, and a machine without a regulator of its own gets all of it.`,
  working: [say`neither a transformer type, a switch-mode type, “regulated” nor “unregulated” is stated`],
  action: [
    say`A heavy unit for one mains voltage is a transformer; a light one is switch-mode: enter which.`,
    underPower(
      say`Measure it with nothing connected before the machine is, and enter the reading: well above the plate means an unregulated supply.`,
      'mains',
    ),
  ],
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
        action: [
          say`Do not connect the machine. Look for a voltage switch on the supply, with the plug pulled.`,
          underPower(
            say`Measure again with nothing connected, at the right mains: find out what it really gives.`,
            'mains',
          ),
        ],
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
      action: underPower(
        say`Measure it again with a load that draws what the machine draws, and compare that with what the machine bears.`,
        'mains',
      ),
      sources: [measuredThere, plateAtFullLoad, outputToleranceWidest.source],
    })),
  ]
}

function unregulatedWords(
  situation: PairSituation,
  pair: RailPair,
  rail: Rail,
  outcome: Outcome,
  standing: Standing | null,
): Text {
  const { supply, device } = situation
  const estimate = offLoadEstimate(situation, rail)
  const offLoad = estimate
    ? estimate.lowV === estimate.highV
      ? say`about ${volts(estimate.highV, 3)}`
      : say`about ${volts(estimate.lowV, 3)} to ${volts(estimate.highV, 3)}`
    : say`well above its plate`
  const because =
    regulatedOf(supply, rail) === false
      ? say`stated`
      : supply.technology === 'transformer'
        ? say`a transformer type with no “regulated” on it`
        : say`it stands that high off load`
  const there = standing ? whereMachineIs(pair, standing) : say``
  const limit = standing && bearing(situation, pair, standing).limit
  const wants = railText(pair.device)
  return {
    title: say`The supply’s ${railText(rail)} is unregulated (${because}): ${offLoad} with nothing connected${there}; ${bears(device, pair, wants)}`,
    why: whyUnregulated(device, pair, outcome),
    working: [
      ...(estimate?.working ?? [say`its size is not known, so its voltage off load cannot be estimated`]),
      ...(standing?.working ?? []),
      ...(limit && device.regulatedNeeded !== true ? [say`the limit here: ${decimal(limit.value)}`] : []),
    ],
    action: whatToDo(situation, pair, outcome, standing),
    sources: [plateAtFullLoad, ...(estimate?.sources ?? []), ...(limit ? [limit.source] : [])],
  }
}

const whereMachineIs = ({ device }: RailPair, { voltageV, over, currentA }: Standing): Phrase =>
  currentA === null
    ? say`, and what the machine draws is not known`
    : say`, about ${volts(voltageV, 3)} at the machine’s ${amperes(currentA)}, ${decimal(over, 3)} times its ${railText({ ...device, currentA: null, powerW: null })}`

function bears(device: PreparedDevice, pair: RailPair, wants: Phrase): Phrase {
  const { regulatedNeeded } = device
  if (regulatedNeeded === true) return say`the machine needs a regulated ${wants}`
  if (regulatesInside(device, pair.device) === true) return say`the machine regulates inside`
  if (regulatedNeeded === false) return say`the machine needs no regulated supply`
  return say`whether the machine regulates inside is not known`
}

function whyUnregulated(device: PreparedDevice, pair: RailPair, outcome: Outcome): Phrase {
  if (outcome === 'clear') return say`The machine bears that much; reading high with nothing connected is normal.`
  if (device.regulatedNeeded === true)
    return say`At light load the machine gets close to the off-load voltage, far above its limit.`
  if (regulatesInside(device, pair.device) === true)
    return say`The regulator inside burns what is too much as heat, and its capacitors have a limit of their own.`
  return say`A machine without a regulator of its own gets all of it: capacitors and chips are destroyed by what is too much.`
}

function whatToDo(
  { device }: PairSituation,
  pair: RailPair,
  outcome: Outcome,
  standing: Standing | null,
): Text['action'] {
  if (outcome === 'clear') return null
  const wants = railText(pair.device)
  const regulated = say`Use a regulated supply of ${wants}.`
  if (outcome === 'stop') return regulated
  const current =
    standing?.currentA == null
      ? [say`Find out what current the machine draws, from its plate or manual, and enter it.`]
      : []
  if (outcome === 'caution')
    return say`Prefer a regulated supply of ${wants}; or make sure that the machine’s capacitors and chips take ${volts(standing?.voltageV ?? 0, 3, 'up')}.`
  if (regulatesInside(device, pair.device) === true)
    return [
      ...current,
      say`Look up the highest voltage the machine’s input bears: its regulator’s and the capacitor’s before it. Until then use a regulated supply.`,
    ]
  return [
    ...current,
    say`Find out whether the machine has a regulator or converter behind its power socket: the service manual, a three-legged part on a heat sink, or a maker’s supply that was unregulated itself. Until then use a regulated supply.`,
  ]
}

const sizeMissing = (rail: Rail): Text => ({
  title: say`The supply’s ${railText(rail)} is unregulated; how high it stands off load cannot be estimated`,
  why: say`It may stand half as high again, or more, above its plate.`,
  working: [],
  action: [
    say`Enter the output amperes on its plate.`,
    underPower(say`Or measure the output with nothing connected, and enter it.`, 'mains'),
  ],
  sources: [plateAtFullLoad],
})
