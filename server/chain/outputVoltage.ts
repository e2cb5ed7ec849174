import { atMost } from '../physics/tolerance.js'
import { says } from '../plate/sayings.js'
import {
  nominalMatch,
  outputToleranceRegulated,
  outputToleranceWidest,
  unregulatedMost,
  unregulatedNotKnown,
} from '../tables/thresholds.js'
import { usbFixedVoltages, usbNoLimiter } from '../tables/usbPower.js'
import { listed, say } from '../words/phrase.js'
import { decimal, percent } from '../words/quantity.js'
import { underPower } from './action.js'
import { hasMap } from './case/hasMap.js'
import type { DeviceRail, PairSituation, RailPair } from './case/situation.js'
import { voltageNotHeld } from './charging.js'
import { wanting } from './example.js'
import { type Judgement, stop, type Text, together, unknown } from './judgement.js'
import { compareVoltage } from './matching/comparedVoltage.js'
import { judgeReadingsAlone } from './matching/measuredAlone.js'
import { measuredOf, strayReading } from './matching/measuredOutput.js'
import { toleranceOf } from './matching/outputTolerance.js'
import { railText } from './matching/railText.js'
import {
  atFullLoad,
  implausible,
  isUnregulated,
  judgeUnregulated,
  regulationNotKnown,
  regulationOpen,
} from './matching/unregulatedOutput.js'
import { pairTopic } from './topic.js'
import { ratingPlate } from './words.js'

/** Whether each rail of the machine gets the voltage it wants. */
export const outputVoltage = pairTopic({
  name: 'output-voltage',
  words: say`the output voltage`,
  links: ['supply', 'machine'],
  asks: [
    'supply.outputs.voltageV',
    'supply.outputs.settings',
    'supply.outputs.setV',
    'device.inputs.voltageV',
    'supply.regulated',
    'supply.technology',
    'device.regulatedNeeded',
    'device.regulatesInside',
    'device.inputs.regulatesInside',
    'supply.outputs.currentA',
    'device.inputs.currentA',
    'supply.measured.offLoadV',
  ],
  when: {
    stop: {
      rule: say`The voltages differ by more than ${percent(outputToleranceWidest.value)}, no output matches, or an unregulated supply meets a machine that needs a regulated one, or stands at more than ${decimal(unregulatedMost.value)} times the voltage of one made for it.`,
      example: { device: wanting({ voltageV: 9 }) },
    },
    unknown: {
      rule: say`Either voltage is not known, the output is adjustable and its setting not given, an unregulated supply stands higher than what is known of the machine allows, or the machine’s plate names what it is said to take as an output.`,
      example: { device: { inputs: null } },
    },
    caution: {
      rule: say`The difference is beyond the machine’s tolerance (${percent(outputToleranceRegulated.value)} where it states none) and within ${percent(outputToleranceWidest.value)}; or an unregulated supply stands at up to ${decimal(unregulatedNotKnown.value)} times the voltage of a machine of which nothing is known, ${decimal(unregulatedMost.value)} times that of one made for it.`,
      example: { device: wanting({ voltageV: 13 }) },
    },
    clear: { rule: say`The difference is within the machine’s tolerance.`, example: {} },
  },
  judge(situation) {
    const { supply, device, pairs } = situation
    if (pairs.length === 0 || supply.rails.length === 0)
      return together([
        ...judgeReadingsAlone(situation),
        unknown(() => sideMissing(supply.rails.length === 0, device.rails.length === 0)),
      ])
    return [
      ...pairs.flatMap((pair) => together([...judgePair(situation, pair), ...voltageNotHeld(situation)])),
      ...(outOfOnePlug(situation) ? [unknown(() => severalOnOnePlug(situation))] : []),
      ...(asksForIt(situation) ? [unknown(() => givenWhenAsked(situation))] : []),
      ...(supply.railsMayBePositions ? [unknown(() => positionOpen(situation))] : []),
      ...strayReading(situation),
      ...givenByMachine(situation),
    ]
  },
})

function judgePair(situation: PairSituation, pair: RailPair): Judgement[] {
  const { supply: rail, device } = pair
  if (!rail) return [stop(() => noOutput(situation, device))]
  const tolerance = toleranceOf(device, situation.device)
  const measured = measuredOf(situation, rail)
  const unregulated = isUnregulated(situation, rail)
  if (unregulated) {
    const full = compareVoltage({ pair, rail, tolerance, ...atFullLoad(situation, rail) })
    return together([full, ...implausible(situation, rail, measured), judgeUnregulated(situation, pair, rail)])
  }
  const plate = compareVoltage({ pair, rail, tolerance, value: rail, what: 'plate' })
  const compared =
    measured.length === 0 ? [plate] : measured.map((one) => compareVoltage({ pair, rail, tolerance, ...one }))
  return together(
    regulationOpen(situation, pair, rail) ? [...compared, unknown(() => regulationNotKnown(rail, device))] : compared,
  )
}

/** What a machine is said to take, and its plate names under a word for output, and nowhere as taken. */
function givenByMachine({ device }: PairSituation): Judgement[] {
  const { outputs = [], takes = [] } = device.reading ?? {}
  const isAmong = (rails: readonly { voltageV: number }[], { voltageV }: DeviceRail): boolean =>
    rails.some((rail) => atMost(Math.abs(rail.voltageV - voltageV), nominalMatch.value * Math.abs(voltageV)))
  const given = device.rails.filter((rail) => isAmong(outputs, rail) && !isAmong(takes, rail))
  if (given.length === 0) return []
  return [
    unknown(() => ({
      title: say`The machine’s plate names ${listed(given.map(railText))} as its output; it was entered as what the machine takes`,
      why: say`A supply that is joined to an output feeds it backwards: the machine, or the supply, is destroyed.`,
      working: [],
      action: say`Look at the machine again: which of its sockets takes power, and what stands beside it. Put the plate’s text right, or the entry.`,
      sources: [ratingPlate],
    })),
  ]
}

/** Several outputs and a plug of two contacts: which of them is on it is not known until one was measured there, and entered alone. */
function outOfOnePlug(situation: PairSituation): boolean {
  const { supply, device } = situation
  const { offLoadV, loadedV } = supply.measured
  const told = supply.facts.outputs?.length === 1 && (offLoadV ?? loadedV) != null
  return (
    !told &&
    !supply.railsMayBePositions &&
    !hasMap(situation) &&
    supply.rails.length > 1 &&
    device.rails.length === 1 &&
    supply.plug.outerMm !== null
  )
}

const severalOnOnePlug = ({ supply, device }: PairSituation): Text => ({
  title: say`The supply has ${listed(supply.rails.map(railText))}, and the plug has two contacts: which output is on it is not known`,
  why: say`Two outputs do not come out of two contacts; the wrong one destroys the machine at once.`,
  working: [],
  action: [
    say`Look in the maker’s data which output is on the plug.`,
    underPower(
      say`Measure the plug with nothing connected: if it gives ${listed(device.rails.map(railText))}, enter the reading, and that alone as its outputs.`,
      'mains',
    ),
  ],
  sources: [ratingPlate],
})

/** A USB source that is wanted for more than the 5 V it gives by itself, and was not measured giving it. */
function asksForIt({ supply, pairs }: PairSituation): boolean {
  if (supply.railsMayBePositions || supply.measured.offLoadV != null) return false
  if (![supply.facts.label, supply.plug.name].some((text) => says(text, 'other voltages when asked'))) return false
  const byItselfV = usbFixedVoltages[0]?.voltageV ?? 0
  return pairs.some((pair) => (pair.supply?.voltageV ?? 0) > byItselfV * (1 + outputToleranceWidest.value))
}

const givenWhenAsked = ({ supply, device }: PairSituation): Text => ({
  title: say`A USB source gives ${listed(supply.rails.map(railText))} only when asked for it: 5\u00a0V, or nothing, until then`,
  why: say`Without something that negotiates the machine gets too little; with one that asks for more than it takes it is destroyed.`,
  working: [],
  action: [
    say`Use a trigger lead or board for ${listed(device.rails.map(railText))}.`,
    underPower(say`Measure what it gives with nothing connected, and enter that as measured.`, 'mains'),
  ],
  sources: [ratingPlate, usbNoLimiter],
})

const positionOpen = ({ supply, device }: PairSituation): Text => ({
  title: supply.facts.outputs?.length
    ? say`The supply can be switched to ${listed(supply.rails.map(railText))}: where its switch stands is not known`
    : say`The plate lists ${listed(supply.rails.map(railText))}: whether these are outputs side by side, positions of one switch, or voltages a USB source gives only when asked, is not known`,
  why: say`A switch that stands too high destroys the machine at once; a USB source gives 5\u00a0V until it is asked for another.`,
  working: [],
  action: [
    say`Look for a switch, a turnable plug or a USB socket on the supply, and set it to ${listed(device.rails.map(railText))}.`,
    underPower(say`Measure it with nothing connected, and enter what it gives as its outputs.`, 'mains'),
  ],
  sources: [ratingPlate],
})

const noOutput = ({ supply }: PairSituation, device: DeviceRail): Text => ({
  title: say`No output of the supply serves the machine’s ${railText(device)}: it gives ${listed(supply.rails.map(railText))}`,
  why: say`Without it, or with the sign reversed, the machine does not work and may be destroyed.`,
  working: [],
  action: say`Use a supply that also gives ${railText(device)}.`,
  sources: [ratingPlate],
})

const sideMissing = (supply: boolean, device: boolean): Text => ({
  title:
    supply && device
      ? say`Neither the voltage the supply gives nor the one the machine wants is known`
      : supply
        ? say`The voltage the supply gives is not known`
        : say`The voltage the machine wants is not known`,
  why: say`Too much voltage destroys the machine the moment it is connected.`,
  working: [],
  action: [
    ...(supply
      ? [
          say`Read the output line of the supply’s plate and enter it.`,
          underPower(say`Or measure it with nothing connected.`, 'mains'),
        ]
      : []),
    ...(device
      ? [
          say`Read what stands beside the machine’s power socket or in its manual and enter it; do not try voltages out.`,
        ]
      : []),
  ],
  sources: [ratingPlate],
})
