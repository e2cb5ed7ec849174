import { breaking } from './breakingRules.js'
import { ambient, blown, inrush, lamp, operating } from './circuitRules.js'
import { family, size } from './familyRules.js'
import type { Rule } from './fuseSituation.js'
import { entered, marking, otherThing } from './markingRules.js'
import { poles } from './poleRules.js'
import { prescribed, rating } from './prescriptionRules.js'
import { speed } from './speedRules.js'
import { asFound } from './stateRules.js'
import { voltage } from './voltageRules.js'

/** In the order in which a person looks; the review sorts them worst first. */
export const fuseRules: readonly Rule[] = [
  blown,
  asFound,
  marking,
  entered,
  otherThing,
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
  poles,
]
