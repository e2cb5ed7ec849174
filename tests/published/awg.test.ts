import { describe, expect, it } from 'vitest'
import { awgRows } from '../../server/tables/awg.js'

const footM = 0.3048
const inchMm = 25.4
/** area of a circle of one mil diameter [mm²] */
const circularMilMm2 = (Math.PI / 4) * 0.0254 ** 2

/** Half of the last digit a number is printed with: "1.588" is printed to 0.001. */
const halfLastDigit = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0)

/**
 * Wire table of Floyd, Electric Circuit Fundamentals, 2nd edition, as given by HyperPhysics, Georgia State University
 * (hbase/Tables/wirega): diameter in inches, area in circular mils, ohms per 1000 ft at 20 °C.
 */
const printed = [
  { awg: 10, inches: '0.10189', circularMils: '10381', ohms: '0.9989' },
  { awg: 11, inches: '0.09074', circularMils: '8234', ohms: '1.26' },
  { awg: 12, inches: '0.0808', circularMils: '6529', ohms: '1.588' },
  { awg: 13, inches: '0.07196', circularMils: '5178.4', ohms: '2.003' },
  { awg: 14, inches: '0.06408', circularMils: '4106.8', ohms: '2.525' },
  { awg: 15, inches: '0.05707', circularMils: '3256.7', ohms: '3.184' },
  { awg: 16, inches: '0.05082', circularMils: '2582.9', ohms: '4.016' },
  { awg: 17, inches: '0.04526', circularMils: '2048.2', ohms: '5.064' },
  { awg: 18, inches: '0.0403', circularMils: '1624.3', ohms: '6.385' },
  { awg: 19, inches: '0.03589', circularMils: '1288.1', ohms: '8.051' },
  { awg: 20, inches: '0.03196', circularMils: '1021.5', ohms: '10.15' },
  { awg: 21, inches: '0.02846', circularMils: '810.1', ohms: '12.8' },
  { awg: 22, inches: '0.02535', circularMils: '642.4', ohms: '16.14' },
  { awg: 23, inches: '0.02257', circularMils: '509.45', ohms: '20.36' },
  { awg: 24, inches: '0.0201', circularMils: '404.01', ohms: '25.67' },
  { awg: 25, inches: '0.0179', circularMils: '320.4', ohms: '32.37' },
  { awg: 26, inches: '0.01594', circularMils: '254.1', ohms: '40.81' },
  { awg: 27, inches: '0.0142', circularMils: '201.5', ohms: '51.47' },
  { awg: 28, inches: '0.01264', circularMils: '159.79', ohms: '64.9' },
  { awg: 29, inches: '0.01126', circularMils: '126.72', ohms: '81.83' },
  { awg: 30, inches: '0.01002', circularMils: '100.5', ohms: '103.2' },
]

/** Our own figures carry four digits: half of the fourth. */
const fourthDigit = (value: number): number => 0.5 * 10 ** (Math.floor(Math.log10(value)) - 3)

const rowOf = (awg: number) => awgRows.find((row) => row.awg === awg)

describe('American wire gauge against a printed table', () => {
  it('lists exactly the printed gauges', () => {
    expect(awgRows.map((row) => row.awg)).toEqual(printed.map((row) => row.awg))
  })

  it.each(printed)('$awg AWG has the printed diameter', ({ awg, inches }) => {
    const ours = rowOf(awg)?.diameterMm ?? Number.NaN
    const theirs = Number(inches) * inchMm
    expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(halfLastDigit(inches) * inchMm + fourthDigit(ours))
  })

  it.each(printed)('$awg AWG has the printed area within one part in a thousand', ({ awg, circularMils }) => {
    const ours = rowOf(awg)?.areaMm2 ?? Number.NaN
    expect(ours / (Number(circularMils) * circularMilMm2)).toBeCloseTo(1, 2.7)
  })

  it.each(printed)('$awg AWG has the printed resistance', ({ awg, ohms }) => {
    const ours = rowOf(awg)?.ohmPerKm ?? Number.NaN
    const theirs = Number(ohms) / footM
    expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(halfLastDigit(ohms) / footM + fourthDigit(ours))
  })
})

/** Definition of the gauge, ASTM B258 (from memory): 36 AWG is 0.005 in, 0000 is 0.46 in, 39 equal steps between. */
describe('American wire gauge against its definition', () => {
  it.each(awgRows)('$awg AWG is 0.127 mm × 92^((36 − n)/39)', ({ awg, diameterMm }) => {
    const defined = 0.127 * 92 ** ((36 - awg) / 39)
    expect(Math.abs(diameterMm - defined)).toBeLessThanOrEqual(2 * fourthDigit(defined))
  })

  it.each(awgRows)(
    '$awg AWG has the resistance of copper of 1/58 Ω·mm²/m (IEC 60028) on its area',
    ({ areaMm2, ohmPerKm }) => {
      expect((ohmPerKm * areaMm2 * 58) / 1000).toBeCloseTo(1, 2.3)
    },
  )
})
