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
  /** class II without the double square, on an inlet with an earth pin */
  doubted: boolean
  sources: readonly Source[]
}

/** Text of an inlet that is a flex led out of the unit, or a plug in the unit's own body. */
export const isCaptive = (inlet: string | null): boolean => inlet !== null && /^captive$/i.test(inlet)
export const isPlugIn = (inlet: string | null): boolean => inlet !== null && /^plug-?in$/i.test(inlet)

/**
 * Protection class of a supply: as stated, else what its inlet is made for; null where neither says, or the plate names class 0. A guess
 * counts as not stated, save that of class II on an inlet with an earth pin, which is told as such.
 */
export function protectionClassOf(supply: PreparedSupply): KnownClass | null {
  const { protectionClass, classZero, inlet, classTwoDrawn } = supply
  if (classZero) return null
  const by = supply.facts.protectionClassBy
  const pair = inlet === null ? undefined : inletByName(inlet)
  const againstPin = protectionClass === 'II' && pair?.earthed === true
  if (protectionClass && (by !== 'guess' || againstPin))
    return {
      protectionClass,
      from: by === 'guess' ? say`guessed` : say`stated`,
      doubted: againstPin && !classTwoDrawn && by !== 'symbol',
      sources: [ratingPlate],
    }
  if (!pair) return null
  const from = say`taken from its ${pair.inlet} inlet`
  return { protectionClass: pair.protectionClass, from, doubted: false, sources: pair.sources }
}
