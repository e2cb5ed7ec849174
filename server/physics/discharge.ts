import { mustBePositive, mustNotBeNegative } from './range.js'

/**
 * Energy stored in a capacitor.
 *
 *   E = C V² / 2
 *
 * @param capacitanceF  [F], more than 0
 * @param voltageV      [V], more than 0
 * @returns energy [J]
 * @throws RangeError outside those ranges
 * @source textbook
 */
export function storedEnergy(capacitanceF: number, voltageV: number): number {
  mustBePositive({ capacitanceF, voltageV })
  return (capacitanceF * voltageV ** 2) / 2
}

/**
 * Time a capacitor needs to fall to a limit through a resistor.
 *
 *   t = R C ln(V0 / limit)
 *
 * @param resistanceOhm  [Ω], more than 0
 * @param capacitanceF   [F], more than 0
 * @param voltageV       voltage at the start V0 [V], more than 0
 * @param limitV         voltage to fall to [V], more than 0
 * @returns time [s]; 0 where the start is at or below the limit
 * @throws RangeError outside those ranges
 * @source textbook
 */
export function dischargeTime(resistanceOhm: number, capacitanceF: number, voltageV: number, limitV: number): number {
  mustBePositive({ resistanceOhm, capacitanceF, voltageV, limitV })
  return voltageV <= limitV ? 0 : resistanceOhm * capacitanceF * Math.log(voltageV / limitV)
}

/**
 * Largest resistor that brings a capacitor down to a limit in time.
 *
 *   R = t / (C ln(V0 / limit))
 *
 * @param timeS         time allowed [s], more than 0
 * @param capacitanceF  [F], more than 0
 * @param voltageV      voltage at the start V0 [V], above limitV
 * @param limitV        voltage to fall to [V], more than 0
 * @returns resistance [Ω]
 * @throws RangeError outside those ranges; also where the start is not above the limit: any resistor would do
 * @source textbook
 */
export function dischargeResistance(timeS: number, capacitanceF: number, voltageV: number, limitV: number): number {
  mustBePositive({ timeS, capacitanceF, voltageV, limitV })
  if (!(voltageV > limitV)) throw new RangeError(`voltageV must be above limitV, got ${voltageV} and ${limitV}`)
  return timeS / (capacitanceF * Math.log(voltageV / limitV))
}

/**
 * Voltage left on a capacitor after a time.
 *
 *   V = V0 exp(−t / (R C))
 *
 * @param resistanceOhm  [Ω], more than 0
 * @param capacitanceF   [F], more than 0
 * @param voltageV       voltage at the start V0 [V], more than 0
 * @param timeS          [s], 0 or more
 * @returns voltage [V]
 * @throws RangeError outside those ranges
 * @source textbook
 */
export function voltageAfter(resistanceOhm: number, capacitanceF: number, voltageV: number, timeS: number): number {
  mustBePositive({ resistanceOhm, capacitanceF, voltageV })
  mustNotBeNegative({ timeS })
  return voltageV * Math.exp(-timeS / (resistanceOhm * capacitanceF))
}
