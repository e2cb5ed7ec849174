import type { CheckRequest } from '../../server/chain/case/request.js'

/** A supply and a machine between which nothing is in conflict. */
export const matching: CheckRequest = {
  site: { country: 'DE', socket: 'F' },
  supply: {
    label: 'SWITCHING POWER SUPPLY\nINPUT: 100-240V~ 50/60Hz 0.8A\nOUTPUT: 12V ⎓ 2.0A 24W\nclass II',
    technology: 'switch-mode',
    regulated: true,
    inlet: 'C8',
    plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  device: {
    inputs: [{ kind: 'dc', voltageV: 12, currentA: 1.2 }],
    regulatedNeeded: true,
    jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false, plugFitted: 'moulded' },
}

/** The same with the polarity of the machine the other way round. */
export const reversed: CheckRequest = {
  ...matching,
  device: { ...matching.device, jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative' } },
}

/** The same with nothing known of the machine's polarity. */
export const open: CheckRequest = { ...matching, device: { ...matching.device, jack: { outerMm: 5.5, innerMm: 2.1 } } }
