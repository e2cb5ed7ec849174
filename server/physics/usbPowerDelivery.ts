import { mustBePositive, mustNotBeNegative } from './range.js'

export interface UsbVoltage {
  voltageV: number
  /** most a source may offer at it [A] */
  largestA: number
  /** to this current any cable between two such sockets will do [A]; above it a marked one is needed */
  plainCableA: number
  /** false where sources may leave it out */
  always: boolean
  range: 'standard' | 'extended'
}

export interface UsbMatch {
  voltage: UsbVoltage
  /** the source's rating must be at least this [W] */
  leastSourceW: number
  markedCable: boolean
  /** most that a cable within its specification may lose at this current, both conductors [V] */
  cableDropV: number
  /** lowest voltage at the far end, the source at the bottom of its band [V] */
  lowestV: number
}

/**
 * The fixed voltage of a negotiated USB source that meets a machine's rail, if there is one.
 *
 *   P = V I;  drop = drop_rated I / I_rated;  lowest = V (1 − source tolerance) − drop
 *
 * @param voltageV   wanted, positive [V]
 * @param currentA   wanted [A], more than 0
 * @param tolerance  what the machine bears either side [1], 0 or more
 * @param table      fixed voltages
 * @param cable      most a cable may lose at its rated current [V], and how far a source may be low [1]
 * @returns undefined where no fixed voltage lies within the tolerance or none gives the current
 * @throws RangeError outside those ranges
 * @source USB Power Delivery, fixed supplies; arithmetic
 */
export function usbMatch(
  voltageV: number,
  currentA: number,
  tolerance: number,
  table: readonly UsbVoltage[],
  cable: { dropV: number; sourceTolerance: number },
): UsbMatch | undefined {
  mustBePositive({ voltageV, currentA })
  mustNotBeNegative({ tolerance })
  const voltage = table
    .filter((row) => Math.abs(row.voltageV - voltageV) <= tolerance * voltageV * (1 + 1e-9) && row.largestA >= currentA)
    .sort((a, b) => Math.abs(a.voltageV - voltageV) - Math.abs(b.voltageV - voltageV))[0]
  if (!voltage) return undefined
  const markedCable = currentA > voltage.plainCableA || voltage.range === 'extended'
  const ratedA = markedCable ? voltage.largestA : voltage.plainCableA
  const cableDropV = (cable.dropV * currentA) / ratedA
  return {
    voltage,
    leastSourceW: voltage.voltageV * currentA,
    markedCable,
    cableDropV,
    lowestV: voltage.voltageV * (1 - cable.sourceTolerance) - cableDropV,
  }
}
