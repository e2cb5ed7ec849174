import { look } from './fact.js'
import { choice, yesNo } from './kinds.js'

/** What the class of protection is known from. */
export const protectionClassBy = choice({
  choices: [
    { value: 'symbol', label: 'The symbol on the plate', says: 'by its symbol' },
    { value: 'words', label: 'Words on the plate or in the manual', says: 'by words' },
    { value: 'guess', label: 'A guess, such as from a cord with two cores', says: 'by a guess' },
  ],
  link: 'supply',
  address: 'classby',
  column: 'class by',
  label: 'Protection class known from',
  question: 'What tells you the class of protection?',
  findOut: [look('The symbol alone settles it where the inlet has an earth pin: a square inside a square, or ⏚.')],
})

/** Whether the output is separate from the mains. */
export const isolated = yesNo({
  choices: [
    { value: true, word: 'yes', label: 'Yes, its insulation was tested', says: 'isolated' },
    { value: false, word: 'no', label: 'No', says: 'not isolated' },
  ],
  link: 'supply',
  address: 'isolated',
  column: 'isolated',
  label: 'Output isolated from the mains',
  question: 'Is the output isolated from the mains?',
  findOut: [
    look(
      'Unplugged, by a qualified person: an insulation test of live and neutral joined against the contacts of the output joined.',
    ),
  ],
})
