import { inletPairs } from '../tables/inletPairs.js'
import { look } from './fact.js'
import { choice, text } from './kinds.js'
import { labelFor, type OnMains } from './mainsInput.js'
import { captive, namesOnce } from './usualNames.js'

/** Switch-mode, or with a transformer on the mains. */
export const technologyOf = (of: OnMains) =>
  choice({
    choices: [
      { value: 'switch-mode', label: 'Switch-mode (light for its power)' },
      { value: 'transformer', label: 'Transformer (heavy for its power)' },
    ],
    also: ['unknown'],
    link: of.link,
    address: `${of.address}type`,
    column: 'technology',
    label: of.called === 'supply' ? 'Kind of supply' : 'Kind of supply inside the machine',
    question: 'Is it a switch-mode supply, or one with a transformer on the mains?',
    term: 'switch-mode',
    ahead: of.called === 'supply',
    findOut: [
      look(
        'A switch-mode block is light for its power, and its plate often gives a wide range such as 100-240 V. A transformer is heavy for its power, and may hum.',
      ),
    ],
    printed: (plate) => plate.technology,
  })

/** Which class of protection against shock. */
export const protectionClassFact = (of: OnMains) =>
  choice({
    choices: [
      { value: 'I', label: 'Class I: relies on an earth', says: 'class I', drawing: 'class-i' },
      { value: 'II', label: 'Class II: square in a square', says: 'class II', drawing: 'class-ii' },
      { value: 'III', label: 'Class III: extra-low voltage only', says: 'class III', drawing: 'class-iii' },
    ],
    link: of.link,
    address: `${of.address}class`,
    column: 'class',
    label: labelFor(of, 'Protection class'),
    question: `Which class of protection is printed on the ${of.called}?`,
    term: 'protection-class',
    findOut: [look('From the symbol on the plate: a square in a square is class II, III in a diamond is class III.')],
    printed: (plate) => plate.protectionClass,
  })

/** Where the mains cord goes in. */
export const inletOf = (of: OnMains) =>
  text({
    choices: [
      captive,
      ...namesOnce(
        'inlet',
        inletPairs.map(({ inlet, nicknames }) => ({ name: inlet, nicknames })),
      ),
    ],
    link: 'inlet',
    address: `${of.address}inlet`,
    column: 'inlet',
    label: labelFor(of, 'Mains inlet'),
    question: `Which socket on the ${of.called} does its mains cord go into?`,
    term: 'inlet',
    ahead: of.called === 'supply',
    findOut: [
      look(
        `The socket on the ${of.called} that its cord goes into. C8 has the outline of a figure eight, C6 of a clover leaf; C14 has three flat pins and two cut corners.`,
      ),
    ],
  })

/** What is printed on the mains fuse-link. */
export const fuseOf = (of: OnMains) =>
  text({
    link: 'fuse',
    address: `${of.address}fuse`,
    column: 'fuse',
    label: of.called === 'supply' ? 'Marking of the mains fuse-link' : 'Marking of the machine’s mains fuse-link',
    question: 'What is printed on the mains fuse-link that is fitted?',
    term: 'fuse-link',
    findOut: [look('Unplugged, from the caps of the fuse-link where its holder opens from outside.')],
    printed: (plate) => plate.fuse,
  })
