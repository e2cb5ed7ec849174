import { capacitorCurrent, floatingCaseReading, largestCapacitor } from '../../physics/leakage.js'
import { impregnatedPaper, touchCurrentLimits } from '../../tables/capacitors.js'
import { meterLoads, soundFilter } from '../../tables/meterLoads.js'
import { say } from '../../words/phrase.js'
import { amperes, farads, hertz, ohms, volts } from '../../words/quantity.js'
import type { Explained } from '../firstPower/lamps.js'

export interface LeakageRequest {
  /** of one Y capacitor */
  capacitanceF: number
  voltageV: number
  frequencyHz: number
  limitA?: number | null
}

export interface LeakageAnswer extends Explained {
  currentA: number
  /** for the limit asked about, or the class II one [F] */
  largestF: number
  limitA: number
  within: boolean
  /** what a voltmeter shows on a floating case between two equal capacitors [V] */
  openV: number
  /** what meters show there, from the lightest load to the heaviest */
  meters: { meterOhm: number; what: string; readsV: number }[]
  limits: { limitA: number; what: string; largestF: number; within: boolean }[]
}

/**
 * The tingle of a Y capacitor, and the largest that keeps it within a limit.
 *
 * @throws RangeError for values of 0 or less
 * @source I = 2 π f C V
 */
export function leakage(request: LeakageRequest): LeakageAnswer {
  const { capacitanceF, voltageV, frequencyHz } = request
  const limitA = request.limitA ?? touchCurrentLimits[0]?.limitA ?? 0
  const currentA = capacitorCurrent(capacitanceF, voltageV, frequencyHz)
  const largestF = largestCapacitor(limitA, voltageV, frequencyHz)
  return {
    currentA,
    largestF,
    limitA,
    within: currentA <= limitA,
    openV: voltageV / 2,
    meters: meterLoads.map(({ ohm, what }) => ({
      meterOhm: ohm,
      what,
      readsV: floatingCaseReading(capacitanceF, voltageV, frequencyHz, ohm),
    })),
    limits: touchCurrentLimits.map((row) => ({
      limitA: row.limitA,
      what: row.what,
      largestF: largestCapacitor(row.limitA, voltageV, frequencyHz),
      within: currentA <= row.limitA,
    })),
    working: [
      say`I = 2 π × ${hertz(frequencyHz)} × ${farads(capacitanceF)} × ${volts(voltageV)} = ${amperes(currentA)}`,
      say`C = ${amperes(limitA)} / (2 π × ${hertz(frequencyHz)} × ${volts(voltageV)}) = ${farads(largestF)}`,
      say`open case between two equal capacitors: ${volts(voltageV)} / 2 = ${volts(voltageV / 2)}`,
    ],
    cautions: [
      say`The figure is an upper bound where the capacitor goes to the rectified side, as in most class II supplies.`,
      say`Half the mains on a case without earth, by a meter of high impedance, is what two sound capacitors give. With ${ohms(1e4)} across the meter, a qualified person’s work, theirs falls under ${volts(soundFilter.mostV)} up to ${farads(soundFilter.upToF)}; what stays high then, or stands near the full mains, is a fault.`,
      say`A tingle above the limit of the class, or one that changes suddenly, is a fault until measured.`,
      say`A replacement must be a capacitor of the same class for this place (Y1, Y2), never an ordinary one, and never larger.`,
      say`Capacitors in clear resin from the 1970s to the 1990s crack and fail with smoke: replace them on sight. Work inside a mains enclosure is for a licensed electrician or other qualified person.`,
    ],
    sources: [
      ...touchCurrentLimits.map(({ source }) => source),
      impregnatedPaper,
      ...meterLoads.flatMap((load) => load.sources),
    ],
  }
}
