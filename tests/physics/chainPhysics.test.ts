import { describe, expect, it } from 'vitest'
import { ratedWindingV, transformerSizeVA } from '../../server/physics/adaptorTransformer.js'
import { apparentFromActiveVA, apparentPowerVA, inputFromOutputW } from '../../server/physics/apparentPower.js'
import { awgAreaMm2, awgDiameterMm, dropV, loopResistanceOhm } from '../../server/physics/conductor.js'
import { doublerVoltageV } from '../../server/physics/doubler.js'
import { fluxRatio, voltageAtRatedFlux } from '../../server/physics/flux.js'
import { atMost } from '../../server/physics/tolerance.js'

describe('the physics of the chain refuses what is out of range, NaN included', () => {
  const bad = [0, -1, Number.NaN]
  it.each<{ name: string; call: (value: number) => number; values: number[] }>([
    { name: 'fluxRatio, voltage', call: (x) => fluxRatio(x, 50, 120, 60), values: bad },
    { name: 'fluxRatio, frequency', call: (x) => fluxRatio(120, x, 120, 60), values: bad },
    {
      name: 'fluxRatio, rated frequency',
      call: (x) => fluxRatio(120, 50, 120, x),
      values: [...bad, Number.POSITIVE_INFINITY],
    },
    { name: 'voltageAtRatedFlux', call: (x) => voltageAtRatedFlux(50, x, 60), values: bad },
    { name: 'apparentPowerVA', call: (x) => apparentPowerVA(x, 1), values: bad },
    { name: 'apparentFromActiveVA, power factor', call: (x) => apparentFromActiveVA(10, x), values: [...bad, 1.01] },
    { name: 'inputFromOutputW, efficiency', call: (x) => inputFromOutputW(10, x), values: [...bad, 1.01] },
    { name: 'awgDiameterMm', call: awgDiameterMm, values: [-4, 41, Number.NaN] },
    {
      name: 'loopResistanceOhm, length',
      call: (x) => loopResistanceOhm(x, 1, 0.017241),
      values: [-1, Number.NaN, Number.POSITIVE_INFINITY],
    },
    { name: 'loopResistanceOhm, area', call: (x) => loopResistanceOhm(1, x, 0.017241), values: bad },
    { name: 'dropV', call: (x) => dropV(x, 1), values: [-1, Number.NaN] },
    { name: 'doublerVoltageV', call: doublerVoltageV, values: bad },
    { name: 'ratedWindingV', call: ratedWindingV, values: bad },
    { name: 'transformerSizeVA', call: (x) => transformerSizeVA(12, x), values: bad },
  ])('$name', ({ call, values }) => {
    for (const value of values) expect(() => call(value), String(value)).toThrow(RangeError)
  })

  it('takes the ends of each range', () => {
    // definition of the gauge: 0000 is 0.46 in = 11.684 mm, 36 is 0.005 in = 0.127 mm
    expect(awgDiameterMm(-3)).toBeCloseTo(11.684, 3)
    expect(awgDiameterMm(36)).toBeCloseTo(0.127, 9)
    expect(awgAreaMm2(40)).toBeGreaterThan(0)
    expect(loopResistanceOhm(0, 1, 0.017241)).toBe(0)
    expect(dropV(0, 1)).toBe(0)
    expect(apparentFromActiveVA(10, 1)).toBe(10)
  })
})

describe('a limit', () => {
  it('is reached, not passed, by what binary fractions make of it', () => {
    expect(atMost(12 * 1.05, 12.6)).toBe(true)
    expect(atMost(12.6001, 12.6)).toBe(false)
    expect(atMost(Number.NaN, 12.6)).toBe(false)
    expect(atMost(-0.1, -0.1)).toBe(true)
  })
})
