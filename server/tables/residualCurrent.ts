import { frozen } from './frozen.js'
import { published } from './source.js'

/** A residual-current device of the general type, by its rating. */
export const residualShares = frozen({
  /** up to this share it must not trip, at its rating it must */
  mayTrip: 0.5,
  /** most that healthy leakage may come to */
  standing: 0.3,
  source: published(
    'Questions on residual-current devices of a maker, and a training page on the 18th edition of BS 7671',
    'half the rating must not trip; 531.3.3: standing leakage at most 30 % of the rating',
  ),
})

const peopleA = 30e-3

/** One of the general type for people. */
export const residualTrip = frozen({
  ratedA: peopleA,
  mayTripA: residualShares.mayTrip * peopleA,
  standingA: residualShares.standing * peopleA,
  source: residualShares.source,
})

/** A ground-fault interrupter of class A, as in North America. */
export const groundFaultTrip = frozen({
  /** what is called its rating */
  ratedA: 5e-3,
  leastA: 4e-3,
  mostA: 6e-3,
  source: published('Posts of electricians on UL 943', 'class A: must not trip under 4 mA, must trip at 6 mA and more'),
})
