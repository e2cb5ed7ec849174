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

/** What a reading must come to before it is something seen. */
export const seenLimits = frozen({
  /** of the mains across the lamp, from which it stays at full brightness [1] */
  lampBrightShare: 0.9,
  /** of the mains across the lamp, from which it is half bright [1] */
  lampHalfShare: 0.4,
  /** of the mains across the lamp, below which it is dark [1] */
  lampDarkShare: 0.01,
  /** of the rail, below which there is no output [1] */
  noOutputShare: 0.05,
  /** rise without load up to which an unregulated unit is in no fault [1] */
  unregulatedRise: 0.6,
  /** drop under load from which an output collapses [1] */
  collapseShare: 0.1,
  /** ripple over the rail that counts as high where no limit is published [1] */
  rippleShare: 0.01,
  /** over the current on the plate, from which the machine takes too much [1] */
  overPlate: 1.5,
  /** of the current on the plate, below which it takes none [1] */
  noCurrentShare: 0.02,
  /** resistance to earth of an output, below which it is a short until explained [Ω] */
  shortOhm: 1,
  source: commonPractice(
    'Signs that restorers go by',
    'lamp over 90 % of the mains; unregulated units stand 20 % to 60 % high; a drop of 10 % under load; 1.5 times the plate; 1 Ω is a short until explained',
  ),
})

/** Watts of the lamp over those of the load, by what is behind it [1]. */
export const lampTimes = frozen({
  transformer: 4,
  'switch-mode': 5,
  source: commonPractice(
    'A lamp large enough',
    '3 to 4 times the load for a transformer, 4 to 5 times for a switch-mode supply: a small lamp makes a healthy one flash',
  ),
})
