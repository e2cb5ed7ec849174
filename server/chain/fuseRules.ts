import { breaking, voltage } from './fuseBreakingRules.js'
import { ambient, blown, inrush, lamp, operating } from './fuseCircuitRules.js'
import { family, size } from './fuseFamilyRules.js'
import { entered, marking } from './fuseMarkingRules.js'
import { prescribed, rating } from './fusePrescriptionRules.js'
import type { Rule } from './fuseSituation.js'
import { speed } from './fuseSpeedRules.js'
import { asFound } from './fuseStateRules.js'

/** In the order in which a person looks; the review sorts them worst first. */
export const fuseRules: readonly Rule[] = [
  blown,
  asFound,
  marking,
  entered,
  prescribed,
  rating,
  family,
  speed,
  breaking,
  voltage,
  size,
  operating,
  ambient,
  inrush,
  lamp,
]
