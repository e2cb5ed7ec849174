import { ratedWindingV, transformerSizeVA } from '../physics/adaptorTransformer.js'
import { rectifiedCrest, windingVoltage } from '../physics/offLoad.js'
import { decimal, percent, voltAmperes, volts } from '../physics/quantity.js'
import { atMost } from '../physics/tolerance.js'
import { largestRise } from '../reference/dummyLoad.js'
import { diodeDrop } from '../reference/rectifiers.js'
import { commonPractice, published, type Source } from '../reference/source.js'
import { outputToleranceRegulated, outputToleranceWidest } from '../reference/thresholds.js'
import { regulationFor } from '../reference/transformerRegulation.js'
import { wanting } from './example.js'
import type { Outcome } from './finding.js'
import { caution, clear, type Judgement, stop, type Text, together, unknown } from './judgement.js'
import { distanceV, ends, ratedA } from './matchRails.js'
import { isWide } from './plateWindow.js'
import { railText } from './railText.js'
import type { DeviceRail, PairSituation, PreparedDevice, Rail, RailPair } from './situation.js'
import { pairTopic } from './topic.js'
import { listText, measuredThere, ratingPlate } from './words.js'

const ownTolerance = commonPractice('The machine’s own tolerance', 'as its maker states it, or as entered')
const plateAtFullLoad = commonPractice(
  'Unregulated supplies',
  'the plate names the voltage at full load; with less load it stands higher, with none half as high again',
)
const windingRule = published(
  'Petra Toroid, "Methods of determining secondary current"',
  'bridge: V ac = 0.8 (V dc + 2), VA = 1.4 (W dc + 2 I)',
)

/** Whether each rail of the machine gets the voltage it wants. */
export const outputVoltage = pairTopic({
  name: 'output-voltage',
  words: 'the output voltage',
  link: 'supply',
  when: {
    stop: {
      rule: `The voltages differ by more than ${percent(outputToleranceWidest.value)}, no output matches, or an unregulated supply meets a machine that needs a regulated one.`,
      example: { device: wanting({ voltageV: 9 }) },
    },
    unknown: {
      rule: 'Either voltage is not known, the output is adjustable and its setting not given, or whether the machine needs a regulated supply is not known of an unregulated one.',
      example: { device: { inputs: null } },
    },
    caution: {
      rule: `The difference is beyond the machine’s tolerance (${percent(outputToleranceRegulated.value)} where it states none) and within ${percent(outputToleranceWidest.value)}.`,
      example: { device: wanting({ voltageV: 13 }) },
    },
    clear: { rule: 'The difference is within the machine’s tolerance.', example: {} },
  },
  judge(situation) {
    const { supply, device, pairs } = situation
    if (pairs.length === 0 || supply.rails.length === 0)
      return [unknown(() => sideMissing(supply.rails.length === 0, device.rails.length === 0))]
    return [
      ...pairs.flatMap((pair) => judgePair(situation, pair)),
      ...(supply.railsMayBePositions ? [unknown(() => positionOpen(situation))] : []),
      ...strayReading(situation),
    ]
  },
})

function judgePair(situation: PairSituation, pair: RailPair): Judgement[] {
  const { supply: rail, device } = pair
  if (!rail) return [stop(() => noOutput(situation, device))]
  const tolerance = toleranceOf(device, situation.device)
  const measured = measuredOf(situation, rail)
  const unregulated = isUnregulated(situation, rail)
  const plate = compare({ pair, rail, tolerance, value: rail, what: 'plate' })
  if (unregulated)
    return together([plate, ...implausible(situation, rail, measured), judgeUnregulated(situation, rail, device)])
  const compared = measured.length === 0 ? [plate] : measured.map((one) => compare({ pair, rail, tolerance, ...one }))
  return together(
    regulationOpen(situation, rail) ? [...compared, unknown(() => regulationNotKnown(rail, device))] : compared,
  )
}

// ---- tolerance -------------------------------------------------------------------------------------------------

interface Tolerance {
  share: number
  says: string
  source: Source
}

/** The machine's own; else 5 % where it needs a regulated supply or does not say; else the widest. */
export function toleranceOf({ tolerance }: DeviceRail, { regulatedNeeded }: PreparedDevice): Tolerance {
  if (tolerance !== null) return { share: tolerance, says: 'the machine’s own', source: ownTolerance }
  if (regulatedNeeded === false)
    return {
      share: outputToleranceWidest.value,
      says: 'it needs no regulated supply',
      source: outputToleranceWidest.source,
    }
  return {
    share: outputToleranceRegulated.value,
    says: regulatedNeeded ? 'it needs a regulated supply' : 'it states none',
    source: outputToleranceRegulated.source,
  }
}

// ---- nominal or measured value against what is wanted ----------------------------------------------------------

interface Compared {
  pair: RailPair
  rail: Rail
  tolerance: Tolerance
  /** the voltage that is compared, as a rail */
  value: Rail
  what: 'plate' | 'off load' | 'loaded'
}

/**
 * Nothing tells whether the supply is regulated, and it would matter: neither words nor kind, no wide input range, which no
 * plain transformer takes, and no reading off load.
 */
function regulationOpen({ supply, device }: PairSituation, rail: Rail): boolean {
  if (supply.regulated !== null || supply.technology !== null || device.regulatedNeeded === false) return false
  if (rail.kind === 'ac' || (supply.input.windows.length === 1 && supply.input.windows.every(isWide))) return false
  return supply.measured.offLoadV == null || supply.rails.length !== 1
}

const regulationNotKnown = (rail: Rail, device: DeviceRail): Text => ({
  title: `Whether the supply’s ${railText(rail)} is regulated is not known; the machine wants ${railText(device)}`,
  why: 'An unregulated supply stands far above its plate with little load, and a machine without a regulator of its own gets all of it.',
  working: ['neither a transformer type, a switch-mode type, “regulated” nor “unregulated” is stated'],
  action:
    'Measure it with nothing connected before the machine is, and enter the reading: well above the plate means an unregulated supply. A heavy unit for one mains voltage is a transformer; a light one is switch-mode.',
  sources: [plateAtFullLoad],
})

function compare(compared: Compared): Judgement {
  const { pair, tolerance, value } = compared
  const { device } = pair
  const [low, high] = ends(value)
  const wanted = nearestEnd(device, value)
  if (!(Math.abs(wanted) > 0)) return unknown(() => zeroVolts(device))
  const share = distanceV(value, device) / Math.abs(wanted)
  // an adjustable output may stand anywhere in its range
  if (low !== high && share === 0 && !within(value, device, tolerance.share)) return unknown(() => adjustable(compared))
  const outcome: Outcome = atMost(share, tolerance.share)
    ? 'clear'
    : atMost(share, outputToleranceWidest.value)
      ? 'caution'
      : 'stop'
  return { outcome, say: () => comparedWords(compared, wanted, share, outcome, low, high) }
}

/** Whether the whole range of a value lies within what the device accepts. */
function within(value: Rail, device: DeviceRail, share: number): boolean {
  const [low, high] = ends(value)
  const [wantedLow, wantedHigh] = ends(device)
  return low >= wantedLow - share * Math.abs(wantedLow) && high <= wantedHigh + share * Math.abs(wantedHigh)
}

/** The end of a device's range that lies nearest a value [V]. */
function nearestEnd(device: DeviceRail, value: Rail): number {
  const [low, high] = ends(device)
  const [valueLow] = ends(value)
  return valueLow > high ? high : low
}

function comparedWords(
  { pair, rail, tolerance, value, what }: Compared,
  wanted: number,
  share: number,
  outcome: Outcome,
  low: number,
  high: number,
): Text {
  const { device } = pair
  const [, wantedHigh] = ends(device)
  const above = low > wantedHigh
  const nearV = above ? low : high
  const given =
    what === 'plate' ? `the supply’s ${railText(rail)}` : `the ${volts(low)} measured ${what} (plate ${railText(rail)})`
  const working = [
    share === 0
      ? `${railText(value)} is within what the machine wants: ${railText(device)}`
      : `|${volts(nearV)} − ${volts(wanted)}| / ${volts(Math.abs(wanted))} = ${percent(share, 3, 'up')}`,
    `tolerance ${percent(tolerance.share)}: ${tolerance.says}`,
  ]
  const sources = [what === 'plate' ? ratingPlate : measuredThere, tolerance.source]
  const off = `${percent(share, 3, 'up')} too ${above ? 'high' : 'low'}`
  if (outcome === 'clear')
    return {
      title: `The machine wants ${railText(device)}; ${given} ${share === 0 ? 'agrees' : `is within ${percent(tolerance.share)}`}`,
      why: 'The voltage agrees.',
      working,
      action: null,
      sources,
    }
  if (outcome === 'caution')
    return {
      title: `The machine wants ${railText(device)}; ${given} is ${off}`,
      why: above
        ? 'More voltage means more heat in regulators and, at logic chips, the edge of what they take.'
        : 'Memory and logic may fail in odd ways; motors and relays may hang.',
      working: [...working, `beyond ${percent(outputToleranceWidest.value)} no rail may lie`],
      action:
        'Measure the output under load before the machine is connected, and look up what its maker allows; prefer a supply that is nearer.',
      sources: [...sources, outputToleranceWidest.source],
    }
  return {
    title: `The machine wants ${railText(device)}; ${given} is ${off}`,
    why: above
      ? 'Too much voltage destroys chips, capacitors and displays at once, often those that cannot be replaced.'
      : 'Too little voltage leaves the machine dead or half alive, and may harm what it writes to.',
    working: [...working, `more than ${percent(outputToleranceWidest.value)}`],
    action: `Do not connect the two. Use a supply with an output of ${railText(device)}.`,
    sources: [...sources, outputToleranceWidest.source],
  }
}

const zeroVolts = (device: DeviceRail): Text => ({
  title: `A rail of ${railText(device)} cannot be judged`,
  why: 'Nothing is wanted at 0\u00a0V.',
  working: [],
  action: 'Read the machine’s plate again and enter the voltage.',
  sources: [ratingPlate],
})

const positionOpen = ({ supply, device }: PairSituation): Text => ({
  title: `The plate lists ${listText(supply.rails.map(railText))}: whether these are outputs side by side, positions of one switch, or voltages a USB source gives only when asked, is not known`,
  why: 'A switch that stands too high destroys the machine at once; a USB source gives 5\u00a0V until it is asked for another.',
  working: [],
  action: `Look for a switch, a turnable plug or a USB socket on the supply. Set it to ${listText(device.rails.map(railText))}, measure it with nothing connected, and enter what it gives as its outputs.`,
  sources: [ratingPlate],
})

const adjustable = ({ pair, value }: Compared): Text => ({
  title: `The supply’s output is a range, ${railText(value)}; where it is set is not known (the machine wants ${railText(pair.device)})`,
  why: 'Set too high it destroys the machine at once.',
  working: [],
  action: `Set it to ${railText(pair.device)}, measure it with nothing connected, and enter what it is set to as its output.`,
  sources: [ratingPlate],
})

// ---- measured --------------------------------------------------------------------------------------------------

/** What was measured, as rails with the plate's kind and sign. Only where there is one output is it known which was measured. */
function measuredOf({ supply }: PairSituation, rail: Rail): { value: Rail; what: 'off load' | 'loaded' }[] {
  if (supply.rails.length !== 1) return []
  const { offLoadV, loadedV } = supply.measured
  if (offLoadV == null && loadedV == null) return []
  const as = (voltageV: number): Rail => ({
    ...rail,
    // a meter connected the other way round reads minus: polarity is judged in its own topic
    voltageV: Math.sign(rail.voltageV || 1) * Math.abs(voltageV),
    voltageMaxV: null,
  })
  return [
    ...(loadedV == null ? [] : [{ value: as(loadedV), what: 'loaded' as const }]),
    ...(offLoadV == null ? [] : [{ value: as(offLoadV), what: 'off load' as const }]),
  ]
}

/**
 * A reading of a supply with several outputs that is near none of them: which one was measured is not known, and whichever
 * it was, its plate is wrong or it is faulty.
 */
function strayReading({ supply }: PairSituation): Judgement[] {
  if (supply.rails.length < 2) return []
  const { offLoadV, loadedV } = supply.measured
  const steady = supply.regulated === true || (supply.regulated === null && supply.technology === 'switch-mode')
  const rise = steady ? outputToleranceWidest.value : largestRise.rise
  const stray = [offLoadV, loadedV].filter(
    (readV): readV is number =>
      readV != null &&
      !supply.rails.some((rail) => {
        const [low, high] = ends(rail)
          .map(Math.abs)
          .toSorted((a, b) => a - b) as [number, number]
        return (
          atMost(low * (1 - outputToleranceWidest.value), Math.abs(readV)) && atMost(Math.abs(readV), high * (1 + rise))
        )
      }),
  )
  if (stray.length === 0) return []
  return [
    unknown(() => ({
      title: `${listText(stray.map((readV) => volts(readV)))} was measured, which is none of the supply’s outputs: ${listText(supply.rails.map(railText))}`,
      why: 'An output that does not give what its plate says is faulty, or the plate is another unit’s.',
      working: [],
      action:
        'Measure each output with nothing connected, write down which pin it was, and enter what each gives as the outputs.',
      sources: [measuredThere, ratingPlate],
    })),
  ]
}

// ---- unregulated -----------------------------------------------------------------------------------------------

/**
 * Unregulated: stated; or a transformer type without the word "regulated"; or, where nothing is stated,
 * an output that stands more than 10 % above its plate off load.
 */
function isUnregulated({ supply }: PairSituation, rail: Rail): boolean {
  if (supply.regulated !== null) return !supply.regulated
  if (supply.technology === 'transformer') return true
  if (supply.technology === 'switch-mode') return false
  const { offLoadV } = supply.measured
  if (offLoadV == null || supply.rails.length !== 1) return false
  const [, high] = ends(rail)
  return !atMost(Math.abs(offLoadV), Math.abs(high) * (1 + outputToleranceWidest.value))
}

function judgeUnregulated(situation: PairSituation, rail: Rail, device: DeviceRail): Judgement {
  const { regulatedNeeded } = situation.device
  if (regulatedNeeded === true) return stop(() => unregulatedWords(situation, rail, device, 'stop'))
  if (regulatedNeeded === null) return unknown(() => unregulatedWords(situation, rail, device, 'unknown'))
  return offLoadEstimate(situation, rail)
    ? clear(() => unregulatedWords(situation, rail, device, 'clear'))
    : unknown(() => sizeMissing(rail))
}

/**
 * Readings no sound unregulated supply of this plate gives: below the plate less the widest tolerance, or above what it
 * may reach off load, on mains that stands high.
 */
function implausible(
  situation: PairSituation,
  rail: Rail,
  measured: readonly { value: Rail; what: 'off load' | 'loaded' }[],
): Judgement[] {
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
          ? `${volts(readV)} measured ${what} is more than an unregulated ${railText(rail)} gives: ${volts(mostV, 3)} at most`
          : `${volts(readV)} measured ${what} is less than an unregulated ${railText(rail)} gives: ${volts(leastV, 3)} at least`,
        why: 'The plate is another unit’s, a switch stands wrong, or the supply is faulty.',
        working: [`plausible: ${volts(leastV, 3)} to ${volts(mostV, 3)}`],
        action:
          'Do not connect the machine. Measure again with nothing connected, at the right mains; look for a voltage switch on the supply; find out what it really gives.',
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
      title: `${volts(readV)} measured loaded is well above the ${railText(rail)} of the plate`,
      why: 'The load was small, or the supply gives more than its plate says; the machine gets what was measured.',
      working: [`${volts(readV)} / ${volts(plateV)} = ${decimal(readV / plateV, 3)}`],
      action:
        'Measure it again with a load that draws what the machine draws, and compare that with what the machine bears.',
      sources: [measuredThere, plateAtFullLoad, outputToleranceWidest.source],
    })),
  ]
}

interface Estimate {
  lowV: number
  highV: number
  working: string[]
  sources: Source[]
}

/** What an unregulated output reads with nothing connected: measured, else estimated from its size. */
function offLoadEstimate(situation: PairSituation, rail: Rail): Estimate | null {
  const { supply } = situation
  const { offLoadV } = supply.measured
  if (offLoadV != null && supply.rails.length === 1)
    return {
      lowV: Math.abs(offLoadV),
      highV: Math.abs(offLoadV),
      working: [`measured off load: ${volts(Math.abs(offLoadV))}`],
      sources: [measuredThere],
    }
  return ratingEstimate(situation, rail)
}

/** The same from its size alone. */
function ratingEstimate({ mainsRatio }: PairSituation, rail: Rail): Estimate | null {
  const currentA = ratedA(rail)
  const ratedV = Math.abs(rail.voltageV)
  if (currentA === null || !(currentA > 0) || !(ratedV > 0)) return null
  const dc = rail.kind !== 'ac'
  const sizeVA = dc ? transformerSizeVA(ratedV, currentA) : ratedV * currentA
  const regulation = regulationFor(sizeVA)
  if (!regulation) return null
  const ratio = mainsRatio ?? 1
  const windingV = dc ? ratedWindingV(ratedV) : ratedV
  const offLoad = (share: number): number => {
    const acV = windingVoltage(windingV, share, 0, ratio)
    return dc ? rectifiedCrest(acV, 2, diodeDrop.offLoadV) : acV
  }
  const [lowV, highV] = [offLoad(regulation.low), offLoad(regulation.high)]
  const range = `${percent(regulation.low)} to ${percent(regulation.high)}`
  return {
    lowV,
    highV,
    working: [
      dc
        ? `transformer inside, estimated: 1.4 × (${volts(ratedV)} + 2\u00a0V) × I = ${voltAmperes(sizeVA, 3)}, winding 0.8 × (${volts(ratedV)} + 2\u00a0V) = ${volts(windingV, 3)}`
        : `size: ${volts(ratedV)} × I = ${voltAmperes(sizeVA, 3)}`,
      `typical regulation at ${voltAmperes(sizeVA, 3)}: ${range}`,
      `mains over plate: ${decimal(ratio, 3)}${mainsRatio === null ? ' (not known, taken as 1)' : ''}`,
      dc
        ? `off load: ${volts(windingV, 3)} × (1 + ${range}) × ${decimal(ratio, 3)} × √2 − 2 × ${volts(diodeDrop.offLoadV)} = ${volts(lowV, 3)} to ${volts(highV, 3)}`
        : `off load: ${volts(windingV, 3)} × (1 + ${range}) × ${decimal(ratio, 3)} = ${volts(lowV, 3)} to ${volts(highV, 3)}`,
    ],
    sources: [...regulation.sources, ...(dc ? [windingRule, diodeDrop.source] : [])],
  }
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
      ? `about ${volts(estimate.highV, 3)}`
      : `about ${volts(estimate.lowV, 3)} to ${volts(estimate.highV, 3)}`
    : 'well above its plate'
  const because =
    situation.supply.regulated === false
      ? 'stated'
      : situation.supply.technology === 'transformer'
        ? 'a transformer type with no “regulated” on it'
        : 'it stands that high off load'
  const working = estimate?.working ?? ['its size is not known, so its voltage off load cannot be estimated']
  const sources = [plateAtFullLoad, ...(estimate?.sources ?? [])]
  const title = `The supply’s ${railText(rail)} is unregulated (${because}): ${reads} with nothing connected`
  if (outcome === 'stop')
    return {
      title: `${title}; the machine needs a regulated ${railText(device)}`,
      why: 'At light load the machine gets the off-load voltage, far above its limit.',
      working,
      action: `Use a regulated supply of ${railText(device)}.`,
      sources,
    }
  if (outcome === 'unknown')
    return {
      title: `${title}; whether the machine regulates inside is not known`,
      why: 'A machine without a regulator of its own gets the off-load voltage, far above its limit.',
      working,
      action:
        'Find out whether the machine has a regulator or converter behind its power socket: the service manual, a three-legged part on a heat sink, or a maker’s supply that was unregulated itself. Until then use a regulated supply.',
      sources,
    }
  return {
    title: `${title}; the machine needs no regulated supply`,
    why: 'Such a machine regulates inside; reading high with nothing connected is normal.',
    working,
    action: null,
    sources,
  }
}

const sizeMissing = (rail: Rail): Text => ({
  title: `The supply’s ${railText(rail)} is unregulated; how high it stands off load cannot be estimated`,
  why: 'It may stand half as high again, or more, above its plate.',
  working: [],
  action: 'Measure the output with nothing connected and enter it; or enter the output amperes on its plate.',
  sources: [plateAtFullLoad],
})

// ---- missing ---------------------------------------------------------------------------------------------------

const noOutput = ({ supply }: PairSituation, device: DeviceRail): Text => ({
  title: `No output of the supply serves the machine’s ${railText(device)}: it gives ${listText(supply.rails.map(railText))}`,
  why: 'Without it, or with the sign reversed, the machine does not work and may be destroyed.',
  working: [],
  action: `Use a supply that also gives ${railText(device)}.`,
  sources: [ratingPlate],
})

const sideMissing = (supply: boolean, device: boolean): Text => ({
  title:
    supply && device
      ? 'Neither the voltage the supply gives nor the one the machine wants is known'
      : supply
        ? 'The voltage the supply gives is not known'
        : 'The voltage the machine wants is not known',
  why: 'Too much voltage destroys the machine the moment it is connected.',
  working: [],
  action: [
    supply ? 'Read the output line of the supply’s plate and enter it; or measure it with nothing connected.' : '',
    device
      ? 'Read what stands beside the machine’s power socket or in its manual and enter it; do not try voltages out.'
      : '',
  ]
    .filter((text) => text !== '')
    .join(' '),
  sources: [ratingPlate],
})
