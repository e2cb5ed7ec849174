import { mustBePositive, mustBeShare } from './range.js'

/**
 * Apparent power from current and voltage.
 *
 *   S = V · I
 *
 * @param voltageV  [V], more than 0
 * @param currentA  [A], more than 0
 * @returns apparent power [VA]
 * @throws RangeError outside those ranges, NaN included
 * @source definition, IEC 60050-131-11-41 (from memory)
 */
export function apparentPowerVA(voltageV: number, currentA: number): number {
  mustBePositive({ voltageV, currentA })
  return voltageV * currentA
}

/**
 * Apparent power from active power.
 *
 *   S = P / λ
 *
 * @param powerW       [W], more than 0
 * @param powerFactor  λ [1], more than 0 up to 1
 * @returns apparent power [VA]
 * @throws RangeError outside those ranges, NaN included
 * @source definition of the power factor, IEC 60050-131-11-46 (from memory)
 */
export function apparentFromActiveVA(powerW: number, powerFactor: number): number {
  mustBePositive({ powerW })
  mustBeShare({ powerFactor })
  return powerW / powerFactor
}

/**
 * Input power of a supply from what it gives out.
 *
 *   P_in = P_out / η
 *
 * @param outputW     power at all outputs together [W], more than 0
 * @param efficiency  η [1], more than 0 up to 1
 * @returns power taken [W]
 * @throws RangeError outside those ranges, NaN included
 * @source definition of efficiency
 */
export function inputFromOutputW(outputW: number, efficiency: number): number {
  mustBePositive({ outputW })
  mustBeShare({ efficiency })
  return outputW / efficiency
}
