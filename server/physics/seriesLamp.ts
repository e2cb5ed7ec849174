import { type LampString, type StringState, stringAt, stringCurrentA } from './lampString.js'
import { mustBePositive } from './range.js'

export type SeriesLoad =
  | { readonly kind: 'resistance'; readonly resistanceOhm: number }
  | { readonly kind: 'constant-power'; readonly powerW: number; readonly minimumV?: number | null }
  | { readonly kind: 'short' }
  | { readonly kind: 'open' }

/** One intersection of the lamp's line with the load's. */
export interface Intersection {
  currentA: number
  lampV: number
  loadV: number
  /** whether a small disturbance dies out, given that the load holds a capacitor */
  stable: boolean
}

export interface OperatingPoint {
  lamp: StringState
  loadV: number
  loadW: number
  /** `starved`: the load asks for more than the lamps can pass, so no point exists at which it runs */
  state: 'runs' | 'starved'
  /** intersections other than the one reported */
  others: Intersection[]
}

/**
 * The largest power the lamps can pass to any load, and the lamp voltage at which they do.
 *
 *   max over u of I(u) (V − u)
 *
 * @param mainsV  [V rms], 0 to the string's `maxV`
 * @returns [W], [V rms]
 * @throws RangeError outside that range, NaN included
 * @source maximum of the load line, taken exactly on each straight piece of the lamp's curve
 */
export function largestPower(string: LampString, mainsV: number): { powerW: number; lampV: number } {
  let best = { powerW: 0, lampV: 0 }
  for (const { from, to, fromA, toA } of pieces(string, mainsV)) {
    const slope = (toA - fromA) / (to - from)
    // I (V − u) with I = fromA + slope (u − from) is a parabola; its vertex counts where it lies on this piece
    const vertex = slope > 0 ? (mainsV + from - fromA / slope) / 2 : from
    const lampV = Math.min(to, Math.max(from, vertex))
    const powerW = (fromA + slope * (lampV - from)) * (mainsV - lampV)
    if (powerW > best.powerW) best = { powerW, lampV }
  }
  return best
}

/**
 * All points at which a constant-power load and the lamps agree.
 *
 *   I(u) (V − u) = P
 *
 * Stable where the power offered rises with u: C V_load dV_load/dt = I(u) (V − u) − P, so a load voltage that is a
 * little low (u a little high) is then offered more than it takes and recovers.
 *
 * @param powerW  [W], more than 0
 * @returns lamp volts rising; empty above {@link largestPower}
 * @throws RangeError for other powers, NaN included
 * @source load line; the power balance of the capacitor
 */
export function constantPowerPoints(string: LampString, mainsV: number, powerW: number): Intersection[] {
  mustBePositive({ powerW })
  const excess = (lampV: number): number => stringCurrentA(string, lampV) * (mainsV - lampV) - powerW
  const top = largestPower(string, mainsV)
  if (top.powerW < powerW) return []
  const knots = [...pieces(string, mainsV).map((piece) => piece.from), mainsV, top.lampV].sort((a, b) => a - b)
  const found: Intersection[] = []
  for (let at = 1; at < knots.length; at++) {
    const low = knots[at - 1] as number
    const high = knots[at] as number
    const rising = excess(low) < 0 && excess(high) >= 0
    const falling = excess(low) >= 0 && excess(high) < 0
    if (!rising && !falling) continue
    const lampV = bisect((u) => (rising ? excess(u) : -excess(u)), low, high)
    found.push({ currentA: stringCurrentA(string, lampV), lampV, loadV: mainsV - lampV, stable: rising })
  }
  return found
}

/**
 * Where lamps and load settle.
 *
 *   resistance: I(u) R = V − u, one solution, because the left side rises with u and the right side falls
 *   short: u = V; open: u = 0
 *   constant power: the stable point with the least volts across the lamps; without one, or where its load volts are
 *   below `minimumV`, the load is starved: it drags its voltage down to `minimumV` (to 0 where none is given), and the
 *   currents reported are those of that moment
 *
 * @param mainsV  [V rms], more than 0 and at most the string's `maxV`
 * @throws RangeError outside those ranges, NaN included
 * @source load line of a series circuit
 */
export function operatingPoint(string: LampString, mainsV: number, load: SeriesLoad): OperatingPoint {
  if (!(mainsV > 0 && mainsV <= string.maxV))
    throw new RangeError(`mains must be more than 0 V and at most ${string.maxV} V, got ${mainsV}`)
  const at = (lampV: number, rest: Partial<OperatingPoint> = {}): OperatingPoint => {
    const lamp = stringAt(string, lampV)
    const loadV = mainsV - lampV
    return { lamp, loadV, loadW: lamp.currentA * loadV, state: 'runs', others: [], ...rest }
  }
  switch (load.kind) {
    case 'short':
      return at(mainsV)
    case 'open':
      return at(0)
    case 'resistance': {
      const { resistanceOhm } = load
      mustBePositive({ resistanceOhm })
      return at(bisect((u) => stringCurrentA(string, u) * resistanceOhm - (mainsV - u), 0, mainsV))
    }
    case 'constant-power': {
      const points = constantPowerPoints(string, mainsV, load.powerW)
      const wanted = points.find((point) => point.stable)
      const lowest = load.minimumV ?? 0
      if (wanted && wanted.loadV >= lowest)
        return at(wanted.lampV, { others: points.filter((point) => point !== wanted) })
      return at(Math.max(0, mainsV - lowest), { state: 'starved', others: points })
    }
  }
}

/**
 * Volts across the lamps in front of an inductance, such as an unloaded transformer: its volts stand at right angles to theirs.
 *
 *   I(u) X = √(V² − u²),   X = V² / Q
 *
 * @param mainsV      [V rms], more than 0 and at most the string's `maxV`
 * @param reactiveVA  Q, what it takes on the full mains [VA], more than 0
 * @returns across the lamps [V rms]
 * @throws RangeError outside those ranges, NaN included
 * @source load line of a series circuit; Pythagoras for volts in quadrature
 */
export function quadratureLampV(string: LampString, mainsV: number, reactiveVA: number): number {
  mustBePositive({ mainsV, reactiveVA })
  const reactanceOhm = mainsV ** 2 / reactiveVA
  return bisect(
    (u) => stringCurrentA(string, u) * reactanceOhm - Math.sqrt(Math.max(0, mainsV ** 2 - u ** 2)),
    0,
    mainsV,
  )
}

/** Whether a switch-mode load starts behind the lamps; null where that cannot be told. */
export interface StartJudgement {
  starts: boolean | null
  reason: 'too-much-power' | 'below-minimum' | 'above-ceiling' | 'minimum-unknown' | 'holds' | 'form-decides'
}

/**
 * Whether a constant-power load starts and keeps running.
 *
 * It must find a stable point, at which it still has its least voltage. A rectifier-and-capacitor input draws its
 * current in peaks and so does worse than a steady draw: only where both readings agree is the answer known.
 *
 * @param powerW            what it takes [W], more than 0
 * @param mainsV            [V rms]
 * @param loadV             at the stable point of a steady draw [V rms]; undefined where there is none
 * @param rectifierLoadV    the same for a rectifier-and-capacitor input, as the sine with that crest [V rms]
 * @param minimumV          least voltage it runs at [V rms]; null where not known
 * @param assuredShare      part of the mains at which any unit made for it must run
 * @source load line; {@link rectifierLoad}
 */
export function judgeStart(known: {
  mainsV: number
  loadV: number | undefined
  rectifierLoadV: number | undefined
  minimumV: number | null
  assuredShare: number
}): StartJudgement {
  const { mainsV, loadV, rectifierLoadV, minimumV, assuredShare } = known
  if (loadV === undefined) return { starts: false, reason: 'too-much-power' }
  if (minimumV !== null && loadV < minimumV) return { starts: false, reason: 'below-minimum' }
  if (rectifierLoadV === undefined) return { starts: null, reason: 'above-ceiling' }
  if (rectifierLoadV >= (minimumV ?? assuredShare * mainsV)) return { starts: true, reason: 'holds' }
  return { starts: null, reason: minimumV === null ? 'minimum-unknown' : 'form-decides' }
}

interface Piece {
  from: number
  to: number
  fromA: number
  toA: number
}

/** The straight pieces of the lamp's curve from 0 to the mains voltage. */
function pieces(string: LampString, mainsV: number): Piece[] {
  const list: Piece[] = []
  for (let at = 1; at < string.voltageV.length; at++) {
    const from = string.voltageV[at - 1] as number
    if (!(from < mainsV)) break
    const to = Math.min(string.voltageV[at] as number, mainsV)
    list.push({ from, to, fromA: stringCurrentA(string, from), toA: stringCurrentA(string, to) })
  }
  return list
}

/** Root of a function that is negative at `low` and not at `high`: halved until two neighbouring numbers are left. */
function bisect(f: (x: number) => number, low: number, high: number): number {
  let left = low
  let right = high
  for (let round = 0; round < 200; round++) {
    const middle = (left + right) / 2
    if (middle === left || middle === right) break
    if (f(middle) < 0) left = middle
    else right = middle
  }
  return right
}
