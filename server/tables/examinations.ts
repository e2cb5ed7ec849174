import { examineSources as of } from './examineSources.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/** Where an examination is done. */
export const placesDone = [
  'unplugged',
  'bench supply',
  'dummy load',
  'behind the lamp',
  'mains',
  'qualified, unplugged',
  'qualified, mains',
] as const
export type PlaceDone = (typeof placesDone)[number]

/** What of the case its expected figures are worked out from. */
export const figuresOf = [
  'board-rails',
  'bulk-volts',
  'crest',
  'dissipation',
  'half-mains',
  'input-ohm',
  'lamp-share',
  'lamp-volts',
  'lamp-watts',
  'leakage',
  'least-load',
  'load',
  'machine-current',
  'mains-band',
  'path',
  'peak',
  'primary-ohm',
  'rail',
  'rail-ohm',
  'regulator',
  'ripple',
  'selector',
  'volts-per-hertz',
] as const
export type FigureOf = (typeof figuresOf)[number]

/** One look or measurement. */
export interface Examination extends Sourced {
  readonly key: string
  readonly does: string
  readonly done: PlaceDone
  /** trouble it takes: 1 for a look from outside, 1.5 for one inside, 2 for a measurement, 3 for a hard one, 4 where parts come out or hours go by */
  readonly trouble: number
  readonly figure: FigureOf | null
}

/** Looks and measurements that tell causes apart. */
// biome-ignore format: a row a line
export const examinations = rows<Examination>()(['key', 'does', 'done', 'trouble', 'figure', 'sources'], [
  ['look-inside', 'Cover off, look and smell: a cracked filter block, burst disc, domed or wet can, browned resistor, black glue, soft plastic, crust', 'unplugged', 1.5, null, [of.practice1]],
  ['look-plate', 'Read the plate again and hold it against the mains, the load and the other plates', 'unplugged', 1, 'volts-per-hertz', [of.practice1]],
  ['selector-look', 'Look where the voltage selector stands', 'unplugged', 1, 'selector', [of.practice1]],
  ['fuse-look', 'Take the fuse-link out: resistance end to end, its glass, its print against the holder', 'unplugged', 1, null, [of.practice1]],
  ['pin-to-pin', 'Resistance from plug pin to plug pin with the switch on, the ends of the cord flexed', 'unplugged', 1, 'primary-ohm', [of.practice1]],
  ['inlet-ohms', 'Resistance across the plug pins, switch off, then on', 'unplugged', 1, null, [of.practice1]],
  ['cells-look', 'Look at the cells and packs and their contacts', 'unplugged', 1, null, [of.practice1]],
  ['history', 'Ask what happened to it before, and when', 'unplugged', 1, null, [of.practice1]],
  ['leakage-sum', 'Add up the line-to-earth capacitors by their print, of every machine on the device', 'unplugged', 1, 'leakage', [of.practice1]],
  ['plate-kind', 'Read both plates: AC or DC, and what the machine asks for', 'unplugged', 1, 'crest', [of.practice1]],
  ['polarity-meter', 'Measure the polarity of the plug against the drawing of the machine', 'dummy load', 1, null, [of.practice1]],
  ['plug-fit', 'Try the fit of the plug: a pen or toothpick, then continuity to the inside', 'unplugged', 1, null, [of.practice1]],
  ['shaft-turn', 'Turn motor and fan by hand', 'unplugged', 1, null, [of.practice1]],
  ['cord-swap', 'Try another cord, the plug out in between', 'mains', 1, null, [of.practice1]],
  ['lamp-against-plate', 'Hold the watts on the plate against the watts of the lamp', 'unplugged', 1, 'lamp-share', [of.practice1]],
  ['lamp-known-load', 'Try the lamp with a load that is known to work', 'behind the lamp', 1, null, [of.practice1]],
  ['larger-lamp', 'A larger lamp, the outputs unloaded', 'behind the lamp', 1, 'lamp-watts', [of.practice1]],
  ['lamp-watch', 'Watch the volts across the lamp for 5 min, hands off', 'behind the lamp', 2, 'lamp-volts', [of.practice1]],
  ['lamp-volts', 'Measure the volts that are left for the unit behind the lamp', 'behind the lamp', 1, 'lamp-volts', [of.practice1]],
  ['repeat-rested', 'Once more after 10 min of rest', 'behind the lamp', 1, null, [of.practice1]],
  ['unload', 'Unplug the machine and all else from the outputs, then once more behind the lamp', 'behind the lamp', 1, 'rail', [of.practice1]],
  ['least-load', 'Put 10 % to 20 % of its current on the output it regulates by, then once more', 'dummy load', 2, 'least-load', [of.practice1]],
  ['load-steps', 'On a dummy load, without the machine: 20 %, 50 %, 100 % of its current, volts at both ends of the lead', 'dummy load', 2, 'load', [of.practice1]],
  ['load-warm', 'On the dummy load for 30 min to 60 min, the volts written down every 5 min', 'dummy load', 4, 'rail', [of.practice1]],
  ['ripple', 'Ripple under load: its size and its frequency', 'dummy load', 2, 'ripple', [of.practice1]],
  ['peak-hold', 'Peak of the output at switch-on, with a meter that holds the maximum', 'behind the lamp', 2, 'peak', [of.practice1]],
  ['crowbar-again', 'Off for a minute, then on again behind the lamp with a dummy load', 'behind the lamp', 2, 'peak', [of.practice1]],
  ['outputs-ohms', 'Resistance of every output to ground both ways, the machine joined, then apart, then card by card', 'unplugged', 2, 'rail-ohm', [of.practice1]],
  ['rail-fuse', 'Resistance of the fuse of that rail', 'unplugged', 2, null, [of.practice1]],
  ['bridge-test', 'Diode test on the mains rectifier bridge', 'unplugged', 2, 'bulk-volts', [of.practice1]],
  ['transistor-test', 'Resistance of the switching transistor, collector to emitter or drain to source, both ways', 'unplugged', 2, 'bulk-volts', [of.practice1]],
  ['bulk-ohms', 'Resistance across the bulk capacitor, until the charging of the meter has settled', 'unplugged', 2, 'bulk-volts', [of.practice1]],
  ['mains-string', 'Resistance along the mains side: link, inrush thermistor, varistor, bridge, bulk pair, transistor', 'unplugged', 2, 'bulk-volts', [of.practice1]],
  ['ntc-ohms', 'Resistance from the inlet to the bulk capacitor: inrush thermistor, fusible resistor, choke', 'unplugged', 2, 'bulk-volts', [of.practice1]],
  ['secondary-diodes', 'Diode test at the rectifier behind the transformer', 'unplugged', 2, null, [of.practice1]],
  ['reservoir-ohms', 'Resistance across the reservoir capacitor', 'unplugged', 2, null, [of.practice1]],
  ['secondaries-lifted', 'All secondaries lifted, then once more behind a lamp of 25 W to 40 W', 'behind the lamp', 4, null, [of.practice1]],
  ['degauss-unplugged', 'The degaussing coil unplugged, then once more behind the lamp', 'behind the lamp', 2, null, [of.practice1]],
  ['feel-unplugged', 'Feel for a warm capacitor; its leakage out of the circuit at its rated volts', 'unplugged', 3, null, [of.practice1]],
  ['esr-control', 'Series resistance or capacitance of the 10 µF to 220 µF capacitors near the controller', 'unplugged', 2, null, [of.practice1]],
  ['esr-output', 'Series resistance of the output capacitors', 'unplugged', 2, null, [of.practice1]],
  ['start-resistor', 'Resistance of the start resistor (100 kΩ to 1 MΩ), in the circuit', 'unplugged', 2, null, [of.practice1]],
  ['series-switch-ohms', 'Resistance across the series switch of the step-down regulator', 'unplugged', 3, null, [of.practice1]],
  ['regulator-in-out', 'Volts going into the regulator and coming out, on the low-voltage side', 'dummy load', 3, 'regulator', [of.practice1]],
  ['trimmer-set', 'Turn the trimmer slowly, under load and from below', 'dummy load', 3, 'rail', [of.practice1]],
  ['joint-volts', 'Millivolts along the low-voltage path at load: plug, lead, switch, each joint', 'dummy load', 2, 'path', [of.practice1]],
  ['capacitor-outside', 'Oscilloscope at the output, and a capacitor added outside', 'dummy load', 3, null, [of.practice1]],
  ['right-pins', 'Measure between the two pins of one winding, by the drawing of the connector', 'dummy load', 1, 'rail', [of.practice1]],
  ['loads-apart', 'Start it with motors and drives unplugged', 'dummy load', 2, null, [of.practice1]],
  ['bench-current', 'The machine alone on a bench supply with its limit set: what does it draw', 'bench supply', 2, 'machine-current', [of.practice1]],
  ['standby-read', 'Its manual, and the standby output or the small cell', 'dummy load', 2, null, [of.practice1]],
  ['right-link-twice', 'Switched on twice with the printed time-lag link', 'mains', 2, null, [of.practice1]],
  ['one-link', 'One new link of the printed kind, the time written down', 'mains', 2, null, [of.practice1]],
  ['mains-against-plate', 'Measure the mains and hold it against the plate', 'qualified, mains', 1, 'mains-band', [of.practice1]],
  ['insulation-test', 'Insulation at 500 V DC, line and neutral joined, against earth or metal, the switch on', 'qualified, unplugged', 2, null, [of.practice1]],
  ['wiring-trace', 'Trace the mains wiring against the drawing', 'qualified, unplugged', 3, null, [of.practice1]],
  ['neutral-earth-ohms', 'Resistance from the neutral pin to the earth pin of the plug', 'unplugged', 1, null, [of.practice1]],
  ['tab-ohms', 'Resistance from the tab of the transistor to the chassis', 'unplugged', 3, null, [of.practice1]],
  ['one-at-a-time', 'All plugs out, the device set, then one machine at a time', 'mains', 2, null, [of.practice1]],
  ['cables-apart', 'All data and sound leads apart, then one source at a time', 'mains', 2, null, [of.practice1]],
  ['without-strip', 'Once without the extra filter or strip', 'mains', 1, null, [of.practice1]],
  ['dry-night', 'A night in a warm dry place, then the insulation again', 'qualified, unplugged', 4, null, [of.practice1]],
  ['lead-flex', 'Flex the output lead along its length with the meter on it', 'unplugged', 2, null, [of.practice1]],
  ['other-hums', 'Listen whether other transformers hum at that time', 'mains', 1, null, [of.practice1]],
  ['press-core', 'Tighten the screws, the plug out meanwhile, of core and mounting, then listen', 'mains', 2, null, [of.practice1]],
  ['warm-hour', 'Temperature after an hour, without a load', 'mains', 4, null, [of.practice1]],
  ['primary-secondary', 'Resistance from primary to secondary, capacitors to the chassis taken off', 'unplugged', 2, null, [of.practice1]],
  ['wiggle', 'Move the heavy parts and connectors with an insulated stick, the meter on them', 'unplugged', 2, null, [of.practice1]],
  ['case-loaded', 'Volts from the case to a known earth with a high-impedance meter, then loaded with 10 kΩ', 'qualified, mains', 2, 'half-mains', [of.practice1]],
  ['earth-ohms', 'Resistance from the earth pin of the plug to the metal of the case, the cord flexed', 'unplugged', 1, null, [of.practice1]],
  ['mains-loaded', 'The mains again with a loading meter, then with a load over 0.5 A', 'qualified, mains', 1, null, [of.practice1]],
  ['cell-volts', 'Volts of each cell, then under a load', 'unplugged', 2, null, [of.practice1]],
  ['input-ohms', 'Resistance at the jack both ways, and a diode test', 'unplugged', 1, 'input-ohm', [of.practice1]],
  ['jack-to-regulator', 'Resistance from the jack to the input of the regulator, or to the battery plus', 'unplugged', 2, null, [of.practice1]],
  ['jack-contact-ohms', 'Resistance through the switching contact of the jack, plug in', 'unplugged', 2, null, [of.practice1]],
  ['rail-milliohm', 'Milliohms along the rail; 0.5 A to 1 A fed at under 1 V, towards the lowest point or the warm part', 'bench supply', 3, 'rail-ohm', [of.practice1]],
  ['feel-heat', 'Find the warm part with a camera or the back of a finger, power off within a minute', 'bench supply', 2, 'machine-current', [of.practice1]],
  ['ohms-against-plate', 'Hold V/R of the rail against the current on the plate', 'unplugged', 1, 'input-ohm', [of.practice1]],
  ['limit-raised-short', 'Only once the resistance both ways is no short and nothing gets warm: limit at 2 to 3 times the running current, for a second', 'bench supply', 4, 'machine-current', [of.practice1]],
  ['rails-at-board', 'All rails at the chips of the board, not at the supply', 'dummy load', 2, 'board-rails', [of.practice1]],
  ['heat-sink', 'Temperature of the heat sink', 'dummy load', 2, null, [of.practice1]],
  ['reset-clock', 'Reset after switch-on and the clock, with a probe', 'dummy load', 3, null, [of.practice1]],
  ['swap-socketed', 'Socketed parts one by one into a good board, or a diagnostic cartridge', 'unplugged', 2, null, [of.practice1]],
  ['other-monitor', 'Another monitor and cable', 'mains', 1, null, [of.practice1]],
  ['try-right', 'Once more the right way round, after 10 min of rest', 'bench supply', 2, 'machine-current', [of.practice1]],
  ['rails-against-drawing', 'Each rail of the connector against its drawing', 'unplugged', 2, null, [of.practice1]],
  ['dissipation', 'Reckon (volts given − volts held) · current', 'unplugged', 1, 'dissipation', [of.practice1]],
  ['selector-ohms', 'Resistance of the selector in each position', 'unplugged', 2, null, [of.practice1]],
  ['charge-hour', 'An hour on the charger, then the volts of the cells', 'bench supply', 4, null, [of.practice1]],
  ['charger-open', 'Volts of the charger without the pack', 'dummy load', 1, 'rail', [of.practice1]],
  ['resonant-capacitance', 'The resonant capacitor discharged and taken out: its capacitance, its resistance', 'unplugged', 4, null, [of.practice1]],
  ['inner-primary', 'Resistance of the inner primary', 'unplugged', 2, null, [of.practice1]],
  ['track-ohms', 'Resistance along the tracks near the leak', 'unplugged', 2, null, [of.practice1]],
])

/** Looks and measurements, as a page. */
export const examinationsTable = table({
  name: 'examinations',
  title: 'Looks and measurements that tell causes apart',
  intro:
    'Each with where it is done and the trouble it takes, by which they are put in order: 1 for a look from outside, 1.5 for one inside, 2 for a measurement, 3 for a hard one, 4 where parts come out or hours go by.',
  rows: examinations,
  id: ({ key }) => [key],
  columns: [
    { key: 'does', title: 'Look or measurement', unique: true },
    { key: 'done', title: 'Where', oneOf: placesDone },
    { key: 'trouble', title: 'Trouble', from: 1, to: 4 },
    { key: 'figure', title: 'Worked out from the case', oneOf: figuresOf, none: '–' },
    { key: 'key', pattern: /^[a-z]+(-[a-z]+)*$/, unique: true },
  ],
})
