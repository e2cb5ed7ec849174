import { atMost } from '../physics/tolerance.js'
import { type Phrase, say } from '../words/phrase.js'
import { amperes, volts } from '../words/quantity.js'
import type { PairSituation } from './case/situation.js'
import { hazardsOf, hazardTitle, judgeHazard } from './hazardFinding.js'
import { caution, type Judgement } from './judgement.js'
import { ratedA } from './matching/matchRails.js'
import { ratingPlate } from './words.js'

const figure = /(\d+(?:[.,]\d+)?)\s*(m)?[AА]/iu

/** The current of "PEAK 4.5 A" [A]; null where no figure stands in it. */
function amperesIn(words: string): number | null {
  const [, digits, milli] = figure.exec(words) ?? []
  if (digits === undefined) return null
  return Number(digits.replace(',', '.')) * (milli ? 0.001 : 1)
}

const sags = say`At the peak the supply sags or cuts off: solenoids and motors pull the voltage down under everything else.`

const bearsPeak = (peakA: number): Phrase =>
  say`Use a supply that gives ${amperes(peakA)} for as long as the peak lasts, or find out what peak this one bears.`

/** An entered or printed peak of the machine above what the supply is rated for. */
export const peakAbove = (situation: PairSituation): Judgement[] => [
  ...enteredPeaks(situation),
  ...printedPeak(situation),
]

const enteredPeaks = ({ pairs }: PairSituation): Judgement[] =>
  pairs.flatMap(({ device, supply: rail }) => {
    const rated = rail && ratedA(rail)
    const { peakA } = device
    if (!rail || rated == null || peakA == null || atMost(peakA, rated)) return []
    return [
      caution(() => ({
        title: say`The machine draws ${amperes(peakA)} at ${volts(device.voltageV)} for moments; the supply is rated for ${amperes(rated)}`,
        why: sags,
        working: [say`${amperes(peakA)} > ${amperes(rated)}`],
        action: bearsPeak(peakA),
        sources: [ratingPlate],
      })),
    ]
  })

/** A printed one, above what any of the outputs is rated for. */
function printedPeak(situation: PairSituation): Judgement[] {
  const peak = hazardsOf(situation, ['peak current']).find(({ on }) => on === 'machine')
  const peakA = peak ? amperesIn(peak.words) : null
  const ratings = situation.supply.rails.flatMap((rail) => ratedA(rail) ?? [])
  if (!peak || peakA === null || ratings.length === 0) return []
  const mostA = Math.max(...ratings)
  if (atMost(peakA, mostA)) return []
  return judgeHazard(peak, 'caution', {
    title: say`${hazardTitle(peak)}; the supply is rated for ${amperes(mostA)}`,
    why: sags,
    working: [say`${amperes(peakA)} > ${amperes(mostA)}`],
    action: bearsPeak(peakA),
  })
}
