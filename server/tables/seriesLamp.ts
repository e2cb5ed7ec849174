import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'

/** One value with the span in which it is found or estimated. */
export interface Estimate {
  readonly value: number
  /** '1' for a ratio */
  readonly unit: '1' | 'V' | 's'
  readonly range?: readonly [number, number]
  readonly source: Source
}

/** Part of the mains voltage at which a unit made for that mains must still run. */
export const assuredShare: Estimate = frozen({
  value: 0.9,
  unit: '1',
  source: published(
    'IEC 60950-1, 1.4.5',
    'equipment is tested at its rated voltage less 10 %; taken as the least it must run at',
  ),
})

/** Most that a lamp must be able to pass, over what it has to carry, where one is chosen. */
export const lampMargin: Estimate = frozen({
  value: 1.25,
  unit: '1',
  source: commonPractice(
    'Project rule: a quarter to spare when a lamp is chosen',
    'lamps, mains and what a supply takes each lie some per cent off their figures; at its ceiling a lamp starves what it feeds',
  ),
})

/** Direct-current volts on the capacitor at which a converter starts, as part of the mains crest, where it is not known. */
export const defaultStartShare: Estimate = frozen({
  value: 0.7,
  unit: '1',
  range: [0.6, 0.8],
  source: fromMemory(
    'Data sheets of switch-mode controllers, usual brown-in settings',
    'project estimate: about 84 V of 120 V and 160 V of 230 V; wide-range units start at 70 V to 85 V whatever the mains',
  ),
})

/** Capacitor volts at which a converter gives up, as part of those at which it starts. */
export const stopShare: Estimate = frozen({
  value: 0.75,
  unit: '1',
  range: [0.6, 0.9],
  source: fromMemory(
    'Data sheets of switch-mode controllers, under-voltage hysteresis',
    'project estimate; differs from unit to unit',
  ),
})

/** How long a converter that gave up waits before it tries again [s]. */
export const restartS: Estimate = frozen({
  value: 0.3,
  unit: 's',
  range: [0.05, 2],
  source: fromMemory(
    'Data sheets of switch-mode controllers, restart after a fault',
    'project estimate; differs from unit to unit',
  ),
})

/** The rectifier diode of every bridge here: I = Is (exp(U / (n UT)) − 1), and a resistance. */
export const bridgeDiode: {
  readonly saturationA: number
  readonly emission: number
  readonly seriesOhm: number
  readonly thermalV: number
} & Sourced = frozen({
  saturationA: 1e-9,
  emission: 1.2,
  seriesOhm: 0.02,
  // k T / q at 27 °C, the temperature circuit simulators assume
  thermalV: 0.025865,
  sources: [
    commonPractice(
      'Project estimate: a general-purpose silicon rectifier',
      '0.7 V at 1 A, 0.02 Ω; any rectifier of the trade lies within 0.2 V of it',
    ),
  ],
})

/** Drop of the two diodes that conduct, where one figure serves [V]. */
export const bridgeDropV: Estimate = frozen({
  value: 1.4,
  unit: 'V',
  range: [1.2, 2],
  source: commonPractice('Two silicon diodes in series', '0.6 V to 1 V each'),
})

/** Lamp volts over rated volts above which the lamp is said to be overrun, and above which it fails at once. */
export const lampOverVoltage: { readonly caution: number; readonly fails: number } & Sourced = frozen({
  caution: 1.1,
  fails: 1.3,
  sources: [
    fromMemory(
      'IES Lighting Handbook, life of incandescent lamps',
      'life goes with voltage to the power −13: at 1.1 times the voltage 0.29 of the life, at 1.3 times a thirtieth',
    ),
  ],
})

/** Two lamps share a mains voltage well only where they are equal: largest ratio of rated watts that passes. */
export const unequalSeriesRatio: Estimate = frozen({
  value: 1.1,
  unit: '1',
  source: commonPractice(
    'Project rule',
    'unequal lamps in series share unequally: the smaller takes most of the voltage',
  ),
})

/** The filament counts as settled while it stays this close to its last mean [K], or within this part of it. */
export const settledBand: { readonly kelvin: number; readonly share: number } & Sourced = frozen({
  kelvin: 60,
  share: 0.05,
  sources: [
    commonPractice(
      'Project rule',
      'below what the eye tells apart; wider than the ripple at twice the mains frequency',
    ),
  ],
})

/** How near the mains voltage a lamp's rating must come to serve on its own, as rated volts over mains volts. */
export const lampFitsMains: { readonly from: number; readonly to: number } & Sourced = frozen({
  from: 0.95,
  to: 1.15,
  sources: [
    commonPractice(
      'Project rule',
      'a lamp carries the whole mains when the load is shorted; 130 V lamps are used on 120 V mains',
    ),
  ],
})

/** Currents a drawn load line reaches up to, over what the lamps pass into a short. */
export const drawnCurrents: Estimate = frozen({
  value: 1.15,
  unit: '1',
  source: commonPractice(
    'Project rule',
    'the load line is drawn until it has left the lamps’ curve, with a little room above the largest current they can pass',
  ),
})

export const loadLineSource: Source = commonPractice(
  'Load line of a series circuit',
  'Kirchhoff’s voltage law; arithmetic',
)

export const seriesLampPractice: Source = published(
  'Electron (amateur radio magazine), February 2022, technical note on the lamp in series',
  'an incandescent lamp in one mains conductor as current limiter for a first power-up',
)

export const noIsolationSource: Source = commonPractice(
  'Series-lamp practice',
  'lamp and switch in the line conductor, earth straight through, nothing isolated',
)

export const bodyCurrentSource: Source = fromMemory(
  'IEC 60479-1',
  'effects of current on human beings: 30 mA is above the let-go level',
)
