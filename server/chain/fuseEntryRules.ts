import { readFuseMarking } from '../plate/fuseMarking.js'
import { caution } from './finding.js'
import { describe } from './fuseLink.js'
import { type Rule, rest } from './fuseSituation.js'
import { ratingPlate } from './words.js'

const facts = ['ratedA', 'ratedV', 'characteristic', 'breaking', 'scheme'] as const

/** What was entered by hand against what the marking reads. The entry decides. */
export const entered: Rule = ({ request: { marking, fuse } }) => {
  if (!marking?.trim() || !fuse) return []
  const read = readFuseMarking(marking)
  const differs = facts.filter((fact) => fuse[fact] != null && read[fact] !== null && fuse[fact] !== read[fact])
  if (differs.length === 0) return []
  const own = { ...read, ...Object.fromEntries(differs.map((fact) => [fact, fuse[fact]])) }
  return [
    caution(
      'fuse',
      `The marking reads ${describe(read)}, ${describe(own)} was entered`,
      rest(
        'What was entered decides here; if it is the entry that is wrong, so is all that follows.',
        'Read the cap again with a lens, and put the marking right, or the entry.',
        [],
        [ratingPlate],
      ),
    ),
  ]
}
