import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'

/** A limit a topic decides by. */
export interface Threshold {
  readonly value: number
  /** '1' for a ratio */
  readonly unit: '1' | 'V' | 'A' | 'VA' | 'Hz' | 'mm' | 'm'
  readonly source: Source
}

const threshold = (value: number, unit: Threshold['unit'], source: Source): Threshold => frozen({ value, unit, source })

const rule = (value: number, unit: Threshold['unit'], title: string, reason: string): Threshold =>
  threshold(value, unit, commonPractice(title, reason))

/** Mains voltage. */
export const nominalMatch = rule(
  0.02,
  '1',
  'Same nominal voltage',
  'a plate within 2 % of the nominal voltage of the mains was made for it: lists and plates round alike (127 and 125 V, 240 and 238 V do)',
)
export const wideWindowRatio = rule(
  1.5,
  '1',
  'Wide input window',
  'a window whose top is at least 1.5 times its bottom spans both voltage classes of the world (100–240 V); 220–240 V does not',
)
export const voltageStopAbove = threshold(
  1.1,
  '1',
  published(
    'IEC 950 / IEC 60950, clauses 1.4.4 and 1.4.5, as discussed in the emc-pstc list archive',
    'no type test goes beyond +10 % of the rated voltage: more than 1.10 times the top of the plate lies outside them all',
  ),
)
export const voltageStopBelow = rule(
  0.8,
  '1',
  'Mains far too low',
  'below 0.80 of the bottom of the plate a supply drops out, and a motor or relay may hang and overheat',
)
export const voltageCautionBelow = threshold(
  0.9,
  '1',
  published(
    'IEC 950 / IEC 60950, clauses 1.4.4 and 1.4.5, as discussed in the emc-pstc list archive',
    'type tests reach down to −10 % of the rated voltage; below that it may drop out',
  ),
)

/** Highest output voltages that are not dangerous to touch. */
export const touchDc = threshold(
  60,
  'V',
  fromMemory('IEC 60950-1, clause 2.2.2', 'safety extra-low voltage: up to 60 V d.c.'),
)
export const touchAc = threshold(
  50,
  'V',
  fromMemory('IEC 60364-4-41', 'conventional touch voltage limit: 50 V a.c.; in small and wet rooms less'),
)

/** Mains frequency. */
export const frequencyMatch = threshold(
  0.01,
  '1',
  fromMemory(
    'EN 50160, power frequency',
    'interconnected networks stay within 1 % of the nominal frequency for 99.5 % of a year, so a plate within 1 % names this mains',
  ),
)

const usualFrequencies = commonPractice(
  'Input frequency on supplies’ plates and data sheets',
  '47–63 Hz is what supplies for 50/60 Hz state at most; beyond it capacitors, chokes and transformers are not known to have been tried',
)
export const usualFrequencyLeastHz = threshold(47, 'Hz', usualFrequencies)
export const usualFrequencyMostHz = threshold(63, 'Hz', usualFrequencies)

/** Extra-low voltage: a class III unit takes no more, so a plate that claims more claims mains. */
export const extraLowVoltageMostV = threshold(
  50,
  'V',
  fromMemory('IEC 61140, extra-low voltage', 'ac up to 50 V; class III equipment is fed by nothing higher'),
)

/** Mains frequency, transformer supplies: peak flux against the plate's. */
export const fluxClear = threshold(
  1,
  '1',
  published(
    'electricalengineering.xyz, on volts per hertz',
    'peak flux is proportional to V/f: up to the ratio of the plate the core carries no more than it was built for',
  ),
)
export const fluxStopAbove = rule(
  1.1,
  '1',
  'Flux margin of small transformers',
  'published margins are for power transformers; small ones run near saturation and two measured adaptors saturated visibly at 1.10 times their rated voltage',
)

/** Input power where the plate prints none. */
export const switchModePowerFactor = rule(
  0.6,
  '1',
  'Power factor of a switch-mode supply without correction',
  'a rectifier with a reservoir capacitor takes narrow peaks: 0.5 to 0.7 is usual',
)
export const transformerPowerFactor = rule(
  0.8,
  '1',
  'Power factor of a transformer supply',
  'magnetising current and rectifier peaks: 0.7 to 0.9 is usual at full load',
)
export const supplyEfficiency = rule(
  0.75,
  '1',
  'Efficiency of a small supply',
  'small supplies of the time lose a quarter or more of what they take',
)

/** Step-up and step-down converters. */
export const converterReserve = rule(
  1.25,
  '1',
  'Converter size',
  'sellers advise a quarter or more above the need, for inrush and warmth',
)
export const converterLeast = rule(1, '1', 'Converter size', 'a rating below the need overloads it')
export const converterSizesVA = frozen({
  value: [50, 75, 100, 150, 200, 300, 500, 750, 1000, 1500, 2000],
  unit: 'VA',
  source: commonPractice('Converter sizes', 'the sizes usually offered'),
} as const)
export const converterOutputsV = frozen({
  value: [100, 110, 115, 117, 120, 127, 200, 208, 220, 230, 240],
  unit: 'V',
  source: commonPractice('Converter outputs', 'the output voltages usually offered: the nominal mains of the world'),
} as const)

/** Cord. */
export const europlugMostA = threshold(
  2.5,
  'A',
  published(
    'EN 50075:1990, as cited by Wikipedia, "Europlug"',
    'flat non-rewirable two-pole plugs, 2.5 A 250 V, with cord, for the connection of class II equipment',
  ),
)
export const lowVoltageCordMostV = rule(
  125,
  'V',
  'Cord sets of the 125 V class',
  'insulation and plug are approved up to 125 V only; mains above that class needs a 250 V set',
)

/** The highest nominal mains of the class that cord sets of 125 V serve. */
export const lowClassMostV = rule(
  130,
  'V',
  'Mains of the 125 V class',
  '100 V to 127 V nominal; the next mains in use is 200 V',
)
export const highVoltageCordV = threshold(
  250,
  'V',
  fromMemory('IEC 60320-1 and IEC 60799', 'appliance couplers and cord sets for 220 V to 240 V are rated 250 V'),
)
export const smallestPlugFuseA = rule(
  3,
  'A',
  'Smallest plug fuse-link to recommend',
  '3 A and 13 A are the preferred values of BS 1362; 1 A and 2 A links open at switch-on of small supplies',
)

/** Output. */
export const outputToleranceRegulated = threshold(
  0.05,
  '1',
  published(
    'ATX power supply design guide 0.9, table 3 (Intel)',
    '+5, +12 and +3.3 V rails are held to 5 %; taken for any machine that needs a regulated supply or does not say',
  ),
)
export const outputToleranceWidest = threshold(
  0.1,
  '1',
  published(
    'ATX power supply design guide 0.9, table 3 (Intel)',
    'the −5 and −12 V rails, the least critical, are held to 10 %; beyond that no rail is allowed to lie',
  ),
)
const projectRule = 'Unregulated supply at the machine’s current (project rule)'
const measuredUnits =
  'one maker’s 9 V 1 A unit stands at 1.16 to 1.22 times its plate on a 0.6 A machine, a 12 V 1 A unit at about 1.5 times on 150 mA'
export const unregulatedNotKnown = rule(
  1.15,
  '1',
  projectRule,
  `what a machine bears of which nothing is known: a little above the tolerance of any rail; ${measuredUnits}`,
)
export const unregulatedMadeFor = rule(
  1.3,
  '1',
  projectRule,
  `what a machine made for unregulated supplies meets in ordinary use; ${measuredUnits}`,
)
export const unregulatedMost = rule(
  1.5,
  '1',
  projectRule,
  `an unregulated unit with nothing connected: 16 V capacitors in a 12 V machine end there, and the regulator inside one runs hot; ${measuredUnits}`,
)
export const measuredDemandHeadroom = rule(
  1.25,
  '1',
  'Headroom over a measured current',
  'a measured current misses start-up and ageing; a plate value already is the maximum',
)
export const totalPowerAbove = rule(
  1.1,
  '1',
  'A power printed once among several outputs',
  'more than a tenth above the volts times amperes of its own output it cannot be rounding: it is the power of all together',
)
export const plateDemandHeadroom = rule(1, '1', 'Plate against plate', 'a plate value already is the maximum')

/** Low-voltage plug against jack. */
export const plugOuterMost = rule(
  0.2,
  'mm',
  'Outer diameter of plug and jack',
  'sizes that differ by more are different plugs; by 0.2 mm or less they may be one size rounded two ways',
)
export const plugBoreTight = rule(
  0.1,
  'mm',
  'Bore smaller than the pin',
  'nominal pairs 2.0/2.1 and 3.0/3.1 are one size; a bore smaller by more does not go over the pin',
)
export const plugBoreLoose = rule(
  0.2,
  'mm',
  'Bore larger than the pin',
  'the spring no longer presses on the pin: poor, intermittent, hot contact',
)

/** Lead between supply and machine. */
export const leadDropStopAbove = rule(
  0.1,
  '1',
  'Voltage lost in the lead',
  'no rail is allowed to lie more than 10 % off, so a lead that loses more cannot serve any machine',
)
/** Resistivity of annealed copper at 20 °C [Ω·mm²/m]. */
export const copperResistivity = frozen({
  value: 0.017241,
  unit: 'Ω·mm²/m',
  source: fromMemory('IEC 60028', 'resistivity of standard annealed copper at 20 °C: 1/58 Ω·mm²/m'),
} as const)

/** Turntables, clocks and other machines whose speed follows the mains. */
export const speedFollowsFrequency: Source = commonPractice(
  'Speed of a synchronous motor',
  'proportional to the frequency of the mains',
)
