import { atMost } from '../physics/tolerance.js'
import type { Source } from '../tables/source.js'
import { measuredDemandHeadroom, plateDemandHeadroom, totalPowerAbove } from '../tables/thresholds.js'
import { joined, type Phrase, say } from '../words/phrase.js'
import { decimal, watts } from '../words/quantity.js'
import type { DeviceRail, PairSituation, PreparedSupply } from './case/situation.js'
import { ends } from './matching/matchRails.js'
import { ratingPlate } from './words.js'

/** What all outputs give together against what all rails of the machine take. */
export interface TotalPower {
  outcome: 'stop' | 'caution' | 'clear'
  /** together, at most [W] */
  givenW: number
  /** of the rails whose current is known [W] */
  takenW: number
  /** what a supply should give [W] */
  wantedW: number
  working: Phrase[]
  sources: Source[]
}

/**
 * What all outputs give together against what all rails of the machine take.
 *
 *   P = Σ |V| · I
 *
 * Null where the plate names no power of all outputs, or nothing says what the machine takes. What is known of the machine alone
 * may be too much already; it is enough only once every rail is known.
 */
export function totalPower({ supply, device }: PairSituation): TotalPower | null {
  const givenW = totalOf(supply)
  if (givenW === null) return null
  const demands = device.rails.map(demandW)
  const known = demands.filter((demand) => demand !== null)
  const takenW = known.reduce((sum, demand) => sum + demand, 0)
  const tooMuch = !atMost(plateDemandHeadroom.value * takenW, givenW)
  if (!(takenW > 0) || (known.length < demands.length && !tooMuch)) return null
  const measured = device.rails.some(({ currentIs }) => currentIs === 'measured')
  const headroom = measured ? measuredDemandHeadroom : plateDemandHeadroom
  const each = known.map((demand) => watts(demand, 4, 'up'))
  return {
    outcome: tooMuch ? 'stop' : atMost(headroom.value * takenW, givenW) ? 'clear' : 'caution',
    givenW,
    takenW,
    wantedW: takenW * headroom.value,
    working: [
      say`all outputs together: ${watts(givenW)} / ${each.length > 1 ? say`(${joined(each, say` + `)})` : watts(takenW, 4, 'up')} = ${decimal(givenW / takenW, 3, 'down')}`,
    ],
    sources: [ratingPlate, headroom.source],
  }
}

/** Power of all outputs together [W]: as the plate names it, else a power of one output that is too large for that output alone. */
export function totalOf({ outputsTotalW, rails }: Pick<PreparedSupply, 'outputsTotalW' | 'rails'>): number | null {
  if (outputsTotalW !== null) return outputsTotalW
  const [only, second] = rails.filter(({ powerW }) => powerW !== null)
  if (!only || second || rails.length < 2 || only.powerW === null || only.currentA === null) return null
  return atMost(only.powerW, Math.abs(only.voltageV) * only.currentA * totalPowerAbove.value) ? null : only.powerW
}

/** [W], at the top of a printed range of voltages; null where neither amperes nor watts are known. */
function demandW(rail: DeviceRail): number | null {
  const { currentA, powerW } = rail
  if (currentA === null) return powerW
  return Math.max(Math.max(...ends(rail).map(Math.abs)) * currentA, powerW ?? 0)
}
