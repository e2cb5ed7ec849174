import { atMost } from '../physics/tolerance.js'
import { commonPractice } from '../tables/source.js'
import {
  converterLeast,
  converterReserve,
  converterSizesVA,
  extraLowVoltageMostV,
  voltageStopAbove,
  wideWindowRatio,
} from '../tables/thresholds.js'
import { listed, or, type Phrase, say } from '../words/phrase.js'
import { decimal, voltAmperes, volts } from '../words/quantity.js'
import { nearWiring, underPower } from './action.js'
import type { Converter as ConverterFacts } from './case/request.js'
import type { MainsSituation } from './case/situation.js'
import { american, converterOf, plateOf } from './example.js'
import { type InputPower, inputPower } from './inputPower.js'
import { type Judgement, stop, type Text, together, unknown } from './judgement.js'
import { judgeVoltage } from './mainsVoltage.js'
import { nominalOutputV } from './matching/nominalOutput.js'
import { mainsTopic } from './topic.js'
import { ratingPlate } from './words.js'

/** Phase-cut converters and supplies: decided in one place for the check and for choosing a converter. */
export const phaseCut = commonPractice(
  'Electronic voltage converters',
  'they cut the sine to pieces for heaters and lamps; the crest keeps its height, which is what a supply charges to',
)

/** An autotransformer's two sides share a winding. */
export const noIsolation = commonPractice(
  'Autotransformers',
  'input and output share one winding: it changes the voltage and isolates nothing',
)

/** The smallest usual size that carries a need with reserve [VA]; null beyond the largest. */
export const standardSizeVA = (neededVA: number): number | null =>
  converterSizesVA.value.find((size) => atMost(neededVA, size)) ?? null

/** Whether a voltage converter is needed, and whether the one that is used suits. */
export const converter = mainsTopic({
  name: 'converter',
  words: say`a voltage converter`,
  links: ['converter'],
  asks: [
    'converter.kind',
    'converter.outputV',
    'converter.ratedVA',
    'site.country',
    'site.voltageV',
    'supply.input.powerVA',
    'supply.outputs.currentA',
  ],
  when: {
    stop: {
      rule: say`The converter is electronic, or its rating is below what the supply takes.`,
      example: { supply: { ...american, ...plateOf(120, 120, [60], 1) }, converter: converterOf(100) },
    },
    unknown: {
      rule: say`This mains needs a converter and none is described, or its kind, output, rating or the need is not known.`,
      example: { supply: plateOf(120) },
    },
    caution: {
      rule: say`The rating carries the need with less than ${decimal(converterReserve.value)} times in hand.`,
      example: { supply: plateOf(120, 120, [60], 0.75), converter: converterOf(100) },
    },
    clear: {
      rule: say`The rating is ${decimal(converterReserve.value)} times the need or more.`,
      example: { supply: plateOf(120, 120, [60], 0.5), converter: converterOf(100) },
    },
  },
  judge(situation) {
    const used = situation.converter
    if (used) return together([judgeUsed(situation, used), ...inputOpen(situation, used)])
    return needed(situation) ? [unknown(() => noneDescribed(situation))] : []
  },
})

/** A converter is made for one mains: on another, or on one of several that may be met, it gives something else. */
function inputOpen({ site }: MainsSituation, used: ConverterFacts): Judgement[] {
  const voltages = [...new Set(site.systems.flatMap(({ voltageV }) => voltageV ?? []))].toSorted((a, b) => a - b)
  const [lowest] = voltages
  const highest = voltages[voltages.length - 1]
  const known = lowest !== undefined && highest !== undefined
  if (known && atMost(highest, lowest * voltageStopAbove.value)) return []
  const gives = say`Whether the converter gives ${used.outputV === null ? say`its output` : volts(used.outputV)}`
  return [
    unknown(() => ({
      title: known
        ? say`${gives} depends on which mains it meets: ${listed(
            voltages.map((voltageV) => volts(voltageV)),
            or,
          )}`
        : say`${gives} is not known: the mains it meets is not known`,
      why: say`A converter changes the voltage in one proportion: on a higher mains it gives as many times more.`,
      working: known ? [say`${volts(highest)} / ${volts(lowest)} = ${decimal(highest / lowest, 3)}`] : [],
      action: say`Find out which mains the socket carries, enter its voltage, and read on the converter’s plate that its input names it.`,
      sources: [ratingPlate, voltageStopAbove.source],
    })),
  ]
}

/** Needed where the plate's windows, not its kind, are what stops it, and no selector position suits. */
function needed(situation: MainsSituation): boolean {
  const { input } = situation.supply
  if (input.kind === 'dc' || input.threePhase || situation.reach.voltageV === null) return false
  // extra-low voltage is no mains to convert to
  if (input.windows.length > 0 && input.windows.every(({ max }) => max <= extraLowVoltageMostV.value)) return false
  const open = { ...situation, supply: { ...situation.supply, input: { ...input, selectorV: null } } }
  const [verdict] = judgeVoltage(input.windows.length > 0 ? open : situation)
  return verdict?.outcome === 'stop'
}

/** What a converter has to carry: the supply, and all else that it feeds at once. */
function withOthers(own: InputPower, otherVA: number): InputPower {
  if (otherVA === 0) return own
  const powerVA = own.powerVA + otherVA
  return {
    powerVA,
    basis: say`${own.basis}, and all else that it feeds`,
    get working() {
      return [
        ...own.working,
        say`${voltAmperes(own.powerVA, 4, 'up')} + ${voltAmperes(otherVA)} of the other loads = ${voltAmperes(powerVA, 4, 'up')}`,
      ]
    },
    sources: own.sources,
  }
}

function judgeUsed(situation: MainsSituation, used: ConverterFacts): Judgement {
  if (used.kind === 'electronic') return stop(() => electronic(situation))
  const own = inputPower(situation.supply)
  const power = own && withOthers(own, used.otherLoadsVA ?? 0)
  const { ratedVA } = used
  if (used.kind === null || used.outputV === null || ratedVA === null || power === null) {
    if (ratedVA !== null && power !== null && !atMost(converterLeast.value * power.powerVA, ratedVA))
      return stop(() => rated(situation, used, ratedVA, power, 'stop'))
    return unknown(() => missing(situation, used, power))
  }
  const outcome = atMost(converterReserve.value * power.powerVA, ratedVA)
    ? 'clear'
    : atMost(converterLeast.value * power.powerVA, ratedVA)
      ? 'caution'
      : 'stop'
  return { outcome, say: () => rated(situation, used, ratedVA, power, outcome) }
}

function sizing(power: InputPower): { neededVA: number; line: Phrase; advice: Phrase } {
  const neededVA = converterReserve.value * power.powerVA
  const size = standardSizeVA(neededVA)
  return {
    neededVA,
    line: say`${decimal(converterReserve.value)} × ${voltAmperes(power.powerVA, 4, 'up')} = ${voltAmperes(neededVA, 4, 'up')}`,
    advice:
      size === null
        ? say`more than the ${voltAmperes(converterSizesVA.value[converterSizesVA.value.length - 1] ?? 0)} usually offered`
        : say`${voltAmperes(size)}`,
  }
}

function rated(
  { site, mains, supply }: MainsSituation,
  used: ConverterFacts,
  ratedVA: number,
  power: InputPower,
  outcome: 'stop' | 'caution' | 'clear',
): Text {
  const { line, advice } = sizing(power)
  const ratio = ratedVA / power.powerVA
  // what was insulated for its own mains may stand at all of the other
  const above =
    mains.voltageV !== null && used.outputV !== null && mains.voltageV > used.outputV * wideWindowRatio.value
      ? say`, and may stand up to ${volts(mains.voltageV)} above earth where the ${supply.called} was insulated for ${volts(used.outputV)}; a double-wound transformer keeps that away`
      : say``
  const isolation =
    used.kind === 'autotransformer'
      ? say` An autotransformer does not isolate: its output is as dangerous to touch as the mains${above}.`
      : say``
  const plate = say`Read the converter’s own plate: its input has to name ${mains.voltageV === null || site.systems.length > 1 ? say`the mains voltage of the site` : volts(mains.voltageV)} and the frequency there.`
  const sources = [...power.sources, converterReserve.source, ...(used.kind === 'autotransformer' ? [noIsolation] : [])]
  const working = [
    ...power.working,
    say`input power from ${power.basis}`,
    say`${voltAmperes(ratedVA)} / ${voltAmperes(power.powerVA, 4, 'up')} = ${decimal(ratio, 3, 'down')}`,
    line,
  ]
  if (outcome === 'stop')
    return {
      title: say`A converter of ${voltAmperes(ratedVA)} is too small for ${voltAmperes(power.powerVA, 4, 'up')}`,
      why: say`Overloaded, it overheats, and its output sags under the peaks of a rectifier.`,
      working,
      action: say`Use one of ${advice} or more. ${plate}`,
      sources: [...sources, converterLeast.source],
    }
  if (outcome === 'caution')
    return {
      title: say`A converter of ${voltAmperes(ratedVA)} carries ${voltAmperes(power.powerVA, 4, 'up')} with little reserve: ${decimal(ratio, 3, 'down')} times`,
      why: say`Sellers advise ${decimal(converterReserve.value)} times or more, for switch-on and for warmth.${isolation}`,
      working,
      action: [
        say`Prefer one of ${advice} or more.`,
        underPower(say`With this one feel for heat in the first hour, with the plug pulled.`, 'mains'),
        plate,
      ],
      sources,
    }
  return {
    title: say`A converter of ${voltAmperes(ratedVA)} carries ${voltAmperes(power.powerVA, 4, 'up')} with reserve: ${decimal(ratio, 3, 'down')} times`,
    why: say`${decimal(converterReserve.value)} times or more is what sellers advise.${isolation}`,
    working,
    action: say`${plate} It does not change the frequency.`,
    sources,
  }
}

const electronic = ({ supply }: MainsSituation): Text => ({
  title:
    supply.called === 'machine'
      ? say`An electronic converter must not feed a machine`
      : say`An electronic converter must not feed a power supply`,
  why: say`It cuts the sine for heaters and lamps; the crest stays as high as the mains, and a supply charges to the crest. Both may be destroyed.`,
  working: [],
  action: nearWiring(say`Use a transformer: an autotransformer or an isolating one.`),
  sources: [phaseCut],
})

function missing({ supply }: MainsSituation, used: ConverterFacts, power: InputPower | null): Text {
  const facts = [
    used.kind === null ? 'its kind' : null,
    used.outputV === null ? 'its output voltage' : null,
    used.ratedVA === null ? 'its rating in VA' : null,
    power === null ? `what the ${supply.called} takes` : null,
  ].filter((fact) => fact !== null)
  return {
    title: say`Whether the converter suits is not known: ${facts.join(', ')} ${facts.length > 1 ? say`are` : say`is`} missing`,
    why: say`Too small a converter overheats; an electronic one destroys a supply.`,
    working: power ? [...power.working, sizing(power).line] : [],
    action: say`Read the converter’s plate (kind, output voltage, VA)${power ? say`; it needs ${sizing(power).advice}` : say` and the input amperes, VA or watts on the ${supply.called}’s plate`}. A heavy one is a transformer; a light one of high wattage is electronic and not to be used.`,
    sources: [...(power?.sources ?? [ratingPlate]), converterReserve.source],
  }
}

function noneDescribed(situation: MainsSituation): Text {
  const power = inputPower(situation.supply)
  const outputV = nominalOutputV(situation.supply.input.windows, situation.mains.voltageV)
  const from = situation.mains.voltageV === null ? '' : say` from ${volts(situation.mains.voltageV)}`
  const to = outputV === null ? '' : say` to ${volts(outputV)}`
  const size = power ? say`, ${sizing(power).advice} or more` : ''
  return {
    title: say`This mains needs a converter${from}${to}${size}; none is described`,
    why: say`Without one the ${situation.supply.called} must not meet this mains at all.`,
    working: power
      ? [...power.working, say`input power from ${power.basis}`, sizing(power).line]
      : [say`what the ${situation.supply.called} takes is not on the plate as entered`],
    action: say`${situation.supply.called === 'machine' ? say`Enter` : say`Use a supply made for this mains, which is simpler; or enter`} the converter you have: a transformer${from}${to}${size}, never an electronic one. It does not change the frequency.`,
    sources: [...(power?.sources ?? [ratingPlate]), converterReserve.source, converterSizesVA.source, phaseCut],
  }
}
