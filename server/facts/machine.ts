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
        'A manual or the maker’s own supply says it. “No” means made for unregulated supplies, which stand a third above their plate at light load; what has its own regulator is the next question. If no paper says, leave it as not known.',
      ),
    ],
  }),
  regulatesInside: yesNo({
    link: 'machine',
    address: 'reginside',
    column: 'regulates',
    label: 'Regulates inside',
    question: 'Does the machine regulate its supply voltage inside?',
    findOut: [
      look(
        'In its circuit diagram, or opened and unplugged: behind the power socket stands a regulator, a three-legged part on a heat sink or a converter with a coil, and all else is fed from it.',
      ),
    ],
  }),
  jack,
})
