import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { readFuseMarking } from '../../server/plate/fuseMarking.js'

interface Row {
  string: string
  /** "slow" where a word stands for time-lag; "NOT-A-LINK" where it is another thing */
  characteristic: string
  rated_a: string
  breaking: string
  rated_v: string
  size_mm: string
}

const rows: Row[] = parse(readFileSync(new URL('./fuseMarkings.csv', import.meta.url)), { columns: true })

const figure = (text: string): number | null => (text === '' ? null : Number(text))

describe('markings found in public texts, read by hand', () => {
  it('has every row of the list', () => {
    expect(rows).toHaveLength(32)
  })

  it.each(rows.filter(({ characteristic }) => characteristic !== 'NOT-A-LINK'))('reads "$string"', (row) => {
    expect(readFuseMarking(row.string)).toMatchObject({
      characteristic: row.characteristic.replace('slow', 'T') || null,
      ratedA: figure(row.rated_a),
      breaking: row.breaking || null,
      ratedV: figure(row.rated_v),
      sizeMm: row.size_mm || null,
      noLink: null,
    })
  })

  it.each(rows.filter(({ characteristic }) => characteristic === 'NOT-A-LINK'))('"$string" is no fuse-link', (row) => {
    const { ratedA, ratedV, noLink, notes } = readFuseMarking(row.string)
    expect({ ratedA, ratedV }).toEqual({ ratedA: null, ratedV: null })
    expect(noLink).not.toBeNull()
    expect(notes.join()).toContain(noLink)
  })
})

describe('things that are no fuse-link (words from memory)', () => {
  it.each([
    ['2A 250V Tf 130°C', 'thermal cut-off'],
    ['RY 115 2A 250V', 'thermal cut-off'],
    ['TF 130', 'thermal cut-off'],
    ['10A 250V 117℃', 'thermal cut-off'],
    ['2A 250V 266°F', 'thermal cut-off'],
    ['THERMAL CUT-OFF 2A', 'thermal cut-off'],
    ['Temperatursicherung 2A 250V', 'thermal cut-off'],
    ['fusible thermique 2A', 'thermal cut-off'],
    ['温度ヒューズ 2A', 'thermal cut-off'],
    ['2A PTC 60V', 'resettable protector'],
    ['self-resetting fuse 1.1A', 'resettable protector'],
    ['4A circuit breaker, push to reset', 'resettable protector'],
    ['Sicherungsautomat 6A', 'resettable protector'],
    ['disjoncteur 2A', 'resettable protector'],
    ['自恢复保险丝 1A', 'resettable protector'],
    ['fusible resistor 10R 2A', 'fusible resistor'],
  ])('%s is a %s', (text, thing) => {
    expect(readFuseMarking(text)).toMatchObject({ noLink: thing, ratedA: null, characteristic: null, scheme: null })
  })

  it.each(['T2AL250V 25°C', 'T2AL250V 64°C', 'T63', 'T130mA', 'TF2A breaking 35A', 'T2A ceramic'])(
    '%s may be a link',
    (text) => {
      expect(readFuseMarking(text).noLink).toBeNull()
    },
  )
})

describe('the circuit’s voltage', () => {
  it.each([
    ['FUSE 2A, 230V~ mains', 230],
    ['T1A 120V', 120],
    ['2A slow, 12V side', 12],
    ['T2A for 250V', 250],
    ['1A 60V rail', 60],
  ])('is not the link’s: %s', (text, circuitV) => {
    expect(readFuseMarking(text)).toMatchObject({ ratedV: null, circuitV })
  })

  it.each([
    ['T2A 250V', 250, null],
    ['T2A 250VAC/125VDC', 250, 125],
    ['5A 60VDC', 60, 60],
    ['T2A DC 125V', 125, 125],
    ['F5A 32V', 32, null],
  ])('%s is a link of %s V, on direct current %s V', (text, ratedV, ratedDcV) => {
    expect(readFuseMarking(text)).toMatchObject({ ratedV, ratedDcV, circuitV: null })
  })
})

describe('marks of North America', () => {
  it.each([
    '2A 250V UL',
    '2A 250V CSA',
    '2A 250V UL LISTED',
    '2A cULus',
    '2A TIME LAG UL',
    '2A TIME DELAY',
    '2A SLO-BLO',
    'MDL 2',
  ])('%s is a UL link', (text) => {
    expect(readFuseMarking(text)).toMatchObject({ ratedA: 2, scheme: 'UL' })
  })

  it.each(['T2AL250V UL', 'T2A TIME DELAY'])('%s is of no known standard: marks of both stand together', (text) => {
    expect(readFuseMarking(text).scheme).toBeNull()
  })

  it.each(['2A 250V', '2A slow', '2A RESULT'])('%s says nothing of it', (text) => {
    expect(readFuseMarking(text).scheme).toBeNull()
  })
})
