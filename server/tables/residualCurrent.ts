import { frozen } from './frozen.js'
import { published } from './source.js'

/** A residual-current device of the general type for people. */
export const residualTrip = frozen({
  ratedA: 30e-3,
  /** below half of its rating it must not trip */
  mayTripA: 15e-3,
  /** most that healthy leakage may come to: 30 % of the rating */
  standingA: 9e-3,
  source: published(
    'Questions on residual-current devices of a maker, and a training page on the 18th edition of BS 7671',
    'half the rating must not trip; 531.3.3: standing leakage at most 30 % of the rating',
  ),
})

/** A ground-fault interrupter of class A, as in North America. */
export const groundFaultTrip = frozen({
  leastA: 4e-3,
  mostA: 6e-3,
  source: published('Posts of electricians on UL 943', 'class A: must not trip under 4 mA, must trip at 6 mA and more'),
})
