import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CsvRefused, fromCsv, longestLine, mostRows, toCsv } from '../../server/bench/shelf/csv.js'
import { type Cells, cellsOf, columns, itemOf, sayTheSame } from '../../server/bench/shelf/shelfCells.js'
import type { ShelfDevice, ShelfItem, ShelfSupply } from '../../server/bench/shelf/shelfItem.js'

const bytes = (text: string): Uint8Array => Buffer.from(text)
const refusal = (file: Uint8Array): CsvRefused => {
  try {
    fromCsv(file)
  } catch (error) {
    if (error instanceof CsvRefused) return error
    throw error
  }
  throw new Error('it was read')
}

const supply: ShelfSupply = {
  name: 'Brick, grey; "heavy"',
  place: 'shelf 2',
  note: 'first line\nsecond line',
  supply: {
    label: 'INPUT 100-240V~ 50/60Hz 1.2A\nOUTPUT 12V ⎓ 3A',
    input: {
      voltages: [
        { min: 100, max: 127 },
        { min: 230, max: 230 },
      ],
      frequenciesHz: [50, 60],
      currentA: 1.2,
      powerVA: 90,
      powerW: 60.5,
      selectorV: 230,
    },
    technology: 'switch-mode',
    regulated: true,
    protectionClass: 'II',
    inlet: 'C8',
    outputs: [
      { kind: 'dc', voltageV: -12, currentA: 0.3, powerW: null },
      { kind: 'ac', voltageV: 9, currentA: null, powerW: 10 },
      { kind: null, voltageV: 1e-7 },
    ],
    plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative', name: 'barrel' },
    lead: { lengthM: 1.5, areaMm2: 0.5, awg: 20 },
    fuse: 'T2AH250V',
    measured: { offLoadV: -12.4, loadedV: 11.9, polarity: 'centre-positive' },
  },
}

const device: ShelfDevice = {
  name: '=tape recorder',
  place: null,
  note: null,
  device: {
    label: 'DC 12V 1.5A',
    inputs: [{ kind: 'dc', voltageV: 12, currentA: 1.5, currentIs: 'measured', tolerancePercent: 10 }],
    regulatedNeeded: false,
    jack: { outerMm: 5.5, innerMm: 2.5, polarity: 'centre-positive' },
  },
}

const through = (kind: 'supply' | 'device', item: ShelfItem) => {
  const [row] = fromCsv(bytes(toCsv([cellsOf(kind, { id: 'x'.repeat(22), version: 3 }, item)])))
  return itemOf(kind, row?.cells as Cells)
}

describe('the shelf as CSV', () => {
  it.each([
    ['supply', supply],
    ['device', device],
  ] as const)('brings every field of a %s back', (kind, item) => {
    const { item: back, faults } = through(kind, item)
    expect(faults).toEqual([])
    expect(sayTheSame(back, item)).toBe(true)
    expect(sayTheSame(back, { ...item, place: 'elsewhere' })).toBe(false)
  })

  it('brings any words back: quotes, line ends, delimiters, formulas, any letters', () => {
    const word = fc.string({
      unit: fc.constantFrom('a', '"', ';', ',', '\t', '\n', '\r', "'", '=', '+', '-', '@', 'Ω', '😀', ' '),
    })
    fc.assert(
      fc.property(word, word, (note, label) => {
        const item: ShelfSupply = { name: 'n', place: null, note, supply: { label } }
        return sayTheSame(through('supply', item).item, item)
      }),
    )
  })

  it('neutralises a formula in every cell', () => {
    const cells = Object.fromEntries(
      columns.map((column) => [column, '=HYPERLINK("http://elsewhere.example")']),
    ) as Cells
    const [, line = ''] = toCsv([cells]).split('\r\n')
    expect(line.split('",').every((cell) => cell.startsWith(`"'=`))).toBe(true)
  })

  it('reads a file parted by semicolons or tabs, with or without a byte order mark, and decimal commas', () => {
    for (const text of ['kind;name;input A\nsupply;Brick;0,5\n', '\ufeffkind\tname\tinput A\r\nsupply\tBrick\t0,5'])
      expect(fromCsv(bytes(text))).toEqual([{ line: 2, cells: { kind: 'supply', name: 'Brick', 'input A': '0,5' } }])
    const { item, faults } = itemOf('supply', { ...cellsOf('supply', null, supply), 'input A': '0,5' })
    expect(faults).toEqual([])
    expect((item as ShelfSupply).supply.input?.currentA).toBe(0.5)
  })

  it.each([
    ['input A', '1,500', /two ways/],
    ['input A', '0x10', /not a number/],
    ['input A', 'NaN', /not a number/],
    ['input V', '100 to 200 to 240', /one voltage or a range/],
    ['rails', '12', /must be written like/],
    ['rails', 'DC 12 V 1,500 A', /two ways/],
    ['regulated', 'perhaps', /yes or no/],
  ] as const)('says what is wrong with %s “%s”', (column, cell, message) => {
    const { faults } = itemOf('supply', { ...cellsOf('supply', null, supply), [column]: cell })
    expect(faults).toHaveLength(1)
    expect(faults[0]?.column).toBe(column)
    expect(faults[0]?.message).toMatch(message)
  })

  it("refuses a supply's columns in the row of a machine", () => {
    const { faults } = itemOf('device', { ...cellsOf('device', null, device), 'lead m': '2' })
    expect(faults.map(({ column }) => column)).toEqual(['lead m'])
  })

  it.each([
    ['nothing', bytes(''), /empty/],
    ['Latin-1', new Uint8Array([...bytes('kind,name\nsupply,Netzger'), 0xe4, ...bytes('t')]), /not in UTF-8/],
    ['UTF-16', new Uint8Array([0xff, 0xfe, ...Buffer.from('kind,name', 'utf16le')]), /UTF-16/],
    ['a spreadsheet file', new Uint8Array([0x50, 0x4b, 3, 4]), /spreadsheet/],
    ['a NUL', bytes('kind,name\nsupply,a\u0000b'), /no text/],
    ['no name column', bytes('kind,place\nsupply,here'), /“name” is missing/],
    ['a column that is not known', bytes('kind,name,volts\n'), /“volts” that is not known/],
    ['one column twice', bytes('kind,name,name\n'), /twice/],
    ['a row too short', bytes('kind,name\nsupply,a\nsupply\n'), /Line 3.*more or fewer cells/],
    ['an open quotation mark', bytes('kind,name\nsupply,"a\n'), /quotation mark/],
    ['a quotation mark inside a cell', bytes('kind,name\nsupply,a"b"\n'), /quotation mark/],
    ['a line too long', bytes(`kind,name\nsupply,${'a'.repeat(longestLine)}\n`), /Line 2 has .* characters/],
    ['a row too long over several lines', bytes(`kind,name\nsupply,"${'a\n'.repeat(longestLine)}"\n`), /longer than/],
    ['too many rows', bytes(`kind,name\n${'supply,a\n'.repeat(mostRows + 1)}`), /more than/],
  ])('refuses a file with %s, and says why', (_what, file, message) => {
    expect(refusal(file).message).toMatch(message)
  })

  it('refuses a line of 50 MB at once', () => {
    const file = Buffer.concat([bytes('kind,name\nsupply,"'), Buffer.alloc(50 * 1024 * 1024, 'a'), bytes('"\n')])
    const begun = performance.now()
    expect(refusal(file).message).toMatch(/Line 2 has 52\d+ characters/)
    expect(performance.now() - begun).toBeLessThan(4000)
  })
})
