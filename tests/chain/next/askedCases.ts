import fc from 'fast-check'
import { answerCheck } from '../../../server/chain/answer.js'
import type { CheckRequest } from '../../../server/chain/case/request.js'
import { facts } from '../../../server/facts/boxes.js'

/** A value that agrees with the rest, and now and then another. */
const mostly = <Value>(agreeing: Value, ...others: Value[]): fc.Arbitrary<Value> =>
  fc.oneof({ weight: 12, arbitrary: fc.constant(agreeing) }, { weight: 1, arbitrary: fc.constantFrom(...others) })

const ofPlace = {
  DE: { voltageV: 230, plug: 'CEE 7/7' },
  GB: { voltageV: 230, plug: 'BS 1363' },
  US: { voltageV: 120, plug: 'NEMA 5-15' },
} as const

/** What is in a person's hands, all of it known: a machine with its supply and cord, of which now and then a thing is of another lot. */
const whole: fc.Arbitrary<CheckRequest> = fc
  .record({
    country: fc.constantFrom('DE' as const, 'GB' as const, 'US' as const),
    classOne: fc.boolean(),
    voltageV: fc.constantFrom(9, 12),
    polarity: fc.constantFrom('centre-positive' as const, 'centre-negative' as const),
  })
  .chain(({ country, classOne, voltageV, polarity }) => {
    const { voltageV: mainsV, plug } = ofPlace[country]
    const turned = polarity === 'centre-positive' ? 'centre-negative' : 'centre-positive'
    return fc.record({
      site: fc.record({ country: fc.constant(country) }),
      supply: fc.record({
        input: fc.record({
          voltages: mostly(
            [{ min: mainsV, max: mainsV }],
            [{ min: 100, max: 240 }],
            [{ min: 100, max: 100 }],
            [{ min: 350 - mainsV, max: 350 - mainsV }],
          ),
          frequenciesHz: fc.constant([50, 60]),
          powerVA: fc.constantFrom(12, 30, 60),
        }),
        technology: fc.constantFrom('switch-mode' as const, 'transformer' as const),
        regulated: mostly(true, false),
        protectionClass: fc.constant(classOne ? ('I' as const) : ('II' as const)),
        inlet: fc.constant(classOne ? 'C14' : 'C8'),
        outputs: fc
          .record({
            kind: mostly<'ac' | 'dc'>('dc', 'ac'),
            voltageV: mostly(voltageV, voltageV * 1.5, 5),
            currentA: mostly(1, 0.3),
          })
          .map((row) => [row]),
        plug: fc.record({ outerMm: mostly(5.5, 4), innerMm: mostly(2.1, 1.7), polarity: mostly(polarity, turned) }),
      }),
      device: fc.record({
        inputs: fc.constant([{ kind: 'dc' as const, voltageV, currentA: 0.6 }]),
        regulatedNeeded: fc.boolean(),
        jack: fc.constant({ outerMm: 5.5, innerMm: 2.1, polarity }),
      }),
      cord: fc.record({
        plug: mostly<string>(plug, 'NEMA 1-15', 'AS/NZS 3112'),
        connector: mostly(classOne ? 'C13' : 'C7', 'C5', 'C19'),
        ratedV: mostly(250, 125),
        ratedA: mostly(10, 0.2),
        earthed: classOne ? mostly(true, false) : fc.constant(false),
      }),
    })
  })

/** A case, and a share of its facts that are not entered yet. */
export const askedCase = fc.record({
  whole,
  hidden: fc.subarray(
    facts.map((_, index) => index),
    { minLength: Math.floor(facts.length / 2) },
  ),
})

type Row = Record<string, unknown>

const at = (of: unknown, key: string): unknown =>
  key
    .split('.')
    .reduce<unknown>((inner, name) => (Array.isArray(inner) ? inner[0] : (inner as Row | undefined))?.[name], of)

/** The same with one fact as another has it; without it where that has none. */
function withFact(of: unknown, [name = '', ...rest]: string[], value: unknown): unknown {
  const inner = ((Array.isArray(of) ? of[0] : of) ?? {}) as Row
  return { ...inner, [name]: rest.length === 0 ? value : withFact(inner[name], rest, value) }
}

const isRow = (key: string): boolean => /^(?:supply\.outputs|device\.inputs)\./.test(key)

/** The facts of a case by their keys. */
const known = (of: CheckRequest): Map<string, unknown> =>
  new Map(facts.flatMap(({ key }) => (at(of, key) == null ? [] : [[key, at(of, key)] as const])))

/** A request of some facts alone. A row of an output is there once its voltage is. */
function requestOf(values: ReadonlyMap<string, unknown>): CheckRequest {
  let request: unknown = { site: {}, supply: {}, device: {} }
  for (const [key, value] of values) if (!isRow(key)) request = withFact(request, key.split('.'), value)
  for (const list of ['supply.outputs', 'device.inputs']) {
    const voltageV = values.get(`${list}.voltageV`)
    if (voltageV === undefined) continue
    const row = { kind: values.get(`${list}.kind`) ?? null, voltageV, currentA: values.get(`${list}.currentA`) ?? null }
    request = withFact(request, list.split('.'), [row])
  }
  return request as CheckRequest
}

export type Order = 'given' | 'form'

/**
 * How many answers it takes until the verdict is settled: a stop stands, or nothing is asked any more.
 *
 * @param order  the order of `next`, or the one in which the same facts stand in the form
 */
export function answersToSettle(
  { whole: of, hidden }: { whole: CheckRequest; hidden: readonly number[] },
  order: Order,
): number {
  const truth = known(of)
  const values = new Map([...truth].filter(([key]) => !hidden.includes(facts.findIndex((one) => one.key === key))))
  const given = new Set<string>()
  for (let count = 0; ; count += 1) {
    const { verdict, next } = answerCheck(requestOf(values))
    const questions = next.flatMap(({ fact }) => (fact === undefined || given.has(fact) ? [] : [fact]))
    if (verdict === 'do-not-connect' || questions.length === 0) return count
    const key = order === 'given' ? questions[0]! : facts.find((one) => questions.includes(one.key))!.key
    given.add(key)
    const value = truth.get(key)
    if (value !== undefined) values.set(key, value)
  }
}
