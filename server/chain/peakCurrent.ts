import { atMost } from '../physics/tolerance.js'
import { say } from '../words/phrase.js'
import { amperes } from '../words/quantity.js'
import type { PairSituation } from './case/situation.js'
import { hazardsOf, hazardTitle, judgeHazard } from './hazardFinding.js'
import type { Judgement } from './judgement.js'
import { ratedA } from './matching/matchRails.js'

const figure = /(\d+(?:[.,]\d+)?)\s*(m)?[AА]/iu

/** The current of "PEAK 4.5 A" [A]; null where no figure stands in it. */
function amperesIn(words: string): number | null {
  const [, digits, milli] = figure.exec(words) ?? []
  if (digits === undefined) return null
  return Number(digits.replace(',', '.')) * (milli ? 0.001 : 1)
}

/** A printed peak of the machine above what any output of the supply is rated for. */
export function peakAbove(situation: PairSituation): Judgement[] {
  const peak = hazardsOf(situation, ['peak current']).find(({ on }) => on === 'machine')
  const peakA = peak ? amperesIn(peak.words) : null
  const ratings = situation.supply.rails.flatMap((rail) => ratedA(rail) ?? [])
  if (!peak || peakA === null || ratings.length === 0) return []
  const mostA = Math.max(...ratings)
  if (atMost(peakA, mostA)) return []
  return judgeHazard(peak, 'caution', {
    title: say`${hazardTitle(peak)}; the supply is rated for ${amperes(mostA)}`,
    why: say`At the peak the supply sags or cuts off: solenoids and motors pull the voltage down under everything else.`,
    working: [say`${amperes(peakA)} > ${amperes(mostA)}`],
    action: say`Use a supply that gives ${amperes(peakA)} for as long as the peak lasts, or find out what peak this one bears.`,
  })
}
