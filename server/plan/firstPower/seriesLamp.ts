import { stringAt } from '../../physics/lampString.js'
import { type RectifierPoint, rectifierCurve, rectifierLoad } from '../../physics/rectifierLoad.js'
import {
  type Intersection,
  judgeStart,
  largestPower,
  operatingPoint,
  type SeriesLoad,
} from '../../physics/seriesLamp.js'
import type { GlowWord } from '../../tables/glow.js'
import { assuredShare, bridgeDropV, drawnCurrents } from '../../tables/seriesLamp.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes, ohms, percent, plain, volts, watts } from '../../words/quantity.js'
import {
  type BandEdge,
  describeLamps,
  type Explained,
  glowOf,
  type LampSetup,
  lampCautions,
  lampSources,
  lampsOf,
  lampWorking,
} from './lamps.js'

/** Volts on the lamps by the two views of what the gas carries off. */
export interface Band {
  low: number
  high: number
}

const bandOf = (one: number, other: number): Band => ({ low: Math.min(one, other), high: Math.max(one, other) })

export interface SeriesLampAnswer extends Explained {
  currentA: number
  /** across all lamps */
  lampV: number
  /** the same by the two views of what the gas carries off, which part at low current */
  lampBandV: Band
  loadV: number
  lampW: number
  loadW: number
  lampResistanceOhm: number
  /** of the hottest filament */
  filamentK: number
  glow: GlowWord
  /** null where it cannot be told */
  starts: boolean | null
  /** why `starts` is what it is */
  startsBecause: Phrase
  state: 'runs' | 'starved'
  /** most that the lamps pass to a load that draws steadily, such as one with power-factor correction [W] */
  largestConstantPowerW: number
  /** most that they pass to a rectifier with a capacitor, which draws in peaks [W] */
  largestRectifierPowerW: number
  /** the same load as a rectifier with a capacitor; null above that limit and for other loads */
  rectifierInput: (RectifierPoint & { glow: GlowWord; lampBandV: Band }) | null
  others: Intersection[]
  /** each lamp by itself */
  lamps: { voltageV: number; currentA: number; powerW: number; filamentK: number; glow: GlowWord }[]
  /** into a dead short */
  shortA: number
}

/**
 * Where lamps and load settle, and whether a switch-mode load starts there.
 *
 * @param edge  of the band of the lamps' voltage that everything but the band itself rests on
 * @throws RangeError for lamps that melt on this mains: ask `lampsFault` first
 * @source the lamp and tungsten tables; load line
 */
export function seriesLamp(setup: LampSetup, load: SeriesLoad, edge: BandEdge = 'lower'): SeriesLampAnswer {
  const lower = lampsOf(setup, 'lower')
  const upper = lampsOf(setup, 'upper')
  const [string, further] = edge === 'lower' ? [lower, upper] : [upper, lower]
  const mainsV = setup.mains.voltageV
  const point = operatingPoint(string, mainsV, load)
  const lampBandV = bandOf(point.lamp.voltageV, operatingPoint(further, mainsV, load).lamp.voltageV)
  const top = largestPower(string, mainsV)
  const curve = rectifierCurve(string, mainsV, bridgeDropV.value)
  const peaky = load.kind === 'constant-power' ? rectifierLoad(curve, load.powerW) : rectifierLoad(curve, top.powerW)
  const start = startOf(load, point, peaky.point, mainsV)
  const { lamp } = point
  return {
    currentA: lamp.currentA,
    lampV: lamp.voltageV,
    lampBandV,
    loadV: point.loadV,
    lampW: lamp.powerW,
    loadW: point.loadW,
    lampResistanceOhm: lamp.resistanceOhm,
    filamentK: lamp.filamentK,
    glow: glowOf(lamp.filamentK),
    starts: start.starts,
    startsBecause: start.because,
    state: point.state,
    largestConstantPowerW: top.powerW,
    largestRectifierPowerW: peaky.ceilingW,
    rectifierInput:
      load.kind === 'constant-power' && peaky.point
        ? {
            ...peaky.point,
            glow: glowOf(peaky.point.filamentK),
            lampBandV: bandOf(
              peaky.point.lampV,
              rectifierLoad(rectifierCurve(further, mainsV, bridgeDropV.value), load.powerW).point?.lampV ??
                peaky.point.lampV,
            ),
          }
        : null,
    others: point.others,
    lamps: lamp.lamps.map(({ voltageV, currentA, powerW, filamentK }) => ({
      voltageV,
      currentA,
      powerW,
      filamentK,
      glow: glowOf(filamentK),
    })),
    shortA: stringAt(string, mainsV).currentA,
    working: [
      ...lampWorking(string),
      ...pointWorking(load, point, mainsV),
      bandWorking(lampBandV),
      say`most for a steady draw: ${volts(top.lampV)} on the lamps, ${watts(top.powerW, 3, 'down')}`,
      say`most for a rectifier with a capacitor, which draws in peaks: ${watts(peaky.ceilingW, 3, 'down')} (${percent(peaky.ceilingW / top.powerW)} of that)`,
      ...(load.kind === 'constant-power' ? [start.because] : []),
    ],
    cautions: [...pointCautions(load, point, setup), ...lampCautions(setup, lower)],
    sources: [...lampSources(string), assuredShare.source, bridgeDropV.source],
  }
}

/** A supply behind a rectifier sees the crest: the sine with that crest [V rms]. */
const rectifierLoadV = (point: RectifierPoint | undefined): number | undefined =>
  point && (point.busV + bridgeDropV.value) / Math.SQRT2

type Point = ReturnType<typeof operatingPoint>

function startOf(
  load: SeriesLoad,
  point: Point,
  peaky: RectifierPoint | undefined,
  mainsV: number,
): { starts: boolean | null; because: Phrase } {
  if (load.kind === 'short') return { starts: false, because: say`a shorted load gets no voltage` }
  if (load.kind === 'open')
    return { starts: null, because: say`nothing is drawn, so nothing shows whether it would start` }
  if (load.kind === 'resistance')
    return {
      starts: null,
      because: say`a resistance has no start-up threshold; compare the load volts with what the unit needs`,
    }
  const minimumV = load.minimumV ?? null
  const stable = point.state === 'runs' ? point.loadV : point.others.find((other) => other.stable)?.loadV
  const seen = rectifierLoadV(peaky)
  const judged = judgeStart({ mainsV, loadV: stable, rectifierLoadV: seen, minimumV, assuredShare: assuredShare.value })
  const least = minimumV === null ? '' : say`it needs ${volts(minimumV)}`
  const because = {
    'too-much-power': say`${watts(load.powerW)} is more than the lamps can pass: no point at which it runs, so it tries, drops out and tries again`,
    'below-minimum': say`it would settle at ${volts(stable ?? 0, 4, 'down')} but ${least}, so it drops out and tries again`,
    'above-ceiling': say`${watts(load.powerW)} is between what the lamps pass to a rectifier with a capacitor and what they pass to a steady draw: its input circuit decides`,
    'minimum-unknown': say`it settles at ${volts(stable ?? 0, 4, 'down')}, or at the crest of ${volts(seen ?? 0, 4, 'down')} behind a rectifier; its least voltage is not given`,
    'form-decides': say`a steady draw keeps ${volts(stable ?? 0, 4, 'down')}, a rectifier with a capacitor only the crest of ${volts(seen ?? 0, 4, 'down')}; ${least}`,
    holds: say`it keeps at least the crest of ${volts(seen ?? 0, 4, 'down')}; ${minimumV === null ? say`a unit for this mains must run at ${volts(assuredShare.value * mainsV)}` : least}`,
  }[judged.reason]
  return { starts: judged.starts, because }
}

function pointWorking(load: SeriesLoad, { lamp, loadV, loadW, state, others }: Point, mainsV: number): Phrase[] {
  const lines = [
    say`lamps: ${volts(lamp.voltageV)} and ${amperes(lamp.currentA)} at ${plain(lamp.filamentK, 'K', 3)}, ${ohms(lamp.resistanceOhm)}, ${watts(lamp.powerW)}`,
    say`load: ${volts(mainsV)} − ${volts(lamp.voltageV)} = ${volts(loadV)}, ${volts(loadV)} × ${amperes(lamp.currentA)} = ${watts(loadW)}`,
  ]
  if (load.kind === 'resistance')
    lines.push(
      say`check: ${ohms(load.resistanceOhm)} × ${amperes(lamp.currentA)} = ${volts(load.resistanceOhm * lamp.currentA)}`,
    )
  if (state === 'starved')
    lines.push(
      say`starved: the load pulls its voltage down to ${volts(loadV)}, where it gets ${watts(loadW)}; after it gives up, the current falls until it tries again`,
    )
  for (const other of others)
    lines.push(
      say`the lines also meet at ${volts(other.lampV)} on the lamps, ${amperes(other.currentA)}, ${volts(other.loadV)} on the load: ${other.stable ? say`below the least voltage of the load` : say`unstable, from there the load volts slide down`}`,
    )
  return lines
}

const bandWorking = ({ low, high }: Band): Phrase =>
  say`on the lamps: ${volts(low, 3, 'down')} where the loss through the gas goes with T, ${volts(high, 3, 'up')} where it goes with ${'T^1.7'}; limits rest on the upper, warnings of a dark lamp on the lower`

function pointCautions(load: SeriesLoad, { lamp, state }: Point, setup: LampSetup): Phrase[] {
  if (state === 'starved')
    return [
      say`Too large a load for ${describeLamps(setup)}: repeated flashes or a lit lamp are to be expected and do not prove a fault. Unload the unit or use a larger lamp.`,
    ]
  if (load.kind !== 'short' && glowOf(lamp.filamentK) === 'full')
    return [say`A lamp that stays at full brightness means a short or nearly one: switch off and unplug.`]
  return []
}

/** The lamp's line and the load's line for drawing: current against volts across the lamps. */
export interface LoadLine {
  mainsV: number
  lamp: { voltageV: number; currentA: number }[]
  load: { voltageV: number; currentA: number }[]
  points: (Intersection & { name: string })[]
}

/**
 * Points of the load-line drawing.
 *
 * @returns the load's line only where its current is within {@link drawnCurrents} of the lamps' short-circuit current
 * @source {@link seriesLamp}
 */
export function loadLine(setup: LampSetup, load: SeriesLoad): LoadLine {
  const string = lampsOf(setup)
  const mainsV = setup.mains.voltageV
  const shortA = stringAt(string, mainsV).currentA
  const grid = Array.from({ length: 101 }, (_, at) => (mainsV * at) / 100)
  const point = operatingPoint(string, mainsV, load)
  return {
    mainsV,
    lamp: grid.map((voltageV) => ({ voltageV, currentA: stringAt(string, voltageV).currentA })),
    load: loadCurrents(load, mainsV, grid).filter(({ currentA }) => currentA <= drawnCurrents.value * shortA),
    points: [
      {
        currentA: point.lamp.currentA,
        lampV: point.lamp.voltageV,
        loadV: point.loadV,
        stable: point.state === 'runs',
        name: point.state === 'runs' ? 'operating point' : 'starved',
      },
      ...point.others.map((other) => ({ ...other, name: other.stable ? 'below its least voltage' : 'unstable point' })),
    ],
  }
}

function loadCurrents(load: SeriesLoad, mainsV: number, grid: number[]): { voltageV: number; currentA: number }[] {
  switch (load.kind) {
    case 'resistance':
      return grid.map((voltageV) => ({ voltageV, currentA: (mainsV - voltageV) / load.resistanceOhm }))
    case 'constant-power':
      return grid
        .filter((voltageV) => mainsV - voltageV >= Math.max(load.minimumV ?? 0, mainsV / 1000))
        .map((voltageV) => ({ voltageV, currentA: load.powerW / (mainsV - voltageV) }))
    case 'open':
      return grid.map((voltageV) => ({ voltageV, currentA: 0 }))
    case 'short':
      return []
  }
}
