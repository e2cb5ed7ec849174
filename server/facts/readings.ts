import { look } from './fact.js'
import { group, keys } from './kinds.js'

/** What a person says of the readings of the plates. */
export const readings = group({
  confirmed: keys({
    link: 'supply',
    address: 'confirmed',
    label: 'Figures of the plates that were confirmed',
    question: 'Does the plate really say so?',
    findOut: [look('Hold the words that were read against the plate itself.')],
  }),
})
