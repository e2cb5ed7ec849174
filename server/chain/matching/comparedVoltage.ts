import { atMost } from '../../physics/tolerance.js'
import { outputToleranceWidest } from '../../tables/thresholds.js'
import { say } from '../../words/phrase.js'
import { percent, volts } from '../../words/quantity.js'
import { underPower } from '../action.js'
import type { DeviceRail, Rail, RailPair } from '../case/situation.js'
import type { Outcome } from '../finding.js'
import { type Judgement, type Text, unknown } from '../judgement.js'
import { measuredThere, ratingPlate } from '../words.js'
import { distanceV, ends } from './matchRails.js'
import type { Tolerance } from './outputTolerance.js'
import { railText } from './railText.js'

interface Compared {
  pair: RailPair
  rail: Rail
  tolerance: Tolerance
  /** the voltage that is compared, as a rail */
  value: Rail
  what: 'plate' | 'on this mains' | 'off load' | 'loaded'
}

/** A nominal or measured voltage against what is wanted. */
export function compareVoltage(compared: Compared): Judgement {
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
  const [wantedLow, wantedHigh] = ends(device)
  // of a negative rail the size decides: −5 V is too little for −12 V
  const [innerV, outerV] = wanted < 0 ? [high, low] : [low, high]
  const above = wanted < 0 ? innerV < wantedLow : innerV > wantedHigh
  const nearV = above ? innerV : outerV
  const given =
    what === 'plate'
      ? say`the supply’s ${railText(rail)}`
      : what === 'on this mains'
        ? say`the supply’s ${railText(rail)}, about ${volts(nearV, 3)} at full load on this mains,`
        : say`the ${volts(low)} measured ${what} (plate ${railText(rail)})`
  const working = [
    share === 0
      ? say`${railText(value)} is within what the machine wants: ${railText(device)}`
      : say`|${volts(nearV)} − ${volts(wanted)}| / ${volts(Math.abs(wanted))} = ${percent(share, 3, 'up')}`,
    say`tolerance ${percent(tolerance.share)}: ${tolerance.says}`,
  ]
  const sources = [what === 'plate' || what === 'on this mains' ? ratingPlate : measuredThere, tolerance.source]
  const off = say`${percent(share, 3, 'up')} too ${above ? say`high` : say`low`}`
  if (outcome === 'clear')
    return {
      title: say`The machine wants ${railText(device)}; ${given} ${share === 0 ? say`agrees` : say`is within ${percent(tolerance.share)}`}`,
      why: say`The voltage agrees.`,
      working,
      action: null,
      sources,
    }
  if (outcome === 'caution')
    return {
      title: say`The machine wants ${railText(device)}; ${given} is ${off}`,
      why: above
        ? say`More voltage means more heat in regulators and, at logic chips, the edge of what they take.`
        : say`Memory and logic may fail in odd ways; motors and relays may hang.`,
      working: [...working, say`beyond ${percent(outputToleranceWidest.value)} no rail may lie`],
      action: [
        say`Look up what the machine’s maker allows; prefer a supply that is nearer.`,
        underPower(say`Measure the output under load before the machine is connected.`, 'mains'),
      ],
      sources: [...sources, outputToleranceWidest.source],
    }
  return {
    title: say`The machine wants ${railText(device)}; ${given} is ${off}`,
    why: above
      ? say`Too much voltage destroys chips, capacitors and displays at once, often those that cannot be replaced.`
      : say`Too little voltage leaves the machine dead or half alive, and may harm what it writes to.`,
    working: [...working, say`more than ${percent(outputToleranceWidest.value)}`],
    action: say`Do not connect the two. Use a supply with an output of ${railText(device)}.`,
    sources: [...sources, outputToleranceWidest.source],
  }
}

const zeroVolts = (device: DeviceRail): Text => ({
  title: say`A rail of ${railText(device)} cannot be judged`,
  why: say`Nothing is wanted at 0\u00a0V.`,
  working: [],
  action: say`Read the machine’s plate again and enter the voltage.`,
  sources: [ratingPlate],
})

const adjustable = ({ pair, value }: Compared): Text => ({
  title: say`The supply’s output is a range, ${railText(value)}; where it is set is not known (the machine wants ${railText(pair.device)})`,
  why: say`Set too high it destroys the machine at once.`,
  working: [],
  action: [
    say`Set it to ${railText(pair.device)}, and enter what it is set to as its output.`,
    underPower(say`Measure it with nothing connected before the machine is.`, 'mains'),
  ],
  sources: [ratingPlate],
})
