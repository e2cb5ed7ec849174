import { usbMatch } from '../../physics/usbPowerDelivery.js'
import type { Source } from '../../tables/source.js'
import { usbCable, usbFixedVoltages, usbNoLimiter } from '../../tables/usbPower.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { amperes, volts, watts } from '../../words/quantity.js'

export interface UsbAnswer {
  suits: 'yes' | 'perhaps' | 'no'
  fixedV: number | null
  leastSourceW: number | null
  markedCable: boolean | null
  /** most that a cable within its specification may lose [V] */
  cableDropV: number | null
  lowestV: number | null
  reason: Phrase
  sources: Source[]
}

/**
 * Whether a negotiated USB source may feed a rail once the machine has proved itself.
 *
 * @param rail       signed voltage [V], current [A] or null
 * @param tolerance  of the machine [1]
 * @source USB Power Delivery, fixed supplies
 */
export function usbSource(rail: { voltageV: number; currentA: number | null }, tolerance: number): UsbAnswer {
  const sources = [usbNoLimiter, usbCable.source]
  const no = (reason: Phrase): UsbAnswer => ({
    suits: 'no',
    fixedV: null,
    leastSourceW: null,
    markedCable: null,
    cableDropV: null,
    lowestV: null,
    reason,
    sources,
  })
  if (rail.voltageV < 0)
    return no(say`It gives positive voltages only; a negative rail needs more than a plug adaptor.`)
  if (rail.currentA === null) return no(say`Without the machine’s current nothing can be said.`)
  const match = usbMatch(rail.voltageV, rail.currentA, tolerance, usbFixedVoltages, usbCable)
  if (!match)
    return no(
      say`No fixed voltage within tolerance of ${volts(rail.voltageV)} gives ${amperes(rail.currentA)}: they are ${joined(
        usbFixedVoltages.map((row) => volts(row.voltageV)),
        say`, `,
      )}.`,
    )
  const { voltage, leastSourceW, markedCable, cableDropV, lowestV } = match
  const enough = lowestV >= rail.voltageV * (1 - tolerance)
  const suits = voltage.always && enough ? 'yes' : 'perhaps'
  return {
    suits,
    fixedV: voltage.voltageV,
    leastSourceW,
    markedCable,
    cableDropV,
    lowestV,
    reason: joined([
      voltage.always
        ? say`${volts(voltage.voltageV)} is a fixed voltage of sources rated high enough, ${watts(leastSourceW, 3, 'up')} or more here.`
        : say`${volts(voltage.voltageV)} is optional and often absent: measure before the machine is connected.`,
      markedCable
        ? say`The cable must be marked for 5\u00a0A.`
        : say`Any cable with two such plugs carries this current.`,
      say`It may lose ${volts(cableDropV, 3, 'up')}, so the machine may see ${volts(lowestV, 3, 'down')}${enough ? say`` : say`, less than its tolerance allows`}.`,
      say`It is no current limiter: use it only after the bench supply has shown no fault.`,
    ]),
    sources: [
      ...sources,
      ...usbFixedVoltages.filter((row) => row.voltageV === voltage.voltageV).map(({ source }) => source),
    ],
  }
}
