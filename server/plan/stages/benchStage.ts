import { isDangerous } from '../../chain/isolation.js'
import { polarityText } from '../../facts/plug.js'
import { benchRules, resistanceReadings } from '../../tables/benchSupply.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { amperes, duration, ohms, percent, volts } from '../../words/quantity.js'
import { acrossCapacitors } from '../acrossCapacitors.js'
import { type BenchSupplyAnswer, benchSupply, overVoltageWorking } from '../bench/benchSupply.js'
import type { Figure, FirstPowerStage, Step } from '../firstPowerPlan.js'
import { noMoreCurrent, oldBatteries, reversed } from './cautions.js'
import type { PlanFacts } from './facts.js'
import { markedUnfit, says, unfit } from './noSupply.js'
import { toleranceOf } from './rails.js'
import { beforeReach, figure, stepOn } from './step.js'

const step = stepOn('machine')

/** Stage 3: the machine alone on a current-limited bench supply. */
export function benchStage(facts: PlanFacts): FirstPowerStage {
  const { device } = facts
  const answer = benchPlan(facts)
  const leftOut = whyNot(facts, answer)
  for (const rail of device.rails)
    if (rail.currentA === null && !device.takesMains)
      facts.missing.push(
        say`What the machine draws at ${volts(rail.voltageV)}: the current limit then starts at ${amperes(benchRules.unknownFirstA)}.`,
      )
  return {
    name: 'bench-supply',
    title: say`The machine alone, on a current-limited bench supply`,
    leftOut,
    waits: null,
    figures: leftOut === null && answer ? figures(answer) : [],
    steps: leftOut === null && answer ? steps(facts, answer) : [],
    sources: leftOut === null && answer ? answer.sources : [],
  }
}

/** Why a machine gets no power from anything: its input reads as a short, or far too low; null where it does not. */
export function readsShort(facts: PlanFacts): Phrase | null {
  const answer = benchPlan(facts)
  return answer?.reading && answer.stages.length === 0 ? answer.reading.says : null
}

/** The machine's rails on a bench supply; null where there is none that it could feed. */
function benchPlan(facts: PlanFacts): BenchSupplyAnswer | null {
  const { device, supply, options } = facts
  const rails = device.rails.filter(({ kind }) => kind === 'dc')
  if (device.takesMains || rails.length === 0 || rails.length < device.rails.length) return null
  return benchSupply({
    rails: rails.map((rail) => ({
      voltageV: rail.voltageV,
      currentA: rail.currentA,
      tolerance: toleranceOf(rail.voltageV, rail),
    })),
    lead: supply.lead,
    measuredOhm: options.measuredOhm,
    input: options.machineInput,
  })
}

function whyNot({ device, missing }: PlanFacts, answer: BenchSupplyAnswer | null): Phrase | null {
  if (device.rails.length === 0) {
    missing.push(say`What the machine wants (voltages, AC or DC, currents): read the plate beside its power socket.`)
    return say`What the machine wants is not known: read the plate beside its power socket.`
  }
  if (device.takesMains)
    return say`The machine takes the mains itself; a bench supply cannot stand in for it. Work on its mains side is for a licensed electrician or other qualified person.`
  if (says(device, unfit)) return markedUnfit
  if (device.rails.some((rail) => isDangerous(rail, rail.voltageMaxV ?? rail.voltageV)))
    return say`What the machine takes is dangerous to touch: nobody but a qualified person feeds it, measures on it or joins anything to it.`
  if (device.rails.some(({ kind }) => kind === 'ac'))
    return say`The machine takes AC; a bench supply gives DC. Some such machines bear DC on their rectifier, others make clocks or negative voltages from the AC: ask, do not guess. Go on with its own supply behind the lamp.`
  if (device.rails.some(({ kind }) => kind === null)) {
    missing.push(say`Whether the machine takes AC or DC.`)
    return say`Whether the machine takes AC or DC is not known: look for ⎓ or ~ beside its power socket.`
  }
  return answer?.reading && answer.stages.length === 0 ? answer.reading.says : null
}

function figures(answer: BenchSupplyAnswer): Figure[] {
  return answer.rails.flatMap((rail, index) => {
    const name = answer.rails.length > 1 ? say`Input ${index + 1}, ${volts(rail.voltageV)}` : volts(rail.voltageV)
    const stages = answer.stages.filter((stage) => stage.rail === index)
    return [
      figure(say`${name}: over-voltage at`, volts(rail.overVoltageV), overVoltageWorking(rail)),
      ...(rail.minimumResistanceOhm === null || rail.currentA === null
        ? []
        : [
            figure(
              say`${name}: least resistance`,
              ohms(rail.minimumResistanceOhm),
              say`${volts(Math.abs(rail.voltageV))} / ${amperes(rail.currentA)}`,
            ),
          ]),
      figure(
        say`${name}: limits`,
        joined(
          stages.map((stage) => say`${volts(stage.voltageV)} at ${amperes(stage.limitA, 3)}`),
          say`, `,
        ),
        rail.currentA === null
          ? say`current not known: doubled from step to step`
          : say`shares of ${amperes(rail.currentA)}`,
      ),
      ...(rail.lead
        ? [
            figure(
              say`${name}: lost in the lead`,
              say`${volts(rail.lead.dropV)}, ${percent(rail.lead.dropV / Math.abs(rail.voltageV))}`,
              rail.lead.working,
            ),
          ]
        : []),
      figure(
        say`${name}: a negotiated USB source`,
        rail.usb.suits === 'no'
          ? say`does not suit`
          : rail.usb.suits === 'perhaps'
            ? say`perhaps, later`
            : say`suits, later`,
        rail.usb.reason,
      ),
    ]
  })
}

function steps(facts: PlanFacts, answer: BenchSupplyAnswer): Step[] {
  const { device } = facts
  const several = answer.rails.length > 1
  const count = Math.max(...answer.rails.map((_, index) => answer.stages.filter(({ rail }) => rail === index).length))
  return [
    step(
      'bench-supply.batteries',
      say`Unplugged, every battery out; motors and drives disconnected where they can be, never a picture tube or its feed.`,
      { caution: oldBatteries },
    ),
    ...answer.rails.map((rail, index) =>
      step(
        `bench-supply.resistance-${index + 1}`,
        say`Measure the resistance across the ${volts(rail.voltageV)} input, both ways round, until it stops rising; write down the lower.`,
        {
          expect:
            rail.minimumResistanceOhm === null
              ? say`clearly more than ${ohms(resistanceReadings.shortOhm)}`
              : say`${ohms(rail.minimumResistanceOhm)} or more; silicon does not show, so this excludes a short and no more`,
          unit: 'Ω',
          low: rail.minimumResistanceOhm ?? resistanceReadings.shortOhm,
          high: null,
          stopIf: say`it is less: no power until it is explained`,
        },
      ),
    ),
    ...(several
      ? [
          step(
            'bench-supply.order',
            say`Find the order the rails must come up in, and the point where they share their common.`,
            {
              expect: say`from the manual; memories with −5\u00a0V, +5\u00a0V and +12\u00a0V need the negative one first and lose it last`,
              stopIf: say`the order is not known and the rails cannot be raised together`,
            },
          ),
        ]
      : []),
    ...answer.rails.map((rail, index) =>
      step(
        `bench-supply.set-${index + 1}`,
        say`Output off: set over-voltage to ${volts(rail.overVoltageV)}${rail.voltageV < 0 ? say`; plus to the common, minus to the ${volts(rail.voltageV)} pin` : say``}.`,
        {
          expect: volts(rail.overVoltageV),
          unit: 'V',
          low: 0,
          high: rail.overVoltageV,
          stopIf: say`it cannot be set that low: nothing then ends a rising voltage`,
          power: 'low-voltage',
        },
      ),
    ),
    polarityStep(device.jack.polarity, answer),
    ...Array.from({ length: count }, (_, index) => powerSteps(answer, index)).flat(),
    ...answer.rails.map((rail, index) => {
      const tolerance = toleranceOf(rail.voltageV, device.rails[index])
      const edges = [rail.voltageV * (1 - tolerance), rail.voltageV * (1 + tolerance)]
      const [low, high] = [Math.min(...edges), Math.max(...edges)]
      return step(
        `bench-supply.at-machine-${index + 1}`,
        say`Output on, meter on DC volts: read the ${volts(rail.voltageV)} at the machine’s own terminals.`,
        {
          expect: say`${volts(low, 4)} to ${volts(high, 4)}`,
          unit: 'V',
          low,
          high,
          stopIf: say`it lies outside: mind the lead`,
          power: 'low-voltage',
        },
      )
    }),
    step(
      'bench-supply.off',
      say`Output off, plug out. Before you reach inside, wait and ${acrossCapacitors}.`,
      beforeReach,
    ),
  ]
}

const wantedText = (polarity: 'centre-positive' | 'centre-negative' | null): Phrase =>
  polarity === null
    ? say`as the drawing beside the machine’s jack says; it is not entered`
    : say`${polarityText(polarity)}`

/** With one rail and a jack whose drawing is entered, the sign of the reading decides. */
function polarityStep(polarity: 'centre-positive' | 'centre-negative' | null, { rails }: BenchSupplyAnswer): Step {
  const [rail, ...others] = rails
  const shared = { link: 'plug', power: 'low-voltage', caution: reversed } as const
  if (polarity === null || !rail || others.length > 0)
    return step(
      'bench-supply.polarity',
      say`Meter on DC volts: voltage and sign on the plug that goes into the machine.`,
      {
        expect: wantedText(polarity),
        stopIf: say`sign, or pin, is not certain`,
        ...shared,
      },
    )
  const plus = polarity === 'centre-positive'
  return step(
    'bench-supply.polarity',
    say`Meter on DC volts: voltage and sign on the plug that goes into the machine, black lead on sleeve, red on centre.`,
    {
      expect: say`${wantedText(polarity)}: ${plus ? say`above` : say`below`} 0\u00a0V`,
      unit: 'V',
      low: plus ? 0 : -rail.overVoltageV,
      high: plus ? rail.overVoltageV : 0,
      strict: true,
      stopIf: say`the sign is the other one, or the machine’s pin is not certain`,
      ...shared,
    },
  )
}

/** Output on, and what each rail draws then. A source that stands at its limit is limiting: the limit itself is outside. */
function powerSteps(answer: BenchSupplyAnswer, index: number): Step[] {
  const stages = answer.rails.flatMap((_, rail) => {
    const stage = answer.stages.filter((entry) => entry.rail === rail)[index]
    return stage ? [stage] : []
  })
  const [first] = stages
  if (!first) throw new RangeError(`no stage ${index}`)
  const several = stages.length > 1
  const settings = joined(
    stages.map(
      (stage) =>
        say`${several ? say`${volts(stage.railV)} rail: ` : say``}${volts(stage.voltageV)}, limit ${amperes(stage.limitA, 3)}`,
    ),
    say`; `,
  )
  const below = (limitA: number): Partial<Step> => ({
    unit: 'A',
    low: -limitA,
    high: limitA,
    strict: true,
    stopIf: first.stopIf,
    power: 'low-voltage',
  })
  const on = step(
    `bench-supply.step-${index + 1}`,
    say`Set ${settings}. Output on for ${duration(first.holdS)}${several ? say`, all together or in their order` : say`, and read the current it shows`}.`,
    {
      ...(several ? { stopIf: first.stopIf, power: 'low-voltage' as const } : below(first.limitA)),
      expect: several ? say`each rail below its limit, each voltage steady` : first.expect,
      caution: index === 0 ? noMoreCurrent : null,
    },
  )
  const read = several
    ? stages.map((stage) =>
        step(
          `bench-supply.step-${index + 1}-rail-${stage.rail + 1}`,
          say`Read the current of the ${volts(stage.railV)} rail at ${volts(stage.voltageV)}, before ${duration(first.holdS)} are over.`,
          { ...below(stage.limitA), expect: say`below ${amperes(stage.limitA, 3)}` },
        ),
      )
    : []
  return [on, ...read]
}
