import { atCurrent, atVoltage, type Filament, type FilamentState } from './filament.js'
import { along } from './interpolate.js'

/** How several lamps stand together in the one conductor. */
export type Arrangement = 'series' | 'parallel'

/** Lamps as one two-terminal element, with its steady curve from dark to the first melting filament. */
export interface LampString {
  readonly lamps: readonly Filament[]
  readonly arrangement: Arrangement
  /** rising, equal length; first entry 0 */
  readonly voltageV: Float64Array
  readonly currentA: Float64Array
  /** highest voltage no filament melts at [V rms] */
  readonly maxV: number
  /** all filaments cold [Ω] */
  readonly coldOhm: number
}

/** The string held at a voltage, in steady state. */
export interface StringState {
  voltageV: number
  currentA: number
  powerW: number
  resistanceOhm: number
  /** of the hottest filament */
  filamentK: number
  /** in the order of the string */
  lamps: FilamentState[]
}

/**
 * Lamps in series (one current [A rms], volts [V rms] add) or in parallel (one voltage, currents add), unequal ones too.
 *
 * @param lamps  one or more
 * @throws RangeError without lamps
 * @source Kirchhoff's laws
 */
export function lampString(lamps: readonly Filament[], arrangement: Arrangement): LampString {
  const [first] = lamps
  if (!first) throw new RangeError('a string needs at least one lamp')
  const series = arrangement === 'series'
  const shared = (lamp: Filament): Float64Array => (series ? lamp.currentA : lamp.voltageV)
  const added = (lamp: Filament): Float64Array => (series ? lamp.voltageV : lamp.currentA)
  // the lamp that melts first bounds the shared quantity, and its own grid is fine enough for the whole string
  const weakest = lamps.reduce((a, b) => (last(shared(b)) < last(shared(a)) ? b : a))
  const common = shared(weakest)
  const sum = Float64Array.from(common, (x) =>
    lamps.reduce((total, lamp) => total + (along(shared(lamp), added(lamp), x) as number), 0),
  )
  const voltageV = series ? sum : common
  return {
    lamps,
    arrangement,
    voltageV,
    currentA: series ? common : sum,
    maxV: last(voltageV),
    coldOhm: series
      ? lamps.reduce((total, lamp) => total + lamp.coldOhm, 0)
      : 1 / lamps.reduce((total, lamp) => total + 1 / lamp.coldOhm, 0),
  }
}

const last = (list: Float64Array): number => list[list.length - 1] as number

/**
 * Steady current of the string at a voltage.
 *
 * @param voltageV  [V rms], 0 to `maxV`
 * @returns [A rms]
 * @throws RangeError outside that range, NaN included
 * @source {@link lampString}
 */
export function stringCurrentA(string: LampString, voltageV: number): number {
  const currentA = along(string.voltageV, string.currentA, voltageV)
  if (currentA === undefined) throw new RangeError(`voltage must be 0 V to ${string.maxV} V, got ${voltageV}`)
  return currentA
}

/**
 * The string and every lamp in it, held at a voltage.
 *
 * @param voltageV  [V rms], 0 to `maxV`
 * @throws RangeError outside that range, NaN included
 * @source {@link lampString}
 */
export function stringAt(string: LampString, voltageV: number): StringState {
  const currentA = stringCurrentA(string, voltageV)
  const lamps = string.lamps.map((lamp) => {
    const state = string.arrangement === 'series' ? atCurrent(lamp, currentA) : atVoltage(lamp, voltageV)
    if (!state) throw new RangeError(`a filament melts at ${voltageV} V`)
    return state
  })
  return {
    voltageV,
    currentA,
    powerW: voltageV * currentA,
    resistanceOhm: currentA > 0 ? voltageV / currentA : string.coldOhm,
    filamentK: Math.max(...lamps.map((lamp) => lamp.filamentK)),
    lamps,
  }
}
