import { describe, expect, it } from 'vitest'
import { awgTable } from '../../server/tables/awg.js'
import { dcPlugsTable } from '../../server/tables/dcPlugRows.js'
import { faultsOf } from '../../server/tables/faults.js'
import { inletPairsTable } from '../../server/tables/inletPairs.js'
import { plugFitsTable } from '../../server/tables/plugFits.js'
import { rows, type Table, table } from '../../server/tables/table.js'
import { regulationTable } from '../../server/tables/transformerRegulation.js'

const source = { title: 't', detail: 'd', kind: 'published' } as const
const sources = [source]

/** The faults found when a table holds these rows. */
const faultsWith = (table: Table, rows: readonly object[]): string[] => faultsOf({ ...table, rows })

const wire = { awg: 18, diameterMm: 1.024, areaMm2: 0.823, ohmPerKm: 20.95, sources }
const dcPlug = {
  name: 'p',
  aliases: [] as string[],
  standard: null,
  outerMm: 5.5,
  innerMm: 2.1,
  centrePinMm: null,
  voltageMinV: null,
  voltageMaxV: null,
  contactA: null,
  notes: [],
  sources,
}

describe('a faulty table is told, with its row', () => {
  it.each([
    { fault: 'nothing', rows: [wire], tells: [] },
    { fault: 'a row without a source', rows: [{ ...wire, sources: [] }], tells: ['awg, awg 18: has no source'] },
    { fault: 'a row twice', rows: [wire, wire], tells: ['awg: awg 18 stands twice', 'awg: rows do not rise'] },
    { fault: 'no rows', rows: [], tells: ['awg: has no rows'] },
    { fault: 'rows out of order', rows: [wire, { ...wire, awg: 17 }], tells: ['awg: rows do not rise'] },
    {
      fault: 'NaN',
      rows: [{ ...wire, ohmPerKm: Number.NaN }],
      tells: ['awg, awg 18: ohmPerKm is out of range: NaN'],
    },
    { fault: 'a bound itself', rows: [{ ...wire, ohmPerKm: 0 }], tells: ['awg, awg 18: ohmPerKm is out of range: 0'] },
    { fault: 'a value left out', rows: [{ ...wire, ohmPerKm: undefined }], tells: ['awg, awg 18: has no ohmPerKm'] },
    { fault: 'an empty doubt', rows: [{ ...wire, doubt: '' }], tells: ['awg, awg 18: has an empty doubt'] },
    {
      fault: 'an area that is not the diameter’s',
      rows: [{ ...wire, areaMm2: 0.83 }],
      tells: ['awg, awg 18: diameter and area disagree'],
    },
  ])('$fault', ({ rows, tells }) => {
    expect(faultsWith(awgTable, rows)).toEqual(tells)
  })

  it.each([
    { fault: 'a bore over the outside', rows: [{ ...dcPlug, innerMm: 6 }], tells: 'the bore is not smaller' },
    { fault: 'half a voltage class', rows: [{ ...dcPlug, voltageMinV: 5 }], tells: 'has half a voltage class' },
    { fault: 'an outside over its bounds', rows: [{ ...dcPlug, outerMm: 8.5 }], tells: 'outerMm is out of range: 8.5' },
    {
      fault: 'one alias for two',
      rows: [
        { ...dcPlug, aliases: ['z'] },
        { ...dcPlug, name: 'Z' },
      ],
      tells: 'dc-plugs: Z stands in two rows',
    },
  ])('$fault', ({ rows, tells }) => {
    const faults = faultsWith(dcPlugsTable, rows)
    expect(faults).toHaveLength(1)
    expect(faults[0]).toContain(tells)
  })

  it('a plug that no table has, a socket letter that is none, an earth for a plug that does not fit', () => {
    const faults = faultsWith(plugFitsTable, [
      {
        plugs: ['X'],
        letters: ['Z'],
        socket: 's',
        commonness: 'usual',
        fits: 'no',
        earth: 'made',
        note: '',
        sources,
      },
    ])
    expect(faults).toContain('plug-fits, X in Z s: plugs names X, which no table has')
    expect(faults).toContain('plug-fits, X in Z s: letters names Z, which no table has')
    expect(faults).toContain('plug-fits, X in Z s: does not fit, yet says something of the earth')
    expect(faults).toContain('plug-fits: nothing fits socket G')
  })

  it('an inlet that stands in two pairs, and a pin temperature that no pair has', () => {
    const [pair] = inletPairsTable.rows as readonly Record<string, unknown>[]
    expect(faultsWith(inletPairsTable, [pair ?? {}, { ...pair, connector: 'C99', maxPinC: 90 }])).toEqual([
      `inlets: inlet ${pair?.inlet} stands twice`,
      `inlets, C99 ${pair?.inlet}: maxPinC is none of 70, 120, 155: 90`,
    ])
  })

  it('sizes that overlap', () => {
    const size = { fromVA: 10, toVA: 20, low: 0.1, high: 0.2, sources }
    expect(faultsWith(regulationTable, [size, { ...size, fromVA: 20, toVA: 30 }])).toEqual([
      'transformer-regulation: rows overlap',
    ])
  })

  it('what a list and a pattern want', () => {
    const described = table<{ code: string; names: string[]; source: typeof source }>({
      name: 'made-up',
      title: 'Made up',
      intro: '',
      rows: [
        { code: 'ab', names: [], source },
        { code: 'AB', names: ['x', 'x'], source },
      ],
      id: ({ code }) => [code],
      columns: [
        { key: 'code', title: 'Code', pattern: /^[A-Z]{2}$/ },
        { key: 'names', title: 'Names', filled: true },
      ],
    })
    expect(faultsOf(described)).toEqual([
      'made-up, ab: code is not written as it should be: ab',
      'made-up, ab: names is empty',
      'made-up, AB: names has "x" twice',
    ])
  })
})

describe('rows written as lines', () => {
  interface Lamp {
    readonly name: string
    readonly ratedW: number
    readonly fill: 'gas' | 'vacuum'
    readonly doubt?: string
  }

  it('take their values in the order of the keys, what is usual, and what only one of them has', () => {
    expect(
      rows<Lamp>({ fill: 'gas' })(
        ['name', 'ratedW'],
        [
          ['a', 40],
          ['b', 60, { fill: 'vacuum', doubt: 'an old one' }],
        ],
      ),
    ).toEqual([
      { name: 'a', ratedW: 40, fill: 'gas' },
      { name: 'b', ratedW: 60, fill: 'vacuum', doubt: 'an old one' },
    ])
  })
})
