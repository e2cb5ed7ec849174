import { atMost } from '../../physics/tolerance.js'
import type { LabelPlug } from '../../plate/labelReading.js'
import { dcPlugsNamed, isSameBore } from '../../tables/dcPlugs.js'
import { plugBoreLoose, plugOuterMost } from '../../tables/thresholds.js'
import { say } from '../../words/phrase.js'
import { uniqueSources } from '../judgement.js'
import { ratingPlate } from '../words.js'
import type { PlugClaim } from './situation.js'

/** What a plug is called: by the name that was entered or printed, and by the size in print. What names no size claims nothing. */
export function plugClaims(name: string | null, printed: LabelPlug | null): PlugClaim[] {
  const names = new Set([name, printed?.name ?? null].filter((one) => one !== null))
  const byName = [...names].map((one): PlugClaim => {
    const rows = dcPlugsNamed(one)
    return {
      called: say`“${one.slice(0, 40)}”`,
      sizes: rows,
      sources: uniqueSources(rows.flatMap(({ sources }) => sources)),
    }
  })
  const size = { outerMm: printed?.outerMm ?? null, innerMm: printed?.innerMm ?? null }
  const inPrint: PlugClaim = { called: say`What the plate’s text says`, sizes: [size], sources: [ratingPlate] }
  const known = size.outerMm !== null || size.innerMm !== null
  return [...byName, ...(known ? [inPrint] : [])].filter(({ sizes }) => sizes.length > 0)
}

/**
 * Whether a plug of these diameters [mm] may be one of a size: outside as near as plug and jack have to be, its bore nearer than what is
 * loose. A diameter that is not known speaks against nothing.
 */
export const isPlugSize = (size: PlugClaim['sizes'][number], outerMm: number | null, innerMm: number | null): boolean =>
  (size.outerMm === null || outerMm === null || atMost(Math.abs(size.outerMm - outerMm), plugOuterMost.value)) &&
  (size.innerMm === null ||
    innerMm === null ||
    isSameBore(size.innerMm, innerMm) ||
    !atMost(plugBoreLoose.value, Math.abs(size.innerMm - innerMm)))
