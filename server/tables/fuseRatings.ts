import { notRising } from './faults.js'
import { frozen } from './frozen.js'
import type { BreakingLetter } from './fuseMarks.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import { figure, table } from './table.js'

const s500 = published('Cooper Bussmann S500 data sheet, earlier edition', 'list of ratings')
const tableA1 = published('IEC 60127-1 (GOST IEC 60127-1-2010)', 'table A.1, series R10 and R20')
const inchSeries = published('Littelfuse 312/318 series data sheet', 'list of ratings, 6.3 x 32 mm')
const ulMetric = published(
  'Bussmann GMD data sheet SB98107, 12-18-98',
  '5 x 20 mm ratings that are not IEC preferred values',
)
const plugFuses = published(
  'Encyclopaedia entry on BS 1362:1973',
  '3 A and 13 A preferred; 1, 2, 5, 7 and 10 A seen in use',
)

/** Rated currents [A], rising, with where the list is printed. */
export interface RatingSeries {
  readonly ratedA: readonly number[]
  readonly sources: readonly Source[]
}

/** R10 series of the IEC 60127-2 sheets. */
export const iecPreferred: RatingSeries = frozen({
  ratedA: frozen([
    0.032, 0.04, 0.05, 0.063, 0.08, 0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15,
    4, 5, 6.3, 8, 10,
  ]),
  sources: [s500, tableA1],
})

/** R20 values between the R10 ones: allowed by the standard, seldom on the shelf. */
export const iecBetween: RatingSeries = frozen({
  ratedA: frozen([0.355, 0.45, 0.56, 0.71, 0.9, 1.12, 1.4, 1.8]),
  sources: [tableA1],
})

/** Beyond the IEC sheets, made by single makers in 5 x 20 mm. */
export const iecExtensions: RatingSeries = frozen({
  ratedA: frozen([12, 12.5, 16, 20]),
  sources: [
    published('Cooper Bussmann S505 data sheet BU-SB11758', '12 A extension'),
    published('Schurter SMD-SPT 5x20 data sheet', '12.5 A and 16 A'),
    published('Schurter FST 5x20 data sheet', '20 A'),
  ],
})

/** Ratings of North American cartridge links. */
export const northAmerican: RatingSeries = frozen({
  ratedA: frozen([
    0.01, 0.031, 0.0625, 0.1, 0.125, 0.15, 0.175, 0.1875, 0.2, 0.25, 0.3, 0.375, 0.5, 0.6, 0.75, 1, 1.25, 1.5, 1.6,
    1.75, 1.8, 2, 2.25, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 35,
  ]),
  sources: [inchSeries],
})

/** North American 5 x 20 mm values that are not IEC preferred values. */
export const northAmericanMetric: RatingSeries = frozen({
  ratedA: frozen([0.187, 0.3, 0.375, 0.6, 0.75, 1.2, 1.5, 3]),
  sources: [ulMetric],
})

/** Ratings of plug fuse-links; the standard stops at 13 A. */
export const bs1362Ratings: RatingSeries = frozen({
  ratedA: frozen([1, 2, 3, 5, 7, 10, 13]),
  sources: [plugFuses],
})

export const bs1362LargestA = frozen({
  value: 13,
  source: published('BS 1362', 'scope: rated current not above 13 A'),
})
export const bs1362RatedV = frozen({
  value: 250,
  source: published('BS 1362', 'scope: declared supply not above 250 V'),
})
export const bs1362BreakingA = frozen({
  value: 6000,
  source: published('Test-house press text on BS 1362 links', 'breaking capacity 6 kA'),
})
export const bs646Note = fromMemory(
  'BS 646',
  'small links of clock connectors and shaver adaptors, up to 5 A; not a plug fuse',
)

/** Preferred plug fuse by appliance power. */
export const plugFuseSmall = frozen({
  ratedA: 3,
  uptoW: 700,
  source: published(
    'In-service inspection guide citing the IET Code of Practice',
    'table VII.1: 3 A up to 700 W, else 13 A',
  ),
})

const iecBreaking = published(
  'Cooper Bussmann S500, S501, S505 and Bel 5ST data sheets',
  'L: 35 A or 10 times rated; H: 1500 A',
)
const enhanced = published('Bel 5ET data sheet', '150 A; remembered alike for IEC 60127-2 sheet 6')

/** Least breaking capacity by letter at the rated voltage [A]: a fixed value, or a multiple of the rated current if greater. */
export const iecBreakingCapacity: Readonly<
  Record<BreakingLetter, { readonly atLeastA: number; readonly timesRated: number; readonly source: Source }>
> = frozen({
  L: { atLeastA: 35, timesRated: 10, source: iecBreaking },
  E: { atLeastA: 150, timesRated: 0, source: enhanced },
  H: { atLeastA: 1500, timesRated: 0, source: iecBreaking },
})

const interrupting = published(
  'Littelfuse Fuseology Selection Guide 2014',
  'p. 12: interrupting ratings of UL Listed links',
)

/** Interrupting rating of a UL Listed link at 250 V AC [A], by rated current up to and including `uptoA`. */
export const ulInterruptingAt250V: readonly {
  readonly uptoA: number
  readonly breakingA: number
  readonly source: Source
}[] = frozen([
  { uptoA: 1, breakingA: 35, source: interrupting },
  { uptoA: 3.5, breakingA: 100, source: interrupting },
  { uptoA: 10, breakingA: 200, source: interrupting },
  { uptoA: 15, breakingA: 750, source: interrupting },
  { uptoA: 30, breakingA: 1500, source: interrupting },
])

/** Interrupting rating of a UL Listed link at 125 V AC [A]. */
export const ulInterruptingAt125V = frozen({ value: 10_000, source: interrupting })

/** The two voltages UL Listed links are rated at [V AC]. */
export const ulRatedV = frozen({ low: 125, high: 250, source: interrupting })

/** Outside this band a number on a small cartridge link is taken for something else [A]. */
export const plausibleRatedA = frozen({
  min: 0.001,
  max: 63,
  source: commonPractice(
    'Range of small cartridge links',
    'smallest catalogue value 5 mA, largest of these bodies below 63 A',
  ),
})

/** Voltages that links are rated at [V]; a voltage that is none of these is the circuit's, not the link's. */
export const linkVoltages = frozen({
  valuesV: frozen([
    32, 58, 60, 63, 65, 72, 75, 80, 86, 125, 150, 160, 170, 250, 277, 300, 350, 400, 420, 440, 450, 500, 550, 600, 660,
    690, 700, 750, 1000, 1200, 1500,
  ]),
  source: fromMemory('Catalogues of cartridge, blade and dc links', 'rated voltages'),
})

/** From this temperature on a figure beside a marking is that of a thermal cut-off, not of the air around it [°C]. */
export const cutOffFromC = frozen({
  value: 65,
  source: fromMemory('Catalogues of thermal cut-offs', 'lowest rated functioning temperature about 70 °C'),
})

/** From this bare number on, a letter is followed by milliamperes; up to `amperesTo` by amperes; between lies nothing. */
export const bareNumber = frozen({
  milliamperesFrom: 32,
  milliamperesBelow: 1000,
  amperesTo: 25,
  source: published(
    'IEC 60127-2 (GOST R IEC 60127-2-2010)',
    'clause 6.1: mA below 1 A, A from 1 A; smallest rating 32 mA',
  ),
})

const series = [
  { family: 'IEC preferred', what: 'series R10 of the sheets of IEC 60127-2', ...iecPreferred },
  { family: 'IEC between', what: 'series R20: allowed, seldom on the shelf', ...iecBetween },
  { family: 'IEC extensions', what: '5 × 20 mm, made by single makers beyond the sheets', ...iecExtensions },
  { family: 'North American', what: 'cartridge links, mostly 6.3 × 32 mm', ...northAmerican },
  { family: 'North American metric', what: '5 × 20 mm values that IEC does not prefer', ...northAmericanMetric },
  { family: 'BS 1362', what: 'links of fused plugs', ...bs1362Ratings },
]

export const fuseRatingsTable = table<(typeof series)[number]>({
  name: 'fuse-ratings',
  title: 'Rated currents of fuse-links',
  intro: 'The values links are made in, by family. A number of one family that another lacks tells the families apart.',
  rows: series,
  id: ({ family }) => [family],
  columns: [
    { key: 'family', title: 'Family' },
    { key: 'what', title: 'What it is' },
    { key: 'ratedA', title: 'Ratings', each: 'A', above: 0, to: 63, filled: true },
  ],
  rules: [{ fault: 'its ratings do not rise', broken: ({ ratedA }) => notRising(ratedA).length > 0 }],
})

const shownBreaking = [
  ...Object.entries(iecBreakingCapacity).map(([letter, { atLeastA, timesRated, source }]) => ({
    id: ['iec', letter],
    link: `IEC, letter ${letter}`,
    rated: 'every',
    breaksA:
      timesRated === 0
        ? figure(atLeastA, 'A')
        : [figure(atLeastA, 'A'), ` or ${timesRated} times the rating, whichever is more`],
    source,
  })),
  ...ulInterruptingAt250V.map(({ uptoA, breakingA, source }) => ({
    id: ['ul 250 v to', uptoA, 'a'],
    link: 'UL, at 250 V',
    rated: ['up to ', figure(uptoA, 'A')],
    breaksA: figure(breakingA, 'A'),
    source,
  })),
  {
    id: ['ul 125 v'],
    link: 'UL, at 125 V',
    rated: 'every',
    breaksA: figure(ulInterruptingAt125V.value, 'A'),
    source: ulInterruptingAt125V.source,
  },
]

export const breakingTable = table<(typeof shownBreaking)[number]>({
  name: 'fuse-breaking',
  title: 'Breaking capacity of fuse-links',
  intro: 'The largest fault current a link can interrupt at its rated voltage. Above it the link may burst.',
  rows: shownBreaking,
  id: ({ id }) => id,
  columns: [
    { key: 'link', title: 'Link' },
    { title: 'Rated current', of: ({ rated }) => rated },
    { title: 'Breaks', of: ({ breaksA }) => breaksA },
  ],
})
