import * as chain from '../../server/chain/assess.js'
import * as converters from '../../server/chain/chooseConverter.js'
import * as fuses from '../../server/chain/fuse/review.js'
import * as leads from '../../server/chain/leadLoss.js'
import * as checklists from '../../server/plan/checklist.js'
import * as choices from '../../server/plan/firstPower/lampChoice.js'
import * as lampReadings from '../../server/plan/firstPower/lampReading.js'
import * as seriesLamps from '../../server/plan/firstPower/seriesLamp.js'
import * as plans from '../../server/plan/planFirstPower.js'
import { type Told, tell } from '../../server/words/tell.js'

/** The same function with its answer as text, for tests that hold the words. */
const told =
  <Given extends unknown[], Answer>(work: (...given: Given) => Answer) =>
  (...given: Given): Told<Answer> =>
    tell(work(...given))

export const assess = told(chain.assess)
export const chooseConverter = told(converters.chooseConverter)
export const reviewFuse = told(fuses.reviewFuse)
export const leadLoss = told(leads.leadLoss)
export const composeChecklist = told(checklists.composeChecklist)
export const lampChoice = told(choices.lampChoice)
export const lampReading = told(lampReadings.lampReading)
export const seriesLamp = told(seriesLamps.seriesLamp)
export const planFirstPower = told(plans.planFirstPower)
