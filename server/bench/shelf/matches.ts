import { judgePair, judgeSupplySide, mainsRatioOf, verdictOf } from '../../chain/assessPrepared.js'
import type { PreparedDevice, PreparedSite, PreparedSupply } from '../../chain/case/situation.js'
import { byWorst, type Finding, outcomes, type TopicName, type Verdict } from '../../chain/finding.js'
import { type Judged, toFinding } from '../../chain/judgement.js'
import { mainsOfPair, mainsOfSupply } from '../../chain/judging.js'
import { silenced } from '../../chain/silenced.js'

/**
 * A shelf keeps supplies and machines, not the cord of the day: what asks for the cord set is left to the check of the
 * pair that is chosen.
 */
const ofTheCord: ReadonlySet<TopicName> = new Set(['socket', 'cord', 'inlet'])

const ofTheSupply = mainsOfSupply.filter(({ name }) => !ofTheCord.has(name))

/** A supply at a place, with what stands between the wall and it, whatever machine it feeds. */
export interface SupplySide {
  site: PreparedSite
  supply: PreparedSupply
  judged: Judged[]
  mainsRatio: number | null
}

export const supplySide = (site: PreparedSite, supply: PreparedSupply): SupplySide => ({
  site,
  supply,
  judged: judgeSupplySide(site, supply, null, null, null, ofTheSupply),
  mainsRatio: mainsRatioOf(site, supply),
})

/** Everything between the wall and one machine; of equals what is about the pair comes first. */
export const judgeMatch = ({ site, supply, judged, mainsRatio }: SupplySide, device: PreparedDevice): Judged[] => [
  ...judgePair(supply, device, mainsRatio),
  ...judgeSupplySide(site, supply, null, null, device, mainsOfPair),
  ...judged,
]

export interface Pairing {
  verdict: Verdict
  /** the worst finding; of equals the one about the pair, since what the wall asks is the same for all */
  against: Finding | null
  /** how many findings there are of each outcome, in the order of `outcomes` */
  counts: number[]
}

/** Judges one supply for one machine. */
export function pairing(side: SupplySide, device: PreparedDevice): Pairing {
  const judged = judgeMatch(side, device)
  const [worst] = silenced(judged.map((one) => toFinding(one.topic, one))).toSorted(byWorst)
  return {
    verdict: verdictOf(judged),
    against: worst === undefined || worst.outcome === 'clear' ? null : worst,
    counts: outcomes.map((outcome) => judged.filter((judgement) => judgement.outcome === outcome).length),
  }
}

/** Best first: fewer stops, then fewer unknowns, then fewer cautions. */
export function byBest(one: Pairing, other: Pairing): number {
  for (const index of outcomes.keys()) {
    // more that is clear is better, more of anything else is worse
    const difference = ((one.counts[index] ?? 0) - (other.counts[index] ?? 0)) * (outcomes[index] === 'clear' ? -1 : 1)
    if (difference !== 0) return difference
  }
  return 0
}
