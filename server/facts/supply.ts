import { look, measure } from './fact.js'
import { isolated, protectionClassBy } from './insulation.js'
import { choice, group, number, plate, required, signedVolts, thing, yesNo } from './kinds.js'
import { leastTaken } from './leastTaken.js'
import { mainsInputOf, type OnMains } from './mainsInput.js'
import { fuseOf, inletOf, protectionClassFact, technologyOf } from './onMains.js'
import { outputs } from './outputs.js'
import { supplyPins } from './pins.js'
import { plug, polarities } from './plug.js'
import { outputEarthed } from './poles.js'

const onMains: OnMains = { link: 'supply', called: 'supply', address: '' }

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
  input: mainsInputOf(onMains),
  technology: technologyOf(onMains),
  regulated: yesNo({
    said: { yes: 'regulated', no: 'unregulated' },
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
  protectionClass: protectionClassFact(onMains),
  inlet: inletOf(onMains),
  protectionClassBy,
  isolated,
  outputEarthed,
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
  pins: supplyPins,
  lead,
  fuse: fuseOf(onMains),
  measured,
})
