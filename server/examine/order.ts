import { toldApart } from '../physics/toldApart.js'
import type { Cause } from '../tables/causes.js'
import { type Examination, examinations } from '../tables/examinations.js'
import { likelihoodCounts, placeCounts } from '../tables/examineOrder.js'
import { countOf, type Suspect } from './suspects.js'

/** An examination with the causes that it tells of. */
export interface Proposal {
  examination: Examination
  tells: readonly Suspect[]
  /** how well it tells the causes apart, over its trouble: by this it is put in order */
  worth: number
}

/** The row of what confirms or excludes a cause. @throws RangeError for a key that the table does not have */
export function examinationOf({ examination: name }: Pick<Cause, 'examination'>): Examination {
  const row = examinations.find(({ key }) => key === name)
  if (!row) throw new RangeError(`no examination is called ${name}`)
  return row
}

/** What counts for something that nobody listed: as much as a rare cause. */
const notListed = likelihoodCounts.rare

/**
 * The examinations that are left for causes, in the order to do them: how well each tells the causes apart, over its trouble and how
 * near it comes to the mains. What is alike keeps the order of the causes.
 */
export function inOrder(suspects: readonly Suspect[]): Proposal[] {
  const all = suspects.reduce((sum, suspect) => sum + countOf(suspect), notListed)
  const names = [...new Set(suspects.map(({ cause }) => cause.examination))]
  return names
    .map((name): Proposal => {
      const examination = examinationOf({ examination: name })
      const tells = suspects.filter(({ cause }) => cause.examination === name)
      const told = tells.map(countOf)
      const rest = all - told.reduce((sum, count) => sum + count, 0)
      return {
        examination,
        tells,
        worth: toldApart(told, rest) / (examination.trouble * placeCounts[examination.done]),
      }
    })
    .toSorted((one, other) => other.worth - one.worth)
}
