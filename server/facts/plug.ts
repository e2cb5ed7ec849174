import { look, measure } from './fact.js'
import { choice, group, number, text } from './kinds.js'
import { leastTaken } from './leastTaken.js'

const diameter = { unit: 'mm', min: leastTaken.diameterMm, max: 30 }

/** Which contact is plus. */
export const polarities = [
  { value: 'centre-positive', label: 'Centre positive', says: 'centre positive', drawing: 'centre-positive' },
  { value: 'centre-negative', label: 'Centre negative', says: 'centre negative', drawing: 'centre-negative' },
] as const

/** A polarity within a sentence: "centre positive". */
export const polarityText = (polarity: (typeof polarities)[number]['value']): string =>
  polarities[polarity === 'centre-positive' ? 0 : 1].says

/** The low-voltage plug on the lead to the machine. */
export const plug = group({
  outerMm: number({
    ...diameter,
    link: 'plug',
    address: 'plugouter',
    column: 'plug outer mm',
    label: 'Plug, outer diameter',
    question: 'How wide is the plug’s metal sleeve outside?',
    ahead: true,
    findOut: [look('Outside with a caliper across the metal sleeve.')],
  }),
  innerMm: number({
    ...diameter,
    link: 'plug',
    address: 'pluginner',
    column: 'plug inner mm',
    label: 'Plug, inner diameter',
    question: 'How wide is the bore in the middle of the plug?',
    term: 'bore',
    ahead: true,
    findOut: [look('Inside, the thickest drill shank that slips in.')],
  }),
  polarity: choice({
    choices: polarities,
    link: 'plug',
    address: 'plugpol',
    column: 'plug polarity',
    label: 'Plug polarity',
    question: 'Which sign is on the centre of the plug?',
    term: 'polarity',
    ahead: true,
    findOut: [
      look('From the drawing on the plate.'),
      measure(
        'To measure it the supply must be on, so only once nothing here says stop on the mains side: black lead on the sleeve, red lead in the bore, and a minus sign means centre negative.',
        'mains',
      ),
    ],
    printed: (plate) => plate.polarity,
  }),
  name: text({
    link: 'plug',
    address: 'plugname',
    column: 'plug name',
    label: 'Plug name',
    question: 'Has the plug a name or a standard?',
    findOut: [look('From a catalogue, the manual, or the packing of the lead.')],
  }),
})

/** The jack of the machine, described by the plug that it takes. */
export const jack = group({
  outerMm: number({
    ...diameter,
    link: 'jack',
    address: 'jackouter',
    column: 'plug outer mm',
    label: 'Jack, outer diameter of its plug',
    question: 'How wide is the plug that goes into the machine’s jack?',
    ahead: true,
    findOut: [look('Give the size of the plug it takes: the opening takes the plug’s outside.')],
  }),
  innerMm: number({
    ...diameter,
    link: 'jack',
    address: 'jackinner',
    column: 'plug inner mm',
    label: 'Jack, inner diameter of its plug',
    question: 'How wide is the bore of the plug that goes over the jack’s pin?',
    ahead: true,
    findOut: [look('The pin goes into the plug’s bore: measure the pin with a caliper.')],
  }),
  polarity: choice({
    choices: polarities,
    link: 'jack',
    address: 'jackpol',
    column: 'plug polarity',
    label: 'Jack polarity',
    question: 'Which sign does the machine want on the centre?',
    ahead: true,
    findOut: [
      look(
        'From the drawing beside the jack or in the manual. Without it, look inside, unplugged, for which contact meets the chassis or the negative end of the first large capacitor.',
      ),
    ],
    printed: (plate) => plate.polarity,
  }),
  name: text({
    link: 'jack',
    address: 'jackname',
    column: 'plug name',
    label: 'Jack name',
    question: 'Has the jack a name or a standard?',
    findOut: [look('From a catalogue or the machine’s manual.')],
  }),
})
