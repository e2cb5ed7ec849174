import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import { canUndo, changedFacts } from '../../server/bench/jobs/factChange.js'
import type { Job } from '../../server/bench/jobs/job.js'
import { addReading, patchJob, Unfit } from '../../server/bench/jobs/jobChange.js'
import { openStops } from '../../server/bench/jobs/stops.js'
import { undone } from '../../server/web/jobFacts.js'
import { runs } from '../support/long.js'
import { matching, reversed } from '../web/exampleChecks.js'
import { after, at, changed, deeds, job } from './deeds.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

describe('facts changed in a job', () => {
  it('are written down with what they were, what they are and what that did', () => {
    const [change] = changed(job(), reversed, 'a').changes ?? []
    expect(change?.facts).toContainEqual({ fact: 'jackpol', before: 'centre-positive', after: 'centre-negative' })
    expect(change?.verdict.after).toBe('do-not-connect')
    expect(change?.turned.map(({ topic, after }) => [topic, after?.outcome])).toContainEqual(['polarity', 'stop'])
  })

  it('once, however often the same change arrives, and not at all where nothing differs', () => {
    const once = changed(job(), reversed, 'a')
    expect(changed(once, matching, 'a')).toBe(once)
    expect(changed(once, reversed, 'b')).toBe(once)
  })

  it('bring the plan and its limits along, and keep the judgement before', () => {
    const after = changed(job(), reversed, 'a')
    expect(after.limits).not.toEqual(job().limits)
    expect(after.earlier).toHaveLength(1)
  })

  it('are taken back one change at a time, the later one of the same fact first', () => {
    const socket = { ...matching, site: { ...matching.site, socket: 'E' as const } }
    const twice = changed(changed(job(), reversed, 'a'), { ...reversed, site: socket.site }, 'b')
    const [first, second] = twice.changes ?? []
    expect([first, second].map((one) => one && canUndo(twice.changes ?? [], one))).toEqual([true, true])
    const back = undone(twice, 'a', { id: 'c', at })
    expect(changedFacts(back.check, socket)).toEqual([])
    expect(back.changes?.at(-1)).toMatchObject({ undoes: 'a', verdict: { before: 'do-not-connect' } })
    // what was taken back is a change too, and comes again
    expect(() => undone(back, 'a', { id: 'd', at })).toThrow(Unfit)
    expect(changedFacts(undone(back, 'c', { id: 'd', at }).check, twice.check)).toEqual([])
  })

  it('end no stop of a current that was drawn, whatever the machine may draw now', () => {
    const stopped = patchJob(job(), { observations: { drawnA: 5 } }, { id: 'p', at })
    expect(openStops(stopped)).toHaveLength(1)
    const more = {
      ...matching,
      device: { ...matching.device, inputs: [{ kind: 'dc' as const, voltageV: 12, currentA: 9 }] },
    }
    expect(openStops(changed(stopped, more, 'a')).map(({ of }) => of)).toEqual(openStops(stopped).map(({ of }) => of))
  })
})

describe('a stop', () => {
  it('that was seen is not taken for an older one of the same box', () => {
    const seen = (of: Job, smells: string | null, id: string) => patchJob(of, { observations: { smells } }, { id, at })
    const twice = ['smoke', null, 'burnt tar', null].reduce((of, smells, index) => seen(of, smells, `p${index}`), job())
    expect(openStops(twice).map(({ title }) => title)).toEqual([
      expect.stringContaining('smoke'),
      expect.stringContaining('burnt tar'),
    ])
  })

  it('holds back what was read under power after the first of several, in the order in which they were found', () => {
    const key = 'supply-alone.off-load-1'
    const late = addReading(job(), { key, value: 14.9, unit: 'V' }, { id: 'a', at: at + 50 })
    const { limits } = late
    const before = { ...late, held: [{ ...openStops(late)[0]!, of: 'held', at: at + 10 }], limits }
    const read = (typedAt: number) =>
      addReading(before, { key, value: 12, unit: 'V' }, { id: 'b', at: at + 90, typedAt, despite: true })
    expect(() => read(at + 30)).toThrow(Unfit)
    expect(read(at + 5).readings).toHaveLength(2)
  })

  it('is lost by no change of facts, no way back, no good reading and no other words', () => {
    fc.assert(
      fc.property(fc.array(deeds, { minLength: 2, maxLength: 8 }), (list) => {
        let of = job()
        for (const [index, deed] of list.entries()) {
          const before = openStops(of)
          of = after(of, deed, `deed-${index}`)
          const stops = openStops(of)
          for (const stop of before)
            expect(
              stops.some(
                (one) =>
                  one.of === stop.of ||
                  // other words of the same box, which were not there before
                  (stop.key === null && one.where === stop.where && !before.some(({ of }) => of === one.of)),
              ),
            ).toBe(true)
          expect(stops.map(({ at }) => at)).toEqual(stops.map(({ at }) => at).toSorted((one, other) => one - other))
        }
      }),
      { numRuns: runs(80), seed: 17 },
    )
  })
})
