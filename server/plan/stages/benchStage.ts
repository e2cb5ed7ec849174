import { amperes, duration, ohms, percent, volts } from '../../physics/quantity.js'
import { benchRules, resistanceReadings } from '../../tables/benchSupply.js'
import { type BenchSupplyAnswer, benchSupply, isHazardous } from '../bench/benchSupply.js'
import type { Figure, FirstPowerStage, Step } from '../firstPowerPlan.js'
import { hazardousOutput, noMoreCurrent, oldBatteries, reversed, storedCharge } from './cautions.js'
import type { PlanFacts } from './facts.js'
import { toleranceOf } from './rails.js'
import { figure, step } from './step.js'

/** Stage 3: the machine alone on a current-limited bench supply. */
export function benchStage(facts: PlanFacts): FirstPowerStage {
  const { device } = facts
  const answer = benchPlan(facts)
  const leftOut = whyNot(facts, answer)
  for (const rail of device.rails)
    if (rail.currentA === null && !device.takesMains)
      facts.missing.push(
        `What the machine draws at ${volts(rail.voltageV)}: the current limit then starts at ${amperes(benchRules.unknownFirstA)}.`,
      )
  return {
    name: 'bench-supply',
    title: 'The machine alone, on a current-limited bench supply',
    leftOut,
    figures: leftOut === null && answer ? figures(answer) : [],
    steps: leftOut === null && answer ? steps(facts, answer) : [],
    sources: leftOut === null && answer ? answer.sources : [],
  }
}

/** Why a machine gets no power from anything: its input reads as a short, or far too low; null where it does not. */
export function readsShort(facts: PlanFacts): string | null {
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

function whyNot({ device, missing }: PlanFacts, answer: BenchSupplyAnswer | null): string | null {
  if (device.rails.length === 0) {
    missing.push('What the machine wants (voltages, AC or DC, currents): read the plate beside its power socket.')
    return 'What the machine wants is not known: read the plate beside its power socket.'
  }
  if (device.takesMains)
    return 'The machine takes the mains itself; a bench supply cannot stand in for it. Work on its mains side is for a licensed electrician or other qualified person.'
  if (device.rails.some(({ kind }) => kind === 'ac'))
    return 'The machine takes AC; a bench supply gives DC. Some such machines bear DC on their rectifier, others make clocks or negative voltages from the AC: ask, do not guess. Go on with its own supply behind the lamp.'
  if (device.rails.some(({ kind }) => kind === null)) {
    missing.push('Whether the machine takes AC or DC.')
    return 'Whether the machine takes AC or DC is not known: look for ⎓ or ~ beside its power socket.'
  }
  return answer?.reading && answer.stages.length === 0 ? answer.reading.says : null
}

function figures(answer: BenchSupplyAnswer): Figure[] {
  return answer.rails.flatMap((rail, index) => {
    const name = answer.rails.length > 1 ? `Input ${index + 1}, ${volts(rail.voltageV)}` : volts(rail.voltageV)
    const stages = answer.stages.filter((stage) => stage.rail === index)
    return [
      figure(
        `${name}: over-voltage at`,
        volts(rail.overVoltageV),
        answer.working.find((line) => line.startsWith('over-voltage') && line.endsWith(volts(rail.overVoltageV))) ?? '',
      ),
      ...(rail.minimumResistanceOhm === null || rail.currentA === null
        ? []
        : [
            figure(
              `${name}: least resistance`,
              ohms(rail.minimumResistanceOhm),
              `${volts(Math.abs(rail.voltageV))} / ${amperes(rail.currentA)}`,
            ),
          ]),
      figure(
        `${name}: limits`,
        stages.map((stage) => `${volts(stage.voltageV)} at ${amperes(stage.limitA, 3)}`).join(', '),
        rail.currentA === null ? 'current not known: doubled from step to step' : `shares of ${amperes(rail.currentA)}`,
      ),
      ...(rail.lead
        ? [
            figure(
              `${name}: lost in the lead`,
              `${volts(rail.lead.dropV)}, ${percent(rail.lead.dropV / Math.abs(rail.voltageV))}`,
              answer.working.find((line) => line.startsWith('lead:') && line.includes('lost')) ?? '',
            ),
          ]
        : []),
      figure(
        `${name}: a negotiated USB source`,
        rail.usb.suits === 'no' ? 'does not suit' : rail.usb.suits === 'perhaps' ? 'perhaps, later' : 'suits, later',
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
      'Machine unplugged, every battery and back-up cell out; motors, drives and picture tube disconnected where they can be.',
      { caution: oldBatteries },
    ),
    ...answer.rails.map((rail, index) =>
      step(
        `bench-supply.resistance-${index + 1}`,
        `Measure the resistance across the ${volts(rail.voltageV)} input, both ways round; wait until it stops rising and write down the lower reading.`,
        {
          expect:
            rail.minimumResistanceOhm === null
              ? `clearly more than ${ohms(resistanceReadings.shortOhm)}`
              : `${ohms(rail.minimumResistanceOhm)} or more; silicon does not show, so this excludes a short and no more`,
          unit: 'Ω',
          low: rail.minimumResistanceOhm ?? resistanceReadings.shortOhm,
          high: null,
          stopIf: 'it is less: no power until it is explained',
        },
      ),
    ),
    ...(several
      ? [
          step(
            'bench-supply.order',
            'Find the order the rails must come up in, and the point where they share their common.',
            {
              expect:
                'from the manual; memories with −5\u00a0V, +5\u00a0V and +12\u00a0V need the negative one first and lose it last',
              stopIf: 'the order is not known and the rails cannot be raised together',
            },
          ),
        ]
      : []),
    ...answer.rails.map((rail, index) =>
      step(
        `bench-supply.set-${index + 1}`,
        `Output off: set over-voltage to ${volts(rail.overVoltageV)}${rail.voltageV < 0 ? `; plus to the common, minus to the ${volts(rail.voltageV)} pin` : ''}.`,
        {
          expect: volts(rail.overVoltageV),
          unit: 'V',
          low: null,
          high: rail.overVoltageV,
        },
      ),
    ),
    step('bench-supply.polarity', 'Measure voltage and sign on the plug that will go into the machine.', {
      expect: polarityText(device.jack.polarity),
      stopIf: 'sign, or pin, is not certain',
      caution: reversed,
    }),
    ...Array.from({ length: count }, (_, index) => powerStep(answer, index)).map((each, index) =>
      index === 0 && answer.rails.some(isHazardous) ? { ...each, caution: hazardousOutput } : each,
    ),
    ...answer.rails.map((rail, index) => {
      const tolerance = toleranceOf(rail.voltageV, device.rails[index])
      const edges = [rail.voltageV * (1 - tolerance), rail.voltageV * (1 + tolerance)]
      const [low, high] = [Math.min(...edges), Math.max(...edges)]
      return step(
        `bench-supply.at-machine-${index + 1}`,
        `Read the ${volts(rail.voltageV)} at the machine’s own terminals, output on.`,
        {
          expect: `${volts(low, 4)} to ${volts(high, 4)}`,
          unit: 'V',
          low,
          high,
          stopIf: 'it lies outside: mind the lead',
        },
      )
    }),
    step(
      'bench-supply.off',
      'Output off, plug out. Before you reach inside, wait and measure across the large capacitors.',
      {
        expect: 'nearly 0\u00a0V',
        unit: 'V',
        low: null,
        high: null,
        caution: storedCharge,
      },
    ),
  ]
}

const polarityText = (polarity: 'centre-positive' | 'centre-negative' | null): string =>
  polarity === null ? 'as the drawing beside the machine’s jack says; it is not entered' : polarity.replace('-', ' ')

function powerStep(answer: BenchSupplyAnswer, index: number): Step {
  const stages = answer.rails.flatMap((_, rail) => {
    const stage = answer.stages.filter((entry) => entry.rail === rail)[index]
    return stage ? [stage] : []
  })
  const [first] = stages
  if (!first) throw new RangeError(`no stage ${index}`)
  const several = stages.length > 1
  const settings = stages
    .map(
      (stage) =>
        `${several ? `${volts(stage.railV)} rail: ` : ''}${volts(stage.voltageV)}, limit ${amperes(stage.limitA, 3)}`,
    )
    .join('; ')
  return step(
    `bench-supply.step-${index + 1}`,
    `Set ${settings}. Output on for ${duration(first.holdS)}${several ? ', all together or in their order' : ''}.`,
    {
      expect: several ? 'each rail below its limit, each voltage steady' : first.expect,
      unit: several ? null : 'A',
      low: several ? null : 0,
      high: several ? null : first.limitA,
      stopIf: first.stopIf,
      caution: index === 0 ? noMoreCurrent : null,
    },
  )
}
