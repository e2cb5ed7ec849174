import { ratedWindingV, transformerSizeVA } from '../../server/physics/adaptorTransformer.js'
import { awgAreaMm2, awgDiameterMm } from '../../server/physics/conductor.js'
import { dischargeTime, storedEnergy, voltageAfter } from '../../server/physics/discharge.js'
import { atVoltage } from '../../server/physics/filament.js'
import { fluxRatio, voltageAtRatedFlux } from '../../server/physics/flux.js'
import { neededMeltingI2t, pulseI2t } from '../../server/physics/fuseI2t.js'
import { minimumRating } from '../../server/physics/fuseRating.js'
import { capacitorCurrent } from '../../server/physics/leakage.js'
import { rectifiedCrest, regulation, rippleBound, windingVoltage } from '../../server/physics/offLoad.js'
import { leakageLimit } from '../../server/physics/reforming.js'
import { operatingPoint } from '../../server/physics/seriesLamp.js'
import { inrushAnswer } from '../../server/plan/firstPower/inrush.js'
import { lampsOf } from '../../server/plan/firstPower/lamps.js'
import { measuredLamp } from '../support/measuredLamp.js'
import { arrangementRows } from './arrangementRows.js'

/** One outside figure against ours. */
export interface AccuracyRow {
  part: string
  what: string
  source: string
  unit: string
  theirs: number
  ours: number
  /** largest difference that is accepted, as a share of theirs [1] */
  accepted: number
  /** why it may differ more than by the printed digits */
  note: string
}

const one = (ratedV: number, ratedW: number) => lampsOf({ lamps: [{ ratedV, ratedW }], arrangement: 'series' })

/** Current of a lamp at a share of its voltage, as a share of its rated current [1]. */
function currentShare(ratedW: number, share: number): number {
  const [lamp] = one(120, ratedW).lamps
  if (!lamp) throw new Error('no lamp')
  const state = atVoltage(lamp, 120 * share)
  if (!state) throw new Error(`no state at ${share} of the rated voltage`)
  return state.currentA / (ratedW / 120)
}

const row = (
  part: string,
  what: string,
  source: string,
  unit: string,
  theirs: number,
  ours: number,
  accepted: number,
  note = '',
): AccuracyRow => ({ part, what, source, unit, theirs, ours, accepted, note })

const wireTable = 'wire resistance table of a cable-test maker, converted from mils and ohm per 100 ft'
const wires: [awg: number, diameterMm: number, areaMm2: number, ohmPerKm: number][] = [
  [12, 2.053, 3.309, 5.21],
  [14, 1.628, 2.081, 8.284],
  [16, 1.291, 1.309, 13.18],
  [18, 1.024, 0.823, 20.95],
  [20, 0.8118, 0.5176, 33.3],
  [22, 0.6438, 0.3255, 52.95],
  [24, 0.5105, 0.2047, 84.22],
  [26, 0.4049, 0.1288, 133.9],
  [28, 0.3211, 0.08097, 212.9],
  [30, 0.2546, 0.05092, 338.6],
]
/** resistivity of annealed copper at 20 °C, 100 % IACS [Ω mm²/m]: IEC 60028 */
const copper = 0.017241

const wireRows = (): AccuracyRow[] =>
  wires.flatMap(([awg, diameterMm, areaMm2, ohmPerKm]) => [
    row('Conductors', `diameter, ${awg} AWG`, wireTable, 'mm', diameterMm, awgDiameterMm(awg), 0.0005),
    row('Conductors', `area, ${awg} AWG`, wireTable, 'mm²', areaMm2, awgAreaMm2(awg), 0.001),
    row('Conductors', `resistance, ${awg} AWG`, wireTable, 'Ω/km', ohmPerKm, (copper * 1000) / awgAreaMm2(awg), 0.001),
  ])

const exponents =
  'IES Lighting Handbook (from memory): current ∝ V^0.541, supported by the SPIE Field Guide to Illumination (2007), p. 21'

const lampRows = (): AccuracyRow[] => [
  ...[0.4, 0.5, 0.7, 0.9, 1.05].flatMap((share) =>
    [60, 100].map((watts) =>
      row(
        'Filament',
        `current of a ${watts} W lamp at ${share * 100} % of its voltage, share of rated`,
        exponents,
        '',
        share ** 0.541,
        currentShare(watts, share),
        0.01,
      ),
    ),
  ),
  ...measuredLamp
    .filter(({ volts }) => volts >= 10)
    .map(({ volts, amps }) =>
      row(
        'Filament',
        `measured household lamp at ${volts} V, as a lamp of 25 W 120 V`,
        'college laboratory report of 2013, read to 0.01 A',
        'A',
        amps,
        currentShare(25, volts / 120) * (25 / 120),
        0.1,
        `rating not printed; one digit of the reading is ${Math.round(1 / amps)} %`,
      ),
    ),
  row(
    'Series lamp',
    'short behind 60 W 230 V',
    'arithmetic: rated current, 60 W / 230 V',
    'A',
    0.2609,
    operatingPoint(one(230, 60), 230, { kind: 'short' }).lamp.currentA,
    0.0005,
  ),
  row(
    'Series lamp',
    '20 Ω behind 60 W 230 V, volts on the lamp',
    'worked example on the power law',
    'V',
    224.8,
    operatingPoint(one(230, 60), 230, { kind: 'resistance', resistanceOhm: 20 }).lamp.voltageV,
    0.0005,
  ),
  row(
    'Series lamp',
    '120 V unit of 480 Ω behind 60 W 230 V',
    'worked example on the power law',
    'V',
    94.17,
    operatingPoint(one(230, 60), 230, { kind: 'resistance', resistanceOhm: 480 }).loadV,
    0.002,
    'the law and the heat balance part below half voltage',
  ),
  row(
    'Series lamp',
    '480 Ω behind 100 W 120 V',
    'independent heat balance: 96 to 97 % of the mains',
    'V',
    115.8,
    operatingPoint(one(120, 100), 120, { kind: 'resistance', resistanceOhm: 480 }).loadV,
    0.01,
    'the power law gives 109.1 V: wrong for a nearly dark lamp',
  ),
]

function inrushRows(): AccuracyRow[] {
  const at = (switchAt: 'crest' | 'zero') =>
    inrushAnswer({
      mains: { voltageV: 230, frequencyHz: 50 },
      seriesOhm: 5.5,
      bulkF: 220e-6,
      loadOhm: 1000,
      switchAt,
      durationS: 0.2,
    })
  const [crest, zero] = [at('crest'), at('zero')]
  const source = 'ngspice, transient 0.2 s, 2 µs steps: 230 V 50 Hz, 5.5 Ω, bridge, 220 µF, 1 kΩ'
  return [
    row('Inrush', 'peak, switched at the crest', source, 'A', 58.43, crest.peakA, 0.01),
    row('Inrush', 'I²t of the first 10 ms, at the crest', source, 'A²s', 1.927, crest.firstHalfCycleI2t, 0.02),
    row('Inrush', 'I²t of 0.2 s, at the crest', source, 'A²s', 2.057, crest.totalI2t, 0.02),
    row('Inrush', 'peak, switched at zero', source, 'A', 16.72, zero.peakA, 0.01),
    row('Inrush', 'I²t of the first 10 ms, at zero', source, 'A²s', 0.894, zero.firstHalfCycleI2t, 0.02),
    row('Inrush', 'mean voltage, steady', source, 'V', 309.2, crest.meanV, 0.01),
    row('Inrush', 'ripple, steady', source, 'V', 11.48, crest.rippleV, 0.02),
  ]
}

const chainRows = (): AccuracyRow[] => [
  row(
    'Chain',
    'flux of a 120 V 60 Hz transformer on 50 Hz',
    'published rule: × 1.20',
    '',
    1.2,
    fluxRatio(120, 50, 120, 60),
    1e-9,
  ),
  row(
    'Chain',
    'voltage at rated flux, 230 V 60 Hz on 50 Hz',
    'published: 191.7 V',
    'V',
    191.7,
    voltageAtRatedFlux(50, 230, 60),
    0.0005,
  ),
  row(
    'Chain',
    'regulation of a plug-in 9 V a.c. unit',
    'measurement report of 2013: 11.36 V open, 9.09 V loaded',
    '',
    0.25,
    regulation(11.36, 9.09),
    0.005,
  ),
]

const supplyRows = (): AccuracyRow[] => [
  row(
    'Off load',
    'adaptor of 9.37 V rated load, 19.5 %',
    'measured, second adaptor report',
    'V',
    11.2,
    windingVoltage(9.37, 0.195, 0, 1),
    0.0005,
  ),
  row(
    'Off load',
    'winding in an adaptor of 12 V d.c.',
    'transformer maker’s guide, by hand',
    'V',
    11.2,
    ratedWindingV(12),
    1e-9,
  ),
  row(
    'Off load',
    'size of the transformer in an adaptor of 12 V 1 A',
    'transformer maker’s guide, by hand',
    'VA',
    19.6,
    transformerSizeVA(12, 1),
    1e-9,
  ),
  row(
    'Off load',
    '12 V 10 VA, 15 %, bridge',
    'worked example',
    'V',
    18.12,
    rectifiedCrest(windingVoltage(12, 0.15, 0, 1), 2, 0.7),
    0.0005,
  ),
  row(
    'Off load',
    'the same at 253 V on 230 V',
    'worked example',
    'V',
    20.07,
    rectifiedCrest(windingVoltage(12, 0.15, 0, 253 / 230), 2, 0.7),
    0.0005,
  ),
  row(
    'Off load',
    'ripple of 1 A, 4700 µF, 50 Hz',
    'worked example: I / 2 f C',
    'V',
    2.128,
    rippleBound(1, 4700e-6, 50, 2),
    0.0005,
  ),
  row(
    'Off load',
    'ripple of 1 A, 4700 µF, 60 Hz',
    'worked example: I / 2 f C',
    'V',
    1.773,
    rippleBound(1, 4700e-6, 60, 2),
    0.0005,
  ),
]

const capacitorRows = (): AccuracyRow[] => [
  row(
    'Capacitors',
    '220 µF, 47 kΩ from 325.3 V to 60 V',
    'ngspice transient',
    's',
    17.48,
    dischargeTime(47e3, 220e-6, 325.27, 60),
    0.0005,
  ),
  row(
    'Capacitors',
    'the same to 42.4 V',
    'ngspice transient',
    's',
    21.07,
    dischargeTime(47e3, 220e-6, 325.27, 42.4),
    0.0005,
  ),
  row(
    'Capacitors',
    'the same to 34 V',
    'ngspice transient',
    's',
    23.35,
    dischargeTime(47e3, 220e-6, 325.27, 34),
    0.0005,
  ),
  row(
    'Capacitors',
    'energy of 2350 µF at 746.59 V',
    'maker’s page on inrush limiters: 655.00 J',
    'J',
    655,
    storedEnergy(2350e-6, 746.59),
    0.001,
  ),
  row(
    'Capacitors',
    '0.57 µF, 1 MΩ after 1 s from 373.4 V',
    'worked example',
    'V',
    64.59,
    voltageAfter(1e6, 0.57e-6, 373.35, 1),
    0.0005,
  ),
  row(
    'Capacitors',
    '2.2 nF at 230 V 50 Hz',
    'worked example',
    'µA',
    159,
    1e6 * capacitorCurrent(2.2e-9, 230, 50),
    0.0005,
  ),
  row(
    'Capacitors',
    '0.01 C V of 2200 µF 35 V',
    'capacitor maker’s answer on leakage against time',
    'µA',
    770,
    1e6 * leakageLimit(0.01, 2200e-6, 35),
    0.0005,
  ),
]

const fuseRows = (): AccuracyRow[] => [
  row(
    'Fuse-link',
    'I²t, half sine 4.8 A 7.7 µs',
    'thin-film fuse data sheet, example 1',
    'A²s',
    8.9e-5,
    pulseI2t('half-sine', 4.8, 7.7e-6),
    0.006,
    'printed to two digits',
  ),
  row(
    'Fuse-link',
    'I²t, triangle 1.5 A 3 ms',
    'the same, example 2',
    'A²s',
    2.25e-3,
    pulseI2t('triangle', 1.5, 3e-3),
    0.0005,
  ),
  row(
    'Fuse-link',
    'I²t, triangle 5.33 A 269 µs',
    'the same, example 5',
    'A²s',
    2.55e-3,
    pulseI2t('triangle', 5.33, 269e-6),
    0.002,
  ),
  row(
    'Fuse-link',
    'melting I²t for 60 A²s, 35 %',
    'chip fuse data sheet, p. 7',
    'A²s',
    171.4,
    neededMeltingI2t(60, 0.35),
    0.0005,
  ),
  row(
    'Fuse-link',
    'rating for 1.5 A at 0.70 × 0.95',
    'thin-film fuse data sheet, p. 10',
    'A',
    2.255,
    minimumRating(1.5, 0.7, 0.95),
    0.0005,
  ),
  row(
    'Fuse-link',
    'rating for 1 A, 17 % derating',
    'distributor’s guide of 2021',
    'A',
    1.205,
    minimumRating(1, 0.83),
    0.0005,
  ),
]

/** Every row of docs/accuracy.md, ours worked out now. */
export const accuracyRows = (): AccuracyRow[] => [
  ...wireRows(),
  ...chainRows(),
  ...lampRows(),
  ...inrushRows(),
  ...supplyRows(),
  ...capacitorRows(),
  ...fuseRows(),
  ...arrangementRows(),
]
