import {
  type BenchStage,
  benchStages,
  minimumResistance,
  overVoltage,
  type ResistanceReading,
  readResistance,
} from '../../physics/benchSupply.js'
import {
  backFeed,
  benchRules,
  holdTimes,
  latchUp,
  latchUpFactor,
  overVoltageSetting,
  railOrder,
  resistanceReadings,
  senseLeads,
  unknownCurrent,
} from '../../tables/benchSupply.js'
import { dcTouchLimit } from '../../tables/capacitors.js'
import { outputToleranceRegulated } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes, decimal, duration, ohms, volts } from '../../words/quantity.js'
import type { Explained } from '../firstPower/lamps.js'
import { type LeadSize, leadLoss } from './leadLoss.js'
import { type UsbAnswer, usbSource } from './usbSource.js'

export interface BenchSupplyRequest {
  rails: { voltageV: number; currentA: number | null; tolerance?: number | null }[]
  lead?: LeadSize | null
  /** lower reading across the first rail, both ways round, power off [Ω] */
  measuredOhm?: number | null
  /** what takes the power: a converter (constant power) or plain logic and regulators */
  input?: 'constant-power' | 'plain' | 'unknown' | null
}

interface BenchRailStage extends BenchStage {
  /** index of the rail, from 0, and its signed voltage [V] */
  rail: number
  railV: number
  expect: Phrase
  stopIf: Phrase
}

interface BenchRailAnswer {
  voltageV: number
  currentA: number | null
  overVoltageV: number
  minimumResistanceOhm: number | null
  lead: { resistanceOhm: number; dropV: number; leftV: number; working: Phrase } | null
  usb: UsbAnswer
}

export interface BenchSupplyAnswer extends Explained {
  /** empty where the resistance reading forbids going on */
  stages: BenchRailStage[]
  /** of the first rail */
  overVoltageV: number
  /** of the first rail; null where its current is not known */
  minimumResistanceOhm: number | null
  rails: BenchRailAnswer[]
  /** how to read the resistance that was measured; null where none was */
  reading: { kind: ResistanceReading; expectedA: number | null; says: Phrase } | null
}

/**
 * A first power-up of a machine from a current-limited source.
 *
 * @throws RangeError for 0 V, currents of 0 or less, or no rail
 * @source steps and limits as in the sources of the answer
 */
export function benchSupply(request: BenchSupplyRequest): BenchSupplyAnswer {
  const [first] = request.rails
  if (!first) throw new RangeError('rails must hold at least one')
  const rails = request.rails.map((rail) => railAnswer(rail, request.lead ?? null))
  const [firstAnswer] = rails as [BenchRailAnswer]
  const reading = request.measuredOhm == null ? null : readingOf(request.measuredOhm, firstAnswer)
  const goOn = reading === null || reading.kind === 'plausible' || reading.kind === 'open'
  return {
    stages: goOn ? request.rails.flatMap((rail, index) => railStages(rail, index, request)) : [],
    overVoltageV: firstAnswer.overVoltageV,
    minimumResistanceOhm: firstAnswer.minimumResistanceOhm,
    rails,
    reading,
    working: [
      ...rails.flatMap(railWorking),
      ...request.rails.flatMap((rail) =>
        request.lead && rail.currentA !== null
          ? (leadLoss(request.lead, rail.currentA, Math.abs(rail.voltageV))?.working ?? [])
          : [],
      ),
      ...(reading?.expectedA != null && request.measuredOhm != null
        ? [
            say`${volts(Math.abs(first.voltageV))} / ${ohms(request.measuredOhm)} = ${amperes(reading.expectedA)} at least, by the reading`,
          ]
        : []),
    ],
    cautions: [...(reading ? [reading.says] : []), ...cautionsFor(request)],
    sources: [
      benchRules.source,
      holdTimes,
      overVoltageSetting,
      resistanceReadings.source,
      ...(request.rails.some(({ currentA }) => currentA === null) ? [unknownCurrent] : []),
      ...(request.input === 'plain' ? [] : [latchUp, latchUpFactor]),
      ...(request.rails.length > 1 ? [railOrder] : []),
      backFeed,
      senseLeads,
      ...rails.flatMap(({ usb }) => usb.sources).filter((source, index, all) => all.indexOf(source) === index),
    ],
  }
}

function railAnswer(rail: BenchSupplyRequest['rails'][number], lead: LeadSize | null): BenchRailAnswer {
  const size = Math.abs(rail.voltageV)
  const loss = lead && rail.currentA !== null ? leadLoss(lead, rail.currentA, size) : null
  return {
    voltageV: rail.voltageV,
    currentA: rail.currentA,
    overVoltageV: overVoltage(rail.voltageV, benchRules.overVoltage),
    minimumResistanceOhm: rail.currentA === null ? null : minimumResistance(rail.voltageV, rail.currentA),
    lead: loss && { resistanceOhm: loss.resistanceOhm, dropV: loss.dropV, leftV: loss.leftV, working: loss.lost },
    usb: usbSource(rail, rail.tolerance ?? outputToleranceRegulated.value),
  }
}

/** Below this no ohmmeter tells a value from none [Ω]. */
const leastReadOhm = 1e-6

function readingOf(measuredOhm: number, rail: BenchRailAnswer): NonNullable<BenchSupplyAnswer['reading']> {
  const { shortOhm, openOhm } = resistanceReadings
  const kind = readResistance(measuredOhm, rail.minimumResistanceOhm, shortOhm, openOhm)
  const expectedA = measuredOhm >= leastReadOhm ? Math.abs(rail.voltageV) / measuredOhm : null
  const least = rail.minimumResistanceOhm === null ? '' : ohms(rail.minimumResistanceOhm)
  const says = {
    short: say`${ohms(measuredOhm)} is a short until explained: do not apply power. Look for a shorted capacitor, a reversed or failed regulator, a clamp that has fired.`,
    low: say`${ohms(measuredOhm)} is less than ${least}, so the machine would draw more than it is said to: find out why before any power. A motor, a relay or a lamp in the path reads low when cold; disconnect it and measure again.`,
    plausible: say`${ohms(measuredOhm)} is no short. Silicon hides behind an ohmmeter’s small voltage, so the reading excludes a dead short and nothing more.`,
    open: say`${ohms(measuredOhm)} looks like nothing connected: check switch, fuse and connector, or the machine has an electronic switch.`,
  }
  return { kind, expectedA, says: says[kind] }
}

function railStages(
  rail: BenchSupplyRequest['rails'][number],
  index: number,
  request: BenchSupplyRequest,
): BenchRailStage[] {
  const constantPower = request.input === 'constant-power'
  const stages = benchStages(rail, constantPower, benchRules)
  return stages.map((stage, at) => ({
    ...stage,
    rail: index,
    railV: rail.voltageV,
    expect: expectation(stage, Math.abs(rail.voltageV)),
    stopIf:
      at === stages.length - 1
        ? say`the current reaches the limit or climbs, anything is too hot to touch for 3\u00a0s, smells or buzzes`
        : say`the current reaches the limit, where the supply stays in current limit for more than about 1\u00a0s, or anything smells, buzzes or warms`,
  }))
}

function expectation(stage: BenchStage, fullV: number): Phrase {
  const below = say`the current settles below ${amperes(stage.limitA, 3)}`
  return stage.voltageV < fullV
    ? say`${below}, and the voltage stays at ${volts(stage.voltageV)}; the machine need not work yet`
    : say`${below}, and the voltage stays at ${volts(stage.voltageV)} for ${duration(stage.holdS)}`
}

export const overVoltageWorking = (rail: Pick<BenchRailAnswer, 'voltageV' | 'overVoltageV'>): Phrase =>
  say`over-voltage: ${decimal(benchRules.overVoltage)} × ${volts(Math.abs(rail.voltageV))} = ${volts(rail.overVoltageV)}`

const railWorking = (rail: BenchRailAnswer): Phrase[] => [
  overVoltageWorking(rail),
  ...(rail.currentA === null || rail.minimumResistanceOhm === null
    ? [
        say`current not known: the limit starts at ${amperes(benchRules.unknownFirstA)} and is doubled from step to step, only while no fault shows`,
      ]
    : [
        say`least resistance: ${volts(Math.abs(rail.voltageV))} / ${amperes(rail.currentA)} = ${ohms(rail.minimumResistanceOhm)}`,
      ]),
]

/** Above the d.c. limit of what may be touched. */
const isHazardous = ({ voltageV }: { voltageV: number }): boolean => Math.abs(voltageV) > dcTouchLimit.limitV

function cautionsFor(request: BenchSupplyRequest): Phrase[] {
  const several = request.rails.length > 1
  return [
    say`Take batteries out first. Set voltage, current limit and over-voltage with the output off, and check the polarity at the plug with a meter.`,
    say`Never raise the limit to make a fault go away: lower the voltage and look for the part that warms.`,
    ...(request.rails.some(isHazardous)
      ? [
          say`More than ${volts(dcTouchLimit.limitV)} DC can kill, and a current limit protects the machine, not you: shrouded plugs, output off before anything is touched.`,
        ]
      : []),
    say`A reversed connection kills tantalum capacitors even at ${0.1}\u00a0A: check twice.`,
    ...(request.input === 'plain'
      ? []
      : [
          say`A converter in the input takes constant power: on a tight limit it can hang at a low voltage. Give it its full voltage at once, with the limit at two to three times its running current and a short on-time.`,
        ]),
    say`Disconnect motors, drives and relays first where they can be: they draw 2 to 10 times their current when starting. A picture tube and what feeds it stay as they are.`,
    ...(several
      ? [
          say`Several rails: find their order before any power. Memories that take −5\u00a0V, +5\u00a0V and +12\u00a0V need the negative one first and lose it last. Bring the rails up together from a tracking supply, or one by one only where the circuit allows it.`,
          say`Supplies with floating outputs are joined at one point only; check which terminal is earthed before two are joined.`,
        ]
      : []),
    ...(request.rails.some(({ voltageV }) => voltageV < 0)
      ? [
          say`A negative rail is set as a positive number with the leads swapped: plus to the common, minus to the rail.`,
        ]
      : []),
    say`Do not feed the output of a linear regulator while its input is open: current flows back through it.`,
    say`With loose sense links the output rises: take the load from the sense terminals, and measure the voltage at the machine.`,
    say`An AC input is not fed from this supply unless its circuit is known.`,
  ]
}
