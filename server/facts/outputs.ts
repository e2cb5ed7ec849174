import { type Phrase, say } from '../words/phrase.js'
import { volts } from '../words/quantity.js'
import { look, type RowPrinted } from './fact.js'
import { choice, list, number, numbers, required, signedVolts, stated, yesNo } from './kinds.js'
import { leastTaken } from './leastTaken.js'

const onPlate = look('From the lines about the output on the plate.')

/** Whether a voltage is direct or alternating. */
const kinds = [
  { value: 'dc', label: 'DC', says: 'DC' },
  { value: 'ac', label: 'AC', says: 'AC' },
] as const

/** A printed voltage or range: "5 V to 11 V". */
const printedText = ({ voltageV, voltageMaxV }: RowPrinted): Phrase =>
  voltageMaxV === null ? volts(voltageV) : say`${volts(voltageV)} to ${volts(voltageMaxV)}`

/** What the supply gives, a row for each output. */
export const outputs = list(
  { each: 'output', rows: 6, column: 'rails', printed: (plate) => plate.outputs },
  {
    kind: stated(
      choice({
        choices: kinds,
        link: 'supply',
        address: 'out#kind',
        label: 'AC or DC',
        question: 'Is this output direct or alternating?',
        findOut: [onPlate],
        printedRow: ({ kind }) => kind,
      }),
    ),
    voltageV: required(
      signedVolts({
        link: 'supply',
        address: 'out#',
        label: 'Voltage',
        question: 'What voltage does this output give?',
        findOut: [onPlate],
        printedRow: ({ voltageV }) => voltageV,
        printedText,
      }),
    ),
    currentA: number({
      unit: 'A',
      min: leastTaken.currentA,
      max: 1000,
      link: 'supply',
      address: 'out#a',
      label: 'Current',
      question: 'How much current may be taken from this output?',
      findOut: [onPlate],
      printedRow: ({ currentA }) => currentA,
    }),
    powerW: number({
      unit: 'W',
      min: leastTaken.power,
      max: 100_000,
      link: 'supply',
      address: 'out#w',
      label: 'Power',
      question: 'How much power may be taken from this output?',
      findOut: [onPlate],
      printedRow: ({ powerW }) => powerW,
    }),
    leastA: number({
      unit: 'A',
      min: leastTaken.currentA,
      max: 1000,
      link: 'supply',
      address: 'out#least',
      column: 'least ',
      label: 'Least current',
      question: 'How much current must at least be taken from this output?',
      findOut: [look('From the sticker or the data sheet, where it names a minimum load; most wall units have none.')],
    }),
    regulated: yesNo({
      said: { yes: 'regulated', no: 'unregulated' },
      link: 'supply',
      address: 'out#reg',
      label: 'This output is regulated',
      inRow: 'Regulated',
      question: 'Does this output hold its voltage whatever is drawn of it?',
      findOut: [
        look(
          'From the plate or the circuit: of several outputs one often has a regulator, and another is a winding with a rectifier alone.',
        ),
      ],
    }),
    settings: numbers({
      unit: 'V',
      min: leastTaken.voltageV,
      max: 1000,
      link: 'supply',
      address: 'out#settings',
      column: 'settings ',
      label: 'Settings of its switch',
      question: 'Which voltages can this output be switched to?',
      findOut: [look('From the print beside the switch, or the tips of the lead; most outputs have none.')],
    }),
    setV: number({
      unit: 'V',
      min: leastTaken.voltageV,
      max: 1000,
      link: 'supply',
      address: 'out#set',
      column: 'set ',
      label: 'Its switch stands at',
      question: 'At which voltage does the switch of this output stand?',
      findOut: [look('On the switch itself, with the plug pulled.')],
    }),
  },
)

const onMachine = look('From the machine’s plate, or the print beside its power socket.')

/** What the machine takes, a row for each input. */
export const inputs = list(
  { each: 'machine input', rows: 6, column: 'rails', printed: (plate) => plate.takes },
  {
    kind: stated(
      choice({
        choices: kinds,
        link: 'machine',
        address: 'need#kind',
        label: 'AC or DC',
        question: 'Does this input want direct or alternating voltage?',
        findOut: [onMachine],
        printedRow: ({ kind }) => kind,
      }),
    ),
    voltageV: required(
      signedVolts({
        link: 'machine',
        address: 'need#',
        label: 'Voltage',
        question: 'What voltage does this input want?',
        findOut: [onMachine],
        printedRow: ({ voltageV }) => voltageV,
        printedText,
      }),
    ),
    currentA: number({
      unit: 'A',
      min: leastTaken.currentA,
      max: 1000,
      link: 'machine',
      address: 'need#a',
      label: 'Current',
      question: 'How much current does the machine draw here?',
      findOut: [onMachine],
      printedRow: ({ currentA }) => currentA,
    }),
    currentIs: choice({
      choices: [
        { value: 'plate', label: 'its plate' },
        { value: 'measured', label: 'a measurement' },
      ],
      link: 'machine',
      address: 'need#by',
      label: 'Source of the current',
      inRow: 'Current known from',
      question: 'Is that current printed, or was it measured?',
      findOut: [look('You know where the figure comes from.')],
    }),
    tolerancePercent: number({
      unit: '%',
      min: 0,
      max: 50,
      link: 'machine',
      address: 'need#tol',
      column: '±',
      label: 'Tolerance',
      inRow: 'Tolerance, plus or minus',
      question: 'By how much may this voltage be off?',
      findOut: [look('From the machine’s manual; plates seldom say it.')],
    }),
    peakA: number({
      unit: 'A',
      min: leastTaken.currentA,
      max: 1000,
      link: 'machine',
      address: 'need#peak',
      column: 'peak ',
      label: 'Peak current',
      question: 'How much current does the machine draw here for moments?',
      findOut: [look('From its plate or manual: motors, solenoids and print heads have one.')],
    }),
    regulatesInside: yesNo({
      said: { yes: 'regulates inside', no: 'regulates not' },
      link: 'machine',
      address: 'need#inside',
      label: 'This input regulates inside',
      inRow: 'Regulates inside',
      question: 'Does the machine regulate this voltage inside?',
      findOut: [
        look('In its circuit diagram: a regulator or a converter behind this input, and all else is fed from it.'),
      ],
    }),
  },
)
