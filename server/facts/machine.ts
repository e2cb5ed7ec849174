import { look } from './fact.js'
import { plate, thing, yesNo } from './kinds.js'
import { inputs } from './outputs.js'
import { jack } from './plug.js'

/** The machine: what its plate says, and what was entered by hand, which comes before. */
export const machine = thing('Device', {
  label: plate({
    link: 'machine',
    address: 'machine',
    column: 'plate',
    label: 'Words on the machine’s plate',
    question: 'What is printed on the machine beside its power socket?',
    hint: 'The plate, or the print beside its power socket.',
    findOut: [look('Read the plate on the back or underneath, with nothing plugged in.')],
  }),
  inputs,
  regulatedNeeded: yesNo({
    link: 'machine',
    address: 'needreg',
    column: 'regulated',
    label: 'Needs a regulated supply',
    question: 'Does the machine need a regulated supply?',
    ahead: true,
    findOut: [
      look(
        'A machine with motors and lamps alone often does without; one with digital circuits fed straight from the jack does not. If no paper says, leave it as not known.',
      ),
    ],
  }),
  jack,
})
