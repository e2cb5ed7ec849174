import { look } from './fact.js'
import { group, keys, phrases } from './kinds.js'

/** What a person says of the readings of the plates. */
export const readings = group({
  confirmed: keys({
    link: 'supply',
    address: 'confirmed',
    label: 'Figures of the plates that were confirmed',
    question: 'Does the plate really say so?',
    findOut: [look('Hold the words that were read against the plate itself.')],
  }),
  dismissed: phrases({
    link: 'supply',
    address: 'dismissed',
    label: 'Unread words that do not matter',
    question: 'Which of the words that were not read do not matter?',
    hint: 'As they stand in the finding, one phrase on each line.',
    findOut: [look('Read them on the plate, or have them translated: a name, a place or a mark takes nothing away.')],
  }),
})
