import { frozen } from './frozen.js'
import { commonPractice, published, type Source } from './source.js'
import { figure, table } from './table.js'

/** One decade of preferred numbers, 1 or more and below 10, rising. */
export interface PreferredSeries {
  readonly name: 'E12' | 'E24'
  readonly values: readonly number[]
  readonly source: Source
}

const iec60063 = published(
  'IEC 60063:2015, Preferred number series for resistors and capacitors',
  'series E12 and E24, as listed in the documentation of an electronic design program that names this standard',
)

const e12Values = [1.0, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2] as const
const e24Only = [1.1, 1.3, 1.6, 2.0, 2.4, 3.0, 3.6, 4.3, 5.1, 6.2, 7.5, 9.1] as const

export const e12: PreferredSeries = frozen({
  name: 'E12',
  values: frozen([...e12Values]),
  source: iec60063,
})

export const e24: PreferredSeries = frozen({
  name: 'E24',
  values: frozen([...e12Values, ...e24Only].sort((a, b) => a - b)),
  source: iec60063,
})

export const preferredSeries = frozen({ E12: e12, E24: e24 })

/** Ratings power resistors are sold in [W], rising. */
export const resistorRatings = frozen({
  valuesW: frozen([0.25, 0.5, 1, 2, 3, 5, 10, 20, 25, 30, 50, 100, 150, 200, 250, 300, 500, 1000]),
  source: commonPractice(
    'Ratings in which power resistors are commonly sold',
    'film types to 3 W, wirewound and metal-cased types above; a larger rating always serves',
  ),
})

const shownSeries = [
  ...Object.values(preferredSeries).map(({ name, values, source }) => ({
    series: name,
    values: values.map((value) => figure(value, 'Ω')),
    source,
  })),
  {
    series: 'Power ratings',
    values: resistorRatings.valuesW.map((value) => figure(value, 'W', { prefix: 'none' })),
    source: resistorRatings.source,
  },
]

export const preferredTable = table<(typeof shownSeries)[number]>({
  name: 'preferred-values',
  title: 'Preferred resistor values and ratings',
  intro: 'One decade of each series, and the ratings power resistors are sold in.',
  rows: shownSeries,
  id: ({ series }) => [series === 'Power ratings' ? 'ratings' : series],
  columns: [
    { key: 'series', title: 'Series' },
    { key: 'values', title: 'Values', filled: true },
  ],
})
