import { along } from './interpolate.js'
import { type LampString, stringAt } from './lampString.js'
import { mustBePositive, mustNotBeNegative } from './range.js'

/** A rectifier-and-capacitor input behind a lamp string, in steady state. */
export interface RectifierPoint {
  /** [A rms], peaks included */
  currentA: number
  /** across the lamps [V rms] */
  lampV: number
  /** mean on the capacitor [V] */
  busV: number
  /** taken by the load after the capacitor [W] */
  loadW: number
  /** of the hottest filament [K] */
  filamentK: number
}

/**
 * What a bridge with a large capacitor takes through a fixed resistance: current flows only while the sine stands
 * above the capacitor.
 *
 *   with cos a = Vb / Vp:  mean I = 2 Vp / (π R) (sin a − a cos a)
 *                          rms² I = 2 Vp² / (π R²) [a (1/2 + cos² a) − (3/4) sin 2a]
 *
 * @param busV     capacitor plus diode drop [V], 0 to the crest
 * @param crestV   crest of the mains [V], more than 0
 * @param ohm      series resistance [Ω], more than 0
 * @returns mean and rms current [A]
 * @throws RangeError outside those ranges, NaN included
 * @source integrals of (Vp cos x − Vb) / R and of its square over −a to a, twice a cycle
 */
export function rectifiedThrough(busV: number, crestV: number, ohm: number): { meanA: number; rmsA: number } {
  mustBePositive({ crestV, ohm })
  if (!(busV >= 0 && busV <= crestV)) throw new RangeError(`bus must be 0 V to the crest, got ${busV}`)
  const cosine = busV / crestV
  const angle = Math.acos(cosine)
  const sine = Math.sin(angle)
  const meanA = ((2 * crestV) / (Math.PI * ohm)) * (sine - angle * cosine)
  const square = ((2 * crestV ** 2) / (Math.PI * ohm ** 2)) * (angle * (0.5 + cosine ** 2) - 1.5 * sine * cosine)
  return { meanA, rmsA: Math.sqrt(Math.max(0, square)) }
}

/**
 * Every steady state of a rectifier-and-capacitor input behind lamps, from no load to a shorted capacitor: for each
 * bus voltage the filament finds the temperature at which its losses equal the heat of the peaky current.
 *
 * The capacitor is taken as large (its ripple is left out) and the filament as slow against a half cycle.
 *
 * @param mainsV  [V rms], more than 0 and at most the string's `maxV`
 * @param dropV   of the two diodes that conduct [V], 0 or more
 * @param points  number of bus voltages
 * @returns bus voltage falling
 * @throws RangeError outside those ranges, NaN included
 * @source {@link rectifiedThrough} and the heat balance of the filament
 */
export function rectifierCurve(string: LampString, mainsV: number, dropV: number, points = 120): RectifierPoint[] {
  if (!(mainsV > 0 && mainsV <= string.maxV))
    throw new RangeError(`mains must be 0 V to ${string.maxV} V, got ${mainsV}`)
  mustNotBeNegative({ dropV })
  const crestV = Math.SQRT2 * mainsV
  const curve: RectifierPoint[] = []
  for (let at = 1; at <= points; at++) {
    const sourceSideV = crestV - (crestV - dropV) * (at / points)
    if (!(sourceSideV >= dropV)) break
    const unit = rectifiedThrough(sourceSideV, crestV, 1)
    // rms volts across the lamps do not depend on their resistance, only on the conduction angle
    const lampV = unit.rmsA
    const { currentA, filamentK } = stringAt(string, lampV)
    const meanA = currentA > 0 ? (unit.meanA * currentA) / lampV : 0
    const busV = sourceSideV - dropV
    curve.push({ currentA, lampV, busV, loadW: busV * meanA, filamentK })
  }
  return curve
}

/**
 * The largest constant power a rectifier-and-capacitor input can draw through the lamps, and the state at a given power.
 *
 * @param powerW  wanted [W], more than 0
 * @returns `ceilingW` the top of the curve; `point` the stable state at `powerW`, undefined above the ceiling
 * @throws RangeError for other powers, NaN included
 * @source the top of {@link rectifierCurve}; left of it a lower bus voltage means less power, so the capacitor runs down
 */
export function rectifierLoad(
  curve: readonly RectifierPoint[],
  powerW: number,
): { ceilingW: number; point?: RectifierPoint } {
  mustBePositive({ powerW })
  const top = curve.reduce((best, point, at) => (point.loadW > (curve[best] as RectifierPoint).loadW ? at : best), 0)
  const ceilingW = (curve[top] as RectifierPoint).loadW
  const rising = curve.slice(0, top + 1)
  const watts = [0, ...rising.map((point) => point.loadW)]
  const first = curve[0] as RectifierPoint
  const pick = (of: (point: RectifierPoint) => number, atNoLoad: number): number | undefined =>
    along(watts, [atNoLoad, ...rising.map(of)], powerW)
  const currentA = pick((point) => point.currentA, 0)
  const lampV = pick((point) => point.lampV, 0)
  const busV = pick((point) => point.busV, first.busV)
  const filamentK = pick((point) => point.filamentK, first.filamentK)
  if (currentA === undefined || lampV === undefined || busV === undefined || filamentK === undefined)
    return { ceilingW }
  return { ceilingW, point: { currentA, lampV, busV, loadW: powerW, filamentK } }
}
