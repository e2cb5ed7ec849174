import { describe, expect, it } from 'vitest'
import { fuseGateRows } from '../../server/tables/fuseGates.js'
import { bs1362GateRows, ulGateRows } from '../../server/tables/fuseGatesOther.js'
import { shortForms, speedWords } from '../../server/tables/fuseMarks.js'
import { meltingTables } from '../../server/tables/fuseMelting.js'
import { iecPreferred, northAmerican } from '../../server/tables/fuseRatings.js'

const gates = [...fuseGateRows, ...ulGateRows, ...bs1362GateRows]

describe('the fuse tables', () => {
  it.each(gates.map((row) => ({ row, name: JSON.stringify({ ...row, sources: undefined }) })))(
    '$name has a source and limits in order',
    ({ row }) => {
      expect(row.sources.length).toBeGreaterThan(0)
      expect(row.ratedFromA).toBeLessThanOrEqual(row.ratedToA)
      expect(row.minS !== null || row.maxS !== null).toBe(true)
      if (row.minS !== null && row.maxS !== null) expect(row.minS).toBeLessThan(row.maxS)
    },
  )

  it('the time to open never rises with the current within one sheet', () => {
    for (const sheet of [1, 2, 3, 5, 6] as const)
      for (const ratedA of iecPreferred.ratedA) {
        const rows = fuseGateRows.filter(
          (row) => row.sheet === sheet && ratedA >= row.ratedFromA && ratedA <= row.ratedToA && row.doubt === undefined,
        )
        const maxima = rows.toSorted((a, b) => a.multiple - b.multiple).flatMap((row) => row.maxS ?? [])
        expect([...maxima].sort((a, b) => b - a)).toEqual(maxima)
      }
  })

  it('no word stands for two speeds', () => {
    const phrases = speedWords.map((word) => word.phrase)
    expect(new Set(phrases).size).toBe(phrases.length)
  })

  it('every symbol and word has a source', () => {
    expect([...speedWords, ...shortForms].every((row) => row.source.title !== '' && row.source.detail !== '')).toBe(
      true,
    )
  })

  it('melting values are positive and for preferred ratings', () => {
    for (const { i2tByRatedA } of meltingTables)
      for (const [ratedA, i2t] of Object.entries(i2tByRatedA)) {
        expect(iecPreferred.ratedA).toContain(Number(ratedA))
        expect(i2t).toBeGreaterThan(0)
      }
  })

  it('North American ratings rise', () => {
    expect([...northAmerican.ratedA].sort((a, b) => a - b)).toEqual(northAmerican.ratedA)
  })
})
