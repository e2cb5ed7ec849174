import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published } from './source.js'

/** What an unloaded supply takes at most, where nobody measured it: share of its rating, and never less than a floor. */
export const idlePower = frozen({
  'switch-mode': frozen({ share: 0.1, floorW: 2 }),
  transformer: frozen({ share: 0.25, floorW: 4 }),
  source: commonPractice(
    'Project estimate of what a supply takes with nothing connected',
    'a tenth of its rating for a switch-mode supply, a quarter for a small transformer; two plug-in adaptors of 2.7 VA and 6 VA were measured at 0.33 W and at 1.4 W to 3.9 W',
  ),
})

/** What an unloaded transformer takes from the mains at most: volt-amperes, nearly all of them magnetising current in quadrature. */
export const idleTransformer = frozen({
  /** of its rated VA */
  share: 0.4,
  /** active part of what it takes [1] */
  powerFactor: 0.25,
  source: commonPractice(
    'Project estimate of what an unloaded small transformer takes',
    'a healthy one of 45 VA at 230 V draws 20 mA to 80 mA with nothing connected, 0.1 to 0.4 of its rating; about a quarter of those volt-amperes are watts',
  ),
})

/** What an ohmmeter shows at the plug of a supply that is healthy, switched on and plugged into nothing. */
export const coldInput = frozen({
  /** live to neutral of a rectifier input, once its capacitor is charged [Ω] */
  rectifierOhm: 100_000,
  /** a few ohms, whatever the kind of input: a short until explained [Ω] */
  fewOhm: 5,
  /** each pole to earth [Ω] */
  toEarthOhm: 1_000_000,
  /** how far a winding may lie from its estimate, either way [1] */
  spread: 2,
  source: commonPractice(
    'Cold resistance at the plug before first power',
    'repair notes: a rectifier input kicks and then shows the 0.1 MΩ to 1 MΩ of its discharge resistor, a few ohms are a short; half of a transformer’s regulation is lost in its mains winding, within a factor of two',
  ),
})

/** Least load of a switch-mode supply with several outputs where none is stated, on the output it regulates by [1]. */
export const leastLoadShare = frozen({
  value: 0.1,
  unit: '1',
  source: published(
    'Hardware notes of a home computer’s users on testing its supply, May 2001',
    '10 % of the rated current on +5 V; data sheets of other makers ask for 4.5 % to 35 %',
  ),
})

/** Reservoir capacitor of a switch-mode input where it was not read [F/W]. */
export const reservoirPerWatt = frozen({
  lowMainsV: 150,
  lowFaradPerW: 3e-6,
  highFaradPerW: 1.5e-6,
  source: commonPractice(
    'Project estimate of the reservoir capacitor in a switch-mode input',
    '2 µF to 4 µF a watt for 100 V to 127 V and for wide-range units, 1 µF to 2 µF a watt for 220 V to 240 V',
  ),
})

/** Smallest figures of a plate that a plan is worked out from. */
export const leastFigures = frozen({
  voltageV: 0.1,
  currentA: 1e-6,
  powerW: 0.01,
  source: commonPractice(
    'Project rule: a smaller figure is a slip of the pen',
    'plates give volts, milliamperes and watts; what lies far below counts as not entered',
  ),
})

/** Mains that lamps are worked out for. */
export const plannedMains = frozen({
  minV: 50,
  maxV: 500,
  minHz: 16,
  maxHz: 400,
  source: commonPractice(
    'Project rule: mains a lamp in series is worked out for',
    'from a converter of 50 V to two phases of an industrial mains, from railway to aircraft frequency',
  ),
})

/** The switch-on that is worked out with a plan: which reservoir capacitors, and for how long. */
export const plannedSwitchOn = frozen({
  leastF: 1e-7,
  mostF: 0.1,
  runS: 2,
  source: commonPractice(
    'Project rule: the switch-on that is worked out with a plan',
    '0.1 µF to 0.1 F holds every reservoir capacitor of the trade; a filament and a capacitor settle well within two seconds',
  ),
})

/** Most of the mains that may stand on a lamp whose own figure is not worked out [1]. */
export const lampShareUnknown = frozen({
  value: 0.5,
  source: commonPractice(
    'Project rule: at most half of the mains on a lamp of which no figure is worked out',
    'what takes so much that a lamp drops half of the mains is no healthy idle supply, and what is behind it starves; with the ratings of lamp and supply the limit is worked out',
  ),
})

/** Voltages that meters and leads are marked for, of the category for what is plugged into a socket [V]. */
export const meterMarks = frozen({
  category: 'CAT\u00a0II',
  voltagesV: frozen([300, 600, 1000]),
  source: fromMemory(
    'IEC 61010-2-033 and IEC 61010-031',
    'measurement category II is for circuits joined to a socket-outlet; usual marks are 300 V, 600 V and 1000 V to earth',
  ),
})

/** What may be left of an output before it counts as fallen [1]. */
export const fallenShare = frozen({
  value: 0.1,
  source: commonPractice(
    'Project rule: an output has fallen when a tenth of its voltage is left',
    'what is connected to it then meets no more than a tenth of what it is made for',
  ),
})

/** After this the first flash is over; a lamp that is still bright then shows a fault [s]. */
export const flashOver = frozen({
  atLeastS: 3,
  source: commonPractice(
    'Wait three seconds before the lamp is judged',
    'the first flash of charging capacitors or a magnetising transformer is over in well under a second; three seconds leave room for large ones',
  ),
})

/** How long each run is kept on before its readings count [s]. */
export const settleTimes = frozen({
  aloneS: 60,
  loadS: 300,
  togetherS: 60,
  source: published(
    'Notebook of an electronics teaching laboratory, chapter on the first power-up',
    'hold 1, 5 and 15 minutes; note current, volts and temperatures',
  ),
})

/** Why the lamp's voltage is measured and its glow not trusted. */
export const resultsFromMeter = commonPractice(
  'The meter decides, not the eye',
  'a dark lamp can pass a third of its rated current',
)
