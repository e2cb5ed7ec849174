import { worstOfPair } from '../chain/assessPrepared.js'
import { type Outcome, outcomes, type TopicName, topics } from '../chain/finding.js'
import { byWorst, type Judgement } from '../chain/judgement.js'
import type { PreparedDevice, PreparedSite, PreparedSupply } from '../chain/situation.js'
import { supplySide } from './matches.js'

/** One cell: the worst outcome and the topic it comes from, in one number below 256. */
export const cellCode = (outcome: Outcome, topic: TopicName): number =>
  outcomes.indexOf(outcome) * 16 + topics.indexOf(topic)

export interface Cell {
  outcome: Outcome
  topic: TopicName
}

export function cellOf(code: number): Cell {
  const outcome = outcomes[code >> 4]
  const topic = topics[code & 15]
  if (!outcome || !topic) throw new RangeError(`no cell has the code ${code}`)
  return { outcome, topic }
}

/** Machines of which the same is known, as far as a supply is judged for them, are judged once. */
export interface Machines {
  distinct: PreparedDevice[]
  /** for each machine the place of its like in `distinct` */
  place: number[]
}

export function machinesOf(devices: readonly PreparedDevice[]): Machines {
  const places = new Map<string, number>()
  const distinct: PreparedDevice[] = []
  const place = devices.map((device) => {
    const { rails, takesMains, regulatedNeeded, jack } = device
    const facts = JSON.stringify({ rails, takesMains, regulatedNeeded, jack })
    const known = places.get(facts)
    if (known !== undefined) return known
    places.set(facts, distinct.length)
    return distinct.push(device) - 1
  })
  return { distinct, place }
}

/**
 * The cells of one supply's row: for each machine the worst of what stands between the wall and the supply and of what
 * stands between the two.
 */
export function matrixRow(site: PreparedSite, supply: PreparedSupply, { distinct, place }: Machines): Uint8Array {
  const { judged, mainsRatio } = supplySide(site, supply)
  const [side] = judged.toSorted((one, other) => byWorst(one.outcome, other.outcome))
  const codes = distinct.map((device) => code(worstOfPair(supply, device, mainsRatio), side))
  return Uint8Array.from(place, (index) => codes[index] ?? 0)
}

function code(pair: Judgement | undefined, side: Judgement | undefined): number {
  const worst = !pair || (side && byWorst(side.outcome, pair.outcome) < 0) ? side : pair
  // nothing to judge at all means that everything is still to be found out
  return worst ? cellCode(worst.outcome, worst.topic) : cellCode('unknown', 'output-voltage')
}
