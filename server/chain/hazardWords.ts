import { commonPractice } from '../tables/source.js'
import { listed, say } from '../words/phrase.js'
import type { PairSituation } from './case/situation.js'
import { chargingMeanings } from './charging.js'
import { decidingMeanings, hazardsOf, judgeHazard } from './hazardFinding.js'
import { isolationMeanings } from './isolation.js'
import { caution, type Judgement, together } from './judgement.js'
import { pairTopic } from './topic.js'
import { ratingPlate } from './words.js'

const unreadCounts = commonPractice(
  'Words that were not read',
  'nobody knows whether they take away what the figures promise until someone has read them',
)

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
      rule: say`A plate names unfiltered direct current, class 0, a bell or toy transformer, tips that turn round.`,
      example: { supply: { label: 'UNFILTERED' } },
    },
    caution: {
      rule: say`A plate names a short time of use, one thing that it is for or not for, or a picture tube; or a phrase on it was not read.`,
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
    return together([
      ...hazardsOf(situation, meanings).flatMap((hazard) => judgeHazard(hazard)),
      ...notRead('supply', situation.supply.openPhrases),
      ...notRead('machine', situation.device.openPhrases),
    ])
  },
})

/** As long as a phrase was not read, nothing better than care is said. */
const notRead = (on: 'supply' | 'machine', phrases: PairSituation['supply']['openPhrases']): Judgement[] =>
  phrases.length === 0
    ? []
    : [
        caution(() => ({
          title: say`Not read on the ${on}’s plate: ${listed(phrases.map((phrase) => `“${phrase}”`))}`,
          why: say`It may take away what the figures promise: only for one thing, only for a short time, not isolated.`,
          working: [],
          action: say`Read it, or have it translated; enter what it says where there is a field for it, and dismiss it if it does not matter.`,
          sources: [ratingPlate, unreadCounts],
        })),
      ]
