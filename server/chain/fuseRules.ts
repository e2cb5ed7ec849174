import { ambient, blown, inrush, lamp, operating } from './fuseCircuitRules.js'
import { entered } from './fuseEntryRules.js'
import { breaking, family, marking, size, speed, voltage } from './fuseLinkRules.js'
import { prescribed, rating } from './fusePrescriptionRules.js'
import type { Rule } from './fuseSituation.js'
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
