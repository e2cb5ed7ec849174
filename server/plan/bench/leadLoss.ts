import { awgAreaMm2, dropV, loopResistanceOhm } from '../../physics/conductor.js'
import type { Source } from '../../tables/source.js'
import { copperResistivity } from '../../tables/thresholds.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes, ohms, percent, plain, volts } from '../../words/quantity.js'

export interface LeadSize {
  lengthM: number
  areaMm2?: number | null
  awg?: number | null
}

export interface LeadLoss {
  resistanceOhm: number
  dropV: number
  /** at the machine [V] */
  leftV: number
  /** the line of the working that says what is lost */
  lost: Phrase
  working: Phrase[]
  source: Source
}

/**
 * What a lead takes from a rail; null where neither area nor gauge is known.
 *
 * @param voltageV  at the supply, a magnitude [V], more than 0
 * @throws RangeError for impossible sizes
 * @source Ohm's law; ASTM B258 for the gauge
 */
export function leadLoss(lead: LeadSize, currentA: number, voltageV: number): LeadLoss | null {
  const areaMm2 = lead.areaMm2 ?? (lead.awg == null ? null : awgAreaMm2(lead.awg))
  if (areaMm2 === null) return null
  const resistanceOhm = loopResistanceOhm(lead.lengthM, areaMm2, copperResistivity.value)
  const lost = dropV(currentA, resistanceOhm)
  const lostLine = say`lead: ${amperes(currentA)} × ${ohms(resistanceOhm)} = ${volts(lost)} lost, ${percent(lost / voltageV)} of ${volts(voltageV)}; ${volts(voltageV - lost)} at the machine`
  return {
    resistanceOhm,
    dropV: lost,
    leftV: voltageV - lost,
    lost: lostLine,
    working: [
      say`lead: ${plain(copperResistivity.value, copperResistivity.unit, 5)} × 2 × ${plain(lead.lengthM, 'm')} / ${plain(areaMm2, 'mm²')} = ${ohms(resistanceOhm)}`,
      lostLine,
    ],
    source: copperResistivity.source,
  }
}
