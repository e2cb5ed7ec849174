import { z } from 'zod'
import { look, measure } from './fact.js'
import { choice, list, required, signedVolts, text } from './kinds.js'

/** What a contact is called: the figure or letter beside it. */
const name = z.string().regex(/^[^\s;]{1,12}$/, {
  error: 'A contact is named by up to 12 characters without spaces, as printed beside it: 1, A, L',
})

const roles = [
  { value: 'rail', label: 'A voltage' },
  { value: 'return', label: 'Return (0 V, common)' },
  { value: 'earth', label: 'Earth or screen' },
  { value: 'signal', label: 'A signal' },
  { value: 'none', label: 'Nothing' },
] as const

const kinds = [
  { value: 'dc', label: 'DC', says: 'DC' },
  { value: 'ac', label: 'AC', says: 'AC' },
] as const

/** The contacts of a connector, a row each. */
const pinsOf = (of: 'supply' | 'machine') => {
  const link = of === 'supply' ? 'plug' : 'jack'
  const address = of === 'supply' ? 'pin#' : 'mpin#'
  const ringOut = look(
    of === 'supply'
      ? 'Draw the contacts as you look at them, with the groove or key, and number them as printed. Unplugged, ohms between contacts: those under 1 Ω belong together.'
      : 'Unplugged, ohms from each contact to bare chassis: under 1 Ω is the return. From each other contact to it, both ways round: a kick and a rise is a rail with a capacitor.',
  )
  const id = text({
    link,
    address,
    label: 'Contact',
    question: `What is printed beside this contact of the ${of}?`,
    findOut: [ringOut],
  })
  return list(
    {
      each: of === 'supply' ? 'contact of the supply' : 'contact of the machine',
      rows: 8,
      column: 'pins',
      printed: () => [],
    },
    {
      id: required({ ...id, value: name, schema: name.nullish() }),
      role: required(
        choice({
          choices: roles,
          link,
          address: `${address}role`,
          label: 'Role',
          question: 'What is on this contact?',
          findOut: [ringOut],
        }),
      ),
      kind: choice({
        choices: kinds,
        link,
        address: `${address}kind`,
        label: 'AC or DC',
        question: 'Is it direct or alternating voltage?',
        findOut: [ringOut],
      }),
      voltageV: signedVolts({
        link,
        address: `${address}v`,
        label: 'Voltage against the return',
        question: 'Which voltage belongs on this contact, against the return?',
        findOut: [look('From the manual or the print beside the connector; a colour is a hint, never proof.')],
      }),
      measuredV: signedVolts({
        link,
        address: `${address}m`,
        column: 'measured ',
        label: 'Measured against the return',
        question: 'What does the meter show on this contact, against the return?',
        findOut: [
          measure(
            'Supply alone, nothing joined, only once nothing here says stop on the mains side: black lead on the return.',
            'mains',
          ),
        ],
      }),
    },
  )
}

/** What stands on each contact of the supply's connector. */
export const supplyPins = pinsOf('supply')
/** What the machine wants on each contact of its own. */
export const machinePins = pinsOf('machine')
