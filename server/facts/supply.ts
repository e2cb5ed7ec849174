import { inletPairs } from '../tables/inletPairs.js'
import { look, measure } from './fact.js'
import { isolated, protectionClassBy } from './insulation.js'
import { choice, group, number, plate, required, signedVolts, text, thing, yesNo } from './kinds.js'
import { leastTaken } from './leastTaken.js'
import { mainsInput } from './mainsInput.js'
import { outputs } from './outputs.js'
import { plug, polarities } from './plug.js'
import { captive, namesOnce } from './usualNames.js'

/** The lead from the supply to the machine. */
const lead = group({
  lengthM: required(
    number({
      unit: 'm',
      min: leastTaken.lengthM,
      max: 100,
      link: 'lead',
      address: 'leadm',
      column: 'lead m',
      label: 'Lead length',
      question: 'How long is the lead to the machine?',
      findOut: [look('With a tape, from the block to the plug.')],
    }),
  ),
  areaMm2: number({
    unit: 'mm²',
    min: leastTaken.areaMm2,
    max: 100,
    link: 'lead',
    address: 'leadmm2',
    column: 'lead mm2',
    label: 'Lead conductor area',
    question: 'How thick are the conductors of the lead?',
    findOut: [look('From the print on the lead.')],
  }),
  awg: number({
    unit: 'AWG',
    min: -3,
    max: 40,
    typed: { min: 0, whole: true },
    link: 'lead',
    address: 'leadawg',
    column: 'lead AWG',
    label: 'Lead conductor gauge',
    question: 'Which gauge are the conductors of the lead?',
    findOut: [look('From the print on the lead, behind AWG.')],
  }),
})

const withMeter = (how: string) =>
  measure(`${how} Only once nothing here says stop on the mains side, and with the meter set to volts first.`, 'mains')

/** What was measured on the supply already. */
const measured = group({
  offLoadV: signedVolts({
    link: 'supply',
    address: 'offload',
    column: 'off-load V',
    label: 'Measured with nothing connected',
    question: 'What does the output give with nothing connected?',
    findOut: [withMeter('The meter across the two contacts of the plug, nothing else connected.')],
  }),
  loadedV: signedVolts({
    link: 'supply',
    address: 'loaded',
    column: 'loaded V',
    label: 'Measured under load',
    question: 'What does the output give with its load connected?',
    findOut: [withMeter('The meter across the output while a resistor takes the machine’s current.')],
  }),
  polarity: choice({
    choices: polarities,
    link: 'plug',
    address: 'measuredpol',
    column: 'measured polarity',
    label: 'Measured polarity',
    question: 'Which sign did the meter show on the centre?',
    findOut: [withMeter('Black lead on the sleeve, red lead in the bore: a minus sign means centre negative.')],
  }),
})

/** The supply: what its plate says, and what was entered by hand, which comes before. */
export const supply = thing('Supply', {
  label: plate({
    link: 'supply',
    address: 'supply',
    column: 'plate',
    label: 'Words on the supply’s plate',
    question: 'What is printed on the supply?',
    hint: 'Everything printed on it, as it stands.',
    findOut: [look('Read the plate on the block, often underneath, with nothing plugged in.')],
  }),
  input: mainsInput,
  technology: choice({
    choices: [
      { value: 'switch-mode', label: 'Switch-mode (light for its power)' },
      { value: 'transformer', label: 'Transformer (heavy for its power)' },
    ],
    also: ['unknown'],
    link: 'supply',
    address: 'type',
    column: 'technology',
    label: 'Kind of supply',
    question: 'Is it a switch-mode supply, or one with a transformer on the mains?',
    term: 'switch-mode',
    ahead: true,
    findOut: [
      look(
        'A switch-mode block is light for its power, and its plate often gives a wide range such as 100-240 V. A transformer is heavy for its power, and may hum.',
      ),
    ],
    printed: (plate) => plate.technology,
  }),
  regulated: yesNo({
    choices: [
      { value: true, word: 'yes', label: 'Yes', says: 'regulated' },
      { value: false, word: 'no', label: 'No', says: 'unregulated' },
    ],
    link: 'supply',
    address: 'regulated',
    column: 'regulated',
    label: 'Output is regulated',
    question: 'Does the supply hold its output voltage whatever is drawn?',
    term: 'regulated',
    ahead: true,
    findOut: [
      look('From the word on the plate or in the manual.'),
      withMeter('Its voltage with nothing connected stands well above its plate where it is not.'),
    ],
    printed: (plate) => plate.regulated,
  }),
  protectionClass: choice({
    choices: [
      { value: 'I', label: 'Class I: relies on an earth', says: 'class I', drawing: 'class-i' },
      { value: 'II', label: 'Class II: square in a square', says: 'class II', drawing: 'class-ii' },
      { value: 'III', label: 'Class III: extra-low voltage only', says: 'class III', drawing: 'class-iii' },
    ],
    link: 'supply',
    address: 'class',
    column: 'class',
    label: 'Protection class',
    question: 'Which class of protection is printed on the supply?',
    term: 'protection-class',
    findOut: [look('From the symbol on the plate: a square in a square is class II, III in a diamond is class III.')],
    printed: (plate) => plate.protectionClass,
  }),
  inlet: text({
    choices: [
      captive,
      ...namesOnce(
        'inlet',
        inletPairs.map(({ inlet, nicknames }) => ({ name: inlet, nicknames })),
      ),
    ],
    link: 'inlet',
    address: 'inlet',
    column: 'inlet',
    label: 'Mains inlet',
    question: 'Which socket on the supply does its mains cord go into?',
    term: 'inlet',
    ahead: true,
    findOut: [
      look(
        'The socket on the supply that its cord goes into. C8 has the outline of a figure eight, C6 of a clover leaf; C14 has three flat pins and two cut corners.',
      ),
    ],
  }),
  protectionClassBy,
  isolated,
  outputs,
  outputsTotalW: number({
    unit: 'W',
    min: leastTaken.power,
    max: 100_000,
    link: 'supply',
    address: 'outtotal',
    column: 'outputs W',
    label: 'Power of all outputs together',
    question: 'How much power may all outputs give together?',
    findOut: [look('From the plate, where it names a total or a maximum for several outputs.')],
    printed: (plate) => plate.outputsTotalW,
  }),
  plug,
  lead,
  fuse: text({
    link: 'fuse',
    address: 'fuse',
    column: 'fuse',
    label: 'Marking of the mains fuse-link',
    question: 'What is printed on the mains fuse-link that is fitted?',
    term: 'fuse-link',
    findOut: [look('Unplugged, from the caps of the fuse-link where its holder opens from outside.')],
    printed: (plate) => plate.fuse,
  }),
  measured,
})
