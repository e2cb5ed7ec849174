import type { PreparedDevice, PreparedSite, PreparedSupply } from '../../chain/case/situation.js'
import { byWorst, type Outcome, type TopicName } from '../../chain/finding.js'
import { judgeMatch, supplySide } from './matches.js'

/** The worst that stands between the wall and one machine by one supply, and the topic it comes from. */
export interface Cell {
  outcome: Outcome
  topic: TopicName
}

/** Of equals the one about the pair; of nothing to judge, that everything is still to be found out. */
export function matrixRow(site: PreparedSite, supply: PreparedSupply, devices: readonly PreparedDevice[]): Cell[] {
  const side = supplySide(site, supply)
  return devices.map((device) => {
    const [worst] = judgeMatch(side, device).toSorted(byWorst)
    return worst ? { outcome: worst.outcome, topic: worst.topic } : { outcome: 'unknown', topic: 'output-voltage' }
  })
}
