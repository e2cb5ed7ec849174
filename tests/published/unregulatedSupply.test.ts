import { describe, expect, it } from 'vitest'
import { ratedWindingV, transformerSizeVA } from '../../server/physics/adaptorTransformer.js'
import { doublerVoltageV } from '../../server/physics/doubler.js'
import { rectifiedCrest, windingVoltage } from '../../server/physics/offLoad.js'

const offLoad = (acV: number, regulation: number, mainsRatio: number) =>
  rectifiedCrest(windingVoltage(acV, regulation, 0, mainsRatio), 2, 0.7)

describe('unregulated supply off load, against worked examples', () => {
  it.each([
    { source: 'worked example: 12 V 10 VA, 15 %, 230 V on a 230 V primary, bridge', mains: 1, voltageV: 18.12 },
    { source: 'worked example: the same at 253 V', mains: 253 / 230, voltageV: 20.07 },
  ])('$source: $voltageV V', ({ mains, voltageV }) => {
    expect(offLoad(12, 0.15, mains)).toBeCloseTo(voltageV, 2)
  })

  it.each([
    {
      source: 'adaptor report of 2013: 9.09 V rated load, 11.36 V open: 25 %',
      ratedV: 9.09,
      regulation: 0.25,
      voltageV: 11.36,
    },
    {
      source: 'second adaptor report: 9.37 V rated load, 11.20 V open: 19.5 %',
      ratedV: 9.37,
      regulation: 0.195,
      voltageV: 11.2,
    },
  ])('$source', ({ ratedV, regulation, voltageV }) => {
    expect(windingVoltage(ratedV, regulation, 0, 1)).toBeCloseTo(voltageV, 1)
  })
})

describe('what is inside an adaptor, by the short rules of Petra Toroid', () => {
  it('V ac = 0.8 (V dc + 2): 11.2 V for 12 V dc, in the 10 V to 11 V and a little above that are usual', () => {
    expect(ratedWindingV(12)).toBeCloseTo(11.2, 9)
  })
  it('VA = 1.4 (W dc + 2 I): 19.6 VA for 12 V 1 A', () => {
    expect(transformerSizeVA(12, 1)).toBeCloseTo(19.6, 9)
  })
})

describe('voltage doubler on the wrong setting', () => {
  it('2 √2 × 230 V = 650.5 V (worked by hand)', () => {
    expect(doublerVoltageV(230)).toBeCloseTo(650.5, 1)
  })
})
