import { examineSources as of } from './examineSources.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/** Kinds of supplies and machines that a row is about; 'any' for all. */
export const kindsSeen = [
  'any',
  'switch-mode',
  'transformer',
  'ac-output',
  'constant-voltage',
  'charging',
  'adapter',
  'machine',
  'class-i',
  'class-ii',
  'picture-tube',
] as const
export type KindSeen = (typeof kindsSeen)[number]

/** Where it was seen, as a person looks for it. */
export const placesSeen = [
  'lamp',
  'protection',
  'smell',
  'sound',
  'output',
  'heat',
  'touch',
  'bench',
  'machine',
  'accident',
] as const
export type PlaceSeen = (typeof placesSeen)[number]

/** Something seen, heard, smelt, read or done wrongly. */
export interface Seen extends Sourced {
  readonly key: string
  readonly words: string
  readonly place: PlaceSeen
  /** true: no power before what can be looked at without it was looked at */
  readonly holds: boolean
  /** what is done at once */
  readonly atOnce: string
  readonly kinds: readonly KindSeen[]
}

/** What can be seen, heard, smelt, read or have happened. */
// biome-ignore format: a row a line
export const whatWasSeen = rows<Seen>()(['key', 'words', 'place', 'holds', 'atOnce', 'kinds', 'sources'], [
  ['lamp-bright', 'The lamp stays at full brightness', 'lamp', true, 'Switch off within seconds, plug out; wait, measure what is stored, then resistance', ['any'], [of.bench1, of.bench2, of.bench3, of.here1]],
  ['lamp-half', 'The lamp stays half bright and steady', 'lamp', false, 'Hold it against the expected watts; no more than a minute', ['any'], [of.here1, of.bench4]],
  ['lamp-dark', 'The lamp stays dark and nothing works', 'lamp', false, 'Plug out; resistance from plug pin to plug pin with the switch on', ['any'], [of.bench1, of.bench5, of.here1]],
  ['lamp-flash', 'The lamp flashes once, then is dim or dark', 'lamp', false, 'Go on watching and measure the outputs: this is expected', ['any'], [of.bench3, of.here1]],
  ['lamp-flashes', 'The lamp flashes again and again', 'lamp', false, 'Unload the outputs, then a larger lamp; not left so', ['switch-mode'], [of.sheet1, of.sheet2, of.here1]],
  ['lamp-brightens', 'The lamp slowly brightens', 'lamp', true, 'Switch off before anything is too hot to touch', ['any'], [of.bench6, of.here1]],
  ['lamp-falls', 'The lamp flashes, then a medium glow falls over minutes', 'lamp', false, 'Stay by it; stop if any part warms', ['any'], [of.here2, of.here1]],
  ['fuse-at-once', 'The fuse opens at once', 'protection', true, 'Plug out; no second fuse-link before the cause is measured', ['any'], [of.bench7, of.bench8, of.notes1]],
  ['fuse-later', 'The fuse opens later', 'protection', true, 'Plug out; write down minutes, load and temperature', ['any'], [of.bench7, of.bench9, of.thread1]],
  ['trips-plugged-in', 'The residual-current device trips at plug-in, the machine switched off', 'protection', true, 'Plug out, not only switched off: the leakage lies before the switch', ['any'], [of.bench10, of.bench11, of.thread2]],
  ['trips-switched-on', 'The residual-current device trips at switch-on', 'protection', true, 'Plug out; the insulation is tested by a qualified person', ['switch-mode', 'class-i'], [of.bench12, of.bench13]],
  ['trips-later', 'The residual-current device trips later, warm', 'protection', true, 'Leave it off, plug out; smell for hot dielectric', ['any'], [of.bench14]],
  ['trips-together', 'The residual-current device trips only with a filter, or with several machines', 'protection', true, 'Plug out; add up the leakages', ['class-i'], [of.bench13, of.bench12, of.bench15]],
  ['bang-smoke', 'A bang, smoke, a sharp smell; it may go on working', 'smell', true, 'Plug out at the wall, people back, air the room', ['any'], [of.list1, of.list2, of.bench16]],
  ['smell-fishy', 'A smell of fish, urine or ammonia', 'smell', true, 'Switch off, plug out; find the warmest or wettest part by nose', ['any'], [of.bench17, of.bench18]],
  ['transformer-hums', 'The transformer hums or growls', 'sound', false, 'Compare loaded and unloaded', ['transformer'], [of.bench19, of.bench20, of.bench21]],
  ['hum-in-sound', 'Hum in the sound, or bars on the screen', 'sound', false, 'Tell the mains frequency from twice the mains frequency', ['transformer'], [of.bench21, of.thread3, of.named1]],
  ['output-none', 'No output at all', 'output', false, 'Plug out; fuse, cord and primary by resistance', ['any'], [of.notes1, of.bench22, of.bench23]],
  ['output-low', 'An output is low', 'output', false, 'Leave the lamp out of the reckoning: what are the volts at the unit?', ['any'], [of.notes1, of.bench24, of.bench25]],
  ['output-high', 'An output is high', 'output', false, 'Switch off; the machine is not joined again', ['any'], [of.list3, of.thread4, of.sheet3, of.list4]],
  ['output-pulses', 'An output pulses', 'output', false, 'Load it as its maker wants, then shed loads', ['switch-mode'], [of.sheet1, of.sheet2, of.notes1]],
  ['output-collapses', 'Right unloaded, it collapses under load', 'output', false, 'Load it in steps, measure at both ends of the lead', ['any'], [of.bench26, of.bench27, of.bench5]],
  ['ripple-high', 'The ripple is high', 'output', false, 'Write down its size and its frequency', ['any'], [of.notes1, of.here3, of.bench28]],
  ['rail-missing', 'One rail of several is missing', 'output', false, 'Machine and supply apart, that rail to ground by resistance', ['any'], [of.bench23, of.bench24, of.bench29]],
  ['whine-tick', 'The supply whines or ticks', 'sound', false, 'Switch off; resistance of every output', ['switch-mode'], [of.notes1, of.sheet1]],
  ['transformer-hot', 'The transformer gets hot with nothing connected', 'heat', true, 'Plug out; all secondaries lifted', ['transformer'], [of.bench30, of.bench31, of.here3]],
  ['tingle', 'A tingle on metal, or half the mains on the case', 'touch', true, 'Plug out; nothing is touched or joined; prove the earth of socket and cord', ['switch-mode', 'class-i'], [of.bench32, of.sheet4, of.bench33]],
  ['phantom-volts', 'The meter shows volts that collapse when anything is connected', 'touch', false, 'Measure again with a real load; treat it as live until then', ['any'], [of.bench5, of.bench34, of.bench35]],
  ['current-too-much', 'The machine draws too much on the bench supply', 'bench', false, 'Switch off; resistance both ways; the limit is never raised to make it go away', ['machine'], [of.bench36, of.bench6, of.sheet5]],
  ['current-none', 'The machine draws nothing on the bench supply', 'bench', false, 'Polarity, size of the plug, internal fuse', ['machine'], [of.bench37, of.bench38, of.here4]],
  ['warm-no-life', 'The machine gets warm and shows no life', 'heat', false, 'Find the warm part, power off within a minute', ['machine'], [of.thread5, of.list5, of.bench6]],
  ['blank-screen', 'Blank screen, drawing its normal current', 'machine', false, 'Rails at the chips, then clock and reset, then socketed parts', ['any'], [of.bench39, of.thread5, of.thread6]],
  ['overvoltage-mains', 'A 100 V or 120 V unit met 220 V to 240 V', 'accident', true, 'Leave it unplugged; look at what sits first on the mains', ['any'], [of.bench40, of.thread7, of.bench41]],
  ['polarity-reversed', 'Reversed polarity was applied', 'accident', true, 'Off; resistance at the input both ways', ['machine'], [of.bench42, of.bench37, of.thread8]],
  ['ac-into-dc', 'AC was given to a DC input', 'accident', true, 'Disconnect; look at the input capacitors', ['machine'], [of.named2, of.bench43, of.named3]],
  ['dc-too-high', 'Too high a DC voltage was applied', 'accident', true, 'Disconnect; resistance at the input, then behind the regulator', ['machine'], [of.thread9, of.named4]],
  ['selector-wrong', 'The voltage selector stood wrong', 'accident', true, 'Plug out, set it, look before any power', ['any'], [of.bench44, of.named5, of.named6, of.notes1]],
  ['slow-start', 'It starts slowly, unreliably, or only warm', 'machine', false, 'Do not cycle it: the start and control side comes first', ['switch-mode'], [of.bench45, of.bench16]],
  ['charger-fails', 'A battery-backed machine does not run on its charger', 'machine', false, 'Unplug the pack, measure it, and the charger alone', ['charging'], [of.list6, of.thread10, of.bench46]],
  ['constant-voltage-off', 'A constant-voltage (ferroresonant) supply is low, loud or very hot', 'heat', true, 'Plug out; discharge its oil or film capacitor before anything is touched', ['constant-voltage'], [of.bench47, of.list7]],
  ['dc-into-ac', 'DC was given to an AC input', 'accident', true, 'Disconnect; compare with the plate', ['ac-output'], [of.named7, of.list8, of.here4]],
  ['cell-leaked', 'A cell or pack leaked', 'accident', true, 'No power; the cells come out before anything else', ['any'], [of.practice1]],
  ['water', 'It stood in water, or water got in', 'accident', true, 'No power, however dry it looks; the plug stays out', ['any'], [of.practice1]],
])

/** What was seen, as a page. */
export const whatWasSeenTable = table({
  name: 'what-was-seen',
  title: 'What was seen, and what is done at once',
  intro:
    'What can be seen, heard, smelt, read or have happened at a first power-up. Where power is held, nothing is switched on before what can be looked at without it was looked at.',
  warning:
    'Smoke, bang, sharp smell, tingle, a device that trips: plug out at the wall, also where the machine goes on working.',
  rows: whatWasSeen,
  id: ({ key }) => [key],
  columns: [
    { key: 'words', title: 'Seen', unique: true },
    { key: 'place', title: 'Where', oneOf: placesSeen },
    { key: 'holds', title: 'Holds power' },
    { key: 'atOnce', title: 'At once' },
    { key: 'kinds', title: 'Kinds', filled: true, oneOf: kindsSeen },
    { key: 'key', pattern: /^[a-z]+(-[a-z]+)*$/, unique: true },
  ],
})
