import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

const repairNotes = published(
  'Repair guides for monitors and switch-mode supplies of the 1990s, in a public archive of home-computer texts',
  'sections on the series lamp, on degaussing and on what is unplugged for a test',
)
const handbook = published(
  'Bench notes on the series lamp of several restorers',
  'what the lamp shows for each kind of load',
)

/** What of a machine hangs on its mains side. */
export type InsidePart = 'transformer' | 'switch-mode' | 'motor' | 'picture tube' | 'valves'

export interface LampShows extends Sourced {
  readonly part: InsidePart
  /** what a healthy one does, behind the lamp */
  readonly healthy: string
  /** what looks like a fault and is none */
  readonly misleading: string
  /** what is a fault */
  readonly fault: string
}

/** What the lamp shows, by what is behind it. */
// biome-ignore format: a row a line
export const lampShows = rows<LampShows>()(['part', 'healthy', 'misleading', 'fault', 'sources'], [
  ['transformer', 'a flash under one second, then dark or a dull red', 'a dull glow of a large core on 50 Hz', 'bright on and on with every secondary open: shorted turns', [handbook]],
  ['switch-mode', 'a flash, then dark', 'pulsing, or no start, with a small lamp', 'bright on and on: a shorted bridge, switch or suppressor', [handbook, repairNotes]],
  ['motor', 'bright while it starts, then dim', 'bright with the motor standing still: the lamp may be too small', 'bright with the motor standing still and the shaft stuck', [handbook]],
  ['picture tube', 'bright for 1 s to 5 s where the degaussing coil is still plugged in', 'a supply beside the coil that hiccups: unplug the coil', 'bright on and on: a shorted degaussing thermistor', [repairNotes]],
  ['valves', 'bright at once, dimming as the heaters warm, then a dim glow', 'cold heaters, which look like a short for 10 s to 30 s', 'a glow that rises again and goes on rising', [handbook]],
])

export interface ColdLoad extends Sourced {
  readonly part: string
  readonly lowOhm: number
  readonly highOhm: number
  readonly atV: number
  readonly note: string
}

/** Cold resistance of what hangs on the mains inside a machine, each unplugged from the rest. */
// biome-ignore format: a row a line
export const coldLoads = rows<ColdLoad>()(['part', 'lowOhm', 'highOhm', 'atV', 'note', 'sources'], [
  ['shaded-pole or capacitor motor of 10 W to 30 W', 50, 400, 230, 'about a quarter of that at 120 V', [fromMemory('Small mains motors', 'winding resistance')], { doubt: 'From memory only.' }],
  ['colour picture tube with degaussing coil and thermistor', 10, 50, 230, 'looks like a fault: unplug the coil', [repairNotes, fromMemory('Degaussing circuits', 'cold resistance')]],
  ['heaters of valves in series, 0.3 A', 100, 150, 230, 'an eighth to a fifth of the hot 767 Ω', [commonPractice('Worked out', '230 V / 0.3 A, cold an eighth to a fifth')]],
  ['halogen heater of 500 W', 7, 11, 230, 'about a tenth of the hot 106 Ω', [commonPractice('Worked out', '230 V squared over 500 W, cold about a tenth')]],
])

/** Starting current over rated current of a motor on the mains [1]. */
export const motorStart = frozen({
  induction: 6,
  synchronous: 2,
  universal: 6,
  source: published(
    'Load types and ratings of a maker of switches and relays; generator manual',
    'induction motor: 6 times; small shaded-pole, capacitor-run and universal motors lie below, from memory 1.2 to 6 times',
  ),
})

/** Rating of a converter over what a machine with a mains motor takes [1]. */
export const motorConverter = frozen({
  value: 3,
  source: commonPractice(
    'A converter for a motor on the mains',
    'volt-amperes once for electronics and lamps, three times for induction motors; a converter that sags at the start keeps the motor standing',
  ),
})

/** A lamp of at least this many watts, whatever is behind it [W]; and how many times what is still plugged in. */
export const insideLamp = frozen({
  times: 3,
  leastW: 25,
  source: published(
    'Hardware notes of a home-computer restorer on a.c. power',
    'a lamp of three times the load; equal watts leave about 60 % of the mains',
  ),
})

/** Largest capacitor of class Y from the mains to a chassis [F]. */
export const chassisCapacitor = frozen({
  mostF: 4.7e-9,
  source: commonPractice(
    'A capacitor from the mains to the chassis of an old set',
    '0.01 µF to 0.05 µF let the chassis float to half the mains or all of it; class Y of 4.7 nF or less in its place, or none',
  ),
})

/** How long a machine runs on full mains before more is plugged in [s], and attended in all before trust [s]. */
export const soak = frozen({
  stepsS: frozen([300, 900, 3600]),
  inAllS: 14_400,
  source: commonPractice(
    'Soak of an old machine',
    '5, 15 and 60 minutes with amperes and heat written down, four attended hours in all',
  ),
})

/** Current from the mains above which a machine is switched off, over its plate [1]. */
export const overPlate = frozen({
  value: 1.5,
  source: commonPractice(
    'Stop above one and a half times the plate',
    'plates name a maximum; what takes half as much again, or creeps, is faulty',
  ),
})

/** Direct voltage at a loudspeaker above which an amplifier is switched off [V]. */
export const loudspeakerV = frozen({
  value: 0.1,
  source: published(
    'French guide to the revival of old amplifiers',
    'tens of millivolts are normal, volts destroy a loudspeaker',
  ),
})

/** What the lamp shows, as a page. */
export const lampShowsTable = table({
  name: 'lamp-shows',
  title: 'What the series lamp shows, by what is behind it',
  intro:
    'For a machine with its supply inside: healthy, misleading, faulty. A motor, a degaussing coil and cold heaters light the lamp without a fault.',
  rows: lampShows,
  id: ({ part }) => [part],
  columns: [
    { key: 'part', title: 'Behind the lamp', unique: true },
    { key: 'healthy', title: 'Healthy' },
    { key: 'misleading', title: 'Looks like a fault' },
    { key: 'fault', title: 'A fault' },
  ],
})

/** Cold resistances, as a page. */
export const coldLoadsTable = table({
  name: 'cold-loads',
  title: 'Cold resistance of what hangs on the mains inside a machine',
  intro:
    'Each unplugged from the rest, at the plug or at its own leads. The winding of a transformer is worked out from its size.',
  rows: coldLoads,
  id: ({ part }) => [part],
  columns: [
    { key: 'part', title: 'Part', unique: true },
    { key: 'lowOhm', title: 'From', unit: 'Ω', above: 0 },
    { key: 'highOhm', title: 'To', unit: 'Ω', above: 0 },
    { key: 'atV', title: 'Made for', unit: 'V', above: 0 },
    { key: 'note', title: 'Remark' },
  ],
})
