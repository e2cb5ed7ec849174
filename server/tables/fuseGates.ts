import { frozen } from './frozen.js'
import type { BreakingLetter, Characteristic } from './fuseMarks.js'
import { published, type Source } from './source.js'
import type { Sourced } from './sourced.js'
import { type Column, type Figure, figure, type Rule, table } from './table.js'

const s501 = published('Eaton S501 data sheet', 'Electrical Characteristics')
const l216 = published('Littelfuse 216SP series data sheet', 'Electrical Characteristics, 1 A to 10 A')
const s500 = published('Cooper Bussmann S500 data sheet, earlier edition', 'Electrical Characteristics')
const s500Later = published('Eaton S500 data sheet, later edition', 'Electrical Characteristics')
const openingTimes = published('UL and IEC fuse opening-time tables, web article', 'secondary; low trust')
const l617 = published('Littelfuse 617 series data sheet, rev. 06/18/15', 'Electrical Characteristics, 0.4 A to 10 A')
const makersNote = published('OptiFuse note on UL and IEC fuses, 21 Aug 2009', 'opening times')
const l218 = published('Littelfuse 218 series data sheet, rev. 06/11/18', 'Electrical Characteristics')
const fst = published('Schurter FST 5x20 data sheet', 'Pre-Arcing Time, IEC 60127-2/3')
const bel5st = published('Bel 5ST data sheet W5STD0405', 'IEC 127-2 standard sheet 3')
const l213 = published('Littelfuse 213 series data sheet', 'Electrical Characteristics, sheet 3')
const l215 = published(
  'Littelfuse 215 series data sheet, rev. 04/02/18',
  'Electrical Characteristics, sheet 5; the 2014 edition prints the same',
)
const s505 = published('Cooper Bussmann S505 data sheet BU-SB11758', 'Electrical Characteristics')
const spt = published('Schurter SPT 5x20 data sheet', 'Pre-Arcing Time')
const smdSpt = published('Schurter SMD-SPT 5x20 data sheet', 'pre-arcing time to IEC 60127-2/5')
const bel5ht = published('Bel 5HT data sheet 5HTD0903', 'IEC 127-2 standard sheet 5; the 1998 edition prints the same')
const bel5et = published('Bel 5ET data sheet', 'T E links; damaged text read again by hand')
const glossary = published('Electronics glossary, entry on miniature fuses', 'secondary; no range of ratings')
const pumpLexicon = published('Pump lexicon, entry on fuses', 'one general source; multiple not stated')

/** One point of a time-current gate: at `multiple` times the rated current the link melts after `minS` and before `maxS`. */
export interface FuseGateRow extends Sourced {
  /** sheet of IEC 60127-2; null for a general figure outside the sheets */
  readonly sheet: 1 | 2 | 3 | 5 | 6 | null
  readonly characteristic: Characteristic
  readonly breaking: BreakingLetter | null
  readonly sizeMm: '5x20'
  /** ratings the row is for [A], both ends included */
  readonly ratedFromA: number
  readonly ratedToA: number
  readonly multiple: number
  /** [s]; null: no lower limit at this current */
  readonly minS: number | null
  /** [s]; null: no upper limit at this current */
  readonly maxS: number | null
}

type Band = readonly [multiple: number, minS: number | null, maxS: number | null]

const gate = (
  sheet: FuseGateRow['sheet'],
  characteristic: Characteristic,
  breaking: BreakingLetter | null,
  [ratedFromA, ratedToA]: readonly [number, number],
  [multiple, minS, maxS]: Band,
  sources: readonly Source[],
  doubt?: string,
): FuseGateRow =>
  frozen({
    sheet,
    characteristic,
    breaking,
    sizeMm: '5x20' as const,
    ratedFromA,
    ratedToA,
    multiple,
    minS,
    maxS,
    sources,
    ...(doubt === undefined ? {} : { doubt }),
  })

/** Time-current gates of IEC 60127-2 as makers print them, at 23 °C. Rows that disagree stand side by side. */
export const fuseGateRows: readonly FuseGateRow[] = frozen([
  gate(1, 'F', 'H', [0.05, 4], [2.1, null, 1800], [s501, l216]),
  gate(1, 'F', 'H', [0.05, 4], [2.75, 0.01, 2], [s501, l216]),
  gate(1, 'F', 'H', [0.05, 4], [4, 0.003, 0.3], [s501, l216]),
  gate(1, 'F', 'H', [0.05, 4], [10, null, 0.02], [s501, l216]),
  gate(1, 'F', 'H', [0.05, 4], [1.5, 3600, null], [s501]),
  gate(1, 'F', 'H', [5, 6.3], [2.1, null, 1800], [s501, l216]),
  gate(1, 'F', 'H', [5, 6.3], [2.75, 0.01, 3], [s501, l216]),
  gate(1, 'F', 'H', [5, 6.3], [4, 0.003, 0.3], [s501, l216]),
  gate(1, 'F', 'H', [5, 6.3], [10, null, 0.02], [s501, l216]),
  gate(1, 'F', 'H', [5, 6.3], [1.5, 3600, null], [s501]),
  gate(1, 'F', 'H', [8, 10], [2.1, null, 1800], [s501, l216]),
  gate(1, 'F', 'H', [8, 10], [2.75, 0.04, 20], [s501, l216]),
  gate(1, 'F', 'H', [8, 10], [4, 0.01, 1], [s501, l216]),
  gate(1, 'F', 'H', [8, 10], [10, null, 0.03], [s501, l216]),
  gate(1, 'F', 'H', [8, 10], [1.5, 1800, null], [s501]),
  gate(
    2,
    'F',
    'L',
    [0.032, 0.1],
    [1.5, 3600, null],
    [s500, openingTimes],
    'a later edition of one data sheet prints no limits here beyond 2.1 times',
  ),
  gate(
    2,
    'F',
    'L',
    [0.032, 0.1],
    [2.1, null, 1800],
    [s500, openingTimes],
    'a later edition of one data sheet prints no limits here beyond 2.1 times',
  ),
  gate(
    2,
    'F',
    'L',
    [0.032, 0.1],
    [2.75, 0.01, 0.5],
    [s500, openingTimes],
    'a later edition of one data sheet prints no limits here beyond 2.1 times',
  ),
  gate(
    2,
    'F',
    'L',
    [0.032, 0.1],
    [4, 0.003, 0.1],
    [s500, openingTimes],
    'a later edition of one data sheet prints no limits here beyond 2.1 times',
  ),
  gate(
    2,
    'F',
    'L',
    [0.032, 0.1],
    [10, null, 0.02],
    [s500, openingTimes],
    'a later edition of one data sheet prints no limits here beyond 2.1 times',
  ),
  gate(2, 'F', 'L', [0.125, 6.3], [1.5, 3600, null], [s500, l617, makersNote]),
  gate(2, 'F', 'L', [0.125, 6.3], [2.1, null, 1800], [s500, l617, makersNote]),
  gate(2, 'F', 'L', [0.125, 6.3], [2.75, 0.05, 2], [s500, l617, makersNote]),
  gate(2, 'F', 'L', [0.125, 6.3], [4, 0.01, 0.3], [s500, l617, makersNote]),
  gate(2, 'F', 'L', [0.125, 6.3], [10, null, 0.02], [s500, l617, makersNote]),
  gate(
    2,
    'F',
    'L',
    [8, 10],
    [1.5, 1800, null],
    [s500Later, l617],
    'ratings above 6.3 A may be an extension of the makers',
  ),
  gate(
    2,
    'F',
    'L',
    [8, 10],
    [2.1, null, 1800],
    [s500Later, l617],
    'ratings above 6.3 A may be an extension of the makers',
  ),
  gate(
    2,
    'F',
    'L',
    [8, 10],
    [2.75, 0.05, 2],
    [s500Later, l617],
    'ratings above 6.3 A may be an extension of the makers',
  ),
  gate(
    2,
    'F',
    'L',
    [8, 10],
    [4, 0.01, 0.4],
    [s500Later, l617],
    'ratings above 6.3 A may be an extension of the makers',
  ),
  gate(
    2,
    'F',
    'L',
    [8, 10],
    [10, null, 0.04],
    [s500Later, l617],
    'ratings above 6.3 A may be an extension of the makers',
  ),
  gate(2, 'F', 'L', [8, 10], [4, 0.01, 0.3], [openingTimes], 'disagrees with the other data sheets'),
  gate(2, 'F', 'L', [8, 10], [10, null, 0.02], [openingTimes], 'disagrees with the other data sheets'),
  gate(3, 'T', 'L', [0.032, 0.1], [1.5, 3600, null], [l218, fst, bel5st]),
  gate(3, 'T', 'L', [0.032, 0.1], [2.1, null, 120], [l218, fst, bel5st]),
  gate(3, 'T', 'L', [0.032, 0.1], [2.75, 0.2, 10], [l218, fst, bel5st]),
  gate(3, 'T', 'L', [0.032, 0.1], [4, 0.04, 3], [l218, fst, bel5st]),
  gate(3, 'T', 'L', [0.032, 0.1], [10, 0.01, 0.3], [l218, fst, bel5st]),
  gate(3, 'T', 'L', [0.125, 6.3], [1.5, 3600, null], [l218, fst, bel5st, l213]),
  gate(3, 'T', 'L', [0.125, 6.3], [2.1, null, 120], [l218, fst, bel5st, l213]),
  gate(3, 'T', 'L', [0.125, 6.3], [2.75, 0.6, 10], [l218, fst, bel5st, l213]),
  gate(3, 'T', 'L', [0.125, 6.3], [4, 0.15, 3], [l218, fst, bel5st, l213]),
  gate(3, 'T', 'L', [0.125, 6.3], [10, 0.02, 0.3], [l218, fst, bel5st, l213]),
  gate(3, 'T', 'L', [8, 10], [1.5, 1800, null], [l218, fst], 'ratings above 6.3 A may be an extension of the makers'),
  gate(3, 'T', 'L', [8, 10], [2.1, null, 120], [l218, fst], 'ratings above 6.3 A may be an extension of the makers'),
  gate(3, 'T', 'L', [8, 10], [2.75, 0.6, 10], [l218, fst], 'ratings above 6.3 A may be an extension of the makers'),
  gate(3, 'T', 'L', [8, 10], [4, 0.15, 3], [l218, fst], 'ratings above 6.3 A may be an extension of the makers'),
  gate(3, 'T', 'L', [8, 10], [10, 0.02, 0.3], [l218, fst], 'ratings above 6.3 A may be an extension of the makers'),
  gate(3, 'T', 'L', [8, 12.5], [1.5, 3600, null], [bel5st], 'disagrees with the other data sheets'),
  gate(5, 'T', 'H', [0.125, 0.4], [1.5, 3600, null], [l215], "one maker only, below the other makers' ranges"),
  gate(5, 'T', 'H', [0.125, 0.4], [2.1, null, 1800], [l215], "one maker only, below the other makers' ranges"),
  gate(5, 'T', 'H', [0.125, 0.4], [2.75, 0.25, 80], [l215], "one maker only, below the other makers' ranges"),
  gate(5, 'T', 'H', [0.125, 0.4], [4, 0.05, 5], [l215], "one maker only, below the other makers' ranges"),
  gate(5, 'T', 'H', [0.125, 0.4], [10, 0.005, 0.15], [l215], "one maker only, below the other makers' ranges"),
  gate(5, 'T', 'H', [0.5, 0.8], [1.5, 3600, null], [l215, s505, spt]),
  gate(5, 'T', 'H', [0.5, 0.8], [2.1, null, 1800], [l215, s505, spt]),
  gate(5, 'T', 'H', [0.5, 0.8], [2.75, 0.25, 80], [l215, s505, spt]),
  gate(5, 'T', 'H', [0.5, 0.8], [4, 0.05, 5], [l215, s505, spt]),
  gate(5, 'T', 'H', [0.5, 0.8], [10, 0.005, 0.15], [l215, s505, spt]),
  gate(5, 'T', 'H', [1, 3.15], [1.5, 3600, null], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [1, 3.15], [2.1, null, 1800], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [1, 3.15], [2.75, 0.75, 80], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [1, 3.15], [4, 0.095, 5], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [1, 3.15], [10, 0.01, 0.15], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [1, 3.15], [2.75, 1, 80], [bel5ht], 'an older data sheet that disagrees with the newer ones'),
  gate(5, 'T', 'H', [1, 3.15], [10, 0.01, 0.1], [bel5ht], 'an older data sheet that disagrees with the newer ones'),
  gate(5, 'T', 'H', [4, 6.3], [1.5, 3600, null], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [4, 6.3], [2.1, null, 1800], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [4, 6.3], [2.75, 0.75, 80], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [4, 6.3], [4, 0.15, 5], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [4, 6.3], [10, 0.01, 0.15], [l215, s505]),
  gate(5, 'T', 'H', [4, 6.3], [10, 0.02, 0.15], [smdSpt], 'disagrees with the other data sheets'),
  gate(5, 'T', 'H', [4, 6.3], [2.75, 1, 80], [bel5ht], 'an older data sheet that disagrees with the newer ones'),
  gate(5, 'T', 'H', [4, 6.3], [10, 0.02, 0.1], [bel5ht], 'an older data sheet that disagrees with the newer ones'),
  gate(5, 'T', 'H', [8, 10], [1.5, 1800, null], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [8, 10], [2.1, null, 1800], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [8, 10], [2.75, 0.75, 80], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [8, 10], [4, 0.15, 5], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [8, 10], [10, 0.01, 0.15], [l215, s505, smdSpt]),
  gate(5, 'T', 'H', [8, 10], [10, 0.02, 0.15], [smdSpt], 'disagrees with the other data sheets'),
  gate(5, 'T', 'H', [12.5, 16], [1.5, 900, null], [smdSpt], "beyond the standard's sheet: figures of one maker"),
  gate(5, 'T', 'H', [12.5, 16], [2.1, null, 1800], [smdSpt], "beyond the standard's sheet: figures of one maker"),
  gate(5, 'T', 'H', [12.5, 16], [2.75, 0.75, 80], [smdSpt], "beyond the standard's sheet: figures of one maker"),
  gate(5, 'T', 'H', [12.5, 16], [4, 0.15, 5], [smdSpt], "beyond the standard's sheet: figures of one maker"),
  gate(5, 'T', 'H', [12.5, 16], [10, 0.02, 0.15], [smdSpt], "beyond the standard's sheet: figures of one maker"),
  gate(6, 'T', 'E', [1, 12], [1.5, 3600, null], [bel5et], 'one maker only; remembered alike for the sheet'),
  gate(6, 'T', 'E', [1, 12], [2.1, null, 120], [bel5et], 'one maker only; remembered alike for the sheet'),
  gate(6, 'T', 'E', [1, 12], [2.75, 0.6, 10], [bel5et], 'one maker only; remembered alike for the sheet'),
  gate(6, 'T', 'E', [1, 12], [4, 0.15, 3], [bel5et], 'one maker only; remembered alike for the sheet'),
  gate(6, 'T', 'E', [1, 12], [10, 0.02, 0.3], [bel5et], 'one maker only; remembered alike for the sheet'),
  gate(
    null,
    'M',
    null,
    [0, Infinity],
    [10, 0.005, 0.09],
    [glossary],
    'no sheet of the standard: a general figure over all ratings',
  ),
  gate(
    null,
    'F',
    null,
    [0, Infinity],
    [10, null, 0.02],
    [glossary],
    'no sheet of the standard: a general figure over all ratings',
  ),
  gate(
    null,
    'T',
    null,
    [0, Infinity],
    [10, 0.01, 0.3],
    [glossary],
    'no sheet of the standard: a general figure over all ratings',
  ),
  gate(
    null,
    'FF',
    null,
    [0, Infinity],
    [10, null, 0.02],
    [pumpLexicon],
    'one general source; the multiple is taken as 10',
  ),
  gate(
    null,
    'TT',
    null,
    [0, Infinity],
    [10, 0.3, null],
    [pumpLexicon],
    'one general source; the multiple is taken as 10',
  ),
])

const time = (timeS: number): Figure => figure(timeS, 'time', { digits: 4 })

/** Columns of a time-current gate, whatever the family of its link. @public */
export const gateColumns: readonly Column<
  Pick<FuseGateRow, 'ratedFromA' | 'ratedToA' | 'multiple' | 'minS' | 'maxS'>
>[] = frozen([
  {
    key: 'ratedFromA',
    title: 'Ratings',
    of: ({ ratedFromA: from, ratedToA: to }) =>
      to < Infinity
        ? figure(from, 'A', from === to ? {} : { to, prefix: 'one' })
        : from === 0
          ? 'every'
          : ['from ', figure(from, 'A')],
    from: 0,
  },
  { key: 'multiple', title: 'Times rated', unit: '', above: 1 },
  { key: 'minS', title: 'Not before', of: ({ minS }) => minS && time(minS), none: 'no limit', above: 0 },
  { key: 'maxS', title: 'Not after', of: ({ maxS }) => maxS && time(maxS), none: 'no limit', above: 0 },
])

/** What every gate keeps to. @public */
export const gateRules: readonly Rule<Pick<FuseGateRow, 'ratedFromA' | 'ratedToA' | 'minS' | 'maxS'>>[] = frozen([
  { fault: 'has its ratings upside down', broken: ({ ratedFromA, ratedToA }) => !(ratedFromA <= ratedToA) },
  { fault: 'limits nothing', broken: ({ minS, maxS }) => minS === null && maxS === null },
  {
    fault: 'has its limits upside down',
    broken: ({ minS, maxS }) => minS !== null && maxS !== null && !(minS < maxS),
  },
])

export const fuseGatesTable = table<FuseGateRow>({
  name: 'fuse-gates',
  title: 'Time-current gates of IEC fuse-links',
  intro:
    'At a multiple of its rated current a link melts no sooner than the first time and no later than the second. Rows that disagree stand side by side.',
  rows: fuseGateRows,
  id: ({ sheet, characteristic, breaking, ratedFromA, ratedToA, multiple, minS, maxS }) => [
    sheet === null ? 'general' : `sheet ${sheet}`,
    characteristic,
    breaking ?? '',
    ratedFromA,
    ratedToA === Infinity ? 'up' : ratedToA,
    'at',
    multiple,
    minS ?? 'none',
    maxS ?? 'none',
  ],
  columns: [
    {
      key: 'characteristic',
      title: 'Link',
      of: ({ characteristic, breaking, sizeMm }) =>
        `${characteristic}${breaking ?? ''}, ${sizeMm.replace('x', ' × ')} mm`,
    },
    { key: 'sheet', title: 'Sheet', unit: '' },
    ...gateColumns,
  ],
  rules: gateRules,
})
