import type { DiodeModel } from './diode.js'
import { mustBePositive } from './range.js'
import { switchOn } from './transient.js'

export interface Inrush {
  peakA: number
  /** ∫ i² dt over the first half cycle and over the whole run [A²s] */
  firstHalfCycleI2t: number
  totalI2t: number
  /** over the last mains cycle */
  meanV: number
  rippleV: number
  rmsA: number
}

/**
 * Switch-on of a bridge and a discharged capacitor through a fixed resistance, without a lamp.
 *
 * @param mainsV       [V rms], more than 0
 * @param frequencyHz  [Hz], more than 0
 * @param seriesOhm    cold NTC resistor, mains loop and windings together [Ω], more than 0
 * @param bulkF        [F], more than 0
 * @param loadOhm      on the capacitor [Ω], more than 0; null for none
 * @param durationS    [s], more than 0
 * @throws RangeError outside those ranges, NaN included
 * @source {@link switchOn}
 */
export function inrush(circuit: {
  mainsV: number
  frequencyHz: number
  seriesOhm: number
  bulkF: number
  loadOhm: number | null
  switchAt: 'crest' | 'zero'
  durationS: number
  diode: DiodeModel
}): Inrush {
  const { loadOhm, seriesOhm } = circuit
  const run = switchOn({
    ...circuit,
    series: seriesOhm,
    load: loadOhm === null ? { kind: 'none' } : { kind: 'resistance', resistanceOhm: loadOhm },
    samples: 1,
    stepsPerHalfCycle: 400,
    settledBand: { kelvin: 0, share: 0 },
  })
  return {
    peakA: run.peakA,
    firstHalfCycleI2t: run.firstHalfCycleI2t,
    totalI2t: run.i2t,
    meanV: run.endBulkV,
    rippleV: run.endRippleV,
    rmsA: run.endA,
  }
}

/**
 * The resistance that keeps a capacitor's charging peak below a current, and the energy it must bear.
 *
 *   R = Vp / I,  E = C Vp² / 2
 *
 * @param crestV  crest of the mains [V], more than 0
 * @param bulkF   [F], more than 0
 * @param limitA  [A], more than 0
 * @returns [Ω], [J]
 * @throws RangeError outside those ranges, NaN included
 * @source Ohm's law; energy of a capacitor
 */
export function inrushLimiter(
  crestV: number,
  bulkF: number,
  limitA: number,
): { resistanceOhm: number; energyJ: number } {
  mustBePositive({ crestV, bulkF, limitA })
  return { resistanceOhm: crestV / limitA, energyJ: (bulkF * crestV ** 2) / 2 }
}
