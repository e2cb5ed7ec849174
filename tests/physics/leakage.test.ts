import { describe, expect, it } from 'vitest'
import { capacitorCurrent, floatingCaseReading, largestCapacitor } from '../../server/physics/leakage.js'

describe('current of a mains capacitor to earth', () => {
  // printed table [µA]: 100 V 50 Hz, 100 V 60 Hz, 120 V 60 Hz, 230 V 50 Hz, 240 V 50 Hz, 264 V 60 Hz
  it.each([
    [1e-9, [31.4, 37.7, 45.2, 72.3, 75.4, 99.5]],
    [2.2e-9, [69.1, 82.9, 99.5, 159.0, 165.9, 219.0]],
    [3.3e-9, [103.7, 124.4, 149.3, 238.4, 248.8, 328.4]],
    [4.7e-9, [147.7, 177.2, 212.6, 339.6, 354.4, 467.8]],
    [10e-9, [314.2, 377.0, 452.4, 722.6, 754.0, 995.3]],
  ])('%f F on six mains', (c, printed) => {
    const mains = [
      [100, 50],
      [100, 60],
      [120, 60],
      [230, 50],
      [240, 50],
      [264, 60],
    ] as const
    const found = mains.map(([v, f]) => Number((capacitorCurrent(c, v, f) * 1e6).toFixed(1)))
    expect(found).toEqual(printed)
  })
  // printed list: 230 V 50 Hz and 120 V 60 Hz [nF]
  it.each([
    [0.25e-3, 3.46, 5.53],
    [0.5e-3, 6.92, 11.1],
    [0.75e-3, 10.4, 16.6],
    [3.5e-3, 48.4, 77.4],
  ])('largest capacitor for %f A', (limit, at230, at120) => {
    expect(Number((largestCapacitor(limit, 230, 50) * 1e9).toPrecision(3))).toBe(at230)
    expect(Number((largestCapacitor(limit, 120, 60) * 1e9).toPrecision(3))).toBe(at120)
  })
  it.each([0, Number.NaN, -1])('refuses %d', (bad) => {
    expect(() => capacitorCurrent(bad, 230, 50)).toThrow(RangeError)
    expect(() => largestCapacitor(1e-3, bad, 50)).toThrow(RangeError)
  })
})

describe('what a meter shows on a case without earth', () => {
  // worked out beforehand for meters of 10 MΩ, 1 MΩ, 100 kΩ, 10 kΩ and 3 kΩ
  it.each([
    [1e-9, 230, 50, [114, 61.2, 7.21, 0.723, 0.217]],
    [2.2e-9, 230, 50, [115, 93.2, 15.7, 1.59, 0.477]],
    [4.7e-9, 230, 50, [115, 109, 32.6, 3.39, 1.02]],
    [0.1e-6, 230, 50, [115, 115, 114, 61.2, 21.3]],
    [1e-9, 120, 60, [59.5, 36.1, 4.51, 0.452, 0.136]],
    [4.7e-9, 120, 60, [60, 57.7, 20, 2.12, 0.638]],
    [0.1e-6, 120, 60, [60, 60, 59.5, 36.1, 13.2]],
  ])('two of %s F at %s V %s Hz', (capacitanceF, voltageV, frequencyHz, volts) => {
    const read = [10e6, 1e6, 100e3, 10e3, 3e3].map((meterOhm) =>
      Number(floatingCaseReading(capacitanceF, voltageV, frequencyHz, meterOhm).toPrecision(3)),
    )
    expect(read).toEqual(volts)
  })

  it.each([0, -1, Number.NaN])('refuses %s', (bad) => {
    expect(() => floatingCaseReading(bad, 230, 50, 1e6)).toThrow(RangeError)
    expect(() => floatingCaseReading(1e-9, bad, 50, 1e6)).toThrow(RangeError)
    expect(() => floatingCaseReading(1e-9, 230, bad, 1e6)).toThrow(RangeError)
    expect(() => floatingCaseReading(1e-9, 230, 50, bad)).toThrow(RangeError)
  })
})
