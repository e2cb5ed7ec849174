import { acrossSystems } from './acrossSystems.js'
import type { Arrangement } from './case/arrangement.js'
import { type Contradiction, tellingOverruled } from './case/contradiction.js'
import { overWindow, windowsInUse } from './case/plateWindow.js'
import type { Converter, Cord } from './case/request.js'
import type { MainsSituation, PairSituation, PreparedDevice, PreparedSite, PreparedSupply } from './case/situation.js'
import { type Proposed, tellingProposed } from './case/tellingProposed.js'
import type { Finding, Outcome, Verdict } from './finding.js'
import { mainsTopics, pairTopics, type TopicName } from './index.js'
import { type Judged, type Judgement, toFinding, worstFirst, worstOf } from './judgement.js'
import { judging, type MainsJudging, type PairJudging } from './judging.js'
import { matchRails } from './matching/matchRails.js'
import { reachOf } from './reach.js'
import { silenced } from './silenced.js'

/** Findings of a check whose plates are read and whose site is resolved: worst first, within one outcome in chain order. */
export function assessPrepared(
  site: PreparedSite,
  supply: PreparedSupply,
  device: PreparedDevice,
  cord: Cord | null | undefined = null,
  converter: Converter | null | undefined = null,
  arrangement: Arrangement = 'separate',
): Finding[] {
  return silenced(
    worstFirst([
      ...judgeSupplySide(site, supply, cord ?? null, converter ?? null, device, judging[arrangement].mains),
      ...judgePair(supply, device, mainsRatioOf(site, supply, converter ?? null), judging[arrangement].pair),
    ]).map((judged) => toFinding(judged.topic, judged)),
  )
}

/** Everything between the wall and the supply, as far as it hangs on the machine for that machine. */
export function judgeSupplySide(
  site: PreparedSite,
  supply: PreparedSupply,
  cord: Cord | null = null,
  converter: Converter | null = null,
  device: PreparedDevice | null = null,
  topics: readonly MainsJudging[] = mainsTopics,
): Judged[] {
  const situations = (at: PreparedSite, of: PreparedSupply): MainsSituation[] =>
    at.systems.map((mains) => ({
      site: at,
      mains,
      reach: reachOf(mains, converter),
      supply: of,
      cord,
      converter,
      device,
    }))
  const overruled: Contradiction<MainsSituation[]>[] = [
    ...site.contradictions.map((one) => ({ ...one, otherwise: situations(one.otherwise, supply) })),
    ...supply.contradictions.map((one) => ({ ...one, otherwise: situations(site, one.otherwise) })),
  ]
  const entered = situations(site, supply)
  const proposed = supply.proposed && {
    situation: situations(site, supply.proposed.situation),
    doubts: supply.proposed.doubts,
  }
  return topics.flatMap((topic) => {
    const judge = (met: MainsSituation[]): readonly Judgement[] =>
      tellingProposed((one: MainsSituation[]) => judgeMet(topic, one), met, met === entered ? proposed : null)
    return tellingOverruled(judge, entered, overruled).map((judgement) => on(topic.name, judgement))
  })
}

/** A topic on the mains systems that may be met. */
function judgeMet(topic: MainsJudging, met: readonly MainsSituation[]): readonly Judgement[] {
  const [only] = met
  if (only && met.length === 1) return topic.judge(only)
  return acrossSystems(
    met.map(({ mains }) => mains),
    met.map((situation) => topic.judge(situation)),
  )
}

const on = (topic: TopicName, { outcome, say }: Judgement): Judged => ({ topic, outcome, say })

/**
 * Everything between the supply and the machine. Cheap: words are made only when a judgement is asked to say them.
 *
 * @param mainsRatio  mains voltage over the plate's [1], which an unregulated output follows; null where not known
 */
export function judgePair(
  supply: PreparedSupply,
  device: PreparedDevice,
  mainsRatio: number | null = null,
  topics: readonly PairJudging[] = pairTopics,
): Judged[] {
  const judged: Judged[] = []
  const { entered, overruled } = pairSituations(supply, device, mainsRatio)
  const proposed = proposedPair(supply, device, mainsRatio)
  for (const { name, judge } of topics) {
    const judgeIn = (pair: PairSituation): readonly Judgement[] =>
      tellingProposed(judge, pair, pair === entered ? proposed : null)
    for (const judgement of tellingOverruled(judgeIn, entered, overruled)) judged.push(on(name, judgement))
  }
  return judged
}

interface PairSituations {
  entered: PairSituation
  overruled: readonly Contradiction<PairSituation>[]
}

const nothingOverruled: readonly Contradiction<PairSituation>[] = []

function pairSituations(supply: PreparedSupply, device: PreparedDevice, mainsRatio: number | null): PairSituations {
  const entered = pairSituation(supply, device, mainsRatio)
  if (supply.contradictions.length + device.contradictions.length === 0) return { entered, overruled: nothingOverruled }
  return {
    entered,
    overruled: [
      ...supply.contradictions.map((one) => ({ ...one, otherwise: pairSituation(one.otherwise, device, mainsRatio) })),
      ...device.contradictions.map((one) => ({ ...one, otherwise: pairSituation(supply, one.otherwise, mainsRatio) })),
    ],
  }
}

/** The pair with the doubtful figures of both plates taken as they were read; null where there are none. */
function proposedPair(
  supply: PreparedSupply,
  device: PreparedDevice,
  mainsRatio: number | null,
): Proposed<PairSituation> | null {
  if (!supply.proposed && !device.proposed) return null
  return {
    situation: pairSituation(supply.proposed?.situation ?? supply, device.proposed?.situation ?? device, mainsRatio),
    doubts: [...(supply.proposed?.doubts ?? []), ...(device.proposed?.doubts ?? [])],
  }
}

const pairSituation = (supply: PreparedSupply, device: PreparedDevice, mainsRatio: number | null): PairSituation => ({
  supply,
  device,
  pairs: matchRails(supply.rails, device.rails),
  mainsRatio,
})

/** Mains voltage over the plate's [1], the highest where several systems may be met; null where either is not known. */
export function mainsRatioOf(
  site: PreparedSite,
  supply: PreparedSupply,
  converter: Converter | null = null,
): number | null {
  const { windows, decidedBy } = windowsInUse(supply.input)
  const [window] = windows
  if (!window || windows.length !== 1 || decidedBy === 'nothing') return null
  const ratios = site.systems.flatMap((mains) => {
    const { voltageV } = reachOf(mains, converter)
    return voltageV === null ? [] : [overWindow(window, voltageV)]
  })
  return ratios.length === site.systems.length ? Math.max(...ratios) : null
}

const verdicts: Record<Outcome, Verdict> = {
  stop: 'do-not-connect',
  unknown: 'find-out-first',
  caution: 'take-care',
  clear: 'no-conflict-found',
}

/** The verdict of the worst finding; of none at all, that everything is still to be found out. */
export const verdictOf = (judged: readonly { outcome: Outcome }[]): Verdict => verdicts[worstOf(judged) ?? 'unknown']
