import { mustBePositive } from './range.js'

/**
 * Rated voltage of the winding inside a dc supply with a bridge and a reservoir capacitor.
 *
 *   V_ac = 0.8 · (V_dc + 2 V)
 *
 * @param dcV  voltage on the plate, at full load [V], more than 0
 * @returns rms voltage of the winding at full load [V]
 * @throws RangeError outside that range, NaN included
 * @source Petra Toroid, "Methods of determining secondary current", bridge rectifier
 */
export function ratedWindingV(dcV: number): number {
  mustBePositive({ dcV })
  return 0.8 * (dcV + 2)
}

/**
 * Size of the transformer inside a dc supply with a bridge and a reservoir capacitor.
 *
 *   S = 1.4 · (V_dc · I_dc + 2 V · I_dc)
 *
 * @param dcV  voltage on the plate [V], more than 0
 * @param dcA  current on the plate [A], more than 0
 * @returns rated apparent power of the transformer [VA]
 * @throws RangeError outside those ranges, NaN included
 * @source Petra Toroid, "Methods of determining secondary current", bridge rectifier
 */
export function transformerSizeVA(dcV: number, dcA: number): number {
  mustBePositive({ dcV, dcA })
  return 1.4 * (dcV * dcA + 2 * dcA)
}
