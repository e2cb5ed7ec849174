import { worstOfPair } from '../chain/assessPrepared.js'
import { byWorst, type Outcome, outcomes, type TopicName } from '../chain/finding.js'
import { topicNames } from '../chain/index.js'
import type { Judged } from '../chain/judgement.js'
import type { PreparedDevice, PreparedSite, PreparedSupply } from '../chain/situation.js'
import { supplySide } from './matches.js'

/** One cell: the worst outcome and the topic it comes from, in one number below 256. */
export const cellCode = (outcome: Outcome, topic: TopicName): number =>
  outcomes.indexOf(outcome) * 16 + topicNames.indexOf(topic)

export interface Cell {
  outcome: Outcome
  topic: TopicName
}

export function cellOf(code: number): Cell {
  const outcome = outcomes[code >> 4]
  const topic = topicNames[code & 15]
  if (!outcome || !topic) throw new RangeError(`no cell has the code ${code}`)
  return { outcome, topic }
}

/** Machines that are alike but for the current they draw. */
interface Alike {
  /** one of them, with its current not known */
  drawingUnknown: PreparedDevice
  members: { device: PreparedDevice; column: number }[]
}

/** Machines in groups of the same kind, voltage, tolerance and jack; those with several rails stand alone. */
export interface Machines {
  count: number
  groups: Alike[]
}

export function machinesOf(devices: readonly PreparedDevice[]): Machines {
  const groups = new Map<string, Alike>()
  devices.forEach((device, column) => {
    const { takesMains, regulatedNeeded, jack } = device
    const drawingUnknown = { ...device, rails: device.rails.map((rail) => ({ ...rail, currentA: null, powerW: null })) }
    const facts = JSON.stringify({ rails: drawingUnknown.rails, takesMains, regulatedNeeded, jack })
    const key = device.rails.length === 1 ? facts : `${column} ${facts}`
    const group = groups.get(key)
    if (group) group.members.push({ device, column })
    else groups.set(key, { drawingUnknown, members: [{ device, column }] })
  })
  return { count: devices.length, groups: [...groups.values()] }
}

/**
 * The cells of one supply's row: for each machine the worst of what stands between the wall and the supply and of what
 * stands between the two.
 *
 * A stop needs no second one: where the supply must not meet the wall no machine is looked at, and where machines of one
 * group must not meet it whatever they draw, their currents are not looked at. Knowing a current takes no stop away.
 */
export function matrixRow(site: PreparedSite, supply: PreparedSupply, { count, groups }: Machines): Uint8Array {
  const { judged, mainsRatio } = supplySide(site, supply)
  const [side] = judged.toSorted(byWorst)
  const row = new Uint8Array(count)
  if (side?.outcome === 'stop') return row.fill(cellCode(side.outcome, side.topic))
  for (const { drawingUnknown, members } of groups) {
    const whatever = members.length > 1 ? worstOfPair(supply, drawingUnknown, mainsRatio) : undefined
    for (const { device, column } of members)
      row[column] = code(whatever?.outcome === 'stop' ? whatever : worstOfPair(supply, device, mainsRatio), side)
  }
  return row
}

function code(pair: Judged | undefined, side: Judged | undefined): number {
  const worst = !pair || (side && byWorst(side, pair) < 0) ? side : pair
  // nothing to judge at all means that everything is still to be found out
  return worst ? cellCode(worst.outcome, worst.topic) : cellCode('unknown', 'output-voltage')
}
