import type { CheckRequest, Converter, Cord, Device, Site, Supply } from './case/request.js'

/** What an example changes of the whole case; a part is laid over it field by field, one level deep. */
export interface ExampleChanges {
  site?: Site
  supply?: Supply
  device?: Device
  cord?: Cord
  converter?: Converter
}

/** A recorder and the supply that came with it, where nothing is in conflict. */
const whole: CheckRequest = {
  site: { country: 'DE', socket: 'F' },
  supply: {
    input: { voltages: [{ min: 230, max: 230 }], frequenciesHz: [50], currentA: 0.2 },
    technology: 'switch-mode',
    regulated: true,
    protectionClass: 'II',
    inlet: 'C8',
    outputs: [{ kind: 'dc', voltageV: 12, currentA: 2 }],
    plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  device: {
    inputs: [{ kind: 'dc', voltageV: 12, currentA: 1, currentIs: 'plate' }],
    regulatedNeeded: true,
    jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false, plugFitted: 'moulded' },
}

/** The whole case with an example's changes, as a check of its own. */
export const exampleCheck = ({ site, supply, device, cord, converter }: ExampleChanges): CheckRequest =>
  structuredClone({
    site: { ...whole.site, ...site },
    supply: { ...whole.supply, ...supply },
    device: { ...whole.device, ...device },
    cord: { ...whole.cord, ...cord },
    ...(converter && { converter }),
  })

// ---- what several examples share -----------------------------------------------------------------------------------

export const plateOf = (minV: number, maxV = minV, frequenciesHz = [50], currentA = 0.2): Supply => ({
  input: { voltages: [{ min: minV, max: maxV }], frequenciesHz, currentA },
})

/** A transformer supply from a 120 V country. */
export const american: Supply = { ...plateOf(120, 120, [60]), technology: 'transformer' }

export const converterOf = (ratedVA: number, outputV = 120): Converter => ({
  kind: 'autotransformer',
  outputV,
  ratedVA,
})

export const classOne: Supply = { protectionClass: 'I', inlet: 'C14' }

export const earthedCord: Cord = { plug: 'CEE 7/7', connector: 'C13', ratedA: 10, earthed: true }

export const wanting = (change: Partial<NonNullable<Device['inputs']>[number]>): Device => ({
  inputs: [{ kind: 'dc', voltageV: 12, currentA: 1, currentIs: 'plate', ...change }],
})
