import { frozen } from './frozen.js'
import { gateColumns, gateRules } from './fuseGates.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'
import { figure, table } from './table.js'

const guide = published('Littelfuse Fuseology Selection Guide 2014', 'p. 12: UL/CSA/ANCE 248-14')
const gma = published('Eaton GMA data sheet, May 2017', 'opening time by percentage of rating')
const mdl = published('Bussmann MDL data sheet', 'opening time by percentage of rating')
const gmd = published('Bussmann GMD data sheet SB98107, 12-18-98', '5 s at 200 % up to and including 4 A')
const l239 = published(
  'Littelfuse 239 series data sheets, rev. 06/06/16 and 01/31/17',
  '2016: 5 s at 200 %; 2017: no minimum',
)
const openingTimes = published('UL and IEC fuse opening-time tables, web article', 'secondary; low trust')
const makersNote = published('OptiFuse note on UL and IEC fuses, 21 Aug 2009', '110 % for 4 h')
const remembered = fromMemory('UL 248-14, time-delay clause', '12 s at 200 % above 3 A')

/** One point of a gate outside the IEC sheets, in multiples of the rated current. */
export interface OtherGateRow extends Sourced {
  readonly scheme: 'UL' | 'BS1362'
  /** null: fast and time-delay alike */
  readonly timeDelay: boolean | null
  readonly ratedFromA: number
  readonly ratedToA: number
  readonly multiple: number
  readonly minS: number | null
  readonly maxS: number | null
}

const row = (
  scheme: OtherGateRow['scheme'],
  timeDelay: boolean | null,
  [ratedFromA, ratedToA]: readonly [number, number],
  [multiple, minS, maxS]: readonly [number, number | null, number | null],
  sources: readonly Source[],
  doubt?: string,
): OtherGateRow =>
  frozen({
    scheme,
    timeDelay,
    ratedFromA,
    ratedToA,
    multiple,
    minS,
    maxS,
    sources,
    ...(doubt === undefined ? {} : { doubt }),
  })

/** UL 248-14 for supplementary cartridge links. */
export const ulGateRows: readonly OtherGateRow[] = frozen([
  row(
    'UL',
    null,
    [0, 30],
    [1.1, 14_400, null],
    [mdl, makersNote, openingTimes],
    'carried for 4 h by the data sheets of makers',
  ),
  row('UL', null, [0, 30], [1.35, null, 3600], [guide, gma, mdl, gmd]),
  row('UL', false, [0, 30], [2, null, 120], [guide, gma]),
  row(
    'UL',
    true,
    [0, 3],
    [2, 5, 120],
    [openingTimes, gmd, l239],
    'a revision of 2017 of one data sheet prints no minimum',
  ),
  row('UL', true, [3.001, 30], [2, 12, 120], [openingTimes, remembered], 'secondary source and memory'),
  row('UL', true, [3.001, 30], [2, 5, 120], [gmd, l239], 'disagrees: makers print 5 s up to 7 A, and none in 2017'),
  row('UL', null, [30.001, 60], [2, null, 240], [guide]),
])

const plugHalfHour = published(
  'Articles on BS 1362 plug fuses',
  '1.6 times for 30 min carried, 1.9 times within 30 min opened',
)
const plugGates = published(
  'Encyclopaedia entry on BS 1362:1973',
  'times at 9, 20 and 30 A for 3 A; 30 and 50 A for 13 A',
)
const plugRemembered = fromMemory('BS 1362', '100 A for the last gate of the 13 A link; the times themselves were read')

/** BS 1362 plug links. The half-hour limits are for every rating, the short times only for 3 A and 13 A. */
export const bs1362GateRows: readonly OtherGateRow[] = frozen([
  row('BS1362', null, [1, 13], [1.6, 1800, null], [plugHalfHour]),
  row('BS1362', null, [1, 13], [1.9, null, 1800], [plugHalfHour]),
  row('BS1362', null, [3, 3], [9 / 3, 0.02, 80], [plugGates]),
  row('BS1362', null, [3, 3], [20 / 3, null, 0.1], [plugGates]),
  row('BS1362', null, [3, 3], [30 / 3, null, 0.03], [plugGates]),
  row('BS1362', null, [13, 13], [30 / 13, 1, 400], [plugGates]),
  row('BS1362', null, [13, 13], [50 / 13, 0.1, 20], [plugGates]),
  row('BS1362', null, [13, 13], [100 / 13, 0.01, 0.2], [plugGates, plugRemembered], 'the 100 A is from memory'),
])

/** What the two families do at the currents where they differ; the reason why one cannot stand in for the other. */
export const schemeComparison = frozen({
  lines: frozen([
    { percent: 135, ul: 'opens within 1 h', iec: 'carries it' },
    { percent: 150, ul: 'opens within 1 h', iec: 'carries it for 1 h (above 6.3 A: 30 min)' },
    { percent: 200, ul: 'opens within 2 min', iec: 'need not open' },
    { percent: 210, ul: 'opens within 2 min', iec: 'opens within 30 min (T with letter L or E: 2 min)' },
  ]),
  sources: frozen([
    guide,
    makersNote,
    commonPractice(
      'Conclusion from both sets of limits',
      'a current between 135 % and 210 % opens the one and not the other',
    ),
  ]),
})

export const otherGatesTable = table<OtherGateRow>({
  name: 'fuse-gates-other',
  title: 'Gates of UL and BS 1362 fuse-links',
  intro: 'The same for North American cartridge links and for the links of fused plugs.',
  rows: [...ulGateRows, ...bs1362GateRows],
  id: ({ scheme, timeDelay, ratedFromA, ratedToA, multiple, minS, maxS }) => [
    scheme,
    kindOf(timeDelay),
    ratedFromA,
    ratedToA === Infinity ? 'Infinity' : ratedToA,
    'at',
    multiple.toFixed(2),
    minS ?? 'none',
    maxS ?? 'none',
  ],
  columns: [
    {
      key: 'scheme',
      title: 'Link',
      of: ({ scheme, timeDelay }) => `${scheme === 'UL' ? 'UL 248-14' : 'BS 1362'}, ${kindOf(timeDelay)}`,
    },
    ...gateColumns,
  ],
  rules: gateRules,
})

function kindOf(timeDelay: boolean | null): string {
  return timeDelay === null ? 'every link' : timeDelay ? 'time-delay' : 'fast-acting'
}

const compared = schemeComparison.lines.map((line) => ({ ...line, sources: schemeComparison.sources }))

export const schemesTable = table<(typeof compared)[number]>({
  name: 'fuse-schemes',
  title: 'UL and IEC links of one number compared',
  intro: 'Why a link of one family does not stand in for the other: the same number opens at other currents.',
  rows: compared,
  id: ({ percent }) => [percent, 'percent'],
  columns: [
    {
      key: 'percent',
      title: 'Current, of the rating',
      of: ({ percent }) => figure(percent / 100, '%'),
      above: 0,
      rises: true,
    },
    { key: 'ul', title: 'UL link' },
    { key: 'iec', title: 'IEC link' },
  ],
})
