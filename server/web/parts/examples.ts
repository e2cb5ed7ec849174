import type { CheckRequest } from '../../chain/case/request.js'
import { checkAddress } from '../pages/check/checkAddress.js'

export interface Example {
  title: string
  text: string
  address: string
}

interface Case {
  title: string
  text: string
  check: CheckRequest
}

const cases: Case[] = [
  {
    title: 'A clean match',
    text: 'A small reel recorder and the wide-range supply that came with it.',
    check: {
      site: { country: 'DE', socket: 'F' },
      supply: {
        label:
          'SWITCHING POWER SUPPLY\nINPUT: 100-240V~ 50/60Hz 0.8A\nOUTPUT: 12V DC 2.0A 24W\nCLASS II\n⊖-(•-⊕ centre positive',
        technology: 'switch-mode',
        regulated: true,
        inlet: 'C8',
        plug: { outerMm: 5.5, innerMm: 2.1 },
        measured: { offLoadV: 12.1, polarity: 'centre-positive' },
      },
      device: {
        label: 'PORTABLE TAPE RECORDER\nPOWER IN 12V DC 1.2A\n⊖-(•-⊕ centre positive',
        regulatedNeeded: true,
        jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
      },
      cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false, plugFitted: 'moulded' },
    },
  },
  {
    title: 'A supply for the wrong voltage',
    text: 'A label printer sent with its 120\u00a0V wall supply, to be used on 230\u00a0V.',
    check: {
      site: { country: 'DE', socket: 'F' },
      supply: {
        label: 'AC ADAPTOR\nINPUT 120V AC 60Hz 18W\nOUTPUT 9V DC 1A\n⊕-(•-⊖ centre negative',
        technology: 'transformer',
        inlet: 'captive',
        plug: { outerMm: 5.5, innerMm: 2.1 },
      },
      device: {
        label: 'LABEL PRINTER\n9V DC 850mA\ncentre negative',
        jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative' },
      },
      cord: { plug: 'NEMA 1-15', connector: 'captive', ratedV: 125 },
    },
  },
  {
    title: 'An earth lost on the way',
    text: 'A terminal whose supply needs an earth, plugged in through a two-pin travel adapter.',
    check: {
      site: { country: 'DE', socket: 'F' },
      supply: {
        label: 'INPUT 100-240V ~ 50-60Hz 1.5A\nOUTPUT +12V DC 5A\nCLASS I',
        technology: 'switch-mode',
        regulated: true,
        protectionClass: 'I',
        inlet: 'C14',
        plug: { outerMm: 5.5, innerMm: 2.5, polarity: 'centre-positive' },
      },
      device: {
        label: 'DATA TERMINAL\nDC 12V 2.5A',
        jack: { outerMm: 5.5, innerMm: 2.5, polarity: 'centre-positive' },
      },
      cord: {
        plug: 'NEMA 5-15',
        connector: 'C13',
        ratedV: 250,
        ratedA: 10,
        earthed: true,
        plugFitted: 'moulded',
        adapter: { earthed: false },
      },
    },
  },
  {
    title: '60\u00a0Hz iron on 50\u00a0Hz',
    text: 'A heavy 120\u00a0V, 60\u00a0Hz supply for an open-reel deck, behind a step-down transformer on 230\u00a0V, 50\u00a0Hz.',
    check: {
      site: { country: 'DE', socket: 'F' },
      supply: {
        label: 'INPUT 120V 60Hz 30W\nOUTPUT 24V DC 0.8A\nCLASS II',
        technology: 'transformer',
        regulated: false,
        inlet: 'captive',
        plug: { outerMm: 5.5, innerMm: 2.5, polarity: 'centre-positive' },
      },
      device: {
        label: 'OPEN-REEL TAPE DECK\nDC 24V 0.6A',
        regulatedNeeded: false,
        jack: { outerMm: 5.5, innerMm: 2.5, polarity: 'centre-positive' },
      },
      cord: { plug: 'NEMA 1-15', connector: 'captive', ratedV: 125, ratedA: 7 },
      converter: { kind: 'autotransformer', outputV: 120, ratedVA: 100 },
    },
  },
  {
    title: 'A machine with its supply inside',
    text: 'A reel recorder from overseas with a mains motor, on 230\u00a0V, 50\u00a0Hz.',
    check: {
      arrangement: 'built-in',
      site: { country: 'DE', socket: 'F' },
      supply: {},
      device: {
        label: 'REEL TAPE RECORDER\n230V~ 60Hz 45W',
        mains: { technology: 'transformer', protectionClass: 'I', inlet: 'C14', motor: 'synchronous' },
      },
      cord: { plug: 'CEE 7/7', connector: 'C13', ratedV: 250, ratedA: 10, earthed: true, plugFitted: 'moulded' },
    },
  },
  {
    title: 'A block with the wall plug on it',
    text: 'A light block for a label printer, with the pins of the wall plug on its own body.',
    check: {
      arrangement: 'plug-in',
      site: { country: 'DE', socket: 'F' },
      supply: {
        label: 'INPUT 100-240V~ 50/60Hz 0.3A\nOUTPUT 9V DC 1.5A\nCLASS II\n⊕-(•-⊖ centre negative',
        technology: 'switch-mode',
        regulated: true,
        plug: { outerMm: 5.5, innerMm: 2.1 },
      },
      device: {
        label: 'LABEL PRINTER\n9V DC 850mA\ncentre negative',
        jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative' },
      },
      cord: { plug: 'CEE 7/16' },
    },
  },
  {
    title: 'A supply alone',
    text: 'A heavy brick from a box of spares, measured with nothing connected.',
    check: {
      arrangement: 'supply-only',
      site: { country: 'DE', socket: 'F' },
      supply: {
        label: 'INPUT 230V~ 50Hz 20VA\nOUTPUT 12V DC 1A\nCLASS II',
        technology: 'transformer',
        regulated: false,
        inlet: 'C8',
        plug: { outerMm: 5.5, innerMm: 2.1 },
        measured: { offLoadV: 16.8, polarity: 'centre-positive' },
      },
      device: {},
      cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false, plugFitted: 'moulded' },
    },
  },
  {
    title: 'A machine alone',
    text: 'A data terminal whose supply is lost: what to look for.',
    check: {
      arrangement: 'machine-only',
      site: { country: 'DE', socket: 'F' },
      supply: {},
      device: {
        label: 'DATA TERMINAL\nDC 12V 2.5A',
        regulatedNeeded: true,
        jack: { outerMm: 5.5, innerMm: 2.5, polarity: 'centre-positive' },
      },
    },
  },
]

/** One supply and one machine of the same archive, as the forms of the shelf send them. */
export const exampleRows: Readonly<Record<'supply' | 'device', Readonly<Record<string, string>>>> = {
  supply: {
    name: 'Grey brick, 12\u00a0V',
    place: 'Rack A',
    supply: 'INPUT: 100-240V~ 50/60Hz 0.8A\nOUTPUT: 12V DC 2.0A\nCLASS II\n⊖-(•-⊕ centre positive',
    type: 'switch-mode',
    inlet: 'C8',
    plugouter: '5.5',
    pluginner: '2.1',
  },
  device: {
    name: 'Portable tape recorder',
    place: 'Workbench',
    machine: 'POWER IN 12V DC 1.2A\n⊖-(•-⊕ centre positive',
    jackouter: '5.5',
    jackinner: '2.1',
  },
}

/** Worked cases of a sound archive, one for each arrangement and more, that was given machines from overseas; each opens with one click. */
export const examples: readonly Example[] = cases.map(({ title, text, check }) => ({
  title,
  text,
  address: checkAddress(check),
}))
