import type { Link } from './fact.js'
import { look } from './fact.js'
import { choice } from './kinds.js'

const poles = [
  { value: 'positive', label: 'Its plus', says: 'the plus' },
  { value: 'negative', label: 'Its minus', says: 'the minus' },
  { value: 'none', label: 'Neither', says: 'neither pole' },
] as const

const poleFact = (link: Link, address: string, column: string, label: string, question: string) =>
  choice({
    choices: poles,
    link,
    address,
    column,
    label,
    question,
    findOut: [
      look('Unplugged and apart, ohms from each pole to bare metal and to the earth pin: under 1 Ω is joined to it.'),
    ],
  })

/** Which pole of the output is joined to earth. */
export const outputEarthed = poleFact(
  'supply',
  'outearth',
  'output earthed',
  'Pole of the output joined to earth',
  'Which pole of the output is joined to the earth or the case of the supply?',
)

/** Which pole of its low voltage is joined to the case of the machine. */
export const chassis = poleFact(
  'machine',
  'chassis',
  'chassis',
  'Pole joined to the machine’s case',
  'Which pole of its low voltage is joined to the case of the machine?',
)
