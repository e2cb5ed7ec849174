import { dischargeResistance, dischargeTime, storedEnergy, voltageAfter } from '../../physics/discharge.js'
import { nearest, nextDown, standardRating } from '../../physics/eSeries.js'
import {
  dcTouchLimit,
  dischargeLimits,
  dischargeWithin,
  hazardousEnergy,
  measureAfter,
  plugPinRules,
  resistorVoltage,
} from '../../tables/capacitors.js'
import { powerMargin } from '../../tables/dummyLoad.js'
import { e12, e24, resistorRatings } from '../../tables/preferredValues.js'
import { say } from '../../words/phrase.js'
import { decimal, duration, farads, joules, ohms, volts, watts } from '../../words/quantity.js'
import type { Explained } from '../firstPower/lamps.js'

export interface DischargeRequest {
  capacitanceF: number
  /** at the start [V] */
  voltageV: number
  /** the resistor that is there; absent: one is chosen */
  resistanceOhm?: number | null
  limitV?: number | null
  withinS?: number | null
  /** where the resistor stays on the mains: the mains voltage [V rms], for what it loses all the time */
  mainsV?: number | null
}

export interface DischargeAnswer extends Explained {
  /** to the limit, through the standard value where one was chosen [s] */
  timeS: number
  energyJ: number
  /** in the first moment [W] */
  peakW: number | null
  /** the one given, or the largest that does it in time [Ω]; null where the start is at or below the limit */
  resistanceOhm: number | null
  /** preferred value to fit: nearest to the one given, or the next down [Ω] */
  standardOhm: number | null
  /** if it stays connected for good [W] */
  ratedW: number | null
  /** equal resistors in series that share the voltage */
  inSeries: { count: number; eachOhm: number } | null
  limitV: number
  /** R C [s] */
  timeConstantS: number | null
  /** lost on the mains all the time [W]; null where no mains is given */
  lossW: number | null
  /** to each published limit */
  times: { limitV: number; what: string; timeS: number | null }[]
  /** the rules for plug pins: largest bleeder, and whether this one meets it */
  plugRules: { name: string; largestOhm: number; met: boolean | null }[]
  /** left after a while */
  left: { afterS: number; voltageV: number }[]
}

/**
 * Discharge of a capacitor through a given resistor, or the resistor that does it in time.
 *
 * @throws RangeError for values of 0 or less
 * @source exponential discharge; limits as in the sources of the answer
 */
export function discharge(request: DischargeRequest): DischargeAnswer {
  const { capacitanceF, voltageV } = request
  const limitV = request.limitV ?? dcTouchLimit.limitV
  const withinS = request.withinS ?? dischargeWithin.timeS
  const above = voltageV > limitV
  const given = request.resistanceOhm ?? null
  const wanted = given ?? (above ? dischargeResistance(withinS, capacitanceF, voltageV, limitV) : null)
  const standardOhm =
    wanted === null ? null : given === null ? nextDown(wanted, e12.values) : nearest(wanted, e12.values)
  // what is there discharges it; what was chosen is bought as a preferred value
  const usedOhm = given ?? standardOhm
  const energyJ = storedEnergy(capacitanceF, voltageV)
  const peakW = usedOhm === null ? null : voltageV ** 2 / usedOhm
  const timeTo = (limit: number): number | null =>
    usedOhm === null ? (voltageV <= limit ? 0 : null) : dischargeTime(usedOhm, capacitanceF, voltageV, limit)
  const timeS = timeTo(limitV) ?? 0
  const count = Math.max(1, Math.ceil(voltageV / resistorVoltage.voltageV - 1e-9))
  return {
    timeS,
    energyJ,
    peakW,
    resistanceOhm: wanted,
    standardOhm,
    ratedW: peakW === null ? null : (standardRating(peakW * powerMargin.factor, resistorRatings.valuesW) ?? null),
    inSeries:
      usedOhm === null ? null : { count, eachOhm: (given === null ? nextDown : nearest)(usedOhm / count, e24.values) },
    limitV,
    timeConstantS: usedOhm === null ? null : usedOhm * capacitanceF,
    lossW: usedOhm === null || request.mainsV == null ? null : request.mainsV ** 2 / usedOhm,
    times: dischargeLimits.map((row) => ({ limitV: row.limitV, what: row.what, timeS: timeTo(row.limitV) })),
    plugRules: plugPinRules.flatMap((rule) => plugRule(rule, capacitanceF, voltageV, usedOhm)),
    left:
      usedOhm === null
        ? []
        : [1, 2, 5].map((afterS) => ({ afterS, voltageV: voltageAfter(usedOhm, capacitanceF, voltageV, afterS) })),
    working: [
      say`E = ${farads(capacitanceF)} × (${volts(voltageV)})² / 2 = ${joules(energyJ)}`,
      ...(!above ? [say`${volts(voltageV)} is not above ${volts(limitV)}: nothing to wait for`] : []),
      ...(above && given === null && wanted !== null && standardOhm !== null
        ? [
            say`R = ${duration(withinS)} / (${farads(capacitanceF)} × ln(${volts(voltageV)} / ${volts(limitV)})) = ${ohms(wanted)}, next E12 value down ${ohms(standardOhm)}`,
          ]
        : []),
      ...(above && usedOhm !== null
        ? [
            say`t = ${ohms(usedOhm)} × ${farads(capacitanceF)} × ln(${volts(voltageV)} / ${volts(limitV)}) = ${duration(timeS, 4)}`,
          ]
        : []),
      ...(usedOhm !== null && peakW !== null
        ? [say`P = (${volts(voltageV)})² / ${ohms(usedOhm)} = ${watts(peakW)} in the first moment`]
        : []),
    ],
    cautions: [
      say`Wait, then measure: a bleeder can be open. Take the time as a plan, the meter as the proof.`,
      say`Use an insulated resistor rated for the voltage, never a screwdriver; keep a clip lead on, because some volts come back by themselves.`,
      ...(energyJ >= hazardousEnergy.energyJ
        ? [
            say`${joules(energyJ)} is above ${joules(hazardousEnergy.energyJ)}: such energy is hazardous by itself, even at low voltage.`,
          ]
        : []),
      ...(count > 1
        ? [
            say`${volts(voltageV)} is more than one small resistor may carry: put ${decimal(count)} equal ones in series.`,
          ]
        : []),
      say`Two capacitors in series, as in a doubler, each need a resistor of their own.`,
    ],
    sources: [
      ...dischargeLimits.map(({ source }) => source),
      ...(request.withinS == null && given === null ? [dischargeWithin.source] : []),
      ...plugPinRules.map(({ source }) => source),
      hazardousEnergy.source,
      resistorVoltage.source,
      powerMargin.source,
      measureAfter,
    ],
  }
}

function plugRule(
  rule: (typeof plugPinRules)[number],
  capacitanceF: number,
  voltageV: number,
  usedOhm: number | null,
): DischargeAnswer['plugRules'] {
  if (rule.limitV !== null && voltageV <= rule.limitV) return []
  const largestOhm =
    rule.limitV === null
      ? rule.withinS / capacitanceF
      : dischargeResistance(rule.withinS, capacitanceF, voltageV, rule.limitV)
  return [{ name: rule.name, largestOhm, met: usedOhm === null ? null : usedOhm <= largestOhm }]
}
