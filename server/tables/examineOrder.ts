import type { Likelihood } from './causesSeen.js'
import type { PlaceDone } from './examinations.js'
import { frozen } from './frozen.js'
import { commonPractice } from './source.js'

/**
 * How much each word of likelihood counts while examinations are put in order. It is a convention for that alone, and is shown to
 * nobody as a chance.
 */
export const likelihoodCounts: Readonly<Record<Likelihood, number>> = frozen({ common: 9, sometimes: 3, rare: 1 })

/** From one word of likelihood to the next. */
export const likelihoodStep = 3

/** How much the place of an examination makes its trouble count: nearer to the mains counts more. */
export const placeCounts: Readonly<Record<PlaceDone, number>> = frozen({
  unplugged: 1,
  'bench supply': 1.5,
  'dummy load': 1.5,
  'behind the lamp': 2,
  mains: 3,
  'qualified, unplugged': 2,
  'qualified, mains': 4,
})

export const examineOrderSource = commonPractice(
  'Project rule for the order of examinations',
  'each word of likelihood counts three times the next; trouble counts more the nearer the mains; what tells most for the least trouble comes first',
)

/** Watts of the lamp over those of the load, by what is behind it [1]. */
export const lampTimes = frozen({
  transformer: 4,
  'switch-mode': 5,
  source: commonPractice(
    'A lamp large enough',
    '3 to 4 times the load for a transformer, 4 to 5 times for a switch-mode supply: a small lamp makes a healthy one flash',
  ),
})
