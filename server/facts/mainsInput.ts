import { look } from './fact.js'
import { group, number, numbers, windows } from './kinds.js'
import { leastTaken } from './leastTaken.js'

const onPlate = look('From the line about the input on the plate.')
const power = { min: leastTaken.power, max: 100_000 }

/** What the supply takes from the mains. */
export const mainsInput = group({
  voltages: windows({
    link: 'supply',
    address: 'in',
    column: 'input V',
    label: 'Input voltage',
    question: 'For which mains voltages is the supply made?',
    hint: 'As 230, 100-240 or 115/230.',
    findOut: [onPlate],
    printed: (plate) => plate.input?.voltages,
  }),
  frequenciesHz: numbers({
    unit: 'Hz',
    min: leastTaken.frequencyHz,
    max: 1000,
    link: 'supply',
    address: 'inhz',
    column: 'input Hz',
    label: 'Input frequency',
    question: 'For which mains frequencies is the supply made?',
    hint: 'As 50/60.',
    findOut: [onPlate],
    printed: (plate) => plate.input?.frequenciesHz,
  }),
  currentA: number({
    unit: 'A',
    min: leastTaken.currentA,
    max: 1000,
    link: 'supply',
    address: 'ina',
    column: 'input A',
    label: 'Input current',
    question: 'How much current does the supply take from the mains?',
    findOut: [onPlate],
    printed: (plate) => plate.input?.currentA,
  }),
  powerVA: number({
    ...power,
    unit: 'VA',
    link: 'supply',
    address: 'inva',
    column: 'input VA',
    label: 'Input apparent power',
    question: 'How many volt-amperes does the supply take?',
    findOut: [onPlate],
    printed: (plate) => plate.input?.powerVA,
  }),
  powerW: number({
    ...power,
    unit: 'W',
    link: 'supply',
    address: 'inw',
    column: 'input W',
    label: 'Input power',
    question: 'How many watts does the supply take?',
    findOut: [onPlate],
    printed: (plate) => plate.input?.powerW,
  }),
  selectorV: number({
    unit: 'V',
    min: leastTaken.voltageV,
    max: 1000,
    link: 'supply',
    address: 'selector',
    column: 'selector V',
    label: 'Voltage selector is set to',
    question: 'For which voltage is the voltage selector set now?',
    term: 'voltage-selector',
    findOut: [look('Unplugged, read the figure that shows in the window or stands under the slot of the switch.')],
  }),
})
