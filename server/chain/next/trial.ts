import { judgePair, judgeSupplySide, mainsRatioOf } from '../assessPrepared.js'
import { type Case, machineOf, mainsSideOf } from '../case/case.js'
import { prepareSite } from '../case/prepareSite.js'
import type { ReadPlate } from '../case/prepareSupply.js'
import type { CheckRequest } from '../case/request.js'
import type { Rail } from '../case/situation.js'
import type { Outcome, TopicName } from '../finding.js'
import { worstOf } from '../judgement.js'
import { judging } from '../judging.js'
import { placeOf } from './place.js'

/** Answers by the keys of their facts, as GET /api/facts has them; one of a list stands for every row that lacks it. */
export type Answers = ReadonlyMap<string, unknown>

/** The worst outcome on each topic that was judged. */
export type Worst = ReadonlyMap<TopicName, Outcome>

type Row = Record<string, unknown>

/**
 * Judges a case on some topics as it would be with some facts answered: outcomes only, no words. Neither plate is read again, and a side that
 * an earlier trial made ready is taken from there.
 */
export function trialOf(of: Case): (answers: Answers, among: readonly TopicName[]) => Worst {
  const prepared = preparing(of)
  return (answers, among) => {
    const judged = judging[of.arrangement]
    const mains = judged.mains.filter(({ name }) => among.includes(name))
    const pair = judged.pair.filter(({ name }) => among.includes(name))
    const { request, site, supply, device } = prepared(answered(of, answers))
    const converter = request.converter ?? null
    return outcomesOf([
      ...(mains.length > 0 ? judgeSupplySide(site, supply, request.cord ?? null, converter, device, mains) : []),
      ...(pair.length > 0 ? judgePair(supply, device, mainsRatioOf(site, supply, converter), pair) : []),
    ])
  }
}

/** The same request with facts answered; what is not touched is shared with it. */
export function answered(of: Case, answers: Answers): CheckRequest {
  let request = of.request as unknown as Row
  for (const [key, value] of answers)
    request = withAnswer(request, (placeOf(key, of.arrangement) ?? key).split('.'), value, of)
  return request as unknown as CheckRequest
}

function withAnswer(
  at: Row | null | undefined,
  [name = '', ...rest]: readonly string[],
  value: unknown,
  of: Case,
): Row {
  if (rest.length === 0) return { ...at, [name]: value }
  const inner = at?.[name]
  const printed = name === 'outputs' ? of.supply.rails : name === 'inputs' ? of.device.rails : null
  return {
    ...at,
    [name]: printed
      ? rowsWith(inner as Row[] | null | undefined, printed, rest[0] ?? '', value)
      : withAnswer(inner as Row | null | undefined, rest, value, of),
  }
}

/** The rows as entered, else as printed, with an answer in each that lacks it. */
function rowsWith(entered: Row[] | null | undefined, printed: readonly Rail[], name: string, value: unknown): Row[] {
  const rows: Row[] = entered?.length
    ? entered
    : printed.map(({ kind, voltageV, currentA }) => ({ kind, voltageV, currentA }))
  return rows.length === 0
    ? [{ kind: null, [name]: value }]
    : rows.map((row) => ({ ...row, [name]: row[name] ?? value }))
}

/** Makes a request ready, each side once for the same facts. */
function preparing(of: Case): (request: CheckRequest) => Case {
  const read: ReadPlate = (_text, side) => of[side].reading!
  const once = <Side>(
    make: (request: CheckRequest) => Side,
    facts: (request: CheckRequest) => unknown,
    known: Side,
  ) => {
    const made = new Map([[JSON.stringify(facts(of.request)), known]])
    return (request: CheckRequest): Side => {
      const key = JSON.stringify(facts(request))
      const side = made.get(key) ?? make(request)
      made.set(key, side)
      return side
    }
  }
  const site = once(
    (request) => prepareSite(request.site),
    (request) => request.site,
    of.site,
  )
  const supply = once(
    (request) => mainsSideOf(request, read),
    (request) => [of.arrangement === 'built-in' ? request.device : request.supply, request.readings],
    of.supply,
  )
  const device = once(
    (request) => machineOf(request, read),
    (request) => [request.device, request.readings],
    of.device,
  )
  return (request) => ({
    arrangement: of.arrangement,
    request,
    site: site(request),
    supply: supply(request),
    device: device(request),
  })
}

/** The worst outcome on each topic. */
export function outcomesOf(judged: readonly { topic: TopicName; outcome: Outcome }[]): Worst {
  const worst = new Map<TopicName, Outcome>()
  for (const { topic, outcome } of judged) {
    const before = worst.get(topic) ?? outcome
    worst.set(topic, worstOf([{ outcome: before }, { outcome }]) ?? outcome)
  }
  return worst
}
