import { frozen } from './frozen.js'
import { fromMemory, published } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/** A flexible cord of one size. Exactly one of areaMm2 and awg is set. */
export interface CordRow extends Sourced {
  readonly designation: string
  readonly areaMm2: number | null
  readonly awg: number | null
  readonly ratedInsulation: string
  /** current it carries with two loaded conductors [A]; the earth conductor is not counted */
  readonly ratedA: number
  /** the same with three loaded conductors, where stated */
  readonly ratedAThreeLoaded: number | null
  readonly sheath: string
  readonly lengthRule: string | null
  readonly notes: readonly string[]
}

/** The smallest conductor for an appliance of a rated current. */
export interface MinimumAreaRow extends Sourced {
  /** rows reach from above the row before up to and including this [A] */
  readonly toA: number
  readonly areaMm2: number
  /** allowed instead where the cord is no longer than shortM */
  readonly shortAreaMm2: number | null
  readonly shortM: number | null
}

/** The largest BS 1362 fuse-link in the plug of a cord of one size. */
export interface PlugFuseRow extends Sourced {
  readonly areaMm2: number
  readonly largestFuseA: number
  readonly note: string | null
}

const table11 = published(
  'IEC 60335-1, table 11',
  'minimum cross-section by rated current, as reproduced in a pump manual, p. 87',
)
const harmonised = published(
  'Flexible cord ratings, "PVC insulated types (HD 21)"',
  'cable catalogue: 0.50, 0.75, 1.0 mm² carry 3, 6, 10 A',
)
const codeKey = published(
  'Key to harmonised cord codes (katalog.cablestore-online.com)',
  '03 is 300/300 V, 05 is 300/500 V, V PVC, R rubber, H2 flat non-separable',
)
const cordTypes = published(
  'List of plugs and cord types in a public program',
  '60227 IEC 52: 2 × 0.5 to 0.75 mm², 300/300 V; 60227 IEC 53: 2 × 0.75 mm², 300/500 V',
)
const plugTable = published('BS 1363-1, table 2', 'largest plug fuse by conductor area, as quoted at v7.heyodo.com')
const twoMetres = published(
  'electrical-contractor.net, post 215964',
  'on IEC 60799: 10 A through 0.75 mm² and 16 A through 1.0 mm² up to 2 m',
)
const testHouse = published(
  'bbs.angui.org, thread 90897',
  'a test house on 0.75 mm²: 6 A, or 10 A with a cord set not over 2 m; plug fuses up to 13 A',
)
const patTraining = published(
  'pat-testing-training.net, fuse ratings',
  'note c to BS 1363 table 2; flexes of 0.5, 0.75, 1.0, 1.25, 1.5 mm² carry 3, 6, 10, 13, 15 A',
)
const flexRatings = published('diynot.com, thread 531581', 'usual ratings of flexes: 6 A for 0.75 mm²')
const table3B = published(
  'BS EN 60950-1:2006, table 3B, as quoted at seaward.co.uk (forum 12)',
  '0.75 mm² for detachable cords with C13, C15, C15A and C17 connectors of 10 A, up to 2 m',
)
const cordSets = fromMemory('IEC 60799, table 1', 'the 2 m allowance')
const darshan = published(
  'Darshan cables (darshancable.com), table to IS 694',
  '4, 7, 12, 15 A for 0.5, 0.75, 1.0, 1.5 mm²',
)
const rubber = fromMemory('IEC 60245-4', '60245 IEC 53')
const ieeTables = fromMemory('IEE wiring tables', '15 A for 1.5 mm²')
const nec = published(
  'NEC table 400.5(A), two current-carrying conductors',
  'as quoted in a UL appliance standard (bbs.angui.org.cn, thread 1137): 18, 17, 16, 14, 12 AWG carry 10, 12, 13, 18, 25 A',
)
const usWire = published(
  'uswireandcable.com, glossary, current capacity of flexible cords',
  'three/two current-carrying conductors: 18 AWG 7/10, 17 –/12, 16 10/13, 14 15/18, 12 20/25 A',
)
const ulConstruction = published('IEWC technical guide', 'UL cord construction ratings')
const ul62 = fromMemory('UL 62', 'cord types')
const necFromMemory = fromMemory('NEC tables 400.4 and 400.5(A)', 'ampacity and length')
const kansai = published(
  '関西電気保安協会 (Kansai Electrical Safety Association), cable05',
  'コード類の許容電流, current of cords',
)
const vffPages = published('electric-facilities.jp', 'pages on VFF and VCTF')
const vctfk = published('monoduku.com', 'page on VCTFK')

const shortHalf = '0.5 mm² only up to 2 m between plug and appliance (IEC 60335-1 table 11 note a)'
const notFixed = 'not as fixed wiring'
const fewMetres = '10 A through 0.75 mm² only in cord sets up to 2 m'

type Rest = Partial<Pick<CordRow, 'ratedAThreeLoaded' | 'lengthRule' | 'notes' | 'doubt'>>

const blank = { ratedAThreeLoaded: null, lengthRule: null, notes: [] } as const

/** A cord sized in mm². */
const metric = (
  designation: string,
  areaMm2: number,
  ratedA: number,
  ratedInsulation: string,
  sheath: string,
  sources: CordRow['sources'],
  rest: Rest = {},
): CordRow => ({ designation, areaMm2, awg: null, ratedInsulation, ratedA, sheath, sources, ...blank, ...rest })

/** A cord sized by American wire gauge. */
const gauge = (
  designation: string,
  awg: number,
  ratedA: number,
  ratedAThreeLoaded: number | null,
  ratedInsulation: string,
  sheath: string,
  sources: CordRow['sources'],
  rest: Rest = {},
): CordRow => ({
  designation,
  areaMm2: null,
  awg,
  ratedInsulation,
  ratedA,
  sheath,
  sources,
  ...blank,
  ratedAThreeLoaded,
  ...rest,
})

// biome-ignore format: a row a line
export const cordRows: readonly CordRow[] = frozen([
  metric('H03VVH2-F', 0.5, 3, '300/300 V', 'PVC flat, light', [table11, harmonised, cordTypes, codeKey, plugTable], { lengthRule: shortHalf, notes: ['60227 IEC 52. Lamp, radio and C7 cords; not for class I. UK: a plug fuse of 3 A at most.'] }),
  metric('H03VVH2-F', 0.75, 6, '300/300 V', 'PVC flat, light', [table11, harmonised, cordTypes], { notes: ['The usual figure-8 cord.'] }),
  metric('H03VV-F', 0.5, 3, '300/300 V', 'PVC round, light', [table11, harmonised, codeKey], { lengthRule: shortHalf, notes: ['60227 IEC 52.'] }),
  metric('H03VV-F', 0.75, 6, '300/300 V', 'PVC round, light', [table11, harmonised, codeKey]),
  metric('H05VV-F', 0.75, 6, '300/500 V', 'PVC round', [table11, harmonised, table3B, twoMetres, testHouse, patTraining, flexRatings], { lengthRule: fewMetres, notes: ['60227 IEC 53.'], doubt: 'The 10 A up to 2 m is for uncoiled cord sets with a 10 A connector; 6 A otherwise.' }),
  metric('H05VV-F', 1.0, 10, '300/500 V', 'PVC round', [table11, harmonised, twoMetres, cordSets], { lengthRule: '16 A through 1.0 mm² only in cord sets up to 2 m', doubt: 'The 16 A up to 2 m rests on one forum post and memory. 10 A otherwise.' }),
  metric('H05VV-F', 1.5, 16, '300/500 V', 'PVC round', [table11], { doubt: 'Makers to IS 694 and older UK tables say 15 A.' }),
  metric('H05VVH2-F', 0.75, 6, '300/500 V', 'PVC flat', [table11, cordTypes], { lengthRule: fewMetres, notes: ['60227 IEC 53, flat two-core.'] }),
  metric('H05VVH2-F', 1.0, 10, '300/500 V', 'PVC flat', [table11, codeKey]),
  metric('H05RR-F', 0.75, 6, '300/500 V', 'rubber', [table11, codeKey, rubber], { notes: ['60245 IEC 53. For hot-condition cords.'] }),
  metric('H05RR-F', 1.0, 10, '300/500 V', 'rubber', [table11, codeKey]),
  metric('H05RR-F', 1.5, 16, '300/500 V', 'rubber', [table11, codeKey]),
  metric('Flexible cord, older UK tables', 1.5, 15, 'not stated', 'PVC or rubber', [patTraining, ieeTables]),
  metric('Flexible cord, UK', 1.25, 13, 'not stated', 'PVC', [patTraining], { notes: ['A British size.'] }),
  metric('Flexible cord to IS 694', 0.5, 4, 'up to 1100 V', 'PVC', [darshan]),
  metric('Flexible cord to IS 694', 0.75, 7, 'up to 1100 V', 'PVC', [darshan]),
  metric('Flexible cord to IS 694', 1.0, 12, 'up to 1100 V', 'PVC', [darshan]),
  metric('Flexible cord to IS 694', 1.5, 15, 'up to 1100 V', 'PVC', [darshan]),
  metric('VFF', 0.75, 7, '300 V', 'PVC flat, no sheath', [kansai, vffPages], { lengthRule: notFixed, notes: ['Insulation for 60 °C; HVFF (75 °C) carries 8 A. Less when coiled.'] }),
  metric('VFF', 1.25, 12, '300 V', 'PVC flat, no sheath', [kansai, vffPages], { lengthRule: notFixed, notes: ['HVFF carries 14 A. Less when coiled.'] }),
  metric('VFF', 2.0, 17, '300 V', 'PVC flat, no sheath', [kansai, vffPages], { lengthRule: notFixed, notes: ['HVFF carries 20 A. Less when coiled.'] }),
  metric('VCTF', 0.75, 7, '300 V', 'PVC sheath, round', [kansai, vffPages], { lengthRule: notFixed, notes: ['Counts as a cord, not as cabtyre cable.'] }),
  metric('VCTF', 1.25, 12, '300 V', 'PVC sheath, round', [kansai, vffPages], { lengthRule: notFixed, notes: ['HVCTF carries 14 A.'] }),
  metric('VCTF', 2.0, 17, '300 V', 'PVC sheath, round', [kansai, vffPages], { lengthRule: notFixed, notes: ['HVCTF carries 20 A.'] }),
  metric('VCTFK', 0.75, 7, '300 V', 'PVC sheath, flat oval', [kansai, vctfk], { lengthRule: notFixed, notes: ['Flat form of VCTF.'] }),
  metric('VCTFK', 1.25, 12, '300 V', 'PVC sheath, flat oval', [kansai], { lengthRule: notFixed }),
  gauge('TPT, TST', 27, 0.5, null, 'TPT 250 V, TST 125 V', 'thermoplastic parallel, tinsel', [ulConstruction, necFromMemory], { lengthRule: 'not over 8 ft (2.5 m)', notes: ['Very light: shavers, calculators, small supplies.'], doubt: 'Current and length are from memory only.' }),
  gauge('NISPT-1', 20, 5, null, '300 V', 'non-integral parallel, two layers', [ul62, necFromMemory], { doubt: 'From memory only.' }),
  gauge('NISPT-1', 18, 10, 7, '300 V', 'non-integral parallel, two layers', [nec, usWire, ul62]),
  gauge('NISPT-2', 18, 10, 7, '300 V', 'non-integral parallel, two layers', [nec, usWire, ul62]),
  gauge('NISPT-2', 16, 13, 10, '300 V', 'non-integral parallel, two layers', [nec, usWire, ul62]),
  gauge('SPT-1', 20, 5, null, '300 V', 'parallel, integral', [necFromMemory], { doubt: 'From memory only; the UL list seen starts SPT-1 at 18 AWG.' }),
  gauge('SPT-1', 18, 10, 7, '300 V', 'parallel, integral', [ulConstruction, nec, usWire], { notes: ['The ribbed side of a polarised two-core cord is the neutral.'] }),
  gauge('SPT-2', 18, 10, 7, '300 V', 'parallel, integral, heavier', [ulConstruction, nec, usWire]),
  gauge('SPT-2', 16, 13, 10, '300 V', 'parallel, integral, heavier', [ulConstruction, nec, usWire]),
  gauge('SVT', 18, 10, 7, '300 V', 'jacketed, light', [ulConstruction, nec, usWire], { notes: ['Light C5 and C13 cords; a line-neutral-earth cord has two current-carrying conductors.'] }),
  gauge('SVT', 17, 12, null, '300 V', 'jacketed, light', [ulConstruction, nec, usWire]),
  gauge('SJT', 18, 10, 7, '300 V', 'jacketed, hard service', [ulConstruction, nec, usWire]),
  gauge('SJT', 16, 13, 10, '300 V', 'jacketed, hard service', [ulConstruction, nec, usWire], { notes: ['Extension cords over 50 ft (15 m): two sizes heavier, says one glossary.'] }),
  gauge('SJT', 14, 18, 15, '300 V', 'jacketed, hard service', [ulConstruction, nec, usWire], { notes: ['A NEMA 5-15 plug still limits the cord to 15 A.'] }),
])

// biome-ignore format: a row a line
export const minimumAreaRows = rows<MinimumAreaRow>()(['toA', 'areaMm2', 'shortAreaMm2', 'shortM', 'sources'], [
  [3, 0.75, 0.5, 2, [table11]],
  [6, 0.75, null, null, [table11]],
  [10, 1, 0.75, 2, [table11, table3B, twoMetres, testHouse]],
  [16, 1.5, 1, 2, [table11, twoMetres, cordSets], { doubt: 'The smaller area up to 2 m rests on one forum post and memory.' }],
])

// biome-ignore format: a row a line
export const plugFuseRows = rows<PlugFuseRow>()(['areaMm2', 'largestFuseA', 'note', 'sources'], [
  [0.5, 3, '5 A only in plugs that cannot be rewired, on equipment with a high inrush.', [plugTable]],
  [0.75, 13, 'The largest permitted, not the one to fit.', [plugTable, testHouse]],
  [1, 13, null, [plugTable]],
  [1.25, 13, null, [plugTable]],
  [1.5, 13, null, [plugTable]],
])

export const cordsTable = table<CordRow>({
  name: 'cords',
  title: 'Flexible cords',
  intro: 'What a cord of one size carries. Where rows of one size disagree the lowest figure decides.',
  rows: cordRows,
  id: ({ designation, areaMm2, awg, ratedA }) => [designation, areaMm2 ?? `awg ${awg}`, ratedA, 'a'],
  columns: [
    { key: 'designation', title: 'Cord' },
    { key: 'areaMm2', title: 'Area', unit: 'mm²', from: 0.5, to: 4 },
    { key: 'awg', title: 'AWG', unit: '', from: 10, to: 27 },
    { key: 'ratedInsulation', title: 'Insulation' },
    { key: 'ratedA', title: 'Carries', unit: 'A', from: 0.2, to: 25 },
    { key: 'ratedAThreeLoaded', title: 'Three loaded', unit: 'A' },
    { key: 'sheath', title: 'Sheath' },
    { key: 'lengthRule', title: 'Length' },
    { key: 'notes', title: 'Notes', between: ' ' },
  ],
  rules: [
    { fault: 'needs either an area or a gauge', broken: ({ areaMm2, awg }) => (areaMm2 === null) === (awg === null) },
    {
      fault: 'carries more with three loaded',
      broken: ({ ratedA, ratedAThreeLoaded }) => ratedAThreeLoaded !== null && !(ratedAThreeLoaded < ratedA),
    },
  ],
})

export const minimumAreasTable = table<MinimumAreaRow>({
  name: 'cord-areas',
  title: 'Smallest conductor of a cord',
  intro: 'By the rated current of the appliance; a smaller one is allowed for short cords of some sizes.',
  rows: minimumAreaRows,
  id: ({ toA }) => ['to', toA, 'a'],
  columns: [
    { key: 'toA', title: 'Rated current up to', unit: 'A', above: 0, rises: true },
    { key: 'areaMm2', title: 'Smallest area', unit: 'mm²', above: 0 },
    { key: 'shortAreaMm2', title: 'Short cord', unit: 'mm²', above: 0 },
    { key: 'shortM', title: 'Short is up to', unit: 'm', above: 0 },
  ],
  rules: [
    {
      fault: 'needs both a short area and a length, or neither',
      broken: ({ shortAreaMm2, shortM }) => (shortAreaMm2 === null) !== (shortM === null),
    },
    {
      fault: 'the short area is not smaller',
      broken: ({ areaMm2, shortAreaMm2 }) => shortAreaMm2 !== null && !(shortAreaMm2 < areaMm2),
    },
  ],
})

export const plugFusesTable = table<PlugFuseRow>({
  name: 'plug-fuses',
  title: 'Largest plug fuse of a cord (BS 1362 links)',
  intro: 'The largest a cord of one size allows, which is not the one to fit: the smallest that carries the load is.',
  rows: plugFuseRows,
  id: ({ areaMm2 }) => [areaMm2, 'mm2'],
  columns: [
    { key: 'areaMm2', title: 'Area', unit: 'mm²', above: 0, rises: true },
    { key: 'largestFuseA', title: 'Largest link', unit: 'A', from: 1, to: 13 },
    { key: 'note', title: 'Note' },
  ],
})
