import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import type { Job } from '../../server/bench/jobs/job.js'
import { addCause, addLog, addReading, withdraw } from '../../server/bench/jobs/jobChange.js'
import { openStops } from '../../server/bench/jobs/stops.js'
import { judgedAnew } from '../../server/web/exchange/judgedAnew.js'
import { runs } from '../support/long.js'
import { after, at, type Deed, deeds, job } from './deeds.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

const done = (list: readonly Deed[], of: Job, name: string): Job =>
  list.reduce((now, deed, index) => after(now, deed, `${name}-${index}`), of)

const volts = (of: Job, id: string, value: number): Job =>
  addReading(of, { key: 'look.discharge', value, unit: 'V' }, { id, at })
const stopped = volts(job(), 'charged', 325)
const idsOf = (of: Job): string[] =>
  [of.readings, of.ticks ?? [], of.causes ?? [], of.log, of.changes ?? []].flatMap((list) => list.map(({ id }) => id))

describe('a job of a file in the place of one that is kept', () => {
  it('loses no stop, no entry and no line of the log of either, whatever was done to both since they were one', () => {
    const list = fc.array(deeds, { maxLength: 4 })
    fc.assert(
      fc.property(list, list, list, (common, here, there) => {
        const both = done(common, job(), 'both')
        const kept = addLog(done(here, both, 'here'), 'Belt found.', { id: 'line', at })
        const sent = done(there, both, 'there')
        const merged = judgedAnew(sent, kept, at)
        expect(idsOf(merged)).toEqual(expect.arrayContaining([...idsOf(kept), ...idsOf(sent)]))
        const open = openStops(merged)
        for (const stop of openStops(kept))
          expect(
            // other words of the same box stand in the place of the old ones only where they are a stop too
            open.some(({ of, key, where }) => of === stop.of || (key === null && where === stop.where)),
            stop.title,
          ).toBe(true)
        // brought in again, it changes nothing
        expect(judgedAnew(sent, merged, at)).toEqual(merged)
      }),
      { numRuns: runs(40), seed: 17 },
    )
  })

  it('is stopped still where the file never was', () => {
    const merged = judgedAnew(job(), stopped, at)
    expect(openStops(merged)).toMatchObject([{ of: 'charged', key: 'look.discharge' }])
    expect(merged.log.at(-1)?.text).toContain('1 entry that it does not have stayed')
  })

  it('is stopped still where the file says that the reading was clear, or took it back without a reason', () => {
    const [reading] = stopped.readings
    const clear = { ...reading!, value: 3, finding: { ...reading!.finding, outcome: 'clear' as const } }
    expect(openStops(judgedAnew({ ...stopped, readings: [clear] }, stopped, at))).toHaveLength(1)
    const back = { ...reading!, withdrawn: { at, why: '-' } }
    expect(openStops(judgedAnew({ ...stopped, readings: [back] }, stopped, at))).toHaveLength(1)
  })

  it('is held by what was confirmed here, whatever the file says was found, and loses no reading of an examination', () => {
    const reading = { key: 'esr', value: 9, unit: 'Ω' }
    const found = { cause: 'cell-leaked', result: 'confirmed' as const, at }
    const kept = { ...job(), examined: { seen: [], found: [found], readings: [reading] } }
    const sent = {
      ...job(),
      examined: { seen: [], found: [{ ...found, result: 'excluded' as const, at: at + 1 }], readings: [] },
    }
    for (const file of [job(), sent]) {
      const merged = judgedAnew(file, kept, at)
      expect(openStops(merged)).toEqual(openStops(kept))
      expect(openStops(merged)).toHaveLength(1)
      expect(merged.examined?.readings).toEqual([reading])
    }
  })

  it('goes on where its cause was written, or its reading taken back, elsewhere', () => {
    const mark = { id: 'mark', at }
    const explained = addCause(stopped, { of: 'charged', text: 'Bleeder resistor open, replaced.' }, mark)
    const back = withdraw(stopped, 'charged', 'read on the wrong capacitor', mark)
    for (const sent of [explained, back]) {
      const merged = judgedAnew(sent, stopped, at)
      expect(openStops(merged)).toEqual([])
      expect(merged.log).toEqual(sent.log)
    }
  })
})
