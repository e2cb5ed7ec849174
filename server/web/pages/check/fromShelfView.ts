import { atHandIfReadable } from '../../../bench/atHand/atHand.js'
import type { CheckRequest } from '../../../chain/case/request.js'
import type { Outcome } from '../../../chain/finding.js'
import { StorageFault } from '../../../store/errors.js'
import type { Store } from '../../../store/store.js'
import { type Phrase, say, type Words } from '../../../words/phrase.js'
import { countryName } from '../../parts/countryNames.js'
import { fromShelf, lacksSupply } from '../../parts/fromShelf.js'
import type { MatchingSupply } from '../../parts/shelfMatching.js'
import { verdictWords } from '../../parts/verdictWords.js'
import { checkAddress } from './checkAddress.js'

export interface FromShelfView {
  says: Phrase
  /** where that leads, while nothing is judged yet */
  look: string | null
  /** the place of what is at hand, where the check names none */
  at: Phrase | null
  lines: {
    name: string
    place: string
    outcome: Outcome
    verdict: string
    against: Words
    /** the whole check of the pair; where it has more rows than the form, what is kept of the supply */
    address: string
  }[]
  more: number
}

/** How many are shown; those after them are none better. */
const mostShown = 10

/**
 * The way to them while one types: a shelf of 500 takes seconds to judge, so it is judged where the whole page is asked for.
 */
export const fromShelfLater = (request: CheckRequest, address: string): FromShelfView | null =>
  lacksSupply(request)
    ? { says: say`Judge the supplies of the shelf for this machine`, look: address, at: null, lines: [], more: 0 }
    : null

/** The supplies of the shelf for a check that has none; null for any other, and where records cannot be read. */
export async function fromShelfView(store: Store, request: CheckRequest): Promise<FromShelfView | null> {
  if (!lacksSupply(request)) return null
  const { country, socket } = await atHandIfReadable(store)
  const placed = request.site.country != null || request.site.voltageV != null || country === null
  const site = placed ? request.site : { socket, ...request.site, country }
  try {
    const { says, offered } = await fromShelf(store, { ...request, site })
    return {
      says,
      look: null,
      at: placed ? null : say`Judged for ${countryName(country)}, the place of what is at hand.`,
      lines: offered.slice(0, mostShown).map((match) => ({
        name: match.name,
        place: match.place ?? '',
        outcome: verdictWords[match.verdict].outcome,
        verdict: verdictWords[match.verdict].title,
        against: match.against?.title ?? '',
        address: addressOfPair({ ...request, site }, match),
      })),
      more: Math.max(0, offered.length - mostShown),
    }
  } catch (error) {
    if (error instanceof StorageFault) return null
    throw error
  }
}

function addressOfPair(request: CheckRequest, { id, supply }: MatchingSupply): string {
  try {
    return checkAddress({ ...request, arrangement: null, supply })
  } catch (error) {
    // a row brought in as JSON may have more rails than the form of a check has boxes for
    if (error instanceof RangeError) return `/shelf/supplies/${id}`
    throw error
  }
}
