import { describe, expect, it } from 'vitest'
import { prepareSite } from '../../server/chain/case/prepareSite.js'
import { prepareSupply } from '../../server/chain/case/prepareSupply.js'
import type { Supply } from '../../server/chain/case/request.js'
import { readPlate } from '../../server/plate/readPlate.js'
import { chooseConverter } from '../support/told.js'

const choose = (supply: Supply, site = { country: 'DE' }) =>
  chooseConverter(prepareSite(site), prepareSupply(supply, readPlate))

describe('size of a converter', () => {
  // worked by hand from sellers' advice: 1.25 times the need, the next usual size up
  it.each<{ name: string; supply: Supply; inputVA: number; neededVA: number; standardVA: number | null }>([
    {
      name: '120 V 0.5 A',
      supply: { input: { voltages: [{ min: 120, max: 120 }], currentA: 0.5 } },
      inputVA: 60,
      neededVA: 75,
      standardVA: 75,
    },
    {
      name: '120 V 0.51 A',
      supply: { input: { voltages: [{ min: 120, max: 120 }], currentA: 0.51 } },
      inputVA: 61.2,
      neededVA: 76.5,
      standardVA: 100,
    },
    {
      name: '100–240 V 1.5 A at its lowest voltage',
      supply: { input: { voltages: [{ min: 100, max: 240 }], currentA: 1.5 } },
      inputVA: 150,
      neededVA: 187.5,
      standardVA: 200,
    },
    {
      name: '12 VA printed',
      supply: { input: { voltages: [{ min: 120, max: 120 }], powerVA: 12 } },
      inputVA: 12,
      neededVA: 15,
      standardVA: 50,
    },
    {
      name: '48 W, transformer: / 0.8',
      supply: { technology: 'transformer', input: { voltages: [{ min: 120, max: 120 }], powerW: 48 } },
      inputVA: 60,
      neededVA: 75,
      standardVA: 75,
    },
    {
      name: '48 W, switch-mode: / 0.6',
      supply: { technology: 'switch-mode', input: { voltages: [{ min: 120, max: 120 }], powerW: 48 } },
      inputVA: 80,
      neededVA: 100,
      standardVA: 100,
    },
    {
      name: '12 V 3 A out, transformer: 36 / 0.75 / 0.8',
      supply: { technology: 'transformer', outputs: [{ kind: 'dc', voltageV: 12, currentA: 3 }] },
      inputVA: 60,
      neededVA: 75,
      standardVA: 75,
    },
    {
      name: 'beyond the usual sizes',
      supply: { input: { voltages: [{ min: 120, max: 120 }], currentA: 15 } },
      inputVA: 1800,
      neededVA: 2250,
      standardVA: null,
    },
  ])('$name: $inputVA VA, $neededVA VA with reserve', ({ supply, inputVA, neededVA, standardVA }) => {
    const choice = choose(supply)
    expect(choice.inputVA).toBeCloseTo(inputVA, 6)
    expect(choice.neededVA).toBeCloseTo(neededVA, 6)
    expect(choice.standardVA).toBe(standardVA)
  })

  it('is null where the plate does not say what it takes', () => {
    const choice = choose({ input: { voltages: [{ min: 120, max: 120 }] } })
    expect([choice.inputVA, choice.neededVA, choice.standardVA]).toEqual([null, null, null])
  })
})

describe('output, flux and kinds of a converter', () => {
  it('asks for the plate’s voltage; of a range a usual output in its middle', () => {
    expect(choose({ input: { voltages: [{ min: 120, max: 120 }] } }).outputV).toBe(120)
    expect(choose({ input: { voltages: [{ min: 100, max: 120 }] } }).outputV).toBe(110)
    expect(choose({}).outputV).toBeNull()
  })

  it('finds a 60 Hz transformer at 1.2 times its flux on 50 Hz, so that no converter suits it', () => {
    const choice = choose({
      technology: 'transformer',
      input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60], currentA: 0.3 },
    })
    expect(choice.fluxRatio).toBeCloseTo(1.2, 9)
    expect(choice.needed).toBe(true)
    expect(choice.kinds.map(({ kind, suits }) => [kind, suits])).toEqual([
      ['autotransformer', false],
      ['isolating', false],
      ['electronic', false],
    ])
  })

  it('lets a transformer kind feed a switch-mode supply, and never an electronic one', () => {
    const choice = choose({
      technology: 'switch-mode',
      input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60], currentA: 0.3 },
    })
    expect(choice.kinds.map(({ suits }) => suits)).toEqual([true, true, false])
  })

  it('does not know of an unknown kind of supply at more than its flux', () => {
    const choice = choose({ input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60], currentA: 0.3 } })
    expect(choice.kinds.map(({ suits }) => suits)).toEqual([null, null, false])
  })

  it('says that none is needed on the plate’s own mains', () => {
    expect(choose({ input: { voltages: [{ min: 230, max: 230 }] } }).needed).toBe(false)
    expect(choose({ input: { voltages: [{ min: 127, max: 127 }] } }, { country: 'BR' }).needed).toBeNull()
  })
})
