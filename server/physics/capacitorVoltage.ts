import type { FadingCourse } from './fadingCourse.js'

/**
 * Voltage of a capacitor between a source and a load, from a start at which the source begins to run along a straight line.
 *
 *   C dVc/dt = (e + e' t − Vc) GS − Vc GL − IL
 *   Vc(t) = a + b t + K exp(−t / τ),  τ = C / (GS + GL)
 *
 * @param bulkF      [F], more than 0
 * @param bulkV      at the start [V]
 * @param sourceV    e [V]
 * @param riseVPerS  e' [V/s]
 * @param sourceS    conductance between source and capacitor; 0 where a bridge blocks [S]
 * @param loadS      conductance of the load [S]
 * @param loadA      current of the load beside that [A]
 * @returns [V]
 * @source Kirchhoff's laws
 */
export function capacitorVoltage(
  bulkF: number,
  bulkV: number,
  sourceV: number,
  riseVPerS: number,
  sourceS: number,
  loadS: number,
  loadA: number,
): FadingCourse {
  const totalS = sourceS + loadS
  if (totalS === 0) return { flat: bulkV, ramp: -loadA / bulkF, fade: 0 }
  const ramp = (riseVPerS * sourceS) / totalS
  const flat = (sourceV * sourceS - loadA - bulkF * ramp) / totalS
  return { flat, ramp, fade: bulkV - flat }
}

/** The voltage of a shorted capacitor [V]. @source definition of a short */
export const shortedVoltage: FadingCourse = Object.freeze({ flat: 0, ramp: 0, fade: 0 })

/**
 * Current from the source into the capacitor and its load: (e + e' t − Vc) GS.
 *
 * @param bulk  Vc [V]; the rest as in {@link capacitorVoltage}
 * @returns [A]
 * @source Ohm's law
 */
export const chargingCurrent = (
  bulk: FadingCourse,
  sourceV: number,
  riseVPerS: number,
  sourceS: number,
): FadingCourse => ({
  flat: (sourceV - bulk.flat) * sourceS,
  ramp: (riseVPerS - bulk.ramp) * sourceS,
  fade: -bulk.fade * sourceS,
})
