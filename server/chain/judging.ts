import type { Link } from '../facts/fact.js'
import type { Arrangement } from './case/arrangement.js'
import type { MainsSituation, PairSituation } from './case/situation.js'
import { linkOrder } from './chainLinks.js'
import { charging } from './charging.js'
import { hazardWords } from './hazardWords.js'
import { mainsTopics, pairTopics, type TopicName } from './index.js'
import { isolation } from './isolation.js'
import type { Judgement } from './judgement.js'
import { machineAlone } from './machineAlone.js'
import { mainsFrequency } from './mainsFrequency.js'
import { speed } from './speed.js'
import { starting } from './starting.js'
import { supplyAlone } from './supplyAlone.js'

/** A topic as it judges one arrangement. */
interface Judging<Situation> {
  readonly name: TopicName
  judge(situation: Situation): readonly Judgement[]
}

export type MainsJudging = Judging<MainsSituation>
export type PairJudging = Judging<PairSituation>

/** What an arrangement is judged by, and the links that it has, in the order in which they are plugged together. */
export interface ArrangementJudging {
  readonly mains: readonly MainsJudging[]
  readonly pair: readonly PairJudging[]
  readonly links: readonly Link[]
}

const without = (...left: readonly Link[]): Link[] => linkOrder.filter((link) => !left.includes(link))

/** What the words of a plate decide by themselves, whatever it is joined to. */
const byWords: readonly PairJudging[] = [isolation, charging, hazardWords]

/** Topics of the mains side that hang on the machine as well: a shelf judges them pair by pair, */
export const mainsOfPair: readonly MainsJudging[] = [mainsFrequency, speed, starting]
/** and these once for a supply, whatever machine it feeds. */
export const mainsOfSupply: readonly MainsJudging[] = mainsTopics.filter((topic) => !mainsOfPair.includes(topic))

/** A block with the wall plug on it has neither cord nor inlet. */
const ofTheCord: readonly TopicName[] = ['cord', 'inlet']

/** What each arrangement is judged by: the same topics, as far as it has what they judge. */
export const judging: Readonly<Record<Arrangement, ArrangementJudging>> = {
  separate: { mains: mainsTopics, pair: pairTopics, links: linkOrder },
  'plug-in': {
    mains: mainsTopics.filter(({ name }) => !ofTheCord.includes(name)),
    pair: pairTopics,
    links: without('cord', 'inlet', 'fuse'),
  },
  'built-in': { mains: mainsTopics, pair: byWords, links: without('supply', 'lead', 'plug', 'jack') },
  'supply-only': { mains: mainsTopics, pair: [...byWords, ...supplyAlone], links: without('jack', 'machine') },
  'machine-only': { mains: [], pair: [...byWords, ...machineAlone], links: ['jack', 'machine'] },
}
