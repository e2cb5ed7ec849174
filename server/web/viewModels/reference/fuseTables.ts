import { amperes, duration, percent, plain, quantityRange, volts } from '../../../physics/quantity.js'
import { fuseGateRows } from '../../../reference/fuseGates.js'
import { bs1362GateRows, type OtherGateRow, schemeComparison, ulGateRows } from '../../../reference/fuseGatesOther.js'
import {
  bandCharacteristics,
  bandDigits,
  iecColourCode,
  shortForms,
  sizeNames,
  speedWords,
} from '../../../reference/fuseMarks.js'
import { meltingTables } from '../../../reference/fuseMelting.js'
import {
  bs1362Ratings,
  iecBetween,
  iecBreakingCapacity,
  iecExtensions,
  iecPreferred,
  northAmerican,
  northAmericanMetric,
  ulInterruptingAt125V,
  ulInterruptingAt250V,
} from '../../../reference/fuseRatings.js'
import { ambientPoints, continuousShare, pulseShares } from '../../../reference/fuseSelection.js'
import { slug, type Table } from './table.js'

const ratings = (fromA: number, toA: number): string =>
  fromA === toA
    ? amperes(fromA)
    : toA === Number.POSITIVE_INFINITY
      ? fromA === 0
        ? 'every'
        : `from ${amperes(fromA)}`
      : quantityRange(fromA, toA, 'A')
const gateTime = (timeS: number | null): string => (timeS === null ? 'no limit' : duration(timeS, 4))

const series = [
  { name: 'IEC preferred', what: 'series R10 of the sheets of IEC 60127-2', list: iecPreferred },
  { name: 'IEC between', what: 'series R20: allowed, seldom on the shelf', list: iecBetween },
  { name: 'IEC extensions', what: '5 × 20 mm, made by single makers beyond the sheets', list: iecExtensions },
  { name: 'North American', what: 'cartridge links, mostly 6.3 × 32 mm', list: northAmerican },
  { name: 'North American metric', what: '5 × 20 mm values that IEC does not prefer', list: northAmericanMetric },
  { name: 'BS 1362', what: 'links of fused plugs', list: bs1362Ratings },
]

export const fuseRatingsTable: Table = {
  name: 'fuse-ratings',
  title: 'Rated currents of fuse-links',
  intro: 'The values links are made in, by family. A number of one family that another lacks tells the families apart.',
  columns: [{ title: 'Family' }, { title: 'What it is' }, { title: 'Ratings' }],
  rows: () =>
    series.map(({ name, what, list }) => ({
      id: slug(name),
      cells: [name, what, list.ratedA.map((ratedA) => amperes(ratedA)).join(', ')],
      sources: list.sources,
    })),
}

export const fuseGatesTable: Table = {
  name: 'fuse-gates',
  title: 'Time-current gates of IEC fuse-links',
  intro:
    'At a multiple of its rated current a link melts no sooner than the first time and no later than the second. Rows that disagree stand side by side.',
  columns: [
    { title: 'Link' },
    { title: 'Sheet', unit: '' },
    { title: 'Ratings' },
    { title: 'Times rated', unit: '' },
    { title: 'Not before' },
    { title: 'Not after' },
  ],
  rows: () =>
    fuseGateRows.map((row) => ({
      id: slug(
        row.sheet === null ? 'general' : `sheet ${row.sheet}`,
        row.characteristic,
        row.breaking ?? '',
        row.ratedFromA,
        row.ratedToA === Number.POSITIVE_INFINITY ? 'up' : row.ratedToA,
        'at',
        row.multiple,
        row.minS ?? 'none',
        row.maxS ?? 'none',
      ),
      cells: [
        `${row.characteristic}${row.breaking ?? ''}, ${row.sizeMm.replace('x', ' × ')} mm`,
        row.sheet,
        ratings(row.ratedFromA, row.ratedToA),
        row.multiple,
        gateTime(row.minS),
        gateTime(row.maxS),
      ],
      sources: row.sources,
      doubt: row.doubt,
    })),
}

const otherRow = (row: OtherGateRow) => {
  const link = row.timeDelay === null ? 'every link' : row.timeDelay ? 'time-delay' : 'fast-acting'
  return {
    id: slug(
      row.scheme,
      link,
      row.ratedFromA,
      row.ratedToA,
      'at',
      row.multiple.toFixed(2),
      row.minS ?? 'none',
      row.maxS ?? 'none',
    ),
    cells: [
      `${row.scheme === 'UL' ? 'UL 248-14' : 'BS 1362'}, ${link}`,
      ratings(row.ratedFromA, row.ratedToA),
      row.multiple,
      gateTime(row.minS),
      gateTime(row.maxS),
    ],
    sources: row.sources,
    doubt: row.doubt,
  }
}

export const otherGatesTable: Table = {
  name: 'fuse-gates-other',
  title: 'Gates of UL and BS 1362 fuse-links',
  intro: 'The same for North American cartridge links and for the links of fused plugs.',
  columns: [
    { title: 'Link' },
    { title: 'Ratings' },
    { title: 'Times rated', unit: '' },
    { title: 'Not before' },
    { title: 'Not after' },
  ],
  rows: () => [...ulGateRows, ...bs1362GateRows].map(otherRow),
}

export const schemesTable: Table = {
  name: 'fuse-schemes',
  title: 'UL and IEC links of one number compared',
  intro: 'Why a link of one family does not stand in for the other: the same number opens at other currents.',
  columns: [{ title: 'Current, of the rating' }, { title: 'UL link' }, { title: 'IEC link' }],
  rows: () =>
    schemeComparison.lines.map((line) => ({
      id: slug(line.percent, 'percent'),
      cells: [plain(line.percent, '%'), line.ul, line.iec],
      sources: schemeComparison.sources,
    })),
}

export const meltingTable: Table = {
  name: 'fuse-melting',
  title: 'Typical melting I²t of fuse-links',
  intro:
    'The pulse a 5 × 20 mm link melts at, as makers print it: typical, without tolerance. Makers differ by a factor of two and more.',
  columns: [
    { title: 'Rated current' },
    { title: 'Link' },
    { title: 'Melting I²t', unit: 'A²s' },
    { title: 'Maker’s sheet' },
  ],
  rows: () =>
    meltingTables
      .flatMap(({ characteristic, breaking, source, i2tByRatedA }) =>
        Object.entries(i2tByRatedA).map(([rated, i2t]) => ({
          ratedA: Number(rated),
          id: slug(`${characteristic}${breaking}`, rated, 'a', source.title.replace(/ data sheet.*/, '')),
          cells: [amperes(Number(rated)), `${characteristic} ${breaking}`, i2t, source.title],
          sources: [source],
        })),
      )
      .sort((one, other) => one.ratedA - other.ratedA),
}

export const breakingTable: Table = {
  name: 'fuse-breaking',
  title: 'Breaking capacity of fuse-links',
  intro: 'The largest fault current a link can interrupt at its rated voltage. Above it the link may burst.',
  columns: [{ title: 'Link' }, { title: 'Rated current' }, { title: 'Breaks' }],
  rows: () => [
    ...Object.entries(iecBreakingCapacity).map(([letter, { atLeastA, timesRated, source }]) => ({
      id: slug('iec', letter),
      cells: [
        `IEC, letter ${letter}`,
        'every',
        timesRated === 0
          ? amperes(atLeastA)
          : `${amperes(atLeastA)} or ${timesRated} times the rating, whichever is more`,
      ],
      sources: [source],
    })),
    ...ulInterruptingAt250V.map(({ uptoA, breakingA, source }) => ({
      id: slug('ul 250 v to', uptoA, 'a'),
      cells: ['UL, at 250 V', `up to ${amperes(uptoA)}`, amperes(breakingA)],
      sources: [source],
    })),
    {
      id: 'ul-125-v',
      cells: ['UL, at 125 V', 'every', amperes(ulInterruptingAt125V.value)],
      sources: [ulInterruptingAt125V.source],
    },
  ],
}

export const fuseWordsTable: Table = {
  name: 'fuse-words',
  title: 'Words and letters for the speed of a link',
  intro:
    'What is printed on caps, holders and in manuals, and the letter it stands for: FF, F, M, T, TT from very quick to very slow.',
  columns: [{ title: 'Printed' }, { title: 'Letter' }, { title: 'Family it tells' }],
  rows: () =>
    speedWords.map(({ phrase, characteristic, scheme, source }) => ({
      // two ways of writing one thing, with a hyphen and with a stroke
      id: slug(phrase.replace('/', ' stroke ')),
      cells: [phrase, characteristic, scheme],
      sources: [source],
    })),
}

export const fuseSymbolsTable: Table = {
  name: 'fuse-symbols',
  title: 'Catalogue symbols and sizes of links',
  intro: 'What a symbol on the cap says besides the number that follows it, and what North American size names mean.',
  columns: [
    { title: 'Symbol' },
    { title: 'Speed' },
    { title: 'Family' },
    { title: 'Breaking letter' },
    { title: 'Rated voltage' },
    { title: 'Size' },
  ],
  rows: () => [
    ...shortForms.map((form) => ({
      id: slug(form.symbol),
      cells: [
        form.symbol,
        form.characteristic,
        form.scheme,
        form.breaking,
        form.ratedV === null ? null : volts(form.ratedV),
        `${form.sizeMm.replace('x', ' × ')} mm`,
      ],
      sources: [form.source],
    })),
    ...sizeNames.map(({ name, sizeMm, source }) => ({
      id: slug('size', name),
      cells: [name, null, null, null, null, `${sizeMm.replace('x', ' × ')} mm`],
      sources: [source],
    })),
  ],
}

export const fuseColoursTable: Table = {
  name: 'fuse-colours',
  title: 'Colour bands of links',
  intro:
    'The first three bands give the rated current in milliamperes, two figures and the noughts that follow; the fourth, broader band gives the speed.',
  columns: [{ title: 'Colour' }, { title: 'Figure', unit: '' }, { title: 'Speed, fourth band' }],
  rows: () =>
    Object.entries(bandDigits).map(([colour, digit]) => ({
      id: slug(colour),
      cells: [colour, digit, bandCharacteristics[colour] ?? null],
      sources: [iecColourCode],
    })),
}

export const fuseSelectionTable: Table = {
  name: 'fuse-selection',
  title: 'How much of its rating a link may carry',
  intro: 'For good, in warmth, and in pulses that come again and again.',
  columns: [{ title: 'Case' }, { title: 'Share' }, { title: 'Of what, and why' }],
  rows: () => [
    ...Object.entries(continuousShare).map(([scheme, { value, reason, sources }]) => ({
      id: slug('continuous', scheme),
      cells: [`For good, ${scheme}`, percent(value), `of the rated current: ${reason}`],
      sources,
    })),
    ...ambientPoints.map(({ timeLag, ambientC, share, source }) => ({
      id: slug('ambient', ambientC, timeLag ? 'time lag' : 'quick'),
      cells: [
        `At ${plain(ambientC, '°C')}, ${timeLag ? 'time-lag' : 'quick-acting'}`,
        percent(share),
        'of the rating at 25 °C; no curve is made up between published points',
      ],
      sources: [source],
    })),
    ...pulseShares.map(({ uptoPulses, share, source }) => ({
      id: slug('pulses', uptoPulses),
      cells: [`Up to ${uptoPulses} pulses`, percent(share), 'of the typical melting I²t'],
      sources: [source],
    })),
  ],
}
