import { look } from './fact.js'
import { choice } from './kinds.js'

/** What there is of the power chain between the socket and the machine. */
export const arrangement = choice({
  choices: [
    { value: 'separate', label: 'A machine and a separate supply', says: 'a machine and a separate supply' },
    {
      value: 'plug-in',
      label: 'A machine and a block with the wall plug on it',
      says: 'a machine and a plug-in block',
    },
    { value: 'built-in', label: 'A machine with its supply inside', says: 'a machine with its supply inside' },
    { value: 'supply-only', label: 'A supply alone', says: 'a supply alone' },
    { value: 'machine-only', label: 'A machine alone, without its supply', says: 'a machine alone' },
  ],
  none: 'A machine and a separate supply, or a block',
  link: 'machine',
  address: 'have',
  label: 'What there is',
  question: 'What do you have?',
  ahead: true,
  findOut: [
    look(
      'A machine whose mains cord goes straight into it has its supply inside. A block with the pins of a wall plug on it is a plug-in block; any other box between the wall and the machine is a separate supply.',
    ),
  ],
})
