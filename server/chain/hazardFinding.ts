import type { Hazard } from '../plate/labelReading.js'
import { type HazardDecides, type HazardMeaning, hazardMeanings, hazardRule } from '../tables/hazardWords.js'
import { type Phrase, say } from '../words/phrase.js'
import { byQualified, underPower } from './action.js'
import type { PairSituation } from './case/situation.js'
import type { Outcome } from './finding.js'
import type { Judgement, Text } from './judgement.js'
import { ratingPlate } from './words.js'

/** A hazard with the thing it stands on, and where. */
export interface PrintedHazard extends Hazard {
  on: 'supply' | 'machine'
  in: 'plate' | 'plug name'
}

/** A shelf asks a million pairs, most of them without any. */
const none: PrintedHazard[] = []

/** Words of hazard with one of some meanings, on either plate, each meaning once a plate. */
export function hazardsOf({ supply, device }: PairSituation, meanings: readonly HazardMeaning[]): PrintedHazard[] {
  const sources: [readonly Hazard[] | undefined, Pick<PrintedHazard, 'on' | 'in'>][] = [
    [supply.reading?.hazards, { on: 'supply', in: 'plate' }],
    [device.reading?.hazards, { on: 'machine', in: 'plate' }],
    [supply.plug.hazards, { on: 'supply', in: 'plug name' }],
    [device.jack.hazards, { on: 'machine', in: 'plug name' }],
  ]
  if (!sources.some(([hazards]) => hazards?.length)) return none
  const printed = sources.flatMap(([hazards, at]) => (hazards ?? []).map((one): PrintedHazard => ({ ...one, ...at })))
  return printed.filter(
    ({ meaning, on }, index) =>
      meanings.includes(meaning) &&
      printed.findIndex((other) => other.meaning === meaning && other.on === on) === index,
  )
}

/** Every meaning that decides something. */
export const decidingMeanings = (Object.keys(hazardMeanings) as HazardMeaning[]).filter(
  (meaning) => decidesOf(meaning) !== 'step',
)

/** What a meaning decides by itself. */
export function decidesOf(meaning: HazardMeaning): HazardDecides {
  return hazardMeanings[meaning].decides
}

/** "The supply’s plate says “KB 5 MIN”: short-time or intermittent duty". */
export const hazardTitle = ({ on, in: at, words, meaning }: PrintedHazard): Phrase =>
  say`The ${on}’s ${at} says “${words}”: ${meaning}`

interface Said {
  why: string
  action: string
  measure?: string
  hands?: true
}

/** The rest of what is to be done, where it is not for the reader. */
export const leaveIt = byQualified(say`Leave it to a licensed electrician or another competent, qualified person.`)

/** A hazard as a judgement; its outcome is what its meaning decides, where nothing else is known. */
export function judgeHazard(
  hazard: PrintedHazard,
  outcome: Outcome | 'step' = decidesOf(hazard.meaning),
  words: Partial<Text> = {},
): Judgement[] {
  if (outcome === 'step') return []
  const { why, action, measure, hands }: Said = hazardMeanings[hazard.meaning]
  return [
    {
      outcome,
      say: () => ({
        title: hazardTitle(hazard),
        why,
        working: [],
        action: [action, ...(measure === undefined ? [] : [underPower(measure, 'mains')]), ...(hands ? [leaveIt] : [])],
        sources: [ratingPlate, hazardRule],
        ...words,
      }),
    },
  ]
}
