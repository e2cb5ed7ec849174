import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import { figure, table } from './table.js'

export interface ShareOfRating {
  readonly value: number
  readonly sources: readonly Source[]
}

/** Part of the rated current that a link may carry for good, by the family it is rated in. */
export const continuousShare: Readonly<Record<'UL' | 'IEC' | 'BS1362', ShareOfRating & { readonly reason: string }>> =
  frozen({
    UL: {
      value: 0.75,
      reason: 'a UL link opens within an hour at 135 %, so 75 % keeps it clear of that at 25 °C',
      sources: [published('EDN, 26 Sep 1996, The fuse-selection checklist', '75 % at 25 °C')],
    },
    IEC: {
      value: 0.9,
      reason: 'an IEC link is rated to carry its number; guides use 90 % to 100 %, and the careful end is taken',
      sources: [
        published('Web article on European and American fuse standards', '100 % at 23 to 25 °C'),
        fromMemory('Selection guides of makers and IEC 60127-10', '90 % to 100 %'),
      ],
    },
    BS1362: {
      value: 1,
      reason: 'a plug link carries 1.6 times its rating for half an hour and is fitted by its number',
      sources: [
        published('In-service inspection guide citing the IET Code of Practice', 'table VII.1: 3 A up to 700 W'),
      ],
    },
  })

export const iecUpperShare = 1

/** Reference ambient of the gates and ratings [°C]; up to here nothing is re-rated. */
export const referenceAmbientC = frozen({
  value: 25,
  source: published('Definition of ambient temperature in makers’ guides', '25 °C, IEC 23 °C: 100 %'),
})

/** Published points of ambient re-rating that may be used for cartridge links; none is invented between them. */
export const ambientPoints: readonly {
  readonly timeLag: boolean
  readonly ambientC: number
  readonly share: number
  readonly source: Source
}[] = frozen([
  {
    timeLag: true,
    ambientC: 60,
    share: 0.83,
    source: published('Five criteria for fuse selection, 2021', 'curve of one time-lag link (SMD body): 83 % at 60 °C'),
  },
])

/** How near a published ambient point must be to be used [°C]; nothing is drawn between points. */
export const ambientMatchC = frozen({
  value: 0.5,
  source: commonPractice(
    'A published point counts for its own temperature',
    'rounding of a thermometer; no curve is made up between points',
  ),
})

const pulseChart = published('Littelfuse Fuse Products catalogue, rev. 03/03/17', 'p. 12, charts 1 and 2')

/** Part of the typical melting I²t that a pulse may reach, so that the link survives the number of pulses. */
export const pulseShares: readonly { readonly uptoPulses: number; readonly share: number; readonly source: Source }[] =
  frozen([
    { uptoPulses: 100, share: 0.48, source: pulseChart },
    { uptoPulses: 1000, share: 0.38, source: pulseChart },
    { uptoPulses: 10_000, share: 0.29, source: pulseChart },
    { uptoPulses: 100_000, share: 0.22, source: pulseChart },
  ])

const replacing = published(
  'Course on replacement fuses',
  'never higher, never slower, never a lower voltage; faster or lower may open early',
)
const sameSize = published(
  'Advice page on device fuses',
  'size and body like the original; cure the cause before replacing; never bridge',
)

/** Rules of replacing like with like. */
export const likeWithLike = frozen({
  replacing,
  sameSize,
  h: commonPractice('H stays H', '35 A against 1500 A'),
})

export const otherThings = commonPractice(
  'Protectors that are no fuse-link',
  'a thermal cut-off opens at a temperature, a resettable protector closes again: each is replaced by its like only',
)
export const voltageRule = published(
  'EDN, 26 Sep 1996, The fuse-selection checklist',
  'rated voltage at least the circuit voltage',
)
export const dcRule = commonPractice(
  'AC link on direct current',
  'an AC rating says nothing about breaking direct current',
)
export const breakingRule = published(
  'Eaton, fuse frequently asked questions',
  'interrupting rating at least the available fault current',
)
/** Up to this voltage an ac rating is taken for direct current as well: an arc hardly stands below it [V]. */
export const dcAnyLinkMostV = frozen({
  value: 32,
  source: commonPractice(
    'Low direct voltage',
    'links for vehicles are rated 32 V; above that a dc rating has to be printed',
  ),
})
export const bothPoles = commonPractice('Two fused poles', 'one open link can leave the other pole live inside')
export const notInterchangeable = published(
  'Discussion on the emc-pstc list and a maker’s note of 2009',
  'UL and IEC links of one number',
)
export const dualVoltage = commonPractice('Same watts at another voltage', 'current in inverse ratio: 230 / 120 = 1.92')
export const sourceOfPrescription = commonPractice('The marking on the unit wins', 'its maker tested it with that link')
export const currentLimited = commonPractice(
  'An open link is a fault until shown otherwise',
  'first power again only behind a current limit',
)

/** Within this share two mains voltages count as one for a prescription. */
export const nominalMatchOfMains = frozen({
  value: 0.1,
  source: commonPractice(
    'Same mains for a fuse rating',
    '220, 230 and 240 V draw within 10 % of one another; so do 110 and 120 V',
  ),
})

const shownShares = [
  ...Object.entries(continuousShare).map(([scheme, { value, reason, sources }]) => ({
    id: ['continuous', scheme],
    case: `For good, ${scheme}`,
    share: value,
    why: `of the rated current: ${reason}`,
    sources,
  })),
  ...ambientPoints.map(({ timeLag, ambientC, share, source }) => ({
    id: ['ambient', ambientC, timeLag ? 'time lag' : 'quick'],
    case: ['At ', figure(ambientC, '°C'), timeLag ? ', time-lag' : ', quick-acting'],
    share,
    why: 'of the rating at 25 °C; no curve is made up between published points',
    sources: [source],
  })),
  ...pulseShares.map(({ uptoPulses, share, source }) => ({
    id: ['pulses', uptoPulses],
    case: `Up to ${uptoPulses} pulses`,
    share,
    why: 'of the typical melting I²t',
    sources: [source],
  })),
]

export const fuseSelectionTable = table<(typeof shownShares)[number]>({
  name: 'fuse-selection',
  title: 'How much of its rating a link may carry',
  intro: 'For good, in warmth, and in pulses that come again and again.',
  rows: shownShares,
  id: ({ id }) => id,
  columns: [
    { title: 'Case', of: (row) => row.case },
    { key: 'share', title: 'Share', each: '%', above: 0, to: 1 },
    { key: 'why', title: 'Of what, and why' },
  ],
})
