import { describe, expect, it } from 'vitest'
import { fittedLink } from '../../server/chain/fuse/fuseLink.js'
import { gatesOf } from '../../server/chain/fuse/linkGates.js'
import { meltingRange } from '../../server/chain/fuse/meltingRange.js'
import { iecBetween, iecPreferred } from '../../server/tables/fuseRatings.js'
import { tell } from '../../server/words/tell.js'

/** Written off the data sheets: [multiple, min s, max s], null where none is printed. Where sheets disagree: the wider band. */
type Row = readonly [number, number | null, number | null]

const sheets: { name: string; from: string; marks: string[]; rows: Row[] }[] = [
  {
    name: 'sheet 1, F H, 50 mA to 4 A',
    from: 'Eaton S501; Littelfuse 216SP',
    marks: ['F50H250V', 'F1AH250V', 'F4AH250V'],
    rows: [
      [1.5, 3600, null],
      [2.1, null, 1800],
      [2.75, 0.01, 2],
      [4, 0.003, 0.3],
      [10, null, 0.02],
    ],
  },
  {
    name: 'sheet 1, F H, 5 A and 6.3 A',
    from: 'Eaton S501; Littelfuse 216SP',
    marks: ['F5AH250V', 'F6.3AH250V'],
    rows: [
      [1.5, 3600, null],
      [2.1, null, 1800],
      [2.75, 0.01, 3],
      [4, 0.003, 0.3],
      [10, null, 0.02],
    ],
  },
  {
    name: 'sheet 1, F H, 8 A and 10 A',
    from: 'Eaton S501; Littelfuse 216SP',
    marks: ['F8AH250V', 'F10AH250V'],
    rows: [
      [1.5, 1800, null],
      [2.1, null, 1800],
      [2.75, 0.04, 20],
      [4, 0.01, 1],
      [10, null, 0.03],
    ],
  },
  {
    name: 'sheet 2, F L, 32 mA to 100 mA',
    from: 'Cooper Bussmann S500, earlier edition',
    marks: ['F32L250V', 'F100L250V'],
    rows: [
      [1.5, 3600, null],
      [2.1, null, 1800],
      [2.75, 0.01, 0.5],
      [4, 0.003, 0.1],
      [10, null, 0.02],
    ],
  },
  {
    name: 'sheet 2, F L, 125 mA to 6.3 A',
    from: 'Cooper Bussmann S500, earlier edition; Littelfuse 617 rev. 06/18/15',
    marks: ['F125L250V', 'F2AL250V', 'F6.3AL250V'],
    rows: [
      [1.5, 3600, null],
      [2.1, null, 1800],
      [2.75, 0.05, 2],
      [4, 0.01, 0.3],
      [10, null, 0.02],
    ],
  },
  {
    name: 'sheet 2, F L, 8 A and 10 A',
    from: 'Eaton S500, later edition; Littelfuse 617: 0.4 s and 0.04 s; a web table prints less',
    marks: ['F8AL250V', 'F10AL250V'],
    rows: [
      [1.5, 1800, null],
      [2.1, null, 1800],
      [2.75, 0.05, 2],
      [4, 0.01, 0.4],
      [10, null, 0.04],
    ],
  },
  {
    name: 'sheet 3, T L, 32 mA to 100 mA',
    from: 'Littelfuse 218 rev. 06/11/18; Schurter FST; Bel 5ST',
    marks: ['T32L250V', 'T100L250V'],
    rows: [
      [1.5, 3600, null],
      [2.1, null, 120],
      [2.75, 0.2, 10],
      [4, 0.04, 3],
      [10, 0.01, 0.3],
    ],
  },
  {
    name: 'sheet 3, T L, 125 mA to 6.3 A',
    from: 'Littelfuse 218 rev. 06/11/18; Schurter FST; Bel 5ST; Littelfuse 213',
    marks: ['T125L250V', 'T2AL250V', 'T6.3AL250V'],
    rows: [
      [1.5, 3600, null],
      [2.1, null, 120],
      [2.75, 0.6, 10],
      [4, 0.15, 3],
      [10, 0.02, 0.3],
    ],
  },
  {
    name: 'sheet 3, T L, 8 A and 10 A',
    from: 'Littelfuse 218, Schurter FST: 30 min at 150 %; Bel 5ST: 1 h',
    marks: ['T8AL250V', 'T10AL250V'],
    rows: [
      [1.5, 1800, null],
      [2.1, null, 120],
      [2.75, 0.6, 10],
      [4, 0.15, 3],
      [10, 0.02, 0.3],
    ],
  },
  {
    name: 'sheet 5, T H, 0.5 A to 0.8 A',
    from: 'Littelfuse 215 rev. 04/02/18; Cooper Bussmann S505; Schurter SPT',
    marks: ['T500H250V', 'T800H250V'],
    rows: [
      [1.5, 3600, null],
      [2.1, null, 1800],
      [2.75, 0.25, 80],
      [4, 0.05, 5],
      [10, 0.005, 0.15],
    ],
  },
  {
    name: 'sheet 5, T H, 1 A to 3.15 A',
    from: 'Littelfuse 215, S505, Schurter SMD-SPT: 0.75 s and 0.15 s; Bel 5HT: 1 s and 0.1 s',
    marks: ['T1AH250V', 'T3.15AH250V'],
    rows: [
      [1.5, 3600, null],
      [2.1, null, 1800],
      [2.75, 0.75, 80],
      [4, 0.095, 5],
      [10, 0.01, 0.15],
    ],
  },
  {
    name: 'sheet 5, T H, 4 A to 6.3 A',
    from: 'Littelfuse 215, S505: 10 ms at 1000 %; Schurter SMD-SPT, Bel 5HT: 20 ms',
    marks: ['T4AH250V', 'T6.3AH250V'],
    rows: [
      [1.5, 3600, null],
      [2.1, null, 1800],
      [2.75, 0.75, 80],
      [4, 0.15, 5],
      [10, 0.01, 0.15],
    ],
  },
  {
    name: 'sheet 5, T H, 8 A and 10 A',
    from: 'Littelfuse 215, S505: 10 ms at 1000 %; Schurter SMD-SPT: 20 ms',
    marks: ['T8AH250V', 'T10AH250V'],
    rows: [
      [1.5, 1800, null],
      [2.1, null, 1800],
      [2.75, 0.75, 80],
      [4, 0.15, 5],
      [10, 0.01, 0.15],
    ],
  },
  {
    name: 'sheet 6, T E, 1 A to 10 A',
    from: 'Bel 5ET; remembered alike',
    marks: ['T1AE250V', 'T10AE250V'],
    rows: [
      [1.5, 3600, null],
      [2.1, null, 120],
      [2.75, 0.6, 10],
      [4, 0.15, 3],
      [10, 0.02, 0.3],
    ],
  },
  {
    name: 'UL 248-14, fast-acting',
    from: 'Littelfuse Fuseology 2014 p. 12; Eaton GMA; Bussmann MDL (110 % for 4 h)',
    marks: ['GMA-3.5', '1-1/4A fast'],
    rows: [
      [1.1, 14_400, null],
      [1.35, null, 3600],
      [2, null, 120],
    ],
  },
  {
    name: 'UL 248-14, time-delay',
    from: 'as above; 5 s at 200 % (GMD up to 4 A, 239 series of 2016); 12 s above 3 A remembered',
    marks: ['GMD 1A', 'MDL-5', '3A SB'],
    rows: [
      [1.1, 14_400, null],
      [1.35, null, 3600],
      [2, 5, 120],
    ],
  },
  {
    name: 'BS 1362, 3 A',
    from: 'encyclopaedia entry on BS 1362:1973: 9 A, 20 A, 30 A; articles: 1.6 and 1.9 times',
    marks: ['3A BS1362'],
    rows: [
      [1.6, 1800, null],
      [1.9, null, 1800],
      [9 / 3, 0.02, 80],
      [20 / 3, null, 0.1],
      [30 / 3, null, 0.03],
    ],
  },
  {
    name: 'BS 1362, 13 A',
    from: 'encyclopaedia entry on BS 1362:1973: 30 A, 50 A; the 100 A from memory',
    marks: ['13A BS1362'],
    rows: [
      [1.6, 1800, null],
      [1.9, null, 1800],
      [30 / 13, 1, 400],
      [50 / 13, 0.1, 20],
      [100 / 13, 0.01, 0.2],
    ],
  },
]

const cases = sheets.flatMap(({ marks, ...sheet }) => marks.map((mark) => ({ mark, ...sheet })))

describe('time-current gates', () => {
  it.each(cases)('$mark has those of $name ($from)', ({ mark, rows }) => {
    const { points } = gatesOf(fittedLink({ marking: mark }))
    expect(points.map(({ multiple, minS, maxS }) => [multiple, minS, maxS])).toEqual(rows)
  })

  it.each(['T2AH250V', 'T10AL250V', 'T8AH250V', 'F8AL250V'])('%s: that the data sheets disagree is said', (mark) => {
    expect(tell(gatesOf(fittedLink({ marking: mark })).notes).join(' ')).toMatch(/disagree/)
  })

  it('of a link without a breaking letter hold for every sheet it could belong to', () => {
    const { points, notes } = gatesOf(fittedLink({ marking: 'T2A 250V' }))
    // sheets 3, 5, 6: 2 min, 30 min, 2 min at 210 %; 20 ms, 10 ms, 20 ms at 1000 %
    expect(points.find(({ multiple }) => multiple === 2.1)).toMatchObject({ minS: null, maxS: 1800 })
    expect(points.find(({ multiple }) => multiple === 10)).toMatchObject({ minS: 0.01, maxS: 0.3 })
    expect(tell(notes).join(' ')).toMatch(/breaking letter is not known/)
  })

  it.each([
    ['2A 250V', /speed of the link is not known/],
    ['T', /rated current is not known/],
    ['F2AE250V', /No sheet/],
    ['T2AL250V 6.3x32', /5 × 20 mm/],
    ['1A BS646', /BS 646/],
  ])('%s: none are drawn, and why', (mark, words) => {
    const { points, notes } = gatesOf(fittedLink({ marking: mark }))
    expect(points).toEqual([])
    expect(tell(notes).join(' ')).toMatch(words)
  })
})

describe('preferred ratings (IEC 60127-1 table A.1; ISO 3 series R10 and R20)', () => {
  const r10 = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8]
  const r20Between = [1.12, 1.4, 1.8, 2.24, 2.8, 3.55, 4.5, 5.6, 7.1, 9]
  const scaled = (series: number[], decades: number[]) =>
    series.flatMap((value) => decades.map((decade) => Number((value * decade).toPrecision(3))))

  it('are R10 from 40 mA to 10 A, and 32 mA from the more rounded series', () => {
    const expected = [0.032, ...scaled(r10, [0.01, 0.1, 1, 10]).filter((value) => value >= 0.04 && value <= 10)]
    expect(iecPreferred.ratedA).toEqual(expected.sort((a, b) => a - b))
  })

  it('have R20 values between them', () => {
    const expected = scaled(r20Between, [0.1, 1])
    expect(iecBetween.ratedA.every((ratedA) => expected.includes(ratedA))).toBe(true)
  })

  it('rise', () => {
    expect([...iecPreferred.ratedA].sort((a, b) => a - b)).toEqual(iecPreferred.ratedA)
  })
})

describe('typical melting I²t', () => {
  it.each([
    // S505, 5HT, SMD-SPT, 215SP
    ['T1AH250V', 1.1, 1.7],
    ['T2AH250V', 9.2, 11.68],
    ['T10AH250V', 397, 812],
    // 213, 5ST
    ['T500L250V', 2.9, 3.1],
  ])('%s: from %s to %s A²s over the data sheets', (mark, lowI2t, highI2t) => {
    expect(meltingRange(fittedLink({ marking: mark }))).toMatchObject({ lowI2t, highI2t })
  })

  it.each(['F2AL250V', 'T1AL250V', '3A SB', 'T7AH'])('%s: none where fewer than two sheets give one', (mark) => {
    expect(meltingRange(fittedLink({ marking: mark }))).toBeNull()
  })
})
