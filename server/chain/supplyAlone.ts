import { polarityText } from '../facts/plug.js'
import { atMost } from '../physics/tolerance.js'
import { commonPractice } from '../tables/source.js'
import { outputToleranceRegulated, outputToleranceWidest, unregulatedNotKnown } from '../tables/thresholds.js'
import { listed, type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, millimetres, percent, volts, watts } from '../words/quantity.js'
import { underPower } from './action.js'
import type { PairSituation, PreparedPlug, Rail } from './case/situation.js'
import { voltageNotHeld } from './charging.js'
import { misnamed } from './dcPlug.js'
import { caution, clear, type Judgement, stop, together, unknown } from './judgement.js'
import type { PairJudging } from './judging.js'
import { ends, ratedA } from './matching/matchRails.js'
import { type MeasuredAs, measuredOf, strayReading } from './matching/measuredOutput.js'
import { offLoadEstimate } from './matching/offLoadEstimate.js'
import { kindText, railText } from './matching/railText.js'
import { implausible, isUnregulated } from './matching/unregulatedOutput.js'
import { ownMap } from './pins.js'
import { howToMeasure, plugSign } from './polarity.js'
import { measuredThere, ratingPlate } from './words.js'

/** What a supply without a machine is judged by: its own plate, and every reading that was taken. */
const aloneRule = commonPractice(
  'A supply alone',
  'its readings are held against its own plate; what it could feed follows from both, and is judged when there is a machine',
)

const sources = [ratingPlate, aloneRule]

const noOutput = (): Judgement =>
  unknown(() => ({
    title: say`What the supply gives is not known`,
    why: say`What it could feed hangs on it; too much voltage destroys a machine the moment it is connected.`,
    working: [],
    action: [
      say`Read the output line of its plate and enter it.`,
      underPower(say`Or measure it with nothing connected, on the DC range and on the AC range.`, 'mains'),
    ],
    sources,
  }))

/** Whether it gives direct or alternating current. */
function kindAlone({ supply: { rails } }: PairSituation): Judgement[] {
  if (rails.length === 0) return [noOutput()]
  return rails.map((rail) =>
    rail.kind === null
      ? unknown(() => ({
          title: say`Whether the supply’s ${railText(rail)} is AC or DC is not known`,
          why: say`Alternating current destroys a machine that wants direct current.`,
          working: [],
          action: [
            say`Look for ⎓ or “DC”, or for ~ or “AC”, beside the voltage on the plate.`,
            underPower(say`Measure it on the DC range and on the AC range, with nothing connected.`, 'mains'),
          ],
          sources,
        }))
      : clear(() => ({
          title: say`The supply gives ${kindText(rail.kind ?? 'dc')}: ${railText(rail)}`,
          why: say`It feeds a machine that wants the same.`,
          working: [],
          action: null,
          sources,
        })),
  )
}

/** Its readings against its plate, and which voltages it could feed. */
function voltageAlone(situation: PairSituation): Judgement[] {
  const { rails } = situation.supply
  if (rails.length === 0) return [noOutput()]
  return [
    ...rails.flatMap((rail) => together([...oneVoltage(situation, rail), ...voltageNotHeld(situation)])),
    ...strayReading(situation),
  ]
}

function oneVoltage(situation: PairSituation, rail: Rail): Judgement[] {
  const { supply } = situation
  const measured = measuredOf(situation, rail)
  if (isUnregulated(situation, rail))
    return [...implausible(situation, rail, measured), unregulatedAlone(situation, rail)]
  if (measured.length > 0) return measured.map((one) => againstPlate(rail, one))
  if (supply.regulated === null && supply.technology === null && rail.kind !== 'ac') return [regulationOpen(rail)]
  return [
    clear(() => ({
      title: say`By its plate the supply feeds a machine for ${feeds(rail)}`,
      why: say`A regulated output stays within a few per cent of its plate; only a measurement shows that it does.`,
      working: [],
      action: underPower(say`Measure it with nothing connected, then into a dummy load, and enter both.`, 'mains'),
      sources: [...sources, outputToleranceRegulated.source],
    })),
  ]
}

/** The voltages of machines that an output suits: those whose tolerance holds it. */
function feeds(rail: Rail): Phrase {
  const [low, high] = ends(rail)
    .map(Math.abs)
    .toSorted((one, other) => one - other) as [number, number]
  const share = outputToleranceRegulated.value
  const sign = rail.voltageV < 0 ? -1 : 1
  return say`${volts((sign * low) / (1 + share), 3, 'up')} to ${volts((sign * high) / (1 - share), 3, 'down')} ${rail.kind === null ? say`` : kindText(rail.kind)}`
}

function againstPlate(rail: Rail, { value, what }: MeasuredAs): Judgement {
  const [low, high] = ends(rail)
    .map(Math.abs)
    .toSorted((one, other) => one - other) as [number, number]
  const readV = Math.abs(value.voltageV)
  const off = readV > high ? readV / high - 1 : readV < low ? 1 - readV / low : 0
  const holds = atMost(off, outputToleranceRegulated.value)
  const judge = holds ? clear : atMost(off, outputToleranceWidest.value) ? caution : stop
  return judge(() => ({
    title: holds
      ? say`${volts(readV)} measured ${what} is what the plate says: ${railText(rail)}`
      : say`${volts(readV)} measured ${what} is ${percent(off)} ${readV > high ? say`above` : say`below`} the plate’s ${railText(rail)}`,
    why: holds
      ? say`It could feed a machine for ${feeds(value)}. A supply that reads right cold may still fail warm and loaded.`
      : say`A regulated output that does not hold its plate is faulty, set otherwise, or wears another unit’s plate.`,
    working: [
      say`|${volts(readV)} − ${volts(readV > high ? high : low)}| / ${volts(readV > high ? high : low)} = ${percent(off)}`,
    ],
    action:
      what === 'loaded' && holds
        ? null
        : underPower(
            say`Measure it loaded and warm, after half an hour into a dummy load, before any machine meets it.`,
            'mains',
          ),
    sources: [measuredThere, ...sources, outputToleranceRegulated.source, outputToleranceWidest.source],
  }))
}

function unregulatedAlone(situation: PairSituation, rail: Rail): Judgement {
  const estimate = offLoadEstimate(situation, rail)
  return (estimate ? caution : unknown)(() => ({
    title: estimate
      ? say`The supply’s ${railText(rail)} is unregulated: ${estimate.lowV === estimate.highV ? volts(estimate.highV, 3) : say`about ${volts(estimate.lowV, 3)} to ${volts(estimate.highV, 3)}`} with nothing connected`
      : say`The supply’s ${railText(rail)} is unregulated; how high it stands with little load is not known`,
    why: say`It comes down to its plate at its full current only: with nothing connected its capacitor charges to the crest. It could feed a machine made for unregulated supplies of this voltage, or one that regulates inside; any other only where it stands at no more than ${decimal(unregulatedNotKnown.value)} times the machine’s voltage.`,
    working: estimate?.working ?? [],
    action: [
      ...(estimate ? [] : [say`Enter the output amperes on its plate.`]),
      underPower(
        say`Measure it with nothing connected and with a load of the machine’s current, and enter both.`,
        'mains',
      ),
    ],
    sources: [...sources, ...(estimate?.sources ?? []), unregulatedNotKnown.source],
  }))
}

const regulationOpen = (rail: Rail): Judgement =>
  unknown(() => ({
    title: say`Whether the supply’s ${railText(rail)} is regulated is not known`,
    why: say`An unregulated supply stands far above its plate with little load.`,
    working: [],
    action: [
      say`A heavy unit for one mains voltage is a transformer; a light one is switch-mode: enter which.`,
      underPower(say`Measure it with nothing connected, and enter the reading.`, 'mains'),
    ],
    sources,
  }))

/** How much it could feed. */
function currentAlone({ supply: { rails, outputsTotalW } }: PairSituation): Judgement[] {
  return rails.map((rail) => {
    const most = ratedA(rail)
    if (most === null)
      return unknown(() => ({
        title: say`How much current the supply’s ${railText(rail)} gives is not known`,
        why: say`An overloaded supply sags, hiccups or overheats.`,
        working: [],
        action: say`Read the output line of its plate and enter its amperes.`,
        sources,
      }))
    return clear(() => ({
      title: say`The supply’s ${railText(rail)} feeds a machine that takes up to ${amperes(most, 3, 'down')}`,
      why: say`A machine’s plate names the most that it takes; a current that was measured wants a quarter more.`,
      working: outputsTotalW === null ? [] : [say`all outputs together: ${watts(outputsTotalW, 3, 'down')}`],
      action: null,
      sources,
    }))
  })
}

/** The sign on its plug: printed, measured, or still to be measured. */
function polarityAlone(situation: PairSituation): Judgement[] {
  if (situation.supply.rails.every(({ kind }) => kind === 'ac') || situation.supply.facts.pins?.length) return []
  const { given, wrong } = plugSign(situation)
  if (wrong) return [wrong]
  if (given === null)
    return [
      unknown(() => ({
        title: say`The polarity of the supply’s plug is not known`,
        why: say`Reversed, a machine’s chips and capacitors fail within seconds.`,
        working: [],
        action: [say`Look for the drawing of two circles with + and −.`, underPower(howToMeasure, 'mains')],
        sources,
      })),
    ]
  return [
    clear(() => ({
      title: say`The supply’s plug is ${polarityText(given)} (${situation.supply.measured.polarity ? say`measured` : say`as printed`})`,
      why: say`It feeds a machine whose jack says the same.`,
      working: [],
      action: situation.supply.measured.polarity
        ? null
        : underPower(say`Confirm it with a meter: a plug may have been changed.`, 'mains'),
      sources,
    })),
  ]
}

/** The size of its plug, by which a machine is found. */
function plugAlone({ supply: { plug, facts } }: PairSituation): Judgement[] {
  if (facts.pins?.length) return []
  if (plug.contradicted.length > 0) return misnamed(plug, say`plug`)
  const open = missingSizes(plug)
  if (open.length > 0 && plug.name === null)
    return [
      unknown(() => ({
        title: say`The plug of the supply: ${listed(open)} not known`,
        why: say`Sizes a few tenths apart look alike; one goes on and makes bad contact, the other breaks the pin.`,
        working: [],
        action: say`Measure it outside with a caliper, and its bore with the thickest drill shank that slips in.`,
        sources,
      })),
    ]
  return [
    clear(() => ({
      title:
        plug.outerMm !== null && plug.innerMm !== null
          ? say`The supply’s plug is ${decimal(plug.outerMm)} × ${millimetres(plug.innerMm)}`
          : say`The supply’s plug is called “${(plug.name ?? '').slice(0, 40)}”`,
      why: say`It goes into the jack of that plug; the size says nothing of voltage or polarity.`,
      working: [],
      action: null,
      sources,
    })),
  ]
}

const missingSizes = ({ outerMm, innerMm }: PreparedPlug): Phrase[] => [
  ...(outerMm === null ? [say`outer diameter`] : []),
  ...(innerMm === null ? [say`bore`] : []),
]

/** The topics of the low-voltage side, for a supply that has no machine yet. */
export const supplyAlone: readonly PairJudging[] = [
  { name: 'output-kind', judge: kindAlone },
  { name: 'output-voltage', judge: voltageAlone },
  { name: 'output-current', judge: currentAlone },
  { name: 'polarity', judge: polarityAlone },
  { name: 'dc-plug', judge: plugAlone },
  { name: 'pins', judge: ownMap },
]
