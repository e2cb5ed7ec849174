import { describe, expect, it } from 'vitest'
import type { Assessment, Job, ReadingLimits } from '../../server/bench/jobs/job.js'
import { openGates } from '../../server/bench/jobs/openGates.js'
import { standing } from '../../server/bench/jobs/standing.js'
import { openStops } from '../../server/bench/jobs/stops.js'
import { at, job } from './deeds.js'

const step = (key: string, power: ReadingLimits['power'], more: Partial<ReadingLimits> = {}): ReadingLimits => ({
  key,
  text: key,
  unit: 'A',
  low: null,
  high: null,
  stopIf: null,
  power,
  ...more,
})

describe('a step under power', () => {
  // one gate that is passed, then the stages in their order
  const gates = [{ key: 'gate.look', text: 'Look', unit: null, low: null, high: null, power: 'none', who: 'you' }]
  const finding = { outcome: 'clear' }
  const ticks = [{ id: 't', key: 'gate.look', at, as: 'as-expected', words: null, finding }]
  const held = (limits: ReadingLimits[]): Pick<Job, 'plan' | 'limits' | 'readings' | 'ticks'> =>
    ({ plan: { gates }, limits, readings: [], ticks }) as unknown as Job

  it('waits for the lines under power of the stages before, and for none that needs no power', () => {
    const limits = [
      step('supply-alone.write-down', 'none'),
      step('supply-alone.lamp-volts', 'mains'),
      step('together.drawn', 'mains'),
    ]
    expect(openGates(held(limits), 'together.drawn')).toEqual(['supply-alone.lamp-volts'])
  })
})

describe('a current that was drawn', () => {
  it('is held against the last stage that limits one under power, not the first', () => {
    const limits = [
      step('bench-supply.step-1', 'low-voltage', { high: 0.2 }),
      step('together.drawn', 'mains', { high: 1 }),
      step('together.cold', 'none', { high: 9 }),
    ]
    const drawn = (drawnA: number): Job => ({
      ...job(),
      limits,
      observations: { ...job().observations, drawnA },
    })
    expect(openStops(drawn(0.8))).toEqual([])
    expect(openStops(drawn(1.2))).toHaveLength(1)
  })
})

describe('what a job waits for', () => {
  it('counts from the first of the judgements that all had it: one between without it begins anew', () => {
    const judged = (judgedAt: number, stops: boolean): Assessment =>
      ({
        judgedAt,
        dataVersion: 'x',
        findings: stops ? [{ topic: 'cord', outcome: 'stop', title: 'The cord does not fit' }] : [],
      }) as unknown as Assessment
    const stands = (...earlier: Assessment[]) => standing({ ...job(), assessment: judged(400, true), earlier })
    expect(stands(judged(100, true), judged(200, true)).since).toBe(100)
    expect(stands(judged(100, true), judged(200, false), judged(300, true)).since).toBe(300)
  })
})
