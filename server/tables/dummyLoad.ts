import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import { table } from './table.js'

/** Shares of the rated current at which a supply is tried, rising. */
export const loadPoints = frozen({
  fractions: frozen([0.1, 0.5, 1]),
  source: commonPractice(
    'Load a supply lightly first, then at half, then in full',
    'a weak part shows at a tenth or a half without being destroyed',
  ),
})

export const powerMargin = frozen({
  factor: 2,
  source: commonPractice(
    'Fit at least twice the dissipated watts',
    'a wirewound body reaches 150 °C to 300 °C at its full rating',
  ),
})

/** Warming of power resistors: one-body estimate. */
export const resistorWarming = frozen({
  fullRiseK: 250,
  heatTimeS: 180,
  touchRiseK: 30,
  source: commonPractice(
    'Project estimate of how fast a power resistor warms',
    'about 0.9 g of body per rated watt, 0.8 J/(g K), 250 K rise at full rating: 180 s; hot to the touch 30 K above the room, about 55 °C; real parts reach it in half to twice the time shown',
  ),
})

export interface AcceptanceBand {
  readonly voltageV: number
  /** either side [1] */
  readonly tolerance: number
  /** ripple and noise, peak to peak [V]; null where none is published */
  readonly rippleV: number | null
  readonly source: Source
}

const designGuide = published(
  'Power supply design guide for personal computers, versions 0.9, 1.1 and 2.0 of an industry form factor',
  'd.c. output tolerances; ripple and noise in 20 MHz with 0.1 µF and 10 µF at the connector',
)

const band = (voltageV: number, tolerance: number, rippleV: number | null): AcceptanceBand =>
  frozen({ voltageV, tolerance, rippleV, source: designGuide })

/** Output tolerances of regulated rails where the machine states none. */
export const acceptanceBands: readonly AcceptanceBand[] = frozen([
  band(5, 0.05, 0.05),
  band(12, 0.05, 0.12),
  band(3.3, 0.05, 0.05),
  band(-5, 0.1, 0.1),
  band(-12, 0.1, 0.12),
])

/** Tolerance where no row fits [1]. */
export const otherTolerance = frozen({
  tolerance: 0.05,
  source: commonPractice(
    '5 % for a regulated output that states no tolerance',
    'the band of bipolar logic, 4.75 V to 5.25 V',
  ),
})

export const logicMaximum = fromMemory(
  'Data sheets of bipolar logic',
  'commercial range 4.75 V to 5.25 V, absolute maximum 7 V',
)

/** Rise of an unregulated output with nothing connected where its size is outside the table [1]. */
export const largestRise = frozen({
  rise: 1,
  source: published(
    'Transformer maker’s answers on off-load voltage',
    'very small types may reach twice the rated volts off load',
  ),
})

/** Band of an unregulated output around the expected value [1]. */
export const unregulatedBand = frozen({
  tolerance: 0.1,
  source: commonPractice(
    'Unregulated outputs have no fixed band',
    'loaded within 10 % of the plate, off load no more than 10 % above the worked-out value: the mains itself moves by that much',
  ),
})

export const outputBandsTable = table<AcceptanceBand>({
  name: 'output-bands',
  title: 'Output tolerance of regulated rails',
  intro: 'Used where the machine states none.',
  rows: acceptanceBands,
  id: ({ voltageV }) => [voltageV < 0 ? 'minus' : 'plus', Math.abs(voltageV), 'v'],
  columns: [
    { key: 'voltageV', title: 'Rail', each: 'V', from: -12, to: 12 },
    { key: 'tolerance', title: 'Either side', each: '%', above: 0, to: 0.1 },
    { key: 'rippleV', title: 'Ripple and noise, peak to peak', each: 'V', above: 0 },
  ],
})
