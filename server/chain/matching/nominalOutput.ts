import { converterOutputsV } from '../../tables/thresholds.js'
import type { VoltageWindow } from '../case/request.js'

/**
 * The output voltage to ask of a converter for a plate: that of a plate with one voltage; in a range the usual output
 * nearest its middle, else the middle. Of several windows the one nearest the mains. Null where the plate names none.
 */
export function nominalOutputV(windows: readonly VoltageWindow[], mainsV: number | null): number | null {
  const distance = ({ min, max }: VoltageWindow): number =>
    mainsV === null ? 0 : Math.max(min - mainsV, mainsV - max, 0)
  const window = windows.toSorted((one, other) => distance(one) - distance(other))[0]
  if (!window) return null
  if (window.min === window.max) return window.min
  const middle = (window.min + window.max) / 2
  const [nearest] = converterOutputsV.value
    .filter((voltageV) => voltageV >= window.min && voltageV <= window.max)
    .toSorted((a, b) => Math.abs(a - middle) - Math.abs(b - middle))
  return nearest ?? middle
}
