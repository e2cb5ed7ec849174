import { inletByName } from '../tables/inlets.js'
import type { Source } from '../tables/source.js'
import { type Phrase, say } from '../words/phrase.js'
import type { ProtectionClass } from './case/request.js'
import type { PreparedSupply } from './case/situation.js'
import { ratingPlate } from './words.js'

export interface KnownClass {
  protectionClass: ProtectionClass
  /** where it was taken from, as the end of a sentence */
  from: Phrase
  sources: readonly Source[]
}

/** Text of an inlet that is a flex led out of the unit, or a plug in the unit's own body. */
export const isCaptive = (inlet: string | null): boolean => inlet !== null && /^captive$/i.test(inlet)
export const isPlugIn = (inlet: string | null): boolean => inlet !== null && /^plug-?in$/i.test(inlet)

/** Protection class of a supply: as stated, else what its inlet is made for; null where neither says, or the plate names class 0. */
export function protectionClassOf({ protectionClass, classZero, inlet }: PreparedSupply): KnownClass | null {
  if (classZero) return null
  if (protectionClass) return { protectionClass, from: say`stated`, sources: [ratingPlate] }
  const pair = inlet === null ? undefined : inletByName(inlet)
  if (!pair) return null
  return { protectionClass: pair.protectionClass, from: say`taken from its ${pair.inlet} inlet`, sources: pair.sources }
}
