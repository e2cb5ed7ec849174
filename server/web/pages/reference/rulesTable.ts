import * as bench from '../../../tables/benchSupply.js'
import * as capacitors from '../../../tables/capacitors.js'
import * as dummy from '../../../tables/dummyLoad.js'
import * as examine from '../../../tables/examineOrder.js'
import * as first from '../../../tables/firstPower.js'
import * as ratings from '../../../tables/fuseRatings.js'
import * as selection from '../../../tables/fuseSelection.js'
import { heatContentVoltageExponent } from '../../../tables/lamps.js'
import { meterLoads } from '../../../tables/meterLoads.js'
import * as rectifiers from '../../../tables/rectifiers.js'
import * as residual from '../../../tables/residualCurrent.js'
import * as lamp from '../../../tables/seriesLamp.js'
import type { Source } from '../../../tables/source.js'
import { usbCable, usbNoLimiter } from '../../../tables/usbPower.js'
import { joined, type Phrase, say, type Words } from '../../../words/phrase.js'
import {
  amperes,
  decimal,
  duration,
  farads,
  hertz,
  joules,
  ohms,
  percent,
  plain,
  quantityRange,
  seconds,
  volts,
  watts,
} from '../../../words/quantity.js'
import { tell } from '../../../words/tell.js'
import { slug, type Table } from './pageTable.js'

type Rule = readonly [words: Words, value: Words | null, sources: Source | readonly Source[]]

/** The value with the span it is found in, where there is one. */
function estimate({ value, unit, range, source }: lamp.Estimate): [value: Words, source: Source] {
  const shown = (one: number): Phrase => (unit === '1' ? decimal(one) : plain(one, unit))
  return [range ? say`${shown(value)} (${shown(range[0])} to ${shown(range[1])})` : shown(value), source]
}

const seriesLamp = (): Rule[] => [
  ['Part of its mains at which a unit must still run', ...estimate(lamp.assuredShare)],
  ['Volts at which a converter starts, over the mains crest', ...estimate(lamp.defaultStartShare)],
  ['Volts at which a converter gives up, over those at which it starts', ...estimate(lamp.stopShare)],
  ['Wait of a converter before it tries again', ...estimate(lamp.restartS)],
  ['Drop of a bridge rectifier', ...estimate(lamp.bridgeDropV)],
  ['Rectifier diode, saturation current', amperes(lamp.bridgeDiode.saturationA), lamp.bridgeDiode.sources],
  ['Rectifier diode, emission coefficient', decimal(lamp.bridgeDiode.emission), lamp.bridgeDiode.sources],
  ['Rectifier diode, series resistance', ohms(lamp.bridgeDiode.seriesOhm), lamp.bridgeDiode.sources],
  [
    'Lamp volts over rated from which it is overrun',
    decimal(lamp.lampOverVoltage.caution),
    lamp.lampOverVoltage.sources,
  ],
  [
    'Lamp volts over rated from which it fails at once',
    decimal(lamp.lampOverVoltage.fails),
    lamp.lampOverVoltage.sources,
  ],
  ['Largest ratio of the watts of two lamps in series', ...estimate(lamp.unequalSeriesRatio)],
  [
    'Filament counts as settled within',
    say`${plain(lamp.settledBand.kelvin, 'K')} or ${percent(lamp.settledBand.share)}`,
    lamp.settledBand.sources,
  ],
  [
    'Rated volts over mains volts of a lamp that serves alone',
    say`${decimal(lamp.lampFitsMains.from)} to ${decimal(lamp.lampFitsMains.to)}`,
    lamp.lampFitsMains.sources,
  ],
  [
    'Heat stored in a lamp for another voltage: exponent of the voltage',
    decimal(heatContentVoltageExponent.value),
    heatContentVoltageExponent.source,
  ],
  ['Largest current of a drawn load line, over the lamps’ into a short', ...estimate(lamp.drawnCurrents)],
  ['Load line', null, lamp.loadLineSource],
  ['The series lamp as a practice', null, lamp.seriesLampPractice],
  ['The series lamp isolates nothing', null, lamp.noIsolationSource],
  ['Current through a person behind the lamp', null, lamp.bodyCurrentSource],
]

const firstPower = (): Rule[] => [
  ...(['switch-mode', 'transformer'] as const).map(
    (kind): Rule => [
      `Idle power of a ${kind} supply, if not measured`,
      say`${percent(first.idlePower[kind].share)} of its rating, at least ${watts(first.idlePower[kind].floorW)}`,
      first.idlePower.source,
    ],
  ),
  [
    'Reservoir capacitor of a switch-mode input, by its rated power',
    say`${plain(first.reservoirPerWatt.lowFaradPerW * 1e6, 'µF/W')} up to ${volts(first.reservoirPerWatt.lowMainsV)}, else ${plain(first.reservoirPerWatt.highFaradPerW * 1e6, 'µF/W')}`,
    first.reservoirPerWatt.source,
  ],
  [
    'Smallest voltage, current and power a plan is worked out from',
    say`${volts(first.leastFigures.voltageV)}, ${amperes(first.leastFigures.currentA)}, ${watts(first.leastFigures.powerW)}`,
    first.leastFigures.source,
  ],
  [
    'Mains a plan is worked out for',
    say`${volts(first.plannedMains.minV)} to ${volts(first.plannedMains.maxV)}, ${hertz(first.plannedMains.minHz)} to ${hertz(first.plannedMains.maxHz)}`,
    first.plannedMains.source,
  ],
  [
    'Reservoir capacitors whose switch-on is worked out with a plan, and for how long',
    say`${farads(first.plannedSwitchOn.leastF)} to ${farads(first.plannedSwitchOn.mostF)}, ${seconds(first.plannedSwitchOn.runS)}`,
    first.plannedSwitchOn.source,
  ],
  ['Wait before the lamp is judged', seconds(first.flashOver.atLeastS), first.flashOver.source],
  ['Supply alone is held on for', duration(first.settleTimes.aloneS), first.settleTimes.source],
  ['Supply into a dummy load is held on for', duration(first.settleTimes.loadS), first.settleTimes.source],
  ['Supply and machine are held on for', duration(first.settleTimes.togetherS), first.settleTimes.source],
  ['Meter before eye', null, first.resultsFromMeter],
]

const benchSupply = (): Rule[] => [
  [
    'Over-voltage protection, over nominal',
    decimal(bench.benchRules.overVoltage),
    [bench.overVoltageSetting, bench.benchRules.source],
  ],
  ['First limit where nothing is known', amperes(bench.benchRules.unknownFirstA), bench.unknownCurrent],
  ['Growth of that limit from step to step', decimal(bench.benchRules.unknownGrowth), bench.unknownCurrent],
  ['Rail reads as a short below', ohms(bench.resistanceReadings.shortOhm), bench.resistanceReadings.source],
  ['Rail reads as open above', ohms(bench.resistanceReadings.openOhm), bench.resistanceReadings.source],
  ['Hold times', null, bench.holdTimes],
  ['Latch-up of a constant-power input', null, [bench.latchUp, bench.latchUpFactor]],
  ['Sense leads', null, bench.senseLeads],
  ['Order of rails', null, bench.railOrder],
  ['Back-feed into a regulator', null, bench.backFeed],
  ['USB cable, most it loses', volts(usbCable.dropV), usbCable.source],
  ['USB source tolerance', percent(usbCable.sourceTolerance), usbCable.source],
  ['A USB source limits nothing', null, usbNoLimiter],
]

const dummyLoad = (): Rule[] => [
  [
    'Points of load',
    joined(
      dummy.loadPoints.fractions.map((share) => percent(share)),
      ', ',
    ),
    dummy.loadPoints.source,
  ],
  ['Rating over dissipated power of a load resistor', decimal(dummy.powerMargin.factor), dummy.powerMargin.source],
  [
    'Warming of a resistor at its full rating',
    plain(dummy.resistorWarming.fullRiseK, 'K'),
    dummy.resistorWarming.source,
  ],
  ['Time of warming', seconds(dummy.resistorWarming.heatTimeS), dummy.resistorWarming.source],
  ['Tolerance of other regulated outputs', percent(dummy.otherTolerance.tolerance), dummy.otherTolerance.source],
  ['Bipolar logic, most it takes', null, dummy.logicMaximum],
  ['Rise of an unregulated output outside the table', percent(dummy.largestRise.rise), dummy.largestRise.source],
  ['Band of an unregulated output', percent(dummy.unregulatedBand.tolerance), dummy.unregulatedBand.source],
  ['Diode drop, off load', volts(rectifiers.diodeDrop.offLoadV), rectifiers.diodeDrop.source],
  ['Diode drop, loaded', volts(rectifiers.diodeDrop.loadedV), rectifiers.diodeDrop.source],
  [
    'Loaded volts of a bridge over rated volts of its winding',
    decimal(rectifiers.loadedRule.factor),
    rectifiers.loadedRule.source,
  ],
  ['Off-load volts', null, [rectifiers.offLoadHigh, rectifiers.cheapAdaptors]],
  ['Ripple', null, rectifiers.rippleSource],
]

const capacitor = (): Rule[] => {
  const { reformingNeed: need, reformingRules: rules } = capacitors
  return [
    [say`Reforming wanted above ${volts(need.highVoltageV)}`, `after ${need.highVoltageYears} years`, need.source],
    [say`Reforming wanted up to ${volts(need.highVoltageV)}`, `after ${need.lowVoltageYears} years`, need.source],
    ['Capacitor to be replaced', `after ${need.replaceYears} years`, need.source],
    [say`Reforming resistor up to ${volts(rules.lowVoltageV)}`, ohms(rules.lowSeriesOhm), rules.source],
    [say`Reforming resistor above ${volts(rules.lowVoltageV)}`, ohms(rules.highSeriesOhm), rules.source],
    ['Reforming current at most', amperes(rules.chargeA), rules.source],
    ['Share of the voltage the reforming resistor may take', percent(rules.largestDrop), capacitors.reformingDrop],
    ['Reforming step', duration(rules.stepS), capacitors.reformingSteps],
    ['Reforming, last step', duration(rules.lastS), rules.source],
    [
      'Leakage accepted after reforming',
      say`${decimal(capacitors.acceptedLeakage.factor)} CV, at least ${amperes(capacitors.acceptedLeakage.floorA)}`,
      capacitors.acceptedLeakage.source,
    ],
    [
      'Time for a discharge, if none is asked for',
      seconds(capacitors.dischargeWithin.timeS),
      capacitors.dischargeWithin.source,
    ],
    [
      'Stored energy that is hazardous by itself',
      joules(capacitors.hazardousEnergy.energyJ),
      capacitors.hazardousEnergy.source,
    ],
    [
      'Voltage across one bleeder resistor at most',
      volts(capacitors.resistorVoltage.voltageV),
      capacitors.resistorVoltage.source,
    ],
    ['Measure after the wait', null, capacitors.measureAfter],
    ['Paper capacitors in clear resin', null, capacitors.impregnatedPaper],
  ]
}

const examining = (): Rule[] => [
  ...Object.entries(examine.likelihoodCounts).map(
    ([word, counts]): Rule => [
      say`What “${word}” counts in the order of examinations`,
      decimal(counts),
      examine.examineOrderSource,
    ],
  ),
  ...Object.entries(examine.placeCounts).map(
    ([place, counts]): Rule => [say`What “${place}” makes trouble count`, decimal(counts), examine.examineOrderSource],
  ),
  [
    'Watts of the lamp over those of a transformer’s load',
    decimal(examine.lampTimes.transformer),
    examine.lampTimes.source,
  ],
  [
    'Watts of the lamp over those of a switch-mode load',
    decimal(examine.lampTimes['switch-mode']),
    examine.lampTimes.source,
  ],
  ...meterLoads.map(({ ohm, what, sources }): Rule => [`What ${what} loads with`, ohms(ohm), sources]),
  ['Residual-current device for people, rated', amperes(residual.residualTrip.ratedA), residual.residualTrip.source],
  ['It may trip from', amperes(residual.residualTrip.mayTripA), residual.residualTrip.source],
  [
    'Most that healthy leakage may come to on it',
    amperes(residual.residualTrip.standingA),
    residual.residualTrip.source,
  ],
  [
    'Ground-fault interrupter, must not trip below',
    amperes(residual.groundFaultTrip.leastA),
    residual.groundFaultTrip.source,
  ],
  [
    'Ground-fault interrupter, must trip from',
    amperes(residual.groundFaultTrip.mostA),
    residual.groundFaultTrip.source,
  ],
]

const fuse = (): Rule[] => [
  [
    'Ambient temperature of fuse ratings',
    plain(selection.referenceAmbientC.value, '°C'),
    selection.referenceAmbientC.source,
  ],
  [
    'A published ambient point counts within',
    plain(selection.ambientMatchC.value, '°C'),
    selection.ambientMatchC.source,
  ],
  [
    'Two mains count as one for a fuse within',
    percent(selection.nominalMatchOfMains.value),
    selection.nominalMatchOfMains.source,
  ],
  ['BS 1362, largest link', amperes(ratings.bs1362LargestA.value), ratings.bs1362LargestA.source],
  ['BS 1362, rated voltage', volts(ratings.bs1362RatedV.value), ratings.bs1362RatedV.source],
  ['BS 1362, breaking capacity', amperes(ratings.bs1362BreakingA.value), ratings.bs1362BreakingA.source],
  [
    'Plug fuse for small appliances',
    say`${amperes(ratings.plugFuseSmall.ratedA)} up to ${watts(ratings.plugFuseSmall.uptoW)}`,
    ratings.plugFuseSmall.source,
  ],
  [
    'Ratings taken for those of a small link',
    quantityRange(ratings.plausibleRatedA.min, ratings.plausibleRatedA.max, 'A'),
    ratings.plausibleRatedA.source,
  ],
  [
    'Bare number read as milliamperes',
    `from ${ratings.bareNumber.milliamperesFrom}, below ${ratings.bareNumber.milliamperesBelow}`,
    ratings.bareNumber.source,
  ],
  ['Bare number read as amperes', `up to ${ratings.bareNumber.amperesTo}`, ratings.bareNumber.source],
  ['BS 646 links', null, ratings.bs646Note],
  [
    'Replacing a link',
    null,
    [selection.likeWithLike.replacing, selection.likeWithLike.sameSize, selection.likeWithLike.h],
  ],
  ['Rated voltage of a link', null, selection.voltageRule],
  ['Alternating-current link on direct current', null, selection.dcRule],
  ['Breaking capacity and fault current', null, selection.breakingRule],
  ['Both poles fused', null, selection.bothPoles],
  ['UL and IEC links', null, selection.notInterchangeable],
  ['Fuse of a unit for two voltages', null, selection.dualVoltage],
  ['Which prescription counts', null, selection.sourceOfPrescription],
  ['An open link', null, selection.currentLimited],
]

const parts = [
  { use: 'series lamp', rules: seriesLamp },
  { use: 'first power-up', rules: firstPower },
  { use: 'bench supply', rules: benchSupply },
  { use: 'dummy load and off-load volts', rules: dummyLoad },
  { use: 'capacitors', rules: capacitor },
  { use: 'fuse-links', rules: fuse },
  { use: 'examining', rules: examining },
]

export const rulesTable: Table = {
  name: 'rules',
  title: 'Rules and estimates of the bench',
  intro:
    'The single figures by which the first power-up is planned and a fuse-link is reviewed, and rules that have no figure. Estimates of this project say so in their source.',
  columns: [{ title: 'Rule' }, { title: 'Used for' }, { title: 'Value' }],
  rows: () =>
    parts.flatMap(({ use, rules }) =>
      rules().map(([words, value, sources]) => ({
        id: slug(tell(say`${words}`)),
        cells: [words, use, value],
        sources: [sources].flat(),
      })),
    ),
}
