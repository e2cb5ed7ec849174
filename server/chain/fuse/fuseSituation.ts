import { likeWithLike, sourceOfPrescription } from '../../tables/fuseSelection.js'
import { type Phrase, say } from '../../words/phrase.js'
import type { Judgement } from '../judgement.js'
import { describe, type FuseLink, type Prescription } from './fuseLink.js'
import type { FuseRequest } from './fuseRequest.js'
import type { Demand } from './required.js'

/** Everything a rule may look at. */
export interface FuseSituation {
  request: FuseRequest
  fitted: FuseLink
  /** something was entered about the fitted link */
  fittedEntered: boolean
  prescription: Prescription | null
  /** the unit was made for another mains voltage, and no prescription for this one was read */
  moved: boolean
  /** the prescription tells what to fit at this voltage */
  usable: boolean
  demand: Demand
}

/** One thing a person would look at; nothing to say gives an empty list. */
export type Rule = (situation: FuseSituation) => Judgement[]

/** Who may change a link, and what comes first. */
export const who = say`Unplug the supply first. A link in a holder that opens from outside can be changed by you; one inside the mains enclosure is for a licensed electrician or other qualified person, under local codes.`

export const fitThis = (link: FuseLink): Phrase => say`Fit ${describe(link)}, in every detail as prescribed. ${who}`

export const makers = { sources: [sourceOfPrescription, likeWithLike.replacing] }

/** How a family of standards is written in text. */
export const familyName = (scheme: string | null): string =>
  scheme === 'UL' ? 'UL 248-14' : scheme === 'IEC' ? 'IEC 60127' : scheme === 'BS1362' ? 'BS 1362' : 'BS 646'
