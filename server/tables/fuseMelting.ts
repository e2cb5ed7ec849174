import { frozen } from './frozen.js'
import type { BreakingLetter, Characteristic } from './fuseMarks.js'
import { iecPreferred } from './fuseRatings.js'
import { published, type Source } from './source.js'
import { table } from './table.js'

/** Typical melting I²t of one maker's links [A²s] by rated current [A]; a data sheet states no tolerance for it. */
export interface MeltingTable {
  readonly characteristic: Characteristic
  readonly breaking: BreakingLetter
  readonly source: Source
  readonly i2tByRatedA: Readonly<Record<number, number>>
}

const melting = (
  characteristic: Characteristic,
  breaking: BreakingLetter,
  source: Source,
  i2tByRatedA: Record<number, number>,
): MeltingTable => frozen({ characteristic, breaking, source, i2tByRatedA: frozen(i2tByRatedA) })

/** 5 x 20 mm links. A range is shown only where two sheets give the same rating. */
export const meltingTables: readonly MeltingTable[] = frozen([
  melting('T', 'H', published('Cooper Bussmann S505 data sheet BU-SB11758', 'typical pre-arcing I²t'), {
    0.5: 0.188,
    0.8: 0.632,
    1: 1.28,
    1.25: 2.22,
    1.6: 6.78,
    2: 9.6,
    2.5: 16.6,
    3.15: 36.6,
    4: 38.45,
    5: 71.3,
    6.3: 111,
    8: 228,
    10: 397,
  }),
  melting('T', 'H', published('Bel 5HT data sheet 5HTD0903', 'typical melting I²t at 10 times rated'), {
    1: 1.7,
    1.25: 3.2,
    1.6: 5.9,
    2: 11,
    2.5: 20.3,
    3.15: 38,
    4: 69,
    5: 128,
    6.3: 237,
    8: 439,
    10: 812,
  }),
  melting('T', 'H', published('Schurter SMD-SPT 5x20 data sheet', 'pre-arcing I²t at 10 times rated, typical'), {
    1: 1.1,
    1.25: 1.86,
    1.6: 4.35,
    2: 9.2,
    2.5: 11.7,
    3.15: 33.7,
    4: 62.4,
    5: 97.5,
    6.3: 171,
    8: 268,
    10: 400,
  }),
  melting('T', 'H', published('Littelfuse 215SP series data sheet', 'nominal melting I²t'), {
    1: 1.52,
    1.25: 3.2,
    1.6: 6.83,
    2: 11.68,
    2.5: 22.29,
  }),
  melting('T', 'L', published('Littelfuse 213 series data sheet', 'nominal melting I²t, surge-withstand links'), {
    0.2: 0.35,
    0.25: 0.555,
    0.315: 1.14,
    0.4: 1.35,
    0.5: 2.9,
    0.63: 4.8,
    0.8: 9.42,
    1: 19.2,
    1.25: 27.15,
    1.6: 44.2,
    2: 92.7,
    2.5: 138,
    3.15: 226.5,
    4: 202,
    5: 314,
    6.3: 600,
  }),
  melting('T', 'L', published('Bel 5ST data sheet W5STD0405', 'typical melting I²t at 10 times rated'), {
    0.063: 0.021,
    0.08: 0.036,
    0.1: 0.06,
    0.125: 0.11,
    0.16: 0.19,
    0.2: 0.33,
    0.25: 0.58,
    0.315: 1.01,
    0.4: 1.76,
    0.5: 3.1,
    0.63: 1.5,
    0.8: 2.5,
  }),
  melting('F', 'H', published('Littelfuse 216SP series data sheet', 'nominal melting I²t'), {
    1.6: 1.005,
    2: 1.87,
    2.5: 3.672,
    5: 27.46,
    6.3: 56.43,
  }),
  // 0.25 A and 0.315 A left out: the printed 0.28 and 0.58 are above the 0.18 of 0.4 A, most likely a lost zero
  melting('F', 'L', published('Cooper Bussmann S500 data sheet, earlier edition', 'typical melting I²t'), {
    0.032: 0.000047,
    0.04: 0.00011,
    0.05: 0.0002,
    0.063: 0.00057,
    0.08: 0.0012,
    0.1: 0.003,
    0.125: 0.005,
    0.16: 0.008,
    0.2: 0.016,
    0.4: 0.18,
    0.5: 0.18,
    0.63: 0.35,
    0.8: 0.67,
    1: 0.6,
    1.25: 0.84,
    1.6: 1.6,
    2: 4.2,
    2.5: 6.1,
    3.15: 13,
    4: 22,
    5: 42,
    6.3: 69,
  }),
])

const shownMelting = meltingTables
  .flatMap(({ characteristic, breaking, source, i2tByRatedA }) =>
    Object.entries(i2tByRatedA).map(([rated, i2t]) => ({
      ratedA: Number(rated),
      characteristic,
      breaking,
      i2t,
      sheet: source.title,
      source,
    })),
  )
  .sort((one, other) => one.ratedA - other.ratedA)

export const meltingTable = table<(typeof shownMelting)[number]>({
  name: 'fuse-melting',
  title: 'Typical melting I²t of fuse-links',
  intro:
    'The pulse a 5 × 20 mm link melts at, as makers print it: typical, without tolerance. Makers differ by a factor of two and more.',
  rows: shownMelting,
  id: ({ characteristic, breaking, ratedA, sheet }) => [
    `${characteristic}${breaking}`,
    ratedA,
    'a',
    sheet.replace(/ data sheet.*/, ''),
  ],
  columns: [
    { key: 'ratedA', title: 'Rated current', each: 'A', known: () => iecPreferred.ratedA },
    { key: 'characteristic', title: 'Link', of: ({ characteristic, breaking }) => `${characteristic} ${breaking}` },
    { key: 'i2t', title: 'Melting I²t', unit: 'A²s', above: 0 },
    { key: 'sheet', title: 'Maker’s sheet' },
  ],
})
