import type { CheckRequest } from '../../server/chain/case/request.js'
import type { Outcome, ToldFinding, TopicName } from '../../server/chain/finding.js'
import { assess } from '../support/told.js'

type Partly<T> = T extends (infer Item)[] ? Item[] : T extends object ? { [Key in keyof T]?: Partly<T[Key]> | null } : T

/** A whole, matching case: a recorder's 12 V supply of class II, in a country with 230 V 50 Hz and F sockets. */
export const matching: CheckRequest = {
  site: { country: 'DE', socket: 'F' },
  supply: {
    input: { voltages: [{ min: 230, max: 230 }], frequenciesHz: [50], currentA: 0.2 },
    technology: 'switch-mode',
    regulated: true,
    protectionClass: 'II',
    inlet: 'C8',
    outputs: [{ kind: 'dc', voltageV: 12, currentA: 2 }],
    plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  device: {
    inputs: [{ kind: 'dc', voltageV: 12, currentA: 1, currentIs: 'plate' }],
    regulatedNeeded: true,
    jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false, plugFitted: 'moulded' },
}

const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** The matching case with some facts changed; null takes a fact away. Lists are replaced, not merged. */
export function changed(changes: Partly<CheckRequest>, base: CheckRequest = matching): CheckRequest {
  const merge = (from: unknown, by: unknown): unknown =>
    isPlain(from) && isPlain(by)
      ? Object.fromEntries(
          [...new Set([...Object.keys(from), ...Object.keys(by)])].map((key) => [
            key,
            key in by ? merge(from[key], by[key]) : from[key],
          ]),
        )
      : by
  return merge(base, changes) as CheckRequest
}

/** Findings of one topic, worst first. */
export const findingsOn = (topic: TopicName, request: CheckRequest): ToldFinding[] =>
  assess(request).findings.filter((finding) => finding.topic === topic)

/** The only finding of a topic. */
export function onlyFinding(topic: TopicName, request: CheckRequest): ToldFinding {
  const found = findingsOn(topic, request)
  const [finding] = found
  if (!finding || found.length !== 1) throw new Error(`expected one finding on ${topic}, got ${found.length}`)
  return finding
}

export const outcomesOn = (topic: TopicName, request: CheckRequest): Outcome[] =>
  findingsOn(topic, request).map(({ outcome }) => outcome)
