import { look } from './fact.js'
import { choice } from './kinds.js'

/** What battery is in the machine. */
export const battery = choice({
  choices: [
    { value: 'none', label: 'None', says: 'no battery' },
    { value: 'primary', label: 'Cells that are not recharged', says: 'primary cells' },
    { value: 'nicd', label: 'Nickel-cadmium', says: 'a nickel-cadmium battery' },
    { value: 'nimh', label: 'Nickel-metal hydride', says: 'a nickel-metal hydride battery' },
    { value: 'lead', label: 'Lead-acid', says: 'a lead-acid battery' },
    { value: 'lithium', label: 'Lithium', says: 'a lithium battery' },
    { value: 'unknown', label: 'One whose kind is not known', says: 'a battery of a kind that is not known' },
  ],
  link: 'machine',
  address: 'battery',
  column: 'battery',
  label: 'Battery in the machine',
  question: 'Which battery is in the machine?',
  findOut: [look('Unplugged: in its compartment, and soldered to the board beside the clock; the print on the cell.')],
})
