import { frozen } from './frozen.js'
import { fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'

/** What a voltmeter loads with what it measures. */
export interface MeterLoad extends Sourced {
  readonly ohm: number
  readonly what: string
}

const impedances = published(
  'fasttraxsystem.com, on meters',
  'a usual digital meter has 10 MΩ, a low-impedance range some kilohms',
)

/** From the lightest to the heaviest load. */
export const meterLoads: readonly MeterLoad[] = frozen([
  { ohm: 10e6, what: 'a digital meter', sources: [impedances] },
  { ohm: 10e3, what: 'the same with a resistor across it', sources: [impedances] },
  {
    ohm: 3e3,
    what: 'a low-impedance range',
    sources: [impedances, fromMemory('Low-impedance ranges of meters', '3 kΩ')],
  },
] satisfies { ohm: number; what: string; sources: Source[] }[])

/** Two sound line-to-earth capacitors of up to so much hold up less than this under 10 kΩ: 4.7 V at 264 V 60 Hz, worked out. */
export const soundFilter = frozen({ upToF: 4.7e-9, mostV: 10 })
