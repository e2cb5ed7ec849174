import type { Link } from './fact.js'
import { look } from './fact.js'
import { group, number, numbers, windows } from './kinds.js'
import { leastTaken } from './leastTaken.js'

const onPlate = look('From the line about the input on the plate.')
const power = { min: leastTaken.power, max: 100_000 }

/** What meets the mains: its link, how it is called within a sentence, how its labels and addresses begin. */
export interface OnMains {
  link: Link
  called: 'supply' | 'machine'
  /** what its addresses begin with */
  address: string
}

/** "Input voltage", or "Machine’s input voltage" where both may be asked for. */
export const labelFor = ({ called }: OnMains, label: string): string =>
  called === 'supply' ? label : `Machine’s ${label.charAt(0).toLowerCase()}${label.slice(1)}`

/** What a supply, or a machine with its supply inside, takes from the mains. */
export const mainsInputOf = (of: OnMains) =>
  group({
    voltages: windows({
      link: of.link,
      address: `${of.address}in`,
      column: 'input V',
      label: labelFor(of, 'Input voltage'),
      question: `For which mains voltages is the ${of.called} made?`,
      hint: 'As 230, 100-240 or 115/230.',
      findOut: [onPlate],
      printed: (plate) => plate.input?.voltages,
    }),
    frequenciesHz: numbers({
      unit: 'Hz',
      min: leastTaken.frequencyHz,
      max: 1000,
      link: of.link,
      address: `${of.address}inhz`,
      column: 'input Hz',
      label: labelFor(of, 'Input frequency'),
      question: `For which mains frequencies is the ${of.called} made?`,
      hint: 'As 50/60.',
      findOut: [onPlate],
      printed: (plate) => plate.input?.frequenciesHz,
    }),
    currentA: number({
      unit: 'A',
      min: leastTaken.currentA,
      max: 1000,
      link: of.link,
      address: `${of.address}ina`,
      column: 'input A',
      label: labelFor(of, 'Input current'),
      question: `How much current does the ${of.called} take from the mains?`,
      findOut: [onPlate],
      printed: (plate) => plate.input?.currentA,
    }),
    earthLeakA: number({
      unit: 'A',
      min: leastTaken.currentA,
      max: 10,
      link: of.link,
      address: `${of.address}inleak`,
      column: 'leakage A',
      label: labelFor(of, 'Leakage to earth'),
      question: `How much current does the ${of.called} let to earth?`,
      hint: 'As measured, such as 0.7 mA.',
      findOut: [
        look(
          'From a test of leakage or protective conductor current, by a qualified person; or 2π f C V of the capacitors from the line conductor to earth by their print, unplugged and discharged.',
        ),
      ],
    }),
    powerVA: number({
      ...power,
      unit: 'VA',
      link: of.link,
      address: `${of.address}inva`,
      column: 'input VA',
      label: labelFor(of, 'Input apparent power'),
      question: `How many volt-amperes does the ${of.called} take?`,
      findOut: [onPlate],
      printed: (plate) => plate.input?.powerVA,
    }),
    powerW: number({
      ...power,
      unit: 'W',
      link: of.link,
      address: `${of.address}inw`,
      column: 'input W',
      label: labelFor(of, 'Input power'),
      question: `How many watts does the ${of.called} take?`,
      findOut: [onPlate],
      printed: (plate) => plate.input?.powerW,
    }),
    selectorV: number({
      unit: 'V',
      min: leastTaken.voltageV,
      max: 1000,
      link: of.link,
      address: `${of.address}selector`,
      column: 'selector V',
      label: labelFor(of, 'Voltage selector is set to'),
      question: 'For which voltage is the voltage selector set now?',
      term: 'voltage-selector',
      findOut: [look('Unplugged, read the figure that shows in the window or stands under the slot of the switch.')],
    }),
  })
