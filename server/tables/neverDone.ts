import { examineSources as of } from './examineSources.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'
import { whatWasSeen } from './whatWasSeen.js'

/** Something that must not be done. */
export interface Never extends Sourced {
  readonly never: string
  /** after what was seen; empty: always */
  readonly seen: readonly string[]
}

/** What must not be done, what holds always first. */
// biome-ignore format: a row a line
export const neverDone = rows<Never>()(['never', 'seen', 'sources'], [
  ['Never probe under power what is not isolated from the mains: neither a lamp, a variable transformer nor a residual-current device isolates.', [], [of.here1]],
  ['Never run it on while it smokes or smells, also where it goes on working; no quick check before the bad parts are out.', [], [of.bench16, of.list1]],
  ['Never fit a fuse-link of more amperes, a slower one where a fast one is printed, or a bridge; a second like one that opens ends the trials.', ['fuse-at-once', 'fuse-later', 'lamp-bright', 'lamp-dark', 'output-none', 'rail-missing', 'bang-smoke', 'overvoltage-mains', 'selector-wrong'], [of.bench7, of.bench9]],
  ['Never disable an overcurrent or overvoltage protection to see what happens.', ['output-high', 'output-none', 'output-pulses', 'lamp-flashes', 'whine-tick', 'output-collapses', 'fuse-at-once'], [of.list11]],
  ['Never cut, lift or bypass the protective earth, nor fit a less sensitive residual-current device, because it trips, hums or tingles.', ['trips-plugged-in', 'trips-switched-on', 'trips-later', 'trips-together', 'tingle', 'hum-in-sound'], [of.bench15, of.thread2, of.bench32]],
  ['Never take out an interference capacitor to stop a tingle and leave the earth missing.', ['tingle'], [of.bench33]],
  ['Never renew one burnt resistor or transistor and switch on: they do not burn without a cause.', ['bang-smoke', 'fuse-at-once', 'lamp-bright', 'lamp-brightens', 'overvoltage-mains', 'selector-wrong', 'output-none'], [of.list9, of.list10]],
  ['Never renew a part of the mains filter by one without the class and the AC volts of the mains of the place.', ['bang-smoke', 'lamp-bright', 'trips-plugged-in', 'trips-switched-on', 'trips-later', 'trips-together', 'smell-fishy'], [of.list9, of.here2]],
  ['Never try an unknown supply on the machine.', ['output-high', 'output-low', 'output-none', 'output-collapses', 'output-pulses', 'ripple-high', 'rail-missing', 'blank-screen'], [of.list3, of.bench26]],
  ['Never run a supply that needs a load without one.', ['output-none', 'output-pulses', 'output-high', 'whine-tick', 'lamp-flashes'], [of.named9]],
  ['Never raise the limit of the bench supply to make it go away.', ['current-too-much', 'warm-no-life', 'polarity-reversed'], [of.bench6]],
  ['Never look for a short with a nail, foil, or current until it smokes.', ['current-too-much', 'lamp-bright', 'fuse-at-once', 'fuse-later', 'rail-missing'], [of.practice1]],
  ['Never keep a transformer in use that leaks from primary to secondary.', ['transformer-hot', 'tingle', 'water', 'transformer-hums'], [of.thread19]],
  ['Never power it to dry it, and never judge it dry by the outside.', ['water'], [of.practice1]],
  ['Never charge a pack that leaked.', ['cell-leaked', 'charger-fails'], [of.practice1]],
])

/** What must not be done, as a page. */
export const neverDoneTable = table({
  name: 'never-done',
  title: 'What must not be done',
  intro: 'What stands first after anything was seen. Where no place is named, it holds always.',
  rows: neverDone,
  id: ({ never }) => [never],
  columns: [
    { key: 'never', title: 'Never', unique: true },
    { key: 'seen', title: 'After', known: () => whatWasSeen.map(({ key }) => key) },
  ],
})
