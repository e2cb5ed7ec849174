import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { type TopicName, topicNames } from '../../server/chain/index.js'
import { facts } from '../../server/facts/boxes.js'
import { changed } from '../chain/cases.js'
import { assess } from '../support/told.js'

const text = readFileSync(join(import.meta.dirname, '../../docs/method-chain.md'), 'utf8')

/** The rows of the table under "What each topic decides from". */
const rows = text
  .slice(text.indexOf('## What each topic decides from'))
  .split('\n')
  .flatMap((line) => {
    const [, topic, from] = /^\| `([^`]+)` \| [^|]+ \| (`.*`) \|$/.exec(line) ?? []
    return topic && from ? [{ topic, keys: [...from.matchAll(/`([^`]+)`/g)].map(([, key]) => key ?? '') }] : []
  })

/** Cases of many facts, in one of which each fact must weigh. */
const cases: readonly CheckRequest[] = [
  changed({
    supply: {
      label: 'INPUT 230V~ 50Hz 0.2A OUTPUT 12V DC 2A centre positive FUSE T1AL250V',
      fuse: 'T1AL250V',
      lead: { lengthM: 5, areaMm2: 0.5 },
      outputs: [{ kind: 'dc', voltageV: 12, currentA: 2, powerW: 20, leastA: 1.5, regulated: true }],
      outputsTotalW: 24,
      measured: { offLoadV: 12.9, loadedV: 12.8, polarity: 'centre-positive' },
      isolated: true,
    },
    device: { inputs: [{ kind: 'dc', voltageV: 12, currentA: 1.9, currentIs: 'measured', tolerancePercent: 6 }] },
    cord: { areaMm2: 0.75, adapter: { earthed: true } },
  }),
  changed({
    site: { country: 'DE', voltageV: 230, frequencyHz: 50, socket: 'F' },
    supply: {
      protectionClass: 'I',
      inlet: 'C14',
      technology: 'transformer',
      regulated: false,
      input: {
        voltages: [
          { min: 115, max: 115 },
          { min: 120, max: 120 },
        ],
        selectorV: 120,
        frequenciesHz: [60],
        powerVA: 60,
      },
    },
    device: {
      regulatedNeeded: false,
      regulatesInside: true,
      inputs: [{ kind: 'dc', voltageV: 12, currentA: 1, peakA: 3 }],
    },
    cord: { plug: 'CEE 7/7', connector: 'C13', ratedA: 10, earthed: true },
    converter: { kind: 'isolating', outputV: 120, ratedVA: 70 },
  }),
  changed({
    supply: {
      protectionClass: 'II',
      protectionClassBy: 'symbol',
      inlet: 'C14',
      technology: 'transformer',
      regulated: null,
      outputs: [{ kind: 'ac', voltageV: 9, currentA: 1 }],
      input: { voltages: [{ min: 230, max: 230 }], frequenciesHz: [50], powerW: 12 },
    },
    device: { label: 'CLOCK 9V AC 60Hz 0.8A INTERNAL BATTERY KB 5 MIN', inputs: null, regulatedNeeded: false },
    cord: { plug: 'CEE 7/7', connector: 'C13', ratedA: 10, earthed: true },
  }),
  changed({
    supply: {
      label: 'INPUT 230V~ 50Hz BATTERY CHARGER NOT ISOLATED FROM MAINS KB 5 MIN',
      plug: { name: 'EIAJ-03' },
      measured: { offLoadV: 12.9 },
    },
    cord: { plugFitted: 'rewired', plugFuseA: 13 },
  } as Parameters<typeof changed>[0]),
  changed({
    supply: {
      technology: 'transformer',
      regulated: false,
      outputs: [{ kind: 'dc', voltageV: 9, currentA: 1, settings: [9, 15], setV: 12 }],
    },
    device: { regulatedNeeded: null, inputs: [{ kind: 'dc', voltageV: 12, currentA: 0.5, regulatesInside: true }] },
  }),
  changed({
    supply: { input: { voltages: [{ min: 120, max: 120 }], powerVA: 30 } },
    device: { mains: { motor: 'induction', pictureTube: true } },
    converter: { kind: 'isolating', outputV: 120, ratedVA: 200 },
  }),
  changed({
    site: { residualCurrentA: 0.03, othersLeakA: 0.01 },
    supply: { input: { voltages: [{ min: 230, max: 230 }], earthLeakA: 0.0035 } },
  }),
  changed({
    supply: {
      pins: [
        { id: '1', role: 'rail', kind: 'dc', voltageV: 12, measuredV: 12 },
        { id: '2', role: 'return' },
      ],
    },
    device: {
      pins: [
        { id: '1', role: 'rail', kind: 'dc', voltageV: 12 },
        { id: '2', role: 'return' },
      ],
    },
  }),
]

function without(request: CheckRequest, key: string): CheckRequest {
  const copy = structuredClone(request) as Record<string, unknown>
  const path = key.split('.')
  const last = path.pop() ?? ''
  let at: unknown[] = [copy]
  for (const name of path)
    at = at.flatMap((one) => {
      const inner = (one as Record<string, unknown> | null)?.[name]
      return Array.isArray(inner) ? inner : inner == null ? [] : [inner]
    })
  for (const one of at) (one as Record<string, unknown>)[last] = null
  return copy as CheckRequest
}

const on = (topic: TopicName, request: CheckRequest): string =>
  JSON.stringify(
    assess(request).findings.flatMap((finding) =>
      finding.topic === topic ? [[finding.outcome, finding.title, finding.working]] : [],
    ),
  )

const known = facts.map(({ key }) => key)

describe('what each topic decides from, in docs/method-chain.md', () => {
  it('is said of every topic', () => {
    expect(rows.map(({ topic }) => topic)).toEqual(topicNames)
  })
  it.each(rows)('names facts that there are: $topic', ({ keys }) => {
    expect(keys.length).toBeGreaterThan(0)
    for (const key of keys)
      expect(
        known.some((one) => one === key || one.startsWith(`${key}.`)),
        key,
      ).toBe(true)
  })
  it.each(rows)(
    'names none in vain: taken away, each says something else of $topic',
    ({ topic, keys }) => {
      const idle = keys.filter((key) =>
        cases.every((request) => on(topic as TopicName, request) === on(topic as TopicName, without(request, key))),
      )
      expect(idle).toEqual([])
    },
    30_000,
  )
})
