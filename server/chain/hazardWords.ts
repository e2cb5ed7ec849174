import { hazardMeanings, hazardRule } from '../tables/hazardWords.js'
import { say } from '../words/phrase.js'
import type { PairSituation } from './case/situation.js'
import { chargingMeanings } from './charging.js'
import { decidingMeanings, hazardsOf, judgeHazard } from './hazardFinding.js'
import { isolationMeanings } from './isolation.js'
import { caution, type Judgement, together } from './judgement.js'
import { notRead } from './notRead.js'
import { pairTopic } from './topic.js'

const elsewhere: readonly string[] = [...isolationMeanings, ...chargingMeanings]

/** Words of hazard that no other topic weighs, and phrases that were not read. */
export const hazardWords = pairTopic({
  name: 'hazard-words',
  words: say`other words on the plates`,
  links: ['supply', 'machine'],
  asks: [],
  when: {
    stop: {
      rule: say`A plate names a thing that is no supply for machines: for shavers only, an electronic transformer.`,
      example: { supply: { label: 'SHAVERS ONLY' } },
    },
    unknown: {
      rule: say`A plate names unfiltered direct current, class 0, a bell or toy transformer, tips that turn round; or a phrase that was not read has volts, a kind of current or damage in it.`,
      example: { supply: { label: 'UNFILTERED' } },
    },
    caution: {
      rule: say`A plate names a short time of use, one thing that it is for or not for, or a picture tube, which may be entered too; or another phrase on it was not read.`,
      example: { supply: { label: 'KB 5 MIN' } },
    },
    clear: { never: say`Nothing is said where nothing stands on the plates but what was read.` },
  },
  judge(situation) {
    const meanings = decidingMeanings.filter(
      (meaning) =>
        !elsewhere.includes(meaning) &&
        !(meaning === 'interchangeable or reversible tips') &&
        // the earth path weighs it
        !(meaning === 'no earth, class 0 or 0I' && situation.supply.classZero),
    )
    const printed = hazardsOf(situation, meanings)
    return together([
      ...printed.flatMap((hazard) => judgeHazard(hazard)),
      ...(printed.some(({ meaning }) => meaning === 'picture tube') ? [] : enteredTube(situation)),
      ...notRead('supply', situation.supply),
      ...notRead('machine', situation.device),
    ])
  },
})

/** A picture tube that no plate names and that was entered. */
function enteredTube({ device }: PairSituation): Judgement[] {
  if (device.facts.mains?.pictureTube !== true) return []
  const { why, action } = hazardMeanings['picture tube']
  return [
    caution(() => ({ title: say`The machine has a picture tube`, why, working: [], action, sources: [hazardRule] })),
  ]
}
