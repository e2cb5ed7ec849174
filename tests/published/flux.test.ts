import { describe, expect, it } from 'vitest'
import { fluxRatio, voltageAtRatedFlux } from '../../server/physics/flux.js'

describe('flux in a transformer, against published figures', () => {
  it.each([
    {
      source: 'electricalengineering.xyz: 60 Hz type on 50 Hz, same voltage, flux × 1.20',
      at: [120, 50],
      rated: [120, 60],
      ratio: 1.2,
    },
    { source: 'worked by hand: 120 V 60 Hz transformer on 100 V 50 Hz', at: [100, 50], rated: [120, 60], ratio: 1 },
    {
      source: 'physicsforums 954052: 50 Hz type on 60 Hz, flux × 0.833',
      at: [230, 60],
      rated: [230, 50],
      ratio: 0.833,
    },
    {
      source: 'worked by hand: 100 V 50/60 Hz unit on 120 V 60 Hz has the flux of 100 V 50 Hz',
      at: [120, 60],
      rated: [100, 50],
      ratio: 1,
    },
  ])('$source', ({ at: [v = 0, f = 0], rated: [vn = 0, fn = 0], ratio }) => {
    expect(fluxRatio(v, f, vn, fn)).toBeCloseTo(ratio, 3)
  })

  it.each([
    { source: 'electricalengineering.xyz: 120 V 60 Hz at 50 Hz', rated: [120, 60], at: 50, voltageV: 100, digits: 1 },
    { source: 'electricalengineering.xyz: 115 V 60 Hz at 50 Hz', rated: [115, 60], at: 50, voltageV: 95.8, digits: 1 },
    { source: 'electricalengineering.xyz: 230 V 60 Hz at 50 Hz', rated: [230, 60], at: 50, voltageV: 191.7, digits: 1 },
  ])('$source: $voltageV V', ({ rated: [vn = 0, fn = 0], at, voltageV, digits }) => {
    expect(voltageAtRatedFlux(at, vn, fn)).toBeCloseTo(voltageV, digits)
  })
})
