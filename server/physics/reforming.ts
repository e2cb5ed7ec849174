import { nextDown } from './eSeries.js'
import { mustBePositive, mustNotBeNegative } from './range.js'

export interface ReformingRules {
  /** voltage class of the series resistor: up to here the lower one [V] */
  lowVoltageV: number
  lowSeriesOhm: number
  highSeriesOhm: number
  /** charging current not to be exceeded by a step [A] */
  chargeA: number
  /** fewest steps up to the working voltage */
  fewestSteps: number
  /** largest share of the working voltage the resistor may take at the leakage that is accepted [1] */
  largestDrop: number
  /** wait at each step below the last [s] */
  stepS: number
  /** wait at the last step [s] */
  lastS: number
  /** time constants of the resistor and the capacitor that a wait is at least */
  settling: number
  /** one decade of preferred numbers */
  decade: readonly number[]
}

export interface ReformingStage {
  voltageV: number
  seriesOhm: number
  holdS: number
  /** at the end of the wait [A]; above it the next step is not taken */
  maxLeakageA: number
}

/**
 * Leakage that is accepted of an aluminium electrolytic.
 *
 *   I = k C V + I0, but at least the floor
 *
 * @param factor        k [1/s], that is µA per (µF V) read as a plain factor, 0 or more
 * @param capacitanceF  [F], more than 0
 * @param voltageV      [V], more than 0
 * @param addA          I0 [A], 0 or more
 * @param floorA        least figure worth reading [A], 0 or more
 * @returns current [A]
 * @throws RangeError outside those ranges
 * @source form of makers' leakage rules, for example "0.01 CV or 3 µA, whichever is greater"
 */
export function leakageLimit(factor: number, capacitanceF: number, voltageV: number, addA = 0, floorA = 0): number {
  mustBePositive({ capacitanceF, voltageV })
  mustNotBeNegative({ factor, addA, floorA })
  return Math.max(factor * capacitanceF * voltageV + addA, floorA)
}

/**
 * Leakage accepted by the square-root rule of large screw and snap-in types.
 *
 *   I = 3 √(C V), C in µF, I in µA
 *
 * @param capacitanceF  [F], more than 0
 * @param voltageV      [V], more than 0
 * @returns current [A]
 * @throws RangeError outside those ranges
 * @source from memory of makers' data sheets
 */
export function squareRootLeakage(capacitanceF: number, voltageV: number): number {
  mustBePositive({ capacitanceF, voltageV })
  return 3e-6 * Math.sqrt(capacitanceF * 1e6 * voltageV)
}

/**
 * Series resistor for reforming: the published one for the voltage class, smaller where the capacitor is so large that
 * the leakage still accepted would take too much of the voltage.
 *
 *   R = min(R_class, drop V / I_accept), next preferred value down
 *
 * @param workingV  highest voltage that will be put on [V], more than 0
 * @param acceptA   leakage accepted at that voltage [A], more than 0
 * @param rules     tables and thresholds
 * @returns resistance [Ω]
 * @throws RangeError outside those ranges
 * @source capacitor maker's note of October 1993 (10 kΩ up to 75 V, 100 kΩ above); the reduction: Ohm's law
 */
export function reformingResistor(workingV: number, acceptA: number, rules: ReformingRules): number {
  mustBePositive({ workingV, acceptA })
  const classOhm = workingV <= rules.lowVoltageV ? rules.lowSeriesOhm : rules.highSeriesOhm
  return nextDown(Math.min(classOhm, (rules.largestDrop * workingV) / acceptA), rules.decade)
}

/**
 * Equal voltage steps up to the working voltage, each held behind the series resistor.
 *
 *   steps = max(fewest, ⌈V / (R I_charge)⌉),  hold ≥ settling R C,  leakage at a step ∝ its voltage
 *
 * @param capacitanceF  [F], more than 0
 * @param workingV      highest voltage that will be put on [V], more than 0
 * @param seriesOhm     series resistor [Ω], more than 0
 * @param acceptA       leakage accepted at the working voltage [A], more than 0
 * @param rules         tables and thresholds
 * @throws RangeError outside those ranges
 * @source steps and charging current: capacitor maker's note of October 1993; 10 min a step: equipment maker's text
 */
export function reformingStages(
  capacitanceF: number,
  workingV: number,
  seriesOhm: number,
  acceptA: number,
  rules: ReformingRules,
): ReformingStage[] {
  mustBePositive({ capacitanceF, workingV, seriesOhm, acceptA })
  // a large capacitor may leak more than the charging current and still be accepted
  const chargeA = Math.max(rules.chargeA, acceptA)
  const steps = Math.max(rules.fewestSteps, Math.ceil(workingV / (seriesOhm * chargeA) - 1e-9))
  const settleS = rules.settling * seriesOhm * capacitanceF
  return Array.from({ length: steps }, (_, index) => {
    const share = (index + 1) / steps
    return {
      voltageV: workingV * share,
      seriesOhm,
      holdS: Math.max(index + 1 === steps ? rules.lastS : rules.stepS, settleS),
      maxLeakageA: acceptA * share,
    }
  })
}
