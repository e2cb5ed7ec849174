import { acrossSystems } from './acrossSystems.js'
import { byWorst, type Finding, type Outcome, topics, type Verdict } from './finding.js'
import { mainsTopics, pairTopics } from './index.js'
import { type Judgement, toFinding, worstOf } from './judgement.js'
import { matchRails } from './matchRails.js'
import { windowsInUse } from './plateWindow.js'
import { reachOf } from './reach.js'
import type { Converter, Cord } from './request.js'
import type { MainsSituation, PairSituation, PreparedDevice, PreparedSite, PreparedSupply } from './situation.js'

/** Findings of a check whose plates are read and whose site is resolved: worst first, within one outcome in chain order. */
export function assessPrepared(
  site: PreparedSite,
  supply: PreparedSupply,
  device: PreparedDevice,
  cord: Cord | null | undefined = null,
  converter: Converter | null | undefined = null,
): Finding[] {
  return inOrder([
    ...judgeSupplySide(site, supply, cord ?? null, converter ?? null, device),
    ...judgePair(supply, device, mainsRatioOf(site, supply, converter ?? null)),
  ]).map(toFinding)
}

/** Worst first, within one outcome in chain order; rails of one topic keep their order. */
export const inOrder = <Judged extends { topic: Finding['topic']; outcome: Outcome }>(
  judged: readonly Judged[],
): Judged[] =>
  judged.toSorted((one, other) => byWorst(one, other) || topics.indexOf(one.topic) - topics.indexOf(other.topic))

/** Everything between the wall and the supply: the same for every machine, so a shelf judges it once per supply. */
export function judgeSupplySide(
  site: PreparedSite,
  supply: PreparedSupply,
  cord: Cord | null = null,
  converter: Converter | null = null,
  device: PreparedDevice | null = null,
): Judgement[] {
  const situations = site.systems.map(
    (mains): MainsSituation => ({ site, mains, reach: reachOf(mains, converter), supply, cord, converter, device }),
  )
  const [only] = situations
  if (only && situations.length === 1) return mainsTopics.flatMap((topic) => topic.judge(only))
  return mainsTopics.flatMap((topic) =>
    acrossSystems(
      site.systems,
      situations.map((situation) => topic.judge(situation)),
    ),
  )
}

/**
 * Everything between the supply and the machine. Cheap: words are made only when a judgement is asked to say them.
 *
 * @param mainsRatio  mains voltage over the plate's [1], which an unregulated output follows; null where not known
 */
export function judgePair(
  supply: PreparedSupply,
  device: PreparedDevice,
  mainsRatio: number | null = null,
): Judgement[] {
  const situation: PairSituation = { supply, device, pairs: matchRails(supply.rails, device.rails), mainsRatio }
  const judged: Judgement[] = []
  for (const topic of pairTopics) for (const judgement of topic.judge(situation)) judged.push(judgement)
  return judged
}

/**
 * The worst judgement between a supply and a machine, the first of its rank in chain order; it looks no further than the first stop.
 *
 * @param mainsRatio  as for {@link judgePair}
 */
export function worstOfPair(
  supply: PreparedSupply,
  device: PreparedDevice,
  mainsRatio: number | null = null,
): Judgement | undefined {
  const situation: PairSituation = { supply, device, pairs: matchRails(supply.rails, device.rails), mainsRatio }
  let worst: Judgement | undefined
  for (const topic of pairTopics) {
    for (const judgement of topic.judge(situation)) {
      if (judgement.outcome === 'stop') return judgement
      if (!worst || byWorst(judgement, worst) < 0) worst = judgement
    }
  }
  return worst
}

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
    if (voltageV === null) return []
    // within the window the winding is made for what it gets
    return [voltageV > window.max ? voltageV / window.max : Math.min(1, voltageV / window.min)]
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
