import { dropV as dropOf, loopResistanceOhm } from '../physics/conductor.js'
import type { Source } from '../tables/source.js'
import { copperResistivity, leadDropStopAbove } from '../tables/thresholds.js'
import { type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, ohms, percent, plain, volts, watts } from '../words/quantity.js'
import { leadArea } from './leadDrop.js'

export interface LeadLossRequest {
  lengthM: number
  areaMm2?: number | null
  awg?: number | null
  currentA: number
  voltageV: number
}

export interface LeadLoss {
  /** there and back, at 20 °C */
  resistanceOhm: number
  dropV: number
  dropPercent: number
  lostW: number
  working: Phrase[]
  cautions: Phrase[]
  sources: Source[]
}

/**
 * What a two-wire copper lead loses at 20 °C.
 *
 *   R = ρ · 2 L / A, ΔV = I · R, P = I · ΔV
 *
 * @param request  lengthM [m] and currentA [A] more than 0, voltageV [V] not 0, and the conductor's size
 * @returns null where neither area nor gauge is given
 */
export function leadLoss({ lengthM, areaMm2, awg, currentA, voltageV }: LeadLossRequest): LeadLoss | null {
  const area = leadArea({ areaMm2, awg })
  if (area === null) return null
  const resistanceOhm = loopResistanceOhm(lengthM, area, copperResistivity.value)
  const dropV = dropOf(currentA, resistanceOhm)
  const share = dropV / Math.abs(voltageV)
  const lostW = dropV * currentA
  return {
    resistanceOhm,
    dropV,
    dropPercent: share * 100,
    lostW,
    working: [
      ...(awg == null ? [] : [say`AWG ${decimal(awg)} = ${plain(area, 'mm²')}`]),
      say`R = ${copperResistivity.value} ${copperResistivity.unit} × 2 × ${plain(lengthM, 'm')} / ${plain(area, 'mm²')} = ${ohms(resistanceOhm)} at 20 °C`,
      say`drop = ${amperes(currentA)} × ${ohms(resistanceOhm)} = ${volts(dropV)}, ${percent(share)} of ${volts(Math.abs(voltageV))}`,
      say`lost as heat: ${amperes(currentA)} × ${volts(dropV)} = ${watts(lostW)}`,
    ],
    cautions: [
      ...(share > leadDropStopAbove.value
        ? [say`More than ${percent(leadDropStopAbove.value)} is lost: use a shorter or a thicker lead.`]
        : []),
      say`Contacts and plugs come on top, and warm copper has about ${0.4} % more resistance for each degree.`,
    ],
    sources: [copperResistivity.source, leadDropStopAbove.source],
  }
}
