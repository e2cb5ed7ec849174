import { mustBePositive } from './range.js'

/**
 * Current through a capacitor on the mains: what a Y capacitor of that size lets through to a person who touches the
 * output or the case. For two equal capacitors from both poles to a floating case, C is one of them.
 *
 *   I = 2 π f C V
 *
 * @param capacitanceF  [F], more than 0
 * @param voltageV      mains [V rms], more than 0
 * @param frequencyHz   [Hz], more than 0
 * @returns current [A rms]
 * @throws RangeError outside those ranges
 * @source textbook
 */
export function capacitorCurrent(capacitanceF: number, voltageV: number, frequencyHz: number): number {
  mustBePositive({ capacitanceF, voltageV, frequencyHz })
  return 2 * Math.PI * frequencyHz * capacitanceF * voltageV
}

/**
 * Largest capacitor that keeps that current within a limit.
 *
 *   C = I / (2 π f V)
 *
 * @param limitA       current allowed [A rms], more than 0
 * @param voltageV     mains [V rms], more than 0
 * @param frequencyHz  [Hz], more than 0
 * @returns capacitance [F]
 * @throws RangeError outside those ranges
 * @source textbook
 */
export function largestCapacitor(limitA: number, voltageV: number, frequencyHz: number): number {
  mustBePositive({ limitA, voltageV, frequencyHz })
  return limitA / (2 * Math.PI * frequencyHz * voltageV)
}

/**
 * What a meter shows between earth and the case of a machine whose earth is lost: two equal capacitors from both poles hold the case at
 * half the mains, behind the reactance of both.
 *
 *   V_read = V / 2 · R / √(R² + X²),  X = 1 / (2 π f · 2 C)
 *
 * @param capacitanceF  of one of the two [F], more than 0
 * @param voltageV      mains [V rms], more than 0
 * @param frequencyHz   [Hz], more than 0
 * @param meterOhm      of the meter, with what lies across it [Ω], more than 0
 * @returns reading [V rms]
 * @throws RangeError outside those ranges
 * @source textbook: two sources of half the mains behind their reactances, loaded by a resistance
 */
export function floatingCaseReading(
  capacitanceF: number,
  voltageV: number,
  frequencyHz: number,
  meterOhm: number,
): number {
  mustBePositive({ capacitanceF, voltageV, frequencyHz, meterOhm })
  const reactanceOhm = 1 / (2 * Math.PI * frequencyHz * 2 * capacitanceF)
  return ((voltageV / 2) * meterOhm) / Math.hypot(meterOhm, reactanceOhm)
}
