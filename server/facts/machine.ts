import { battery } from './battery.js'
import { look } from './fact.js'
import { choice, group, plate, thing, yesNo } from './kinds.js'
import { mainsInputOf, type OnMains } from './mainsInput.js'
import { fuseOf, inletOf, protectionClassFact, technologyOf } from './onMains.js'
import { inputs } from './outputs.js'
import { machinePins } from './pins.js'
import { jack } from './plug.js'
import { chassis } from './poles.js'

const onMains: OnMains = { link: 'machine', called: 'machine', address: 'own' }

/** The mains side of a machine with its supply inside. */
const mains = group({
  input: mainsInputOf(onMains),
  technology: technologyOf(onMains),
  protectionClass: protectionClassFact(onMains),
  inlet: inletOf(onMains),
  fuse: fuseOf(onMains),
  motor: choice({
    choices: [
      { value: 'synchronous', label: 'Synchronous: turns exactly with the mains', says: 'a synchronous motor' },
      { value: 'induction', label: 'Induction: shaded pole or with a capacitor', says: 'an induction motor' },
      { value: 'universal', label: 'Universal: with carbon brushes', says: 'a universal motor' },
      { value: 'dc', label: 'On low direct current, from inside', says: 'a DC motor' },
      { value: 'none', label: 'No motor', says: 'no motor' },
    ],
    link: 'machine',
    address: 'ownmotor',
    column: 'motor',
    label: 'Motor in the machine',
    question: 'What kind of motor turns in the machine?',
    findOut: [
      look(
        'Opened and unplugged. Copper rings on a laminated core: shaded pole; a capacitor in its leads: induction or synchronous; brushes: universal; two thin leads to a board: DC.',
      ),
    ],
  }),
  pictureTube: yesNo({
    link: 'machine',
    address: 'owntube',
    column: 'picture tube',
    label: 'Picture tube in the machine',
    question: 'Is there a picture tube in the machine?',
    findOut: [look('A deep case behind a curved glass screen; leave it closed.')],
  }),
})

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
  mains,
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
  pins: machinePins,
  battery,
  chassis,
})
